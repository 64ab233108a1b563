package slip

import (
	"slices"
	"testing"

	"unpin/statics/exact"
)

// Two slips at once, on the beam: 10·RB − 20·3 − 12·6.5 + 8 = 0 gives 13.
func TestPairs(t *testing.T) {
	t.Parallel()
	q := beamQuestion(t)
	for _, r := range []struct {
		value, within string
		figures       int
		want          [2]string // none where no pair is told
	}{
		{"7.8", "0", 4, [2]string{"load-left-off", "couple-left-out"}}, // without the 20 and the 8: 78/10
		{"7.8", "0", 3, [2]string{}},                                   // of three figures, too many pairs would agree
		{"7.8004", "0.0005", 5, [2]string{"load-left-off", "couple-left-out"}},
		{"7.8006", "0.0005", 5, [2]string{}},
		{"-0.8", "0", 4, [2]string{"load-left-off", "load-left-off"}}, // −8/10: both loads, of two givers
		{"13", "0", 4, [2]string{}},                                   // the right value
		{"-5", "0", 4, [2]string{}},                                   // the 20 left out and turned, two slips of one giver
	} {
		pairs := Pairs([]Typed{{Value: exact.MustParse(r.value), Within: exact.MustParse(r.within), Figures: r.figures}}, q.Value(), q.Candidates())
		wanted := func(p Pair) bool {
			ids := [2]string{p[0].Slip.ID, p[1].Slip.ID}
			return ids == r.want || ids == [2]string{r.want[1], r.want[0]}
		}
		if r.want[0] == "" && len(pairs) > 0 || r.want[0] != "" && !slices.ContainsFunc(pairs, wanted) {
			t.Errorf("%s of %d figures: %d pairs, wanted %v", r.value, r.figures, len(pairs), r.want)
		}
		for _, p := range pairs {
			if p[0].Giver == p[1].Giver || p[0].Giver == nobody || p[1].Giver == nobody {
				t.Errorf("%s: a pair of %s and %s about one thing", r.value, p[0].Slip.ID, p[1].Slip.ID)
			}
		}
	}
}

// Only slips of the catalogue are tried in pairs, and only such as lie in one term.
func TestPairsAreOfTheCatalogue(t *testing.T) {
	t.Parallel()
	for _, id := range common {
		if !slices.ContainsFunc(catalogue, func(s *Slip) bool { return s.ID == id && s.About != Answer }) {
			t.Errorf("%s is no slip in a term", id)
		}
	}
}
