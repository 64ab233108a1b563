package exact

import (
	"math/big"
	"slices"
)

// Root is where a polynomial is zero. X is the root itself when Exact is set,
// else a rational within 34 significant digits of it, marked inexact.
type Root struct {
	X     Num
	Exact bool
}

// Roots is the real roots of p in lo ≤ x ≤ hi in increasing order, each once;
// nil for the zero polynomial. Rational roots, and what is left of second
// degree with a rational discriminant, are exact; other roots are isolated by
// exact sign tests.
func (p Poly) Roots(lo, hi Num) []Root {
	if p.isZero() || p.Degree() == 0 || lo.Cmp(hi) > 0 {
		return nil
	}
	p = p.squarefree()
	var roots []Root
	if p[0].IsZero() {
		roots, p = append(roots, Root{Num{}, true}), p[1:]
	}
	if p.rational() {
		for _, x := range p.rationalRoots() {
			roots = append(roots, Root{x, true})
			p, _ = p.quoRem(Poly{x.Neg(), Int(1)})
		}
	}
	closed, ok := p.closedRoots()
	for _, x := range closed {
		roots = append(roots, Root{x, !x.inexact})
	}
	roots = slices.DeleteFunc(roots, func(r Root) bool { return r.X.Cmp(lo) < 0 || r.X.Cmp(hi) > 0 })
	if !ok {
		roots = append(roots, p.isolatedRoots(lo, hi)...)
	}
	slices.SortFunc(roots, func(a, b Root) int { return a.X.Cmp(b.X) })
	return slices.CompactFunc(roots, func(a, b Root) bool { return a.X.Equal(b.X) })
}

// squarefree is the monic polynomial with each root of p ≠ 0 once: p over its
// greatest common divisor with its derivative.
func (p Poly) squarefree() Poly {
	p = p.monic()
	a, b := p, p.Derivative()
	for !b.isZero() {
		_, r := a.quoRem(b)
		a, b = b, r
	}
	q, _ := p.quoRem(a)
	return q.monic()
}

func (p Poly) rational() bool {
	return !slices.ContainsFunc(p, func(c Num) bool { return !c.IsRational() })
}

// closedRoots is the roots of a monic p of degree 0 and 1, and of degree 2
// with a rational discriminant; ok is false for any other.
func (p Poly) closedRoots() (roots []Num, ok bool) {
	half := Num{num: 1, over: 1}
	switch len(p) {
	case 1:
		return nil, true
	case 2:
		return []Num{p[0].Neg()}, true
	case 3:
		mid := p[1].Mul(half).Neg()
		disc := mid.Square().Sub(p[0])
		if disc.Sign() < 0 {
			return nil, true
		}
		if r, err := disc.Sqrt(); err == nil {
			return []Num{mid.Sub(r), mid.Add(r)}, true
		}
	}
	return nil, false
}

// rationalRoots is the rational roots of a monic squarefree p with rational
// factors. With L a common denominator, L·x is whole for each such root x, so
// an interval about a root shorter than 1/L holds one candidate.
func (p Poly) rationalRoots() []Num {
	common := big.NewInt(1)
	for _, c := range p {
		d := c.rat().Denom()
		common.Mul(common, new(big.Int).Div(d, new(big.Int).GCD(nil, nil, d, common)))
	}
	l := ratNum(new(big.Rat).SetInt(common))
	width := ratNum(new(big.Rat).SetFrac(one, new(big.Int).Lsh(common, 1)))
	var roots []Num
	for _, s := range p.isolate() {
		s = p.narrow(s, width)
		x, _ := ratNum(new(big.Rat).SetInt(s.hi.Mul(l).Floor())).Quo(l)
		if x.Cmp(s.lo) >= 0 && p.At(x).IsZero() {
			roots = append(roots, x)
		}
	}
	return roots
}
