package exact

// span is the rational interval lo < x ≤ hi.
type span struct{ lo, hi Num }

func (s span) middle() Num { return s.lo.Add(s.hi).Mul(Num{num: 1, over: 1}) }

// sturm is Sturm's chain of a squarefree p: p, p', and negated remainders.
func (p Poly) sturm() []Poly {
	chain := []Poly{p, p.Derivative()}
	for {
		n := len(chain)
		_, r := chain[n-2].quoRem(chain[n-1])
		if r.isZero() {
			return chain
		}
		chain = append(chain, r.Scale(Int(-1)))
	}
}

// changes counts the changes of sign along the chain at x. By Sturm's theorem
// changes(lo) − changes(hi) is the number of roots in lo < x ≤ hi.
func changes(chain []Poly, x Num) int {
	n, last := 0, 0
	for _, p := range chain {
		s := p.At(x).Sign()
		if s != 0 && s == -last {
			n++
		}
		if s != 0 {
			last = s
		}
	}
	return n
}

// isolate is disjoint spans in increasing order, each about one root of a
// monic squarefree p, and all roots among them.
func (p Poly) isolate() []span {
	chain := p.sturm()
	bound := p.bound()
	var spans []span
	var split func(s span, above, below int)
	split = func(s span, left, right int) {
		switch left - right {
		case 0:
		case 1:
			spans = append(spans, s)
		default:
			m := s.middle()
			mid := changes(chain, m)
			split(span{s.lo, m}, left, mid)
			split(span{m, s.hi}, mid, right)
		}
	}
	s := span{bound.Neg(), bound}
	split(s, changes(chain, s.lo), changes(chain, s.hi))
	return spans
}

// bound is a whole number above every |root| of a monic p (Cauchy's bound).
func (p Poly) bound() Num {
	b := Int(0)
	for _, c := range p {
		b = Max(b, c.Abs())
	}
	return b.approx(3).Mul(Int(2)).Add(Int(2)).marked(false)
}

// narrow halves the span about a root of p until it is no wider than width.
func (p Poly) narrow(s span, width Num) span {
	high := p.At(s.hi).Sign()
	if high == 0 {
		return span{s.hi, s.hi}
	}
	for s.hi.Sub(s.lo).Cmp(width) > 0 {
		m := s.middle()
		switch sign := p.At(m).Sign(); sign {
		case 0:
			return span{m, m}
		case high:
			s.hi = m
		default:
			s.lo = m
		}
	}
	return s
}

// isolatedRoots is the roots of a monic squarefree p in lo ≤ x ≤ hi that have
// no closed form here. A root that is lo or hi itself is exact.
func (p Poly) isolatedRoots(lo, hi Num) []Root {
	var roots []Root
	for _, s := range p.isolate() {
		if r, ok := p.clip(s, lo, hi); ok {
			roots = append(roots, r)
		}
	}
	return roots
}

// clip is the root in s, if it is within lo ≤ x ≤ hi.
func (p Poly) clip(s span, lo, hi Num) (Root, bool) {
	for _, end := range []Num{lo, hi} {
		if end.Cmp(s.lo) > 0 && end.Cmp(s.hi) <= 0 && p.At(end).IsZero() {
			return Root{end, !end.inexact}, true
		}
	}
	x := p.refine(s)
	if x.Cmp(lo) < 0 || x.Cmp(hi) > 0 {
		return Root{}, false
	}
	return Root{x.MarkInexact(), false}, true
}

// refine is the root in s to 34 significant digits.
func (p Poly) refine(s span) Num {
	for {
		width := s.hi.Sub(s.lo)
		s = p.narrow(s, width.Mul(Num{num: 1, over: 1<<40 - 1}))
		if lo, hi := s.lo.approx(34), s.hi.approx(34); lo.Equal(hi) {
			return lo
		}
		if s.lo.Sign()*s.hi.Sign() > 0 && s.hi.Sub(s.lo).Cmp(s.hi.Abs().Mul(ratNum(pow10(-60)))) < 0 {
			return s.middle().approx(34)
		}
	}
}
