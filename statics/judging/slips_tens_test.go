package judging

import (
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// tenfold lists the values at a section to which a decimal point misplaced in one term of the kept piece leads.
func (l *sheet) tenfold(q question, side statics.KeptSide) []exact.Num {
	cut := l.Cut(q.member, q.station, q.quantity, l.Own)
	cut.Side = side
	a, sum := cut.Sum()
	own := len(a.Forces) - 1
	values := append(append([]exact.Num{}, cut.Values...), exact.Num{})
	var rest exact.Num
	for _, t := range sum.Terms() {
		rest = rest.Add(t.Amount(values))
	}
	k := sum.Factor(own)
	var all []exact.Num
	for _, t := range sum.Terms() {
		if t.Force == own || t.Amount(values).IsZero() {
			continue
		}
		v, _ := rest.Add(t.Amount(values).Mul(exact.Int(9))).Neg().Quo(k)
		all = append(all, v)
	}
	return all
}

// A decimal point misplaced in one term at a section is no slip of the catalogue: mostly nothing is said, or it is asked about,
// and seldom another slip told. In step-ladders, M(DE, 0): 90*3 + 150*2.25 = 607.5, with 150 for the 15 of Cy, which is the
// value of Dx as well.
func TestTenfoldTerms(t *testing.T) {
	typed, told := 0, 0
	eachSlippery(t, 0, func(l *sheet, q question) {
		if q.step != statics.None {
			return
		}
		held := l.caseOf(q)
		for _, x := range slices.Concat(l.tenfold(q, statics.FromStart), l.tenfold(q, statics.ToEnd)) {
			v := l.read(t, q, x.Figures(5))
			if held.Verdict(v) != Wrong {
				continue
			}
			typed++
			s := held.Diagnosis(v).Named()
			if s != nil && s.Needs != slip.Reporting && held.Find(Wrong, v).Says == lowerFirst(s.Says) {
				told++
				t.Logf("%s, %s: %s for %s: %s", l.name, q.Name, x.Figures(5), q.truth.Figures(5), s.ID)
			}
		}
	})
	if t.Logf("%d of %d", told, typed); told*100 > typed || typed == 0 {
		t.Errorf("another slip is told of %d of %d, want at most 1 %%", told, typed)
	}
}
