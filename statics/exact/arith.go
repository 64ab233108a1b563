package exact

import "slices"

// Add is a+b.
func (a Num) Add(b Num) Num {
	sum := Num{r: a.r.add(b.r), inexact: a.inexact || b.inexact}
	switch {
	case b.IsRational():
		sum.roots = a.roots
	case a.IsRational():
		sum.roots = b.roots
	default:
		sum = sum.withRoots(slices.Concat(a.roots, b.roots))
	}
	return sum
}

// Sub is a−b.
func (a Num) Sub(b Num) Num { return a.Add(b.Neg()) }

// Neg is −a.
func (a Num) Neg() Num { return a.scale(rational{num: -1}) }

// Abs is |a|.
func (a Num) Abs() Num {
	if a.Sign() < 0 {
		return a.Neg()
	}
	return a
}

// Mul is a·b.
func (a Num) Mul(b Num) Num {
	switch {
	case a.isExactZero() || b.isExactZero():
		return Num{}
	case b.IsRational():
		return a.scale(b.r).markedBy(b)
	case a.IsRational():
		return b.scale(a.r).markedBy(a)
	}
	ts, us := a.terms(), b.terms()
	if len(ts)*len(us) > maxProducts {
		p := a.approx(maxTerminating).Mul(b.approx(maxTerminating))
		return p.approx(inexactDigits).MarkInexact()
	}
	products := make([]root, 0, len(ts)*len(us))
	for _, t := range ts {
		for _, u := range us {
			products = append(products, t.mul(u))
		}
	}
	return Num{inexact: a.inexact || b.inexact}.withRoots(products)
}

// Square is a².
func (a Num) Square() Num { return a.Mul(a) }

// scale is k·a with the mark of a.
func (a Num) scale(k rational) Num {
	p := Num{r: a.r.mul(k), inexact: a.inexact}
	if k.isZero() || a.IsRational() {
		return p
	}
	p.roots = make([]root, len(a.roots))
	for i, t := range a.roots {
		p.roots[i] = t.scale(k)
	}
	return p
}

// Quo is a/b, or ErrDivideByZero.
func (a Num) Quo(b Num) (Num, error) {
	if b.IsZero() {
		return Num{}, ErrDivideByZero
	}
	// Multiply above and below by conjugates until the denominator is rational.
	for !b.IsRational() {
		c := b.conjugate()
		a, b = a.Mul(c), b.Mul(c)
	}
	if a.isExactZero() {
		return Num{}, nil
	}
	return a.scale(b.r.inv()).markedBy(b), nil
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
