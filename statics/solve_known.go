package statics

import "unpin/statics/exact"

// KnownBefore tells the values of the forces that the steps of the plan before step give, and whether there is one. A
// relation that was kept gives none.
func (s *Solution) KnownBefore(step int) func(force int) (exact.Num, bool) {
	given := make([]bool, len(s.Forces))
	for _, earlier := range s.Plan[:step] {
		for _, f := range earlier.Gives {
			given[f] = true
		}
	}
	return func(force int) (exact.Num, bool) { return s.Values[force], given[force] }
}
