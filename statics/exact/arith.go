package exact

import (
	"fmt"
	"math/big"
)

// Add is a+b.
func (a Num) Add(b Num) Num {
	if a.isExactZero() {
		return b
	}
	if b.isExactZero() {
		return a
	}
	if a.isSmall() && b.isSmall() {
		if s, ok := addSmall(a, b); ok {
			return s.marked(a.inexact || b.inexact)
		}
	}
	return gather(append(a.spread(), b.spread()...)).marks(a, b)
}

// Sub is a−b.
func (a Num) Sub(b Num) Num { return a.Add(b.Neg()) }

// Neg is −a.
func (a Num) Neg() Num {
	a.num = -a.num
	terms := make([]term, 0, len(a.terms))
	for _, t := range a.terms {
		terms = append(terms, t.neg())
	}
	a.terms = terms
	return a
}

// Abs is |a|.
func (a Num) Abs() Num {
	if a.Sign() < 0 {
		return a.Neg()
	}
	return a
}

// Mul is a·b.
func (a Num) Mul(b Num) Num {
	if a.isExactZero() || b.isExactZero() {
		return Num{}
	}
	if a.isSmall() && b.isSmall() {
		if p, ok := mulSmall(a, b); ok {
			return p.marked(a.inexact || b.inexact)
		}
	}
	products := make([]term, 0, len(a.terms)*len(b.terms)+1)
	for _, s := range a.spread() {
		for _, t := range b.spread() {
			products = append(products, s.mul(t))
		}
	}
	return gather(products).marks(a, b)
}

// Square is a².
func (a Num) Square() Num { return a.Mul(a) }

// Quo is a/b, or ErrDivideByZero.
func (a Num) Quo(b Num) (Num, error) {
	if b.IsZero() {
		return Num{}, fmt.Errorf("%v/0: %w", a, ErrDivideByZero)
	}
	if a.isExactZero() {
		return Num{}, nil
	}
	// Multiply above and below by conjugates until the denominator is rational.
	for !b.IsRational() {
		c := b.conjugate()
		a, b = a.Mul(c), b.Mul(c)
	}
	if b.isSmall() {
		return a.Mul(invertSmall(b).marked(b.inexact)), nil
	}
	return a.Mul(ratNum(new(big.Rat).Inv(b.rat())).marked(b.inexact)), nil
}

// Sum is the sum of all xs; of none it is 0.
func Sum(xs ...Num) Num {
	var s Num
	for _, x := range xs {
		s = s.Add(x)
	}
	return s
}

// Min is the lesser of a and b.
func Min(a, b Num) Num {
	if b.Cmp(a) < 0 {
		return b
	}
	return a
}

// Max is the greater of a and b.
func Max(a, b Num) Num {
	if b.Cmp(a) > 0 {
		return b
	}
	return a
}

// marks is x with the inexact marks of a and b added.
func (x Num) marks(a, b Num) Num {
	return x.marked(x.inexact || a.inexact || b.inexact)
}
