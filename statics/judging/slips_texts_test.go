package judging

import (
	"math/rand/v2"
	"slices"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// valueTexts gathers what a lesson says to wrong values: those of all slips, one that fits none, and the right
// size in the other sense.
func valueTexts(t *testing.T, test func(l *sheet, q question, text string)) {
	eachQuestion(t, 0, func(l *sheet, q question) {
		for _, stands := range []bool{false, q.step != statics.None} {
			textsOf(t, l, q, l.caseWith(q, stands), test)
		}
	})
}

// textsOf gathers what is said to wrong values of one case.
func textsOf(t *testing.T, l *sheet, q question, held *Case, test func(l *sheet, q question, text string)) {
	say := func(line string) {
		v := l.read(t, q, line)
		verdict := held.Verdict(v)
		if text := held.Find(verdict, v).Says; !verdict.Right() && text != "" {
			test(l, q, text)
		}
	}
	for _, c := range append(held.lists()[0], slices.Concat(held.excluded()...)...) {
		if c.Value.Abs().Cmp(powerOfTen(-9)) > 0 {
			say(c.Value.Figures(4))
		}
	}
	say("123.457")
	if !q.truth.IsZero() {
		say(q.truth.Neg().Decimal(30))
	}
}

// equationTexts gathers what a lesson says to whole sums that slips lead to.
func equationTexts(t *testing.T, test func(l *sheet, q question, text string)) {
	random := rand.New(rand.NewPCG(6, 7))
	none := func(int) (exact.Num, bool) { return exact.Num{}, false }
	for _, name := range librarytest.Names() {
		l := newSheet(t, libraryProblem(t, name))
		for _, step := range l.Solution.Plan {
			for _, s := range step.Sums {
				for _, w := range slip.OfSum(l.Solution.Assembly, s, nil, l.Style.Units.Customary()) {
					if random.IntN(20) > 0 {
						continue
					}
					if typed, ok := typedSum(t, l, w.Sum, none); ok {
						if says := l.Sum(s, typed, none).Says; says != "" {
							test(l, question{Asked: Asked{Name: "equation"}}, says)
						}
					}
				}
			}
		}
	}
}

// What is said to values and sums that come from slips keeps to the wording of all feedback.
func TestWordingOfSlips(t *testing.T) {
	t.Parallel()
	said := map[string]bool{}
	check := func(l *sheet, q question, text string) {
		if !said[text] {
			checkWording(t, l, l.name+", "+q.Name, text)
		}
		said[text] = true
	}
	valueTexts(t, check)
	equationTexts(t, check)
	t.Logf("%d sentences", len(said))
	if len(said) < 100 {
		t.Errorf("only %d sentences", len(said))
	}
}
