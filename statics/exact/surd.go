package exact

import (
	"math/big"
	"slices"
)

// maxTerms bounds the terms of one number, and so the work of one operation.
const maxTerms = 256

var one = big.NewInt(1) // read only

// term is q·√n with q ≠ 0 and n ≥ 1; a rational has n = 1. It never changes.
type term struct {
	q     *big.Rat
	n     *big.Int
	loose bool // n may hide the square of a prime above the trial divisors
}

func (t term) neg() term {
	t.q = new(big.Rat).Neg(t.q)
	return t
}

// mul is s·t: √m·√n = g·√(mn/g²) with g the greatest common divisor of m, n.
func (s term) mul(t term) term {
	q := new(big.Rat).Mul(s.q, t.q)
	if s.n.Cmp(one) == 0 {
		return term{q, t.n, t.loose}
	}
	if t.n.Cmp(one) == 0 {
		return term{q, s.n, s.loose}
	}
	g := new(big.Int).GCD(nil, nil, s.n, t.n)
	q.Mul(q, new(big.Rat).SetInt(g))
	n := new(big.Int).Div(s.n, g)
	n.Mul(n, g.Div(t.n, g))
	return term{q, n, s.loose || t.loose}
}

// add is s+t and true, if both are of one square class.
func (s term) add(t term) (term, bool) {
	if s.n.Cmp(t.n) != 0 {
		if !s.loose && !t.loose {
			return term{}, false
		}
		var ok bool
		if s, t, ok = alike(s, t); !ok {
			return term{}, false
		}
	}
	s.q = new(big.Rat).Add(s.q, t.q)
	return s, true
}

// alike brings s and t to the lesser of their radicands, if both are of one
// square class: √m = √(mn)/n·√n.
func alike(s, t term) (term, term, bool) {
	if s.n.Cmp(t.n) > 0 {
		s, t = t, s
	}
	p := new(big.Int).Mul(s.n, t.n)
	r := new(big.Int).Sqrt(p)
	if new(big.Int).Mul(r, r).Cmp(p) != 0 {
		return s, t, false
	}
	q := new(big.Rat).SetFrac(r, s.n)
	return s, term{q.Mul(q, t.q), s.n, s.loose}, true
}

// spread is a as terms in a slice of the caller's own.
func (a Num) spread() []term {
	if !a.isSmall() {
		return slices.Clone(a.terms)
	}
	if a.num == 0 {
		return nil
	}
	return []term{{q: a.rat(), n: one}}
}

// gather is the sum of the terms as a number.
func gather(ts []term) Num {
	var sum []term
next:
	for _, t := range ts {
		for i, s := range sum {
			if both, ok := s.add(t); ok {
				sum[i] = both
				continue next
			}
		}
		sum = append(sum, t)
	}
	sum = slices.DeleteFunc(sum, func(t term) bool { return t.q.Sign() == 0 })
	slices.SortFunc(sum, func(s, t term) int { return s.n.Cmp(t.n) })
	switch {
	case len(sum) == 0:
		return Num{}
	case len(sum) == 1 && sum[0].n.Cmp(one) == 0:
		return ratNum(sum[0].q)
	case len(sum) > maxTerms:
		return Num{terms: sum}.approx(34).MarkInexact()
	}
	return Num{terms: sum}
}

// conjugate is a with the sign of one independent root changed, so that
// a·conjugate is free of that root. a is irrational.
func (a Num) conjugate() Num {
	b := a.independentRoot()
	c := Num{inexact: a.inexact}
	for _, t := range a.terms {
		if oddPower(b, t.n) {
			t = t.neg()
		}
		c.terms = append(c.terms, t)
	}
	return c
}

// independentRoot is a radicand from a coprime base of the radicands of a
// that is no square. Each radicand is a product of powers of the base, and
// roots of coprime non-squares are independent: the sign of one can be
// changed throughout.
func (a Num) independentRoot() *big.Int {
	var radicands []*big.Int
	for _, t := range a.terms {
		radicands = append(radicands, t.n)
	}
	base := coprimeBase(radicands)
	i := slices.IndexFunc(base, func(b *big.Int) bool {
		r := new(big.Int).Sqrt(b)
		return r.Mul(r, r).Cmp(b) != 0
	})
	return base[i]
}

// coprimeBase is pairwise coprime numbers above 1 of which each of ns is a
// product of powers.
func coprimeBase(ns []*big.Int) []*big.Int {
	var base []*big.Int
next:
	for work := slices.Clone(ns); len(work) > 0; {
		n := work[0]
		work = work[1:]
		if n.Cmp(one) == 0 {
			continue
		}
		for i, b := range base {
			g := new(big.Int).GCD(nil, nil, n, b)
			if g.Cmp(one) != 0 {
				base = slices.Delete(base, i, i+1)
				work = append(work, g, new(big.Int).Div(b, g), new(big.Int).Div(n, g))
				continue next
			}
		}
		base = append(base, n)
	}
	return base
}

// oddPower tells whether n holds b an odd number of times.
func oddPower(b, n *big.Int) bool {
	odd := false
	q, r := new(big.Int).QuoRem(n, b, new(big.Int))
	for r.Sign() == 0 {
		odd = !odd
		q, r = new(big.Int).QuoRem(q, b, r)
	}
	return odd
}
