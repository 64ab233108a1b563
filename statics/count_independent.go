package statics

import "slices"

// Independent reports whether the sums are independent in the forces that are not known: none of them follows from the
// others.
func (a *Assembly) Independent(sums []Sum, known func(force int) bool) bool {
	var b basis
	for _, s := range sums {
		var r row
		for _, i := range s.Unknowns(known) {
			if k := s.Factor(i); !k.IsZero() {
				r.entries = append(r.entries, entry{i, k})
			}
		}
		slices.SortFunc(r.entries, func(x, y entry) int { return x.col - y.col })
		if !b.add(r) {
			return false
		}
	}
	return true
}
