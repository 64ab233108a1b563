package variant

import (
	"flag"
	"fmt"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
)

var each = flag.Int("each", 2, "look at `N` copies of each problem in TestMistakesShow")

// A tally counts copies, the wrong values that mistakes lead to in them, how many of these look like the right one to three
// figures, and how the copies differ from the problem in what makes them hard.
type tally struct {
	copies, wrong, alike          int
	grades, steps, negative, long map[int]int // how many are off the problem by how much; long is the most figures of a force
}

func newTally() *tally {
	return &tally{grades: map[int]int{}, steps: map[int]int{}, negative: map[int]int{}, long: map[int]int{}}
}

// add counts a copy of a problem.
func (n *tally) add(p *problems.Problem, own problems.Solved) {
	s, err := statics.Solve(p.Frame)
	if err != nil || s.Count.Determinacy() != statics.Determinate {
		return
	}
	solved := problems.Solved{Problem: p, Solution: s}
	hidden, all := solved.Hidden()
	n.copies++
	n.wrong += all
	for _, h := range hidden {
		n.alike += len(h.Slips)
	}
	n.grades[solved.Difficulty().Grade-own.Difficulty().Grade]++
	n.steps[len(solved.Plan)-len(own.Plan)]++
	n.negative[negatives(solved)-negatives(own)]++
	n.long[mostFigures(solved)]++
}

// negatives is how many forces of a problem are negative.
func negatives(p problems.Solved) (n int) {
	for _, v := range p.Values {
		if v.Sign() < 0 {
			n++
		}
	}
	return n
}

// mostFigures is how many figures the longest force has, 9 if it has more or does not end.
func mostFigures(p problems.Solved) (most int) {
	for _, v := range p.Values {
		figures := 9
		if v.Terminates() {
			figures = len(strings.Trim(strings.Replace(v.Abs().Decimal(40), ".", "", 1), "0"))
		}
		most = max(most, min(figures, 9))
	}
	return most
}

// share is how many of the wrong values show, in percent.
func (n *tally) share() float64 { return 100 - 100*float64(n.alike)/float64(max(1, n.wrong)) }

func (n *tally) String() string {
	return fmt.Sprintf("%d copies, %d of %d wrong values look right, %.3f %% show; off the problem: grade %v, steps %v, negative forces %v; figures of the longest force %v",
		n.copies, n.alike, n.wrong, n.share(), n.grades, n.steps, n.negative, n.long)
}

// TestMistakesShow makes every mistake of the catalogue that a step allows, at every step, in copies of the library as they are
// drawn and as they are let through. Of those let through at least 99.5 % of the wrong values must differ visibly from the right
// one. What a wide run gave stands in testdata/measured/variants.md: go test ./problems/variant -run MistakesShow -v -whole -each 12
func TestMistakesShow(t *testing.T) {
	t.Parallel()
	drawn, good := newTally(), newTally()
	for _, name := range librarytest.Names() {
		p, _ := problems.Library(name)
		m, err := New(p)
		if err != nil {
			t.Fatal(err)
		}
		own := m.screen.own
		n := 0
		for d := Draw(0); n < *each && d < 400; d++ {
			if copied, err := m.At(d); err == nil {
				drawn.add(copied, own)
				n++
			}
		}
		n = 0
		for d := Draw(0); n < *each && d < 400; d++ {
			if m.Judge(d) == Good {
				good.add(mustAt(t, m, d), own)
				n++
			}
		}
		if n == 0 {
			t.Errorf("%s has no good copy in 400 draws", name)
		}
	}
	t.Logf("drawn: %v", drawn)
	t.Logf("let through: %v", good)
	if good.share() < 99.5 {
		t.Errorf("let through: %v", good)
	}
	if good.steps[0] < good.copies || good.negative[-1]+good.negative[0]+good.negative[1] < good.copies {
		t.Errorf("not all let through are as hard as the problem: %v", good)
	}
	if good.copies < len(librarytest.Names()) || good.wrong < 1000 {
		t.Errorf("too little was tried: %v", good)
	}
}

// solved is a determinate problem with its solution.
func solved(t testing.TB, p *problems.Problem) problems.Solved {
	t.Helper()
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return problems.Solved{Problem: p, Solution: s}
}

var thousand = flag.Bool("thousand", false, "make a thousand different copies of each problem of the library in TestThousand")

// TestThousand: each problem of the library says what may vary, in so many ways that a thousand different copies are good and
// tidy. Every day only the ways are counted; with -thousand all copies are made; how long it took and what was tried is told.
func TestThousand(t *testing.T) {
	for _, name := range problems.Names() {
		t.Run(name, func(t *testing.T) {
			p, _ := problems.Library(name)
			m, err := New(p)
			if err != nil {
				t.Fatal(err)
			}
			if n := combinations(m.changes, fewChoices); len(p.Vary) == 0 || n < 1000 {
				t.Errorf("%d sets of numbers are allowed, where 1000 copies are to be", n)
			}
			if *thousand {
				makeThousand(t, m, name)
			}
		})
	}
}

// makeThousand makes a thousand different copies, and counts those that are as tidy as their problem by its own rules.
func makeThousand(t *testing.T, m *Maker, name string) {
	begun := time.Now()
	copies, err := m.Copies(t.Context(), Job{Source: Source{Set: name, Place: 1}, Wishes: Numbered(1000), Distinct: true})
	if err != nil {
		t.Fatal(err)
	}
	taken := time.Since(begun).Seconds()
	tidy := 0
	for _, c := range copies {
		if len(solved(t, mustAt(t, m, c.Draw)).Shortcomings()) <= len(m.screen.own.Shortcomings()) {
			tidy++
		}
	}
	t.Logf("| %s | %.1f | %d | %d |", name, taken, len(m.glanced), tidy)
	if tidy < 1000 {
		t.Errorf("only %d of 1000 copies are tidy", tidy)
	}
}
