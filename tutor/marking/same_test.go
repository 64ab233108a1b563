package marking

import (
	"math/rand/v2"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// verdictsOf are what a lesson's verdicts may be in marks.
var verdictsOf = map[judging.Verdict][]string{
	judging.Exact: {Right}, judging.ToFigures: {Right}, judging.Rounded: {Rounded}, judging.OtherSense: {Sense}, judging.Close: {Close}, judging.Wrong: {Wrong, Slip},
}

// A value alone has the verdict in marks that it has in a lesson, where all earlier values are true: values near the true one,
// far from it, rounded, and in the opposite sense.
func TestSameVerdictAsInLesson(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(16, 2))
	tried, otherSum := 0, 0
	for _, name := range problems.Names() {
		m := markerOf(t, name)
		for i, item := range m.Items {
			for range 3 {
				v := altered(r, item.Value)
				p := &Paper{Problem: name, Attempt: 1, Entries: []Entry{{Line: 1, Quantity: item.Name, Value: v}}}
				if item.Force == statics.None && !item.Place && item.Quantity == statics.ShearForce && m.judge.Style.Shear != 0 {
					continue // the sign is another
				}
				got := m.Mark(p, DefaultScheme(), ten).Answers[i]
				w := &work{reading: m.read(p), scheme: DefaultScheme(), weights: m.weights(DefaultScheme()), blames: map[int]judged{}, judgings: map[judgedKey]judged{}, solved: map[int]int{}}
				w.settleValues()
				w.x = values{of: m.truths(), answered: make([]bool, len(m.Items)), whole: w.x.whole} // no earlier values
				want := w.caseOf(i).Verdict(w.typedOf(i))
				// Another sum than the plan's may explain by rounding what to a lesson is close or wrong.
				if tried++; (want == judging.Close || want == judging.Wrong) && got.Verdict == Rounded {
					otherSum++
				} else if !contains(verdictsOf[want], got.Verdict) {
					t.Errorf("%s: %s = %s (%s): a lesson says %s, marks %s", name, item.Name, v, item.Value.Decimal(6), want.Code(), got.Verdict)
				}
			}
		}
	}
	if tried < 500 || 100*otherSum > 3*tried {
		t.Errorf("of %d values %d are rounded by another sum than a lesson's", tried, otherSum)
	}
}

// altered is a value near a true one, or far from it.
func altered(r *rand.Rand, truth exact.Num) string {
	switch r.IntN(6) {
	case 0:
		return truth.Rounded(3).Decimal(12)
	case 1:
		return truth.Neg().Rounded(3).Decimal(12)
	case 2:
		return truth.Mul(exact.MustParse("1.004")).Rounded(3).Decimal(12)
	case 3:
		return truth.Mul(exact.MustParse("0.985")).Rounded(4).Decimal(12)
	case 4:
		return truth.Mul(half).Rounded(3).Decimal(12)
	}
	return truth.Add(exact.Int(int64(1 + r.IntN(9)))).Rounded(3).Decimal(12)
}
