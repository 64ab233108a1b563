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

// Num is a real number r + Σ qᵢ·√nᵢ. It never changes; copy it freely. The
// zero value is 0. Compare with Equal or Cmp: the shape inside rules out ==.
type Num struct {
	_         [0]func()
	num, over int64 // the fraction num/(over+1), where nothing more is needed
	*more
}

// more is what a number has that is not a fraction held in words.
type more struct {
	big     *big.Rat // its rational part, if that is not in words; read only
	roots   []root   // in increasing order of the radicands; read only
	inexact bool
}

// number is a number of these parts; it may keep the roots.
func number(r rational, roots []root, inexact bool) Num {
	if r.big == nil && len(roots) == 0 && !inexact {
		return Num{num: r.num, over: r.over}
	}
	return Num{num: r.num, over: r.over, more: &more{r.big, roots, inexact}}
}

// withRoot is number with one root, which stands in one piece of memory with
// the rest.
func withRoot(r rational, t root, inexact bool) Num {
	one := &struct {
		more
		room [1]root
	}{more{big: r.big, inexact: inexact}, [1]root{t}}
	one.roots = one.room[:]
	return Num{num: r.num, over: r.over, more: &one.more}
}

// fraction is the number r.
func fraction(r rational) Num { return number(r, nil, false) }

// r is the rational part of a.
func (a Num) r() rational {
	if a.more == nil {
		return rational{num: a.num, over: a.over}
	}
	return rational{a.num, a.over, a.big}
}

// roots is the irrational part of a, to read only.
func (a Num) roots() []root {
	if a.more == nil {
		return nil
	}
	return a.more.roots
}

// inWords tells whether both numbers are fractions held in words, so that the
// short way may be tried.
func inWords(a, b Num) bool { return a.more == nil && b.more == nil }

// short tells whether both numbers are whole and so short that their sum and
// product are words. Most are, so that this is asked before all else.
func short(a, b Num) bool {
	return a.over|b.over == 0 && uint64(a.num+1<<31)|uint64(b.num+1<<31) < 1<<32 && a.more == nil && b.more == nil
}

// Int is the whole number n.
func Int(n int64) Num {
	if n == math.MinInt64 {
		return fraction(wholeRatio(big.NewInt(n)))
	}
	return Num{num: n}
}

// Frac is the fraction n/d, or ErrDivideByZero.
func Frac(n, d int64) (Num, error) {
	if d == 0 {
		return Num{}, fmt.Errorf("%d/0: %w", n, ErrDivideByZero)
	}
	return Int(n).Quo(Int(d))
}

// FromRat is the number r; nil is 0.
func FromRat(r *big.Rat) Num {
	if r == nil {
		return Num{}
	}
	return fraction(newRatio(new(big.Rat).Set(r)))
}

// FromDecimal is the number d, or an error when its exponent is beyond ±1000.
func FromDecimal(d decimal.Decimal) (Num, error) {
	e := d.Exponent()
	if e < -maxExponent || e > maxExponent {
		return Num{}, fmt.Errorf("the power of ten %d is out of range, −%d to %d", e, maxExponent, maxExponent)
	}
	return fraction(wholeRatio(d.Coefficient()).mul(pow10(int(e)))), nil
}

// IsInt tells whether a is a whole number.
func (a Num) IsInt() bool { return a.IsRational() && a.r().isInt() }

// IsRational tells whether a is a fraction of whole numbers.
func (a Num) IsRational() bool { return a.more == nil || len(a.more.roots) == 0 }

// Rat is a as a fraction of the caller's own, and whether a is rational; for
// an irrational a the fraction is nil.
func (a Num) Rat() (*big.Rat, bool) {
	if !a.IsRational() {
		return nil, false
	}
	return new(big.Rat).Set(a.r().rat()), true
}

// Inexact tells whether a stands for a number outside the exact set.
func (a Num) Inexact() bool { return a.more != nil && a.inexact }

// MarkInexact is a with the inexact mark.
func (a Num) MarkInexact() Num {
	return number(a.r(), a.roots(), true)
}

// markedBy is a with the inexact mark of b added to its own.
func (a Num) markedBy(b Num) Num {
	if b.Inexact() && !a.Inexact() {
		return a.MarkInexact()
	}
	return a
}

// Float is the nearest float64, infinite when out of range. It is for drawing
// only: nothing is judged by it.
func (a Num) Float() float64 {
	if a.IsRational() {
		f, _ := a.r().rat().Float64()
		return f
	}
	nearest := func(v *big.Int, p uint) float64 { // to v/2^p
		f := new(big.Float).SetInt(v)
		near, _ := f.SetMantExp(f, -int(p)).Float64()
		return near
	}
	for p := uint(startBits); ; p *= 2 {
		lo, hi := a.interval(p)
		if f := nearest(lo, p); lo.Sign() == hi.Sign() && f == nearest(hi, p) {
			return f
		}
	}
}
