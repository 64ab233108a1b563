package exact

import "math/big"

// span is the rational interval lo < x ≤ hi, or the one point lo = hi. The
// end lo may be the root of the span before.
type span struct{ lo, hi Num }

func (s span) holds(x Num) bool {
	return x.Equal(s.hi) || x.Cmp(s.lo) > 0 && x.Cmp(s.hi) < 0
}

func (s span) middle() Num { return s.lo.Add(s.hi).scale(half) }

// sturm is Sturm's chain of a squarefree p: p, p', and negated remainders, the
// last of them a number other than 0.
func (p Poly) sturm() []Poly {
	chain := []Poly{p, p.Derivative()}
	for n := 2; chain[n-1].Degree() > 0; n++ {
		_, r := chain[n-2].quoRem(chain[n-1])
		chain = append(chain, r.Scale(Int(-1)))
	}
	return chain
}

// signChanges counts the changes of sign along a chain at x, zeros left out.
// By Sturm's theorem the number of roots in lo < x ≤ hi is what this is at lo
// less what it is at hi.
func signChanges(chain []Poly, x Num) int {
	changes, last := 0, 0
	for _, p := range chain {
		sign := p.At(x).Sign()
		if sign*last < 0 {
			changes++
		}
		if sign != 0 {
			last = sign
		}
	}
	return changes
}

// isolate is disjoint spans in increasing order, each about one root of a
// squarefree p, that cover all roots.
func (p Poly) isolate() []span {
	chain := p.sturm()
	var spans []span
	var split func(s span, atLo, atHi int)
	split = func(s span, atLo, atHi int) {
		switch atLo - atHi {
		case 0:
		case 1:
			spans = append(spans, s)
		default:
			m := s.middle()
			atM := signChanges(chain, m)
			split(span{s.lo, m}, atLo, atM)
			split(span{m, s.hi}, atM, atHi)
		}
	}
	b := p.bound()
	split(span{b.Neg(), b}, signChanges(chain, b.Neg()), signChanges(chain, b))
	return spans
}

// bound is a power of two above the size of every root of p ≠ 0: Cauchy's
// bound, one more than the largest coefficient over the highest, rounded up.
func (p Poly) bound() Num {
	var largest Num
	for _, c := range p {
		largest = Max(largest, c.Abs())
	}
	// Three digits of each tell the ratio to within a hundredth.
	ratio, _ := largest.Rounded(3).Quo(p[p.Degree()].Abs().Rounded(3))
	bits := uint(ratio.Floor().BitLen()) + 2
	return fraction(wholeRatio(new(big.Int).Lsh(one, bits)))
}

// narrow halves the span about a root of p until it is no wider than width.
func (p Poly) narrow(s span, width Num) span {
	above := p.At(s.hi).Sign()
	if above == 0 {
		return span{s.hi, s.hi}
	}
	for s.hi.Sub(s.lo).Cmp(width) > 0 {
		m := s.middle()
		switch p.At(m).Sign() {
		case 0:
			return span{m, m}
		case above:
			s.hi = m
		default:
			s.lo = m
		}
	}
	return s
}

// isolatedRoots is the roots in lo ≤ x ≤ hi of a squarefree p that have
// no closed form, unless the root is lo or hi itself.
func (p Poly) isolatedRoots(lo, hi Num) []Root {
	if p.Degree() == 0 {
		return nil
	}
	var roots []Root
	for _, s := range p.isolate() {
		if x, ok := p.within(s, lo, hi); ok {
			roots = append(roots, Root{x, !x.Inexact()})
		}
	}
	return roots
}

// within is the root of p in s, if it is in lo ≤ x ≤ hi.
func (p Poly) within(s span, lo, hi Num) (Num, bool) {
	low, high := p.side(s, lo), p.side(s, hi)
	switch {
	case low == 0:
		return lo, true
	case high == 0:
		return hi, true
	case low > 0 || high < 0:
		return Num{}, false
	}
	x := p.refine(s)
	if !p.At(x).IsZero() {
		x = x.MarkInexact()
	}
	return x, true
}

// side is −1, 0 or +1 as x is below, at or above the root of p in s.
func (p Poly) side(s span, x Num) int {
	switch sign := p.At(x).Sign(); {
	case x.Cmp(s.lo) <= 0:
		return -1
	case x.Cmp(s.hi) > 0:
		return 1
	case sign == 0:
		return 0
	case sign == p.At(s.hi).Sign():
		return 1
	}
	return -1
}

// refine is the root other than 0 in s to 34 significant digits: the digits of
// both ends once they agree. When a root lies so near to half way between two
// such numbers that the ends still differ at twice the digits, either will do.
func (p Poly) refine(s span) Num {
	for {
		s = p.narrow(s, s.hi.Sub(s.lo).scale(wordRatio(1, 1<<16)))
		if s.lo.Sign() != s.hi.Sign() || s.lo.IsZero() {
			continue
		}
		x := s.hi.Rounded(inexactDigits)
		narrowest := s.lo.Abs().scale(pow10(-2 * inexactDigits))
		if x.Equal(s.lo.Rounded(inexactDigits)) || s.hi.Sub(s.lo).Cmp(narrowest) < 0 {
			return x
		}
	}
}
