package exact

import (
	"math/big"
	"slices"
)

// conjugate is an irrational a with the sign of one independent root changed
// throughout, so that a·conjugate is free of that root.
func (a Num) conjugate() Num {
	b := a.independentRadicand()
	roots := slices.Clone(a.roots())
	for i, t := range roots {
		if oddPower(b, t.n) {
			roots[i] = t.scale(rational{num: -1})
		}
	}
	return number(a.r(), roots, a.Inexact())
}

// independentRadicand is a non-square from a coprime base of the radicands of
// a. Each radicand is a product of powers of the base, and the roots of
// coprime non-squares are independent: the sign of one can change alone.
func (a Num) independentRadicand() *big.Int {
	radicands := make([]*big.Int, len(a.roots()))
	for i, t := range a.roots() {
		radicands[i] = t.n
	}
	base := coprimeBase(radicands)
	i := slices.IndexFunc(base, func(b *big.Int) bool {
		_, square := squareRoot(b)
		return !square
	})
	return base[i] // no radicand is a square, so not all of the base are
}

// coprimeBase is pairwise coprime numbers above 1 of which each of ns is a
// product of powers.
func coprimeBase(ns []*big.Int) []*big.Int {
	var base []*big.Int
	for work := slices.Clone(ns); len(work) > 0; {
		n := work[0]
		work = work[1:]
		g := new(big.Int)
		i := slices.IndexFunc(base, func(b *big.Int) bool { return g.GCD(nil, nil, n, b).Cmp(one) != 0 })
		switch {
		case i >= 0: // split both by what they share, and try the pieces
			work = append(work, g, new(big.Int).Quo(base[i], g), new(big.Int).Quo(n, g))
			base = slices.Delete(base, i, i+1)
		case n.Cmp(one) != 0:
			base = append(base, n)
		}
	}
	return base
}

// oddPower tells whether n holds the factor b > 1 an odd number of times.
func oddPower(b, n *big.Int) bool {
	odd := false
	q, r := new(big.Int).QuoRem(n, b, new(big.Int))
	for r.Sign() == 0 {
		odd = !odd
		q.QuoRem(q, b, r)
	}
	return odd
}
