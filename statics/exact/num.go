package exact

import (
	"errors"
	"fmt"
	"math"
	"math/big"

	"github.com/shopspring/decimal"
)

// ErrDivideByZero is the error of a quotient or fraction over zero.
var ErrDivideByZero = errors.New("cannot divide by zero")

// maxExponent bounds the powers of ten that are read or written, so that a
// short text cannot ask for an endless number.
const maxExponent = 1000

// Num is a real number Σ qᵢ·√nᵢ. It never changes; copy it freely. The zero
// value is 0. Compare with Equal or Cmp: the shape inside does not allow ==.
type Num struct {
	num, over int64  // the rational num/(over+1), while terms is empty
	terms     []term // in increasing order of the radicand
	inexact   bool
}

// Int is the whole number n.
func Int(n int64) Num {
	if n == math.MinInt64 {
		return ratNum(new(big.Rat).SetInt64(n))
	}
	return Num{num: n}
}

// Frac is the fraction n/d, or ErrDivideByZero.
func Frac(n, d int64) (Num, error) {
	if d == 0 {
		return Num{}, fmt.Errorf("%d/0: %w", n, ErrDivideByZero)
	}
	return ratNum(big.NewRat(n, d)), nil
}

// FromRat is the number r; nil is 0.
func FromRat(r *big.Rat) Num {
	if r == nil {
		return Num{}
	}
	return ratNum(new(big.Rat).Set(r))
}

// FromDecimal is the number d, or an error when its exponent is beyond ±1000.
func FromDecimal(d decimal.Decimal) (Num, error) {
	e := d.Exponent()
	if e < -maxExponent || e > maxExponent {
		return Num{}, fmt.Errorf("the power of ten 10^%d is out of range (-%d to %d)", e, maxExponent, maxExponent)
	}
	r := new(big.Rat).SetInt(d.Coefficient())
	return ratNum(r.Mul(r, pow10(int(e)))), nil
}

// ratNum is the number r, which it keeps.
func ratNum(r *big.Rat) Num {
	if n, d := r.Num(), r.Denom(); fitsWord(n) && fitsWord(d) {
		return Num{num: n.Int64(), over: d.Int64() - 1}
	}
	return Num{terms: []term{{q: r, n: one}}}
}

// fitsWord tells whether v is within ±(2⁶³−1).
func fitsWord(v *big.Int) bool { return v.IsInt64() && v.Int64() != math.MinInt64 }

// IsInt tells whether a is a whole number.
func (a Num) IsInt() bool {
	if a.isSmall() {
		return a.over == 0
	}
	return a.IsRational() && a.terms[0].q.IsInt()
}

// IsRational tells whether a is a fraction of whole numbers.
func (a Num) IsRational() bool {
	return a.isSmall() || len(a.terms) == 1 && a.terms[0].n.Cmp(one) == 0
}

// Rat is a as a fraction of the caller's own, and whether a is rational.
// For an irrational a it is nil.
func (a Num) Rat() (*big.Rat, bool) {
	if !a.IsRational() {
		return nil, false
	}
	return new(big.Rat).Set(a.rat()), true
}

// rat is a rational a to read and not to change.
func (a Num) rat() *big.Rat {
	if a.isSmall() {
		return new(big.Rat).SetFrac64(a.num, a.over+1)
	}
	return a.terms[0].q
}

// Inexact tells whether a stands for a number outside the exact set.
func (a Num) Inexact() bool { return a.inexact }

// MarkInexact is a with the inexact mark.
func (a Num) MarkInexact() Num {
	a.inexact = true
	return a
}

// marked is a with the inexact mark set as told.
func (a Num) marked(inexact bool) Num {
	a.inexact = inexact
	return a
}

// isExactZero tells whether a is 0 and not marked inexact.
func (a Num) isExactZero() bool { return a.IsZero() && !a.inexact }

// Float is the nearest float64, infinite when out of range. It is for
// drawing only: nothing is judged by it.
func (a Num) Float() float64 {
	f, _ := a.approx(34).rat().Float64()
	return f
}
