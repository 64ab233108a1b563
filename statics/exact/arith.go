package exact

import "slices"

// Add is a+b.
func (a Num) Add(b Num) Num {
	if short(a, b) {
		return Num{num: a.num + b.num}
	}
	return a.plus(b)
}

// plus is Add of any numbers.
func (a Num) plus(b Num) Num {
	switch {
	case a.isExactZero():
		return b
	case b.isExactZero():
		return a
	}
	if inWords(a, b) {
		if s, ok := addWords(rational{num: a.num, over: a.over}, rational{num: b.num, over: b.over}); ok {
			return Num{num: s.num, over: s.over}
		}
	}
	r, inexact := a.r().add(b.r()), a.Inexact() || b.Inexact()
	switch {
	case b.IsRational():
		return number(r, a.roots(), inexact)
	case a.IsRational():
		return number(r, b.roots(), inexact)
	case a.hasOneRootOf(b):
		t := a.roots()[0]
		if t.q = t.q.add(b.roots()[0].q); t.q.isZero() {
			return number(r, nil, inexact)
		}
		return withRoot(r, t, inexact)
	}
	return withRoots(r, slices.Concat(a.roots(), b.roots()), inexact)
}

// hasOneRootOf tells whether a and b have one root each, of the same radicand.
func (a Num) hasOneRootOf(b Num) bool {
	s, t := a.roots(), b.roots()
	return len(s) == 1 && len(t) == 1 && s[0].n.Cmp(t[0].n) == 0
}

// Sub is a−b.
func (a Num) Sub(b Num) Num {
	if short(a, b) {
		return Num{num: a.num - b.num}
	}
	return a.plus(b.Neg())
}

// Neg is −a.
func (a Num) Neg() Num {
	if a.more == nil {
		return Num{num: -a.num, over: a.over}
	}
	return a.scale(rational{num: -1})
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
	if short(a, b) {
		return Num{num: a.num * b.num}
	}
	return a.times(b)
}

// times is Mul of any numbers.
func (a Num) times(b Num) Num {
	switch {
	case a.isExactZero() || b.isExactZero():
		return Num{}
	case isExactOne(a):
		return b
	case isExactOne(b):
		return a
	}
	if inWords(a, b) {
		if p, ok := mulWords(rational{num: a.num, over: a.over}, rational{num: b.num, over: b.over}); ok {
			return Num{num: p.num, over: p.over}
		}
	}
	switch {
	case b.IsRational():
		return a.scale(b.r()).markedBy(b)
	case a.IsRational():
		return b.scale(a.r()).markedBy(a)
	}
	ts, us := a.terms(), b.terms()
	if len(ts)*len(us) > maxProducts {
		p := a.Rounded(maxTerminating).Mul(b.Rounded(maxTerminating))
		return p.Rounded(inexactDigits).MarkInexact()
	}
	products := make([]root, 0, len(ts)*len(us))
	for _, t := range ts {
		for _, u := range us {
			products = append(products, t.mul(u))
		}
	}
	return withRoots(rational{}, products, a.Inexact() || b.Inexact())
}

// Square is a².
func (a Num) Square() Num { return a.Mul(a) }

// scale is k·a with the mark of a.
func (a Num) scale(k rational) Num {
	r := a.r().mul(k)
	if k.isZero() || a.IsRational() {
		return number(r, nil, a.Inexact())
	}
	if len(a.roots()) == 1 {
		return withRoot(r, a.roots()[0].scale(k), a.Inexact())
	}
	roots := make([]root, len(a.roots()))
	for i, t := range a.roots() {
		roots[i] = t.scale(k)
	}
	return number(r, roots, a.Inexact())
}

// Quo is a/b, or ErrDivideByZero.
func (a Num) Quo(b Num) (Num, error) {
	switch {
	case isExactOne(b):
		return a, nil
	case b.IsZero():
		return Num{}, ErrDivideByZero
	}
	if inWords(a, b) {
		if q, ok := mulWords(rational{num: a.num, over: a.over}, b.r().inv()); ok {
			return Num{num: q.num, over: q.over}, nil
		}
	}
	// Multiply above and below by conjugates until the denominator is rational.
	for !b.IsRational() {
		c := b.conjugate()
		a, b = a.Mul(c), b.Mul(c)
	}
	if a.isExactZero() {
		return Num{}, nil
	}
	return a.scale(b.r().inv()).markedBy(b), nil
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
