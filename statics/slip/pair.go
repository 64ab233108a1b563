package slip

import (
	"slices"

	"unpin/statics/exact"
)

// common names the slips that are tried in pairs: a term of a known force left out or turned round. More would lead to
// nearly every number.
var common = []string{
	"load-left-off", "pin-load-on-neither", "reaction-left-off", "pin-support-one-way", "pin-force-left-off", "couple-left-out",
	"pin-force-not-reversed", "minus-used-twice", "term-dropped", "moved-with-its-sign", "turn-of-term", "sense-of-term", "turn-of-couple",
}

// A Pair is two slips in terms of different givers.
type Pair [2]Candidate

// Pairs finds the pairs of common slips that a value of four figures or more agrees with, given the right value. What
// each of the two adds to the rest of the sum, both add.
func Pairs(readings []Typed, right exact.Num, candidates []Candidate) []Pair {
	var single []Candidate
	for _, c := range candidates {
		if c.Giver != nobody && slices.Contains(common, c.Slip.ID) && !c.Value.Equal(right) {
			single = append(single, c)
		}
	}
	var all []Pair
	for _, v := range readings {
		if v.Figures < 4 {
			continue
		}
		for i, a := range single {
			for _, b := range single[i+1:] {
				both := a.Value.Add(b.Value).Sub(right)
				if a.Giver != b.Giver && v.Value.Sub(both).Abs().Cmp(v.Within) <= 0 {
					all = append(all, Pair{a, b})
				}
			}
		}
		if len(all) > 0 {
			return all
		}
	}
	return nil
}
