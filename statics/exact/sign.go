package exact

import "math/big"

// startBits is the first precision tried in an interval; it doubles until the
// interval decides.
const startBits = 64

// Sign is −1, 0 or +1.
func (a Num) Sign() int {
	if a.isSmall() {
		return signWord(a.num)
	}
	if len(a.terms) == 1 {
		return a.terms[0].q.Sign()
	}
	s, _ := a.leading()
	return s.Sign()
}

// IsZero tells whether a is 0.
func (a Num) IsZero() bool { return a.isSmall() && a.num == 0 }

// Cmp is −1, 0 or +1 as a is less than, equal to or greater than b.
func (a Num) Cmp(b Num) int {
	if a.isSmall() && b.isSmall() {
		return cmpSmall(a, b)
	}
	return a.marked(false).Sub(b.marked(false)).Sign()
}

// Equal tells whether a and b are the same number; marks do not count.
func (a Num) Equal(b Num) bool { return a.Cmp(b) == 0 }

// Floor is the greatest whole number not above a.
func (a Num) Floor() *big.Int {
	if a.IsRational() {
		r := a.rat()
		return new(big.Int).Div(r.Num(), r.Denom())
	}
	for p := uint(startBits); ; p *= 2 {
		lo, hi := a.interval(p)
		if lo.Rsh(lo, p).Cmp(hi.Rsh(hi, p)) == 0 {
			return lo
		}
	}
}

// leading is a·2^p to within a relative error of one half, and the p used,
// for a ≠ 0.
func (a Num) leading() (*big.Int, uint) {
	for p := uint(startBits); ; p *= 2 {
		lo, hi := a.interval(p)
		if lo.Sign() == hi.Sign() && lo.Sign() != 0 {
			return lo, p
		}
	}
}

// interval is whole numbers lo < a·2^p < hi no further apart than twice the
// number of terms.
func (a Num) interval(p uint) (lo, hi *big.Int) {
	sum := new(big.Int)
	ts := a.spread()
	for _, t := range ts {
		sum.Add(sum, t.scaled(p))
	}
	k := big.NewInt(int64(len(ts)))
	return new(big.Int).Sub(sum, k), sum.Add(sum, k)
}

// scaled is q·√n·2^p cut to a whole number.
func (t term) scaled(p uint) *big.Int {
	v := new(big.Int).Mul(t.q.Num(), t.q.Num())
	v.Mul(v, t.n)
	v.Sqrt(v.Lsh(v, 2*p))
	v.Quo(v, t.q.Denom())
	if t.q.Sign() < 0 {
		v.Neg(v)
	}
	return v
}
