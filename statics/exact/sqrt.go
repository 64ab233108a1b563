package exact

import (
	"errors"
	"fmt"
	"math/big"
)

// ErrNoRoot is the error of a square root that is not in the exact set.
var ErrNoRoot = errors.New("no exact square root")

const (
	// trialLimit bounds the primes whose squares are taken out of a radicand.
	trialLimit = 10_000
	// inexactDigits is the significant digits of a value marked inexact.
	inexactDigits = 34
)

// Sqrt is √a as q·√n for a rational a ≥ 0, else ErrNoRoot. Of a number marked
// inexact it is a rational of 34 significant digits, marked too.
func (a Num) Sqrt() (Num, error) {
	switch {
	case a.Sign() < 0:
		return Num{}, fmt.Errorf("the root of a negative number, %s: %w", a.Decimal(6), ErrNoRoot)
	case !a.IsRational():
		return Num{}, fmt.Errorf("the root of a sum with roots, %s: %w", a.Decimal(6), ErrNoRoot)
	case a.IsZero():
		return a, nil
	case a.inexact:
		return a.sqrtApprox(), nil
	}
	s, m, loose1 := splitSquare(a.r.rat().Num())
	t, n, loose2 := splitSquare(a.r.rat().Denom())
	// √(s²m / t²n) = s/(tn)·√(mn); mn is squarefree, as m and n are coprime.
	q := new(big.Rat).SetFrac(s, t.Mul(t, n))
	return Num{}.withRoots([]root{{newRatio(q), m.Mul(m, n), loose1 || loose2}}), nil
}

// Hypot is √(a²+b²), exact when a²+b² is rational, else a rational of 34
// significant digits marked inexact. The error is always nil.
func Hypot(a, b Num) (Num, error) {
	s := a.Square().Add(b.Square())
	if s.IsRational() {
		return s.Sqrt()
	}
	return s.sqrtApprox(), nil
}

// sqrtApprox is √a, a > 0, to 34 significant digits, marked inexact.
func (a Num) sqrtApprox() Num {
	places := 2*inexactDigits - a.exponent()/2
	square := a.rounded(2 * places)
	r := wholeRatio(square.Sqrt(square)).mul(pow10(-places))
	return Num{r: r}.approx(inexactDigits).MarkInexact()
}

// squareRoot is √v, if v is a perfect square.
func squareRoot(v *big.Int) (*big.Int, bool) {
	r := new(big.Int).Sqrt(v)
	return r, new(big.Int).Mul(r, r).Cmp(v) == 0
}

// splitSquare writes v ≥ 1 as s²·n with n squarefree; where loose is set, n
// may still hold the square of a prime above trialLimit.
func splitSquare(v *big.Int) (s, n *big.Int, loose bool) {
	s, n = big.NewInt(1), big.NewInt(1)
	rest := new(big.Int).Set(v)
	p := int64(2)
	for ; p < trialLimit && !below(rest, p*p*p); p++ {
		k := takeOut(rest, p)
		for ; k >= 2; k -= 2 {
			s.Mul(s, big.NewInt(p))
		}
		if k == 1 {
			n.Mul(n, big.NewInt(p))
		}
	}
	if r, ok := squareRoot(rest); ok {
		return s.Mul(s, r), n, false
	}
	// Its prime factors are p or above. Below p³ there are at most two, and
	// they differ, or it would be a square.
	return s, n.Mul(n, rest), !below(rest, p*p*p)
}

// takeOut divides v by p as often as it goes, in place, and counts how often.
func takeOut(v *big.Int, p int64) int {
	if v.IsInt64() && v.Int64()%p != 0 {
		return 0
	}
	k, prime, r := 0, big.NewInt(p), new(big.Int)
	for q := new(big.Int); ; k++ {
		if q.QuoRem(v, prime, r); r.Sign() != 0 {
			return k
		}
		v.Set(q)
	}
}

// below tells whether v < limit.
func below(v *big.Int, limit int64) bool { return v.IsInt64() && v.Int64() < limit }
