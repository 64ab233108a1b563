package exact

// Bracket is two rational numbers between which, lo < x ≤ hi, the root r of p lies, no further apart than so many decimal
// places: hi − lo ≤ 10^−places. They come from the signs that p takes there, so the bound is proven. Of a root that is
// exact, and where p has no such root, both are r.X. Places are held within ±1000.
func (p Poly) Bracket(r Root, places int) (lo, hi Num) {
	if r.Exact || p.Degree() == 0 {
		return r.X, r.X
	}
	_, rest := p.Trim().exactRoots()
	width := fraction(pow10(-clamp(places, -maxExponent)))
	for _, s := range rest.isolate() {
		if x := rest.refine(s); x.Equal(r.X) {
			s = rest.narrow(s, width)
			return s.lo, s.hi
		}
	}
	return r.X, r.X
}
