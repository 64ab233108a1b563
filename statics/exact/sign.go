package exact

import "math/big"

// startBits is the first precision tried in an interval; it doubles until the
// interval decides. It always does: whether a is zero, or rational, is known
// from its shape.
const startBits = 64

// Sign is −1, 0 or +1.
func (a Num) Sign() int {
	switch {
	case a.more == nil:
		return signWord(a.num)
	case a.IsRational():
		return a.r().sign()
	case a.r().isZero() && len(a.roots()) == 1:
		return a.roots()[0].q.sign()
	}
	if terms := a.terms(); len(terms) == 2 {
		return signOfTwo(terms[0], terms[1])
	}
	m, _ := a.leading()
	return m.Sign()
}

// signOfTwo is the sign of s + t, of roots of two square classes. Where they are of opposite signs the greater square decides;
// the squares are never equal.
func signOfTwo(s, t root) int {
	if s.q.sign() == t.q.sign() || s.square(t).Cmp(t.square(s)) > 0 {
		return s.q.sign()
	}
	return t.q.sign()
}

// square is s² times the square of the denominator of t.
func (s root) square(t root) *big.Int {
	v := new(big.Int).Mul(s.q.rat().Num(), t.q.rat().Denom())
	return v.Mul(v.Mul(v, v), s.n)
}

// IsZero tells whether a is 0.
func (a Num) IsZero() bool {
	return a.num == 0 && (a.more == nil || a.big == nil && len(a.more.roots) == 0)
}

// isExactZero tells whether a is 0 and not marked inexact.
func (a Num) isExactZero() bool { return a.num == 0 && a.more == nil }

// isExactOne tells whether a is 1 and not marked inexact.
func isExactOne(a Num) bool { return a.num == 1 && a.over == 0 && a.more == nil }

// Cmp is −1, 0 or +1 as a is less than, equal to or greater than b.
func (a Num) Cmp(b Num) int {
	if a.IsRational() && b.IsRational() {
		return a.r().cmp(b.r())
	}
	return a.Sub(b).Sign()
}

// Equal tells whether a and b are the same number; marks do not count.
func (a Num) Equal(b Num) bool {
	if inWords(a, b) {
		return a.num == b.num && a.over == b.over
	}
	return a.Sub(b).IsZero() // which its shape tells
}

// Floor is the greatest whole number not above a.
func (a Num) Floor() *big.Int {
	if a.IsRational() {
		return a.r().floor()
	}
	for p := uint(startBits); ; p *= 2 {
		lo, hi := a.interval(p)
		if lo.Rsh(lo, p).Cmp(hi.Rsh(hi, p)) == 0 {
			return lo
		}
	}
}

// leading is a lower bound of a·2^p with the sign of a, and the p at which
// the interval about an a ≠ 0 no longer holds 0.
func (a Num) leading() (*big.Int, uint) {
	for p := uint(startBits); ; p *= 2 {
		lo, hi := a.interval(p)
		if lo.Sign() > 0 || hi.Sign() < 0 {
			return lo, p
		}
	}
}

// interval is whole numbers lo < a·2^p < hi apart by twice the number of
// terms.
func (a Num) interval(p uint) (lo, hi *big.Int) {
	sum, terms := new(big.Int), a.terms()
	for _, t := range terms {
		sum.Add(sum, t.scaled(p))
	}
	k := big.NewInt(int64(len(terms)))
	return new(big.Int).Sub(sum, k), sum.Add(sum, k)
}

// scaled is q·√n·2^p cut to a whole number.
func (t root) scaled(p uint) *big.Int {
	q := t.q.rat()
	v := new(big.Int).Mul(q.Num(), q.Num())
	v.Mul(v, t.n)
	v.Sqrt(v.Lsh(v, 2*p))
	v.Quo(v, q.Denom())
	if q.Sign() < 0 {
		v.Neg(v)
	}
	return v
}
