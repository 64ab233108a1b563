package tutor

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// practiceProblems are the library, the published cases, and problems for slips that occur in neither.
func practiceProblems(t testing.TB) []*problems.Problem {
	t.Helper()
	data, err := os.ReadFile("../testdata/cases/published.json")
	if err != nil {
		t.Fatal(err)
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	if err := json.Unmarshal(data, &cases); err != nil {
		t.Fatal(err)
	}
	var all []*problems.Problem
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all = append(all, p)
	}
	own, err := filepath.Glob("testdata/slips/*.yaml")
	if err != nil || len(own) == 0 {
		t.Fatalf("no problems for slips that occur nowhere else: %v", err)
	}
	for _, name := range own {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		p, err := problems.Read(name, data)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
	for _, c := range cases {
		p, err := problems.Read(c.ID, c.Problem)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
	return all
}

// eachLesson begins a lesson on every problem; in a short run, on every fifth.
func eachLesson(t testing.TB, rung Rung, play func(l *Lesson)) {
	for i, p := range practiceProblems(t) {
		if (testing.Short() || raced) && i%5 != 0 {
			continue
		}
		l, err := New(p, rung, false)
		if err != nil {
			t.Fatal(err)
		}
		play(l)
	}
}

// eachQuestion plays a lesson on every problem and gives every question that asks for a value to a test. The student's own
// values are rounded to that many figures; 0 stands for exact values.
func eachQuestion(t testing.TB, figures int, test func(l *Lesson, q Question)) {
	eachLesson(t, Values, func(l *Lesson) {
		for {
			q, asking := l.Now()
			if !asking {
				break
			}
			test(l, q)
			line := q.truth.Decimal(40)
			if figures > 0 {
				line = ownValue(l, q).Figures(figures)
			}
			if r := l.Type(line); !r.Verdict.Right() {
				l.Type("tell")
			}
		}
	})
}

// eachSlippery is eachQuestion without those at which one sentence is said, whatever led to a wrong value.
func eachSlippery(t testing.TB, figures int, test func(l *Lesson, q Question)) {
	eachQuestion(t, figures, func(l *Lesson, q Question) {
		if !l.passesNoCouple(q) {
			test(l, q)
		}
	})
}

// ownValue is what the student's own values give in the right sum.
func ownValue(l *Lesson, q Question) exact.Num {
	switch {
	case q.Kind == SectionPart:
		return l.section(q, l.own()).Value()
	case q.Kind != ForceValue || len(l.Solution.Plan[q.Step].Sums) > 1:
		return q.truth
	}
	if b, ok := sumBalance(l.Solution.Plan[q.Step].Sums[0], q.Force, l.own()); ok {
		if v, err := b.Rest.Neg().Quo(b.Factor); err == nil {
			return v
		}
	}
	return q.truth
}

// A measure is a rate, with what it must keep to.
type measure struct {
	what        string
	count, of   int     // how often, of how many
	rate        float64 // in %, where it is no count of so many
	least, most float64 // in %
	open        bool    // it keeps to nothing
}

// percent is the rate in %.
func (m measure) percent() float64 {
	if m.of == 0 {
		return m.rate
	}
	return 100 * float64(m.count) / float64(m.of)
}

// wanted is what the measure must keep to, in words.
func (m measure) wanted() string {
	switch {
	case m.open:
		return ""
	case m.least > 0:
		return fmt.Sprintf("≥ %g %%", m.least)
	}
	return fmt.Sprintf("≤ %g %%", m.most)
}

// check holds a measure to what it must keep to. What counts nothing proves nothing.
func (m measure) check(t *testing.T) {
	t.Logf("%s: %d of %d, %.2f %% %s", m.what, m.count, m.of, m.percent(), m.wanted())
	switch {
	case m.open:
	case m.of == 0 && m.rate == 0:
		t.Errorf("%s: no cases", m.what)
	case m.least > 0 && m.percent() < m.least, m.least == 0 && m.percent() > m.most:
		t.Errorf("%s: %d of %d are %.2f %%, want %s", m.what, m.count, m.of, m.percent(), m.wanted())
	}
}

// What the lesson makes of slips, of numbers that come from none, and of honest rounding, all in the tables of
// DEVELOPERS.md.
func TestSlips(t *testing.T) {
	var all []measure
	note := func(more ...measure) {
		for _, m := range more {
			m.check(t)
		}
		all = append(all, more...)
	}
	exactly, by := student{own: 0, typed: 4}.byValue(t, "Value typed with four figures, those before exact")
	note(exactly...)
	rounded, _ := student{own: 3, typed: 4}.byValue(t, "Value typed with four figures, those before rounded to three")
	note(rounded...)
	coarse, _ := student{own: 3, typed: 3}.byValue(t, "Value typed with three figures, those before rounded to three")
	note(coarse...)
	note(slipsByTerm(t), slipsBySum(t, false), slipsBySum(t, true), storiesOfWrongTerms(t))
	note(storiesOfWrongNumbers(t, 0, 5), storiesOfWrongNumbers(t, 3, 5), storiesOfWrongNumbers(t, 3, 3))
	note(storiesOfMistakenFrames(t)...)
	note(roundedEveryStep(t))
	if !testing.Short() && !raced {
		documentSlips(t, all, by)
	}
}

// roundedEveryStep measures how often a student is right who makes no slip and rounds every result to three figures,
// going on with these: forces, and N, V and M from them.
func roundedEveryStep(t *testing.T) measure {
	m := measure{what: "No slip, every step rounded to three figures: right", least: 99.9}
	eachQuestion(t, 3, func(l *Lesson, q Question) {
		v, err := l.read(q, ownValue(l, q).Figures(3))
		if err != nil {
			t.Fatal(err)
		}
		m.of++
		if Judge(v, q.truth, l.balances(q)).Right() {
			m.count++
		}
	})
	return m
}

// storiesOfWrongNumbers measures how often a number that no slip leads to, drawn log-uniformly with some figures, is
// given a story: of one slip, or of two. The values before it are rounded to some figures; 0 stands for exact ones.
func storiesOfWrongNumbers(t *testing.T, own, figures int) measure {
	before := map[int]string{0: "exact", 3: "rounded to three"}[own]
	m := measure{what: fmt.Sprintf("Random number of %d figures, values before %s (seed 6, 3): a story", figures, before), most: 1}
	random := rand.New(rand.NewPCG(6, 3))
	eachSlippery(t, own, func(l *Lesson, q Question) {
		targets, lists := l.targets(q), l.allCandidates(q)
		for range 20 {
			v, err := l.read(q, randomNumber(random, figures))
			if err != nil {
				t.Fatal(err)
			}
			m.of++
			story := len(slip.Diagnose(v.places(), lists...).Matches) > 0
			for i, target := range targets {
				story = story || len(slip.Pairs(v.places(), target.Value(), lists[i])) > 0
			}
			if story {
				m.count++
			}
		}
	})
	return m
}

// randomNumber is drawn log-uniformly from 0.01 to 1000, with some figures and either sign.
func randomNumber(random *rand.Rand, figures int) string {
	line := exact.MustParse(strconv.FormatFloat(math.Pow(10, random.Float64()*5-2), 'f', 8, 64)).Figures(figures)
	if random.IntN(2) == 0 {
		line = "-" + line
	}
	return line
}
