package judging

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	"unpin/statics/exact"
	"unpin/statics/slip"
)

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
	case m.open, testing.Short() && m.of > 0: // of a sample: the whole is held to what is wanted
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
	case testing.Short() && m.of > 0: // a sample; the whole is held to what is wanted
	case m.of == 0 && m.rate == 0:
		t.Errorf("%s: no cases", m.what)
	case m.least > 0 && m.percent() < m.least, m.least == 0 && m.percent() > m.most:
		t.Errorf("%s: %d of %d are %.2f %%, want %s", m.what, m.count, m.of, m.percent(), m.wanted())
	}
}

// What the lesson makes of slips, of numbers that come from none, and of honest rounding: each measure must keep to what is
// wanted of it, and each slip to its floor, which nothing rewrites. testdata/slips.md only shows what was measured.
func TestSlips(t *testing.T) {
	t.Parallel()
	var by map[*slip.Slip]*tally
	one := func(m measure) []measure { return []measure{m} }
	parts := []func(*testing.T) []measure{
		func(t *testing.T) (all []measure) {
			all, by = student{own: 0, typed: 4}.byValue(t, "Value typed with four figures, those before exact")
			return all
		},
		func(t *testing.T) []measure {
			all, _ := student{own: 3, typed: 4}.byValue(t, "Value typed with four figures, those before rounded to three")
			return all
		},
		func(t *testing.T) []measure {
			all, _ := student{own: 3, typed: 3}.byValue(t, "Value typed with three figures, those before rounded to three")
			return all
		},
		func(t *testing.T) []measure { return one(slipsByTerm(t)) },
		func(t *testing.T) []measure { return one(slipsBySum(t, false)) },
		func(t *testing.T) []measure { return one(slipsBySum(t, true)) },
		func(t *testing.T) []measure { return one(storiesOfWrongTerms(t)) },
		func(t *testing.T) []measure { return one(storiesOfWrongNumbers(t, 0, 5)) },
		func(t *testing.T) []measure { return one(storiesOfWrongNumbers(t, 3, 5)) },
		func(t *testing.T) []measure { return one(storiesOfWrongNumbers(t, 3, 3)) },
		storiesOfMistakenFrames,
		func(t *testing.T) []measure { return one(roundedEveryStep(t)) },
	}
	measured := make([][]measure, len(parts))
	t.Run("parts", func(t *testing.T) {
		for i, part := range parts {
			t.Run(strconv.Itoa(i), func(t *testing.T) {
				t.Parallel()
				measured[i] = part(t)
			})
		}
	})
	all := slices.Concat(measured...)
	for _, m := range all {
		m.check(t)
	}
	if !testing.Short() {
		checkFloors(t, by)
		documentSlips(t, all, by)
	}
}

// roundedEveryStep measures how often a student is right who makes no slip and rounds every result to three figures,
// going on with these: forces, and N, V and M from them.
func roundedEveryStep(t *testing.T) measure {
	m := measure{what: "No slip, every step rounded to three figures: right", least: 99.9}
	eachQuestion(t, 3, func(l *sheet, q question) {
		held, line := l.caseOf(q), l.ownValue(q).Figures(3)
		if held.OnlyZero() {
			line = "0" // nothing acts on one side of the section, and that side shows it
		}
		m.of++
		if held.Verdict(l.read(t, q, line)).Right() {
			m.count++
		} else {
			t.Logf("%s, %s: %s for %s", l.name, q.Name, line, q.truth.Figures(6))
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
	eachSlippery(t, own, func(l *sheet, q question) {
		held := l.caseOf(q)
		for range 20 {
			v := l.read(t, q, randomNumber(random, figures))
			m.of++
			if len(held.Diagnosis(v).Matches) > 0 || len(held.pairs(v)) > 0 {
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
