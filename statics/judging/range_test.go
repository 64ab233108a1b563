package judging

import (
	"flag"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

var whole = flag.Bool("practice", false, "questions of all practice problems, not of the library alone")

// someQuestions gives the questions of the library to a test, or all there are to practise with.
func someQuestions(t testing.TB, test func(l *sheet, q question)) {
	if *whole {
		eachQuestion(t, 0, test)
		return
	}
	for _, name := range problems.Names() {
		l := newSheet(t, libraryProblem(t, name))
		for _, q := range l.questions {
			test(l, q)
		}
	}
}

// inFull is a value that is meant as it stands, as an expression is.
func inFull(v exact.Num) Typed { return Typed{Value: v, Written: v, Unit: one} }

// TestRange holds the range of right values to the verdicts on single ones: inside it, a value is right by a sum or within
// half a unit in the third figure; just outside, it is not right.
func TestRange(t *testing.T) {
	t.Parallel()
	all := 0
	someQuestions(t, func(l *sheet, q question) {
		c := l.caseOf(q)
		low, high := c.Range()
		if c.Truth.Cmp(low) < 0 || c.Truth.Cmp(high) > 0 {
			t.Fatalf("%s, %s: the truth %s is not from %s to %s", l.name, q.Name, c.Truth.Figures(5), low.Figures(5), high.Figures(5))
		}
		all++
		wide := high.Sub(low)
		for _, part := range []string{"0", "0.001", "0.1", "0.37", "0.5", "0.81", "0.999", "1"} {
			v := low.Add(wide.Mul(exact.MustParse(part)))
			if !c.Verdict(inFull(v)).Right() && v.Sub(c.Truth).Abs().Cmp(thirdFigure(c.Truth)) > 0 {
				t.Errorf("%s, %s: %s is in the range from %s to %s around %s, and not right", l.name, q.Name, v.Figures(6), low.Figures(6), high.Figures(6), c.Truth.Figures(6))
			}
		}
		bit := exact.Max(wide, tenth).Mul(exact.MustParse("0.000001"))
		for _, v := range []exact.Num{low.Sub(bit), high.Add(bit)} {
			if c.Verdict(inFull(v)).Right() {
				t.Errorf("%s, %s: %s is right and not in the range from %s to %s around %s", l.name, q.Name, v.Figures(8), low.Figures(8), high.Figures(8), c.Truth.Figures(8))
			}
		}
	})
	t.Logf("%d questions", all)
	if all < 500 {
		t.Errorf("only %d questions", all)
	}
}

// TestRangeTakesTheHonest has all who round honestly to three figures in the range.
func TestRangeTakesTheHonest(t *testing.T) {
	t.Parallel()
	someQuestions(t, func(l *sheet, q question) {
		if q.step != statics.None {
			return
		}
		low, high := l.caseOf(q).Range()
		for _, h := range honestWays {
			line := h.answer(t, l, q.member, q.station, q.quantity)
			if line == "" {
				line = "0"
			}
			if v := exact.MustParse(line); v.Cmp(low) < 0 || v.Cmp(high) > 0 {
				t.Errorf("%s, %s: the honest %s is not from %s to %s", l.name, q.Name, line, low.Figures(6), high.Figures(6))
			}
		}
	})
}

// TestRangeToHiddenSlips: in the range of a step's force no slip lies but so close to the truth that three figures do not
// tell it, or one in a product, which honest rounding may come near to.
func TestRangeToHiddenSlips(t *testing.T) {
	t.Parallel()
	someQuestions(t, func(l *sheet, q question) {
		c := l.caseOf(q)
		if q.step == statics.None {
			return
		}
		for _, s := range c.Hidden() {
			near := s.Needs == slip.Multiplying
			for _, v := range valuesOf(c, s.ID) {
				near = near || v.Sub(c.Truth).Abs().Cmp(thirdFigure(c.Truth)) <= 0
			}
			if !near {
				t.Errorf("%s, %s: %s lies in the range, and not near %s", l.name, q.Name, s.ID, c.Truth.Figures(5))
			}
		}
	})
}
