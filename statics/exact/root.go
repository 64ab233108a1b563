package exact

import (
	"errors"
	"fmt"
	"math/big"
)

// ErrNoRoot is the error of a square root that is not in the exact set.
var ErrNoRoot = errors.New("no exact square root")

// trialLimit bounds the primes whose squares are taken out of a radicand.
const trialLimit = 10_000

// Sqrt is √a as q·√n for a rational a ≥ 0, or ErrNoRoot. Of a number marked
// inexact it is a rational of 34 significant digits, marked too.
func (a Num) Sqrt() (Num, error) {
	if a.Sign() < 0 {
		return Num{}, fmt.Errorf("the root of %v, which is negative: %w", a, ErrNoRoot)
	}
	if !a.IsRational() {
		return Num{}, fmt.Errorf("the root of %v, which is itself a root: %w", a, ErrNoRoot)
	}
	if a.IsZero() {
		return a, nil
	}
	if a.inexact {
		return a.sqrtApprox(), nil
	}
	r := a.rat()
	s, m, loose1 := splitSquare(r.Num())
	t, n, loose2 := splitSquare(r.Denom())
	// √(s²m / t²n) = s/(tn)·√(mn), and mn is squarefree as m and n are coprime.
	q := new(big.Rat).SetFrac(s, t.Mul(t, n))
	return gather([]term{{q, m.Mul(m, n), loose1 || loose2}}), nil
}

// Hypot is √(a²+b²), exact when a²+b² is rational; otherwise a rational of 34
// significant digits marked inexact. The error is always nil.
func Hypot(a, b Num) (Num, error) {
	s := a.Square().Add(b.Square())
	if s.IsRational() {
		return s.Sqrt()
	}
	return s.sqrtApprox(), nil
}

// splitSquare writes v ≥ 1 as s²·n with n squarefree, or with loose set where
// n may still hold the square of a prime above trialLimit.
func splitSquare(v *big.Int) (s, n *big.Int, loose bool) {
	s, n = big.NewInt(1), big.NewInt(1)
	rest := new(big.Int).Set(v)
	for p := int64(2); p < trialLimit && rest.Cmp(one) != 0; p++ {
		prime := big.NewInt(p)
		odd := false
		for {
			q, r := new(big.Int).QuoRem(rest, prime, new(big.Int))
			if r.Sign() != 0 {
				break
			}
			if rest = q; odd {
				s.Mul(s, prime)
			}
			odd = !odd
		}
		if odd {
			n.Mul(n, prime)
		}
	}
	if r := new(big.Int).Sqrt(rest); new(big.Int).Mul(r, r).Cmp(rest) == 0 {
		return s.Mul(s, r), n, false
	}
	// Below trialLimit³ the rest has at most two prime factors, and they differ.
	loose = rest.Cmp(big.NewInt(trialLimit*trialLimit*trialLimit)) >= 0
	return s, n.Mul(n, rest), loose
}

// sqrtApprox is √a, a > 0, to 34 significant digits, marked inexact.
func (a Num) sqrtApprox() Num {
	const guard = 60
	places := guard - a.exponent()/2
	square := a.rounded(2 * places)
	root := new(big.Rat).SetInt(square.Sqrt(square))
	return ratNum(root.Mul(root, pow10(-places))).approx(34).MarkInexact()
}
