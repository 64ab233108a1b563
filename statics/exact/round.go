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
	d := new(big.Int).Set(a.rat().Denom())
	twos := int(d.TrailingZeroBits())
	d.Rsh(d, uint(twos))
	fives, five := 0, big.NewInt(5)
	for d.Cmp(one) != 0 {
		q, r := new(big.Int).QuoRem(d, five, new(big.Int))
		if r.Sign() != 0 {
			return 0, false
		}
		d = q
		fives++
	}
	return max(twos, fives), true
}

// Decimal is a as a plain decimal without trailing zeros: all digits if they
// end within 40 significant ones, else rounded half away from zero to sig
// significant digits (held to 1…1000).
func (a Num) Decimal(sig int) string {
	if a.IsZero() {
		return "0"
	}
	if places, ok := a.decimalPlaces(); ok {
		m := a.rounded(places)
		if len(strings.TrimRight(new(big.Int).Abs(m).String(), "0")) <= maxTerminating {
			return trimZeros(plain(m, places))
		}
	}
	places := clamp(sig, 1) - 1 - a.exponent()
	return trimZeros(plain(a.rounded(places), places))
}

// Places is a rounded half away from zero to n decimal places (held to
// ±1000); n < 0 rounds to tens, hundreds and so on. Trailing zeros stay.
func (a Num) Places(n int) string {
	n = clamp(n, -maxExponent)
	return plain(a.rounded(n), n)
}

// Figures is a rounded half away from zero to n significant figures (held to
// 1…1000): 15.3, 0.0500, 1230, 9.70. Zero is "0".
func (a Num) Figures(n int) string {
	if a.IsZero() {
		return "0"
	}
	n = clamp(n, 1)
	places := n - 1 - a.exponent()
	m := a.rounded(places)
	if len(new(big.Int).Abs(m).String()) > n { // 9.996 went up to 10.00
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

// approx is a rational a itself where it fits sig significant digits, else
// the nearest number of so many digits.
func (a Num) approx(sig int) Num {
	if a.IsZero() {
		return a
	}
	places := sig - 1 - a.exponent()
	r := new(big.Rat).SetInt(a.rounded(places))
	return ratNum(r.Mul(r, pow10(-places))).marked(a.inexact)
}

// rounded is a·10^places rounded half away from zero.
func (a Num) rounded(places int) *big.Int {
	half := Num{num: 1, over: 1}
	m := a.Abs().Mul(ratNum(pow10(places))).Add(half).Floor()
	if a.Sign() < 0 {
		m.Neg(m)
	}
	return m
}

// exponent is the power of ten of the first significant digit of a ≠ 0.
func (a Num) exponent() int {
	a = a.Abs()
	var bits int
	if a.IsRational() {
		bits = a.rat().Num().BitLen() - a.rat().Denom().BitLen()
	} else {
		m, p := a.leading()
		bits = m.BitLen() - int(p)
	}
	e := bits * 30103 / 100000 // log10 2
	for a.Cmp(ratNum(pow10(e))) < 0 {
		e--
	}
	for a.Cmp(ratNum(pow10(e+1))) >= 0 {
		e++
	}
	return e
}

// pow10 is 10^e.
func pow10(e int) *big.Rat {
	p := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(max(e, -e))), nil)
	r := new(big.Rat).SetInt(p)
	if e < 0 {
		r.Inv(r)
	}
	return r
}

// clamp holds n to low…1000.
func clamp(n, low int) int { return min(max(n, low), maxExponent) }

// plain writes m·10^−places without an exponent.
func plain(m *big.Int, places int) string {
	if m.Sign() == 0 {
		places = max(places, 0)
	}
	digits := new(big.Int).Abs(m).String()
	if places < 0 {
		digits += strings.Repeat("0", -places)
	}
	if places > 0 {
		digits = strings.Repeat("0", max(0, places+1-len(digits))) + digits
		digits = digits[:len(digits)-places] + "." + digits[len(digits)-places:]
	}
	if m.Sign() < 0 {
		return "-" + digits
	}
	return digits
}

// trimZeros takes off zeros that end a decimal fraction.
func trimZeros(s string) string {
	if !strings.Contains(s, ".") {
		return s
	}
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
