package exact

import (
	"math/big"
	"strings"

	"github.com/shopspring/decimal"
)

// maxTerminating is the most significant digits that Decimal shows unrounded.
const maxTerminating = 40

// Terminates tells whether a is rational with a finite decimal expansion.
func (a Num) Terminates() bool {
	_, ok := a.decimalPlaces()
	return ok
}

// decimalPlaces is how many decimal places a takes, if it terminates.
func (a Num) decimalPlaces() (int, bool) {
	if !a.IsRational() {
		return 0, false
	}
	if a.more == nil {
		return placesWord(uint64(a.over) + 1)
	}
	rest := new(big.Int).Set(a.r().rat().Denom())
	places := max(takeOut(rest, 2), takeOut(rest, 5))
	return places, rest.Cmp(one) == 0
}

// Decimal is a as a plain decimal without trailing zeros: all digits if they
// end within 40 significant ones, else rounded half away from zero to sig
// significant digits (held to 1…1000).
func (a Num) Decimal(sig int) string {
	if a.IsZero() {
		return "0"
	}
	if text, ok := a.decimalWord(sig); ok {
		return text
	}
	return a.decimalBig(sig)
}

func (a Num) decimalBig(sig int) string {
	if places, ok := a.decimalPlaces(); ok {
		m := a.rounded(places)
		if significant(m) <= maxTerminating {
			return plain(m, places)
		}
	}
	places := clamp(sig, 1) - 1 - a.exponent()
	return trimZeros(plain(a.rounded(places), places))
}

// Places is a rounded half away from zero to n decimal places (held to
// ±1000); n < 0 rounds to tens, hundreds and so on. Trailing zeros stay.
func (a Num) Places(n int) string {
	n = clamp(n, -maxExponent)
	if text, ok := a.placesText(n); ok {
		return text
	}
	return plain(a.rounded(n), n)
}

// Figures is a rounded half away from zero to n significant figures (held to
// 1…1000): 15.3, 0.0500, 1230, 9.70. Zero is "0".
func (a Num) Figures(n int) string {
	if a.IsZero() {
		return "0"
	}
	if text, ok := a.figuresWord(n); ok {
		return text
	}
	return a.figuresBig(n)
}

func (a Num) figuresBig(n int) string {
	n = clamp(n, 1)
	places := n - 1 - a.exponent()
	m := a.rounded(places)
	if new(big.Int).Abs(m).Cmp(pow10(n).rat().Num()) == 0 { // 9.996 went up to 10.00
		places--
		m = a.rounded(places)
	}
	return plain(m, places)
}

// ToDecimal is a rounded half away from zero to the given decimal places
// (held to ±1000).
func (a Num) ToDecimal(places int32) decimal.Decimal {
	n := clamp(int(places), -maxExponent)
	return decimal.NewFromBigInt(a.rounded(n), int32(-n))
}

// Rounded is a rounded half away from zero to sig significant digits, with its
// mark; it is the number that Figures writes.
func (a Num) Rounded(sig int) Num {
	if a.IsZero() {
		return a
	}
	places := sig - 1 - a.exponent()
	r := wholeRatio(a.rounded(places)).mul(pow10(-places))
	return number(r, nil, a.Inexact())
}

// rounded is a·10^places rounded half away from zero. An irrational a is never
// half way.
func (a Num) rounded(places int) *big.Int {
	m := a.Abs().scale(pow10(places)).Add(fraction(half)).Floor()
	if a.Sign() < 0 {
		m.Neg(m)
	}
	return m
}

// exponent is the power of ten of the first significant digit of a ≠ 0. No
// irrational number is a power of ten, so the interval decides.
func (a Num) exponent() int {
	a = a.Abs()
	if a.IsRational() {
		return a.r().exponent()
	}
	for p := uint(startBits); ; p *= 2 {
		lo, hi := a.interval(p)
		if lo.Sign() <= 0 {
			continue
		}
		if e := overPower(lo, p).exponent(); e == overPower(hi, p).exponent() {
			return e
		}
	}
}

// overPower is v/2^p.
func overPower(v *big.Int, p uint) rational {
	return newRatio(new(big.Rat).SetFrac(v, new(big.Int).Lsh(one, p)))
}

// exponent is the power of ten of the first significant digit of a > 0.
func (a rational) exponent() int {
	bits := a.rat().Num().BitLen() - a.rat().Denom().BitLen() // a is about 2^bits
	e := bits * 30103 / 100000                                // log₁₀2
	for a.cmp(pow10(e)) < 0 {
		e--
	}
	for a.cmp(pow10(e+1)) >= 0 {
		e++
	}
	return e
}

// pow10 is 10^e.
func pow10(e int) rational {
	p := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(max(e, -e))), nil)
	if e < 0 {
		return wholeRatio(p).inv()
	}
	return wholeRatio(p)
}

// clamp holds n to low…1000.
func clamp(n, low int) int { return min(max(n, low), maxExponent) }

// significant counts the digits of m from the first to the last that is not 0.
func significant(m *big.Int) int {
	return len(strings.Trim(m.String(), "-0"))
}

// plain writes m·10^−places with exactly so many decimal places, and without
// an exponent. Zero has no sign.
func plain(m *big.Int, places int) string {
	sign := ""
	if m.Sign() < 0 {
		sign = "-"
	}
	digits := new(big.Int).Abs(m).String()
	switch {
	case places > 0:
		digits = strings.Repeat("0", max(0, places+1-len(digits))) + digits
		point := len(digits) - places
		digits = digits[:point] + "." + digits[point:]
	case m.Sign() != 0:
		digits += strings.Repeat("0", -places)
	}
	return sign + digits
}

// trimZeros takes off the zeros that end a decimal fraction.
func trimZeros(s string) string {
	if !strings.Contains(s, ".") {
		return s
	}
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
