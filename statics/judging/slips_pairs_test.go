package judging

import (
	"testing"

	"unpin/statics/exact"
	"unpin/statics/slip"
)

// Two slips at once are asked about as a possibility, or nothing is said of them; more seldom they come to the value of
// a single one, which is the simpler story.
func TestPairsOfSlips(t *testing.T) {
	asked, silent, single, questions := 0, 0, 0, 0
	eachSlippery(t, 0, func(l *sheet, q question) {
		if questions++; questions%10 != 0 {
			return
		}
		for _, target := range l.caseOf(q).targets {
			candidates := target.Candidates()
			for _, both := range pairValues(q.truth, candidates) {
				v := l.read(t, q, both.Figures(5))
				switch pairs := slip.Pairs(v.Readings(), q.truth, candidates); {
				case len(slip.Diagnose(v.Readings(), candidates).Matches) > 0:
					single++
				case len(l.pairAsks(pairs)) == 1:
					asked++
				default:
					silent++
				}
			}
		}
	})
	t.Logf("%d asked about, %d passed over, %d come to a single slip", asked, silent, single)
	if all := asked + silent + single; asked*2 < all || single*4 > all {
		t.Errorf("%d asked about, %d passed over, %d come to a single slip: want half, and at most a quarter", asked, silent, single)
	}
}

// pairValues lists the wrong values to which two of the candidates lead together, those that are tried in pairs.
func pairValues(right exact.Num, candidates []slip.Candidate) []exact.Num {
	var all []exact.Num
	for i, c := range candidates {
		for _, d := range candidates[i+1:] {
			both := c.Value.Add(d.Value).Sub(right)
			alone := slip.Typed{Value: both, Figures: slip.AllFigures}
			nothing := both.Abs().Cmp(powerOfTen(-9)) < 0 || both.Sub(right).Abs().Cmp(powerOfTen(-9)) < 0
			if !nothing && len(slip.Pairs([]slip.Typed{alone}, right, []slip.Candidate{c, d})) > 0 {
				all = append(all, both)
			}
		}
	}
	return all
}
