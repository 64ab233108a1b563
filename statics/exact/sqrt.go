package exact

import (
	"errors"
	"fmt"
	"math/big"
	"sync"
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
	case a.Inexact():
		return a.sqrtApprox(), nil
	}
	if root, ok := a.r().sqrtWords(); ok {
		return root, nil
	}
	r := a.r().rat()
	s, m, loose1 := splitSquare(r.Num())
	t, n, loose2 := splitSquare(r.Denom())
	// √(s²m / t²n) = s/(tn)·√(mn); mn is squarefree, as m and n are coprime.
	q := newRatio(new(big.Rat).SetFrac(s, t.Mul(t, n)))
	if m.Mul(m, n).Cmp(one) == 0 {
		return fraction(q), nil
	}
	return withRoot(rational{}, root{q, m, loose1 || loose2}, false), nil
}

// sqrtWords is √a of a > 0 if that can be reckoned in words.
func (a rational) sqrtWords() (Num, bool) {
	if a.big != nil {
		return Num{}, false
	}
	s, m, loose1 := splitSquareWord(a.num)
	t, n, loose2 := splitSquareWord(a.over + 1)
	over, ok1 := mulWord(t, n)
	radicand, ok2 := mulWord(m, n)
	q := wordRatio(s, over)
	if radicand == 1 {
		return fraction(q), ok1
	}
	return withRoot(rational{}, root{q, big.NewInt(radicand), loose1 || loose2}, false), ok1 && ok2
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
	return fraction(r).Rounded(inexactDigits).MarkInexact()
}

// squaresMod64 has a bit for each of the twelve squares modulo 64.
const squaresMod64 = 1<<0 | 1<<1 | 1<<4 | 1<<9 | 1<<16 | 1<<17 | 1<<25 | 1<<33 | 1<<36 | 1<<41 | 1<<49 | 1<<57

// squareRoot is √v of v ≥ 1, if v is a perfect square.
func squareRoot(v *big.Int) (*big.Int, bool) {
	if uint64(squaresMod64)>>(v.Bits()[0]&63)&1 == 0 {
		return nil, false // without the cost of a root, four times in five
	}
	r := new(big.Int).Sqrt(v)
	return r, new(big.Int).Mul(r, r).Cmp(v) == 0
}

// splitSquare writes v ≥ 1 as s²·n with n squarefree; where loose is set, n
// may still hold the square of a prime above trialLimit.
func splitSquare(v *big.Int) (s, n *big.Int, loose bool) {
	s, n = big.NewInt(1), big.NewInt(1)
	rest := new(big.Int).Set(v)
	least := int64(2) // no prime factor of the rest is below this
	for _, p := range trialPrimes() {
		if least = p; below(rest, p*p*p) {
			break
		}
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
	// Below least³ it has at most two prime factors, and not the same one twice.
	return s, n.Mul(n, rest), !below(rest, least*least*least)
}

// splitSquareWord is splitSquare of a word.
func splitSquareWord(v int64) (s, n int64, loose bool) {
	s, n = 1, 1
	least := int64(2)
	for _, p := range trialPrimes() {
		if least = p; v < p*p*p {
			break
		}
		for ; v%(p*p) == 0; v /= p * p {
			s *= p
		}
		if v%p == 0 {
			n, v = n*p, v/p
		}
	}
	if r, ok := squareRoot(big.NewInt(v)); ok {
		return s * r.Int64(), n, false
	}
	return s, n * v, v >= least*least*least
}

// trialPrimes is the primes below trialLimit, by the sieve of Eratosthenes.
var trialPrimes = sync.OnceValue(func() (primes []int64) {
	var composite [trialLimit]bool
	for p := int64(2); p < trialLimit; p++ {
		if composite[p] {
			continue
		}
		primes = append(primes, p)
		for m := p * p; m < trialLimit; m += p {
			composite[m] = true
		}
	}
	return primes
})

// takeOut divides v by p as often as it goes, in place, and counts how often.
func takeOut(v *big.Int, p int64) int {
	k := 0
	for q, r, prime := new(big.Int), new(big.Int), big.NewInt(p); !v.IsInt64(); k++ {
		if q.QuoRem(v, prime, r); r.Sign() != 0 {
			return k
		}
		v.Set(q)
	}
	word := v.Int64()
	for ; word%p == 0; k++ {
		word /= p
	}
	v.SetInt64(word)
	return k
}

// below tells whether v < limit.
func below(v *big.Int, limit int64) bool { return v.IsInt64() && v.Int64() < limit }
