package exact

import (
	"math/big"
	"slices"
)

// Root is where a polynomial is zero. X is the root itself when Exact is set,
// else a rational of 34 significant digits marked inexact.
type Root struct {
	X     Num
	Exact bool
}

// Roots is the real roots of p in lo ≤ x ≤ hi in increasing order, each once;
// nil for the zero polynomial. Exact are: zero, lo and hi; the rational roots
// of rational coefficients, up to a common factor of any kind; and what is
// then left, of the first degree or of the second with a rational
// discriminant. Other roots are isolated by exact sign tests, and are exact
// when they end within 34 digits.
func (p Poly) Roots(lo, hi Num) []Root {
	if p.Degree() == 0 || lo.Cmp(hi) > 0 {
		return nil
	}
	known, rest := p.Trim().exactRoots()
	var roots []Root
	for _, x := range known {
		if x.Cmp(lo) >= 0 && x.Cmp(hi) <= 0 {
			roots = append(roots, Root{x, !x.Inexact()})
		}
	}
	roots = append(roots, rest.isolatedRoots(lo, hi)...)
	slices.SortFunc(roots, func(a, b Root) int { return a.X.Cmp(b.X) })
	return slices.CompactFunc(roots, func(a, b Root) bool { return a.X.Equal(b.X) })
}

// exactRoots takes from p the real roots that can be written exactly, each
// once. The rest is squarefree and has the others.
func (p Poly) exactRoots() (roots []Num, rest Poly) {
	if p[0].IsZero() {
		roots = append(roots, p[0])
	}
	for p[0].IsZero() {
		p = p[1:]
	}
	if p.Degree() > 2 {
		p = p.squarefree().plain()
		for _, x := range p.rationalRoots() {
			roots = append(roots, x)
			p, _ = p.quoRem(Poly{x.Neg(), Int(1)})
		}
	}
	if closed, ok := p.closedRoots(); ok {
		return append(roots, closed...), Poly{Int(1)}
	}
	return roots, p
}

// plain is p without a common factor that is no fraction: monic, if that makes
// all coefficients rational.
func (p Poly) plain() Poly {
	if m := p.monic(); m.isRational() {
		return m
	}
	return p
}

// squarefree is a polynomial with each root of p once: p over its greatest
// common divisor with its derivative.
func (p Poly) squarefree() Poly {
	a, b := p, p.Derivative()
	for b.Degree() > 0 {
		_, r := a.quoRem(b)
		a, b = b, r
	}
	if !b.isZero() {
		return p
	}
	q, _ := p.quoRem(a)
	return q
}

// closedRoots is the real roots of a p of degree 0 or 1, or of degree 2 with a
// rational discriminant once it is monic; ok is false for any other.
func (p Poly) closedRoots() (roots []Num, ok bool) {
	switch p.Degree() {
	case 0:
		return nil, true
	case 1:
		return []Num{p.monic()[0].Neg()}, true
	case 2:
		p = p.monic()
		middle := p[1].scale(half).Neg()
		square := middle.Square().Sub(p[0])
		if square.Sign() < 0 {
			return nil, true
		}
		if r, err := square.Sqrt(); err == nil {
			return []Num{middle.Sub(r), middle.Add(r)}, true
		}
	}
	return nil, false
}

// rationalRoots is the rational roots of a squarefree p, if it is monic with
// rational coefficients. With L their common denominator, L·x is whole for
// each such root x, so a span about a root narrower than 1/L has one
// candidate.
func (p Poly) rationalRoots() []Num {
	if !p.isRational() {
		return nil
	}
	common := wholeRatio(p.commonDenominator())
	width := common.inv().mul(half)
	var roots []Num
	for _, s := range p.isolate() {
		s = p.narrow(s, fraction(width))
		whole := s.hi.scale(common).Floor()
		x := fraction(wholeRatio(whole).mul(common.inv()))
		if s.holds(x) && p.At(x).IsZero() {
			roots = append(roots, x.markedBy(Sum(p...)))
		}
	}
	return roots
}

// commonDenominator is the least one of rational coefficients.
func (p Poly) commonDenominator() *big.Int {
	least := big.NewInt(1)
	for _, c := range p {
		d := c.r().rat().Denom()
		g := new(big.Int).GCD(nil, nil, least, d)
		least.Mul(least, g.Quo(d, g))
	}
	return least
}
