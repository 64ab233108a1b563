package exact

import (
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// NIST Digital Library of Mathematical Functions, table 4.17.1 (special values
// of the sine), for the first quadrant; from memory.
var specialSines = []string{
	"0", "-sqrt(2)/4 + sqrt(6)/4", "1/2", "sqrt(2)/2", "sqrt(3)/2", "sqrt(2)/4 + sqrt(6)/4", "1",
}

// sineTable is the sine of 15k degrees by the symmetries of the sine.
func sineTable(t *testing.T, k int) Num {
	k = (k%24 + 24) % 24
	switch {
	case k > 12:
		return sineTable(t, k-12).Neg()
	case k > 6:
		return sineTable(t, 12-k)
	}
	return num(t, specialSines[k])
}

func TestSpecialAngles(t *testing.T) {
	for k := -60; k <= 60; k++ {
		deg := Int(int64(15 * k))
		sin, cos := Sin(deg), Cos(deg)
		if !sin.Equal(sineTable(t, k)) || sin.Inexact() || sin.String() != sineTable(t, k).String() {
			t.Errorf("sin %v° = %v, want %v", deg, sin, sineTable(t, k))
		}
		if !cos.Equal(sineTable(t, k+6)) || cos.Inexact() {
			t.Errorf("cos %v° = %v, want %v", deg, cos, sineTable(t, k+6))
		}
		if !sin.Square().Add(cos.Square()).Equal(Int(1)) {
			t.Errorf("sin² + cos² of %v° is not 1", deg)
		}
	}
}

// The digits of sin 1° are OEIS A019810, of sin 20° A019829; from memory.
func TestSineDigits(t *testing.T) {
	for deg, want := range map[string]string{
		"1":    "0.01745240643728351281941897851631619",
		"20":   "0.3420201433256687330440996146822596",
		"-160": "-0.3420201433256687330440996146822596",
		"379":  "0.325568154457156668714",
	} {
		if got := Sin(MustParse(deg)).Decimal(34); !strings.HasPrefix(got, want) {
			t.Errorf("sin %s° = %s, want %s", deg, got, want)
		}
	}
}

// oraclePi is π by Machin's formula, 16 arctan 1/5 − 4 arctan 1/239.
var oraclePi = func() *big.Float {
	arctan := func(n int64) *big.Float {
		sum, power := newFloat(), newFloat().Quo(newFloat().SetInt64(1), newFloat().SetInt64(n))
		square := newFloat().SetInt64(-n * n)
		for k := int64(1); sign(power) != 0; k += 2 {
			sum.Add(sum, newFloat().Quo(power, newFloat().SetInt64(k)))
			power.Quo(power, square)
		}
		return sum
	}
	a, b := arctan(5), arctan(239)
	a.Mul(a, newFloat().SetInt64(16))
	return a.Sub(a, b.Mul(b, newFloat().SetInt64(4)))
}()

// oracleSin is the sine of deg degrees by its Taylor series, nothing reduced.
func oracleSin(deg *big.Rat) *big.Float {
	x := newFloat().Mul(newFloat().SetRat(deg), oraclePi)
	x.Quo(x, newFloat().SetInt64(180))
	sum, part, square := newFloat(), newFloat().Set(x), newFloat().Mul(x, x)
	square.Neg(square)
	for k := int64(2); sign(part) != 0; k += 2 {
		sum.Add(sum, part)
		part.Mul(part, square)
		part.Quo(part, newFloat().SetInt64(k*(k+1)))
	}
	return sum
}

func TestPiDigits(t *testing.T) {
	if got := oraclePi.Text('f', 80)[:len(piDigits)]; got != piDigits {
		t.Errorf("π = %s, want %s", piDigits, got)
	}
}

// All 34 digits are right, near the zeros of the sine too.
func TestAnglesAgreeWithTaylorSeries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		deg := big.NewRat(rapid.Int64Range(-720_000, 720_000).Draw(t, "thousandths"), 1000)
		if rapid.Bool().Draw(t, "near a zero") {
			deg = big.NewRat(180*rapid.Int64Range(-3, 3).Draw(t, "half turns"), 1)
			deg.Add(deg, pow10(-rapid.IntRange(1, 60).Draw(t, "nearness")).rat())
		}
		right := func(name string, got Num, angle *big.Rat) {
			want := oracleSin(angle)
			if got.IsZero() {
				if sign(want) != 0 {
					t.Fatalf("%s %v° = 0, want %s", name, deg, want.Text('g', 40))
				}
				return
			}
			if !near(t, got.Places(150), want, 33-got.exponent()) {
				t.Fatalf("%s %v° = %s, want %s", name, deg, got.Decimal(40), want.Text('g', 40))
			}
		}
		right("sin", Sin(FromRat(deg)), deg)
		right("cos", Cos(FromRat(deg)), new(big.Rat).Sub(big.NewRat(90, 1), deg))
	})
}

func TestAnglesOutsideTheSetAreMarked(t *testing.T) {
	for _, text := range []string{"1", "22.5", "36", "7.5", "0.0000001", "20/3", "123456789012345678901234567890.1", "15*sqrt(2)"} {
		for _, x := range []Num{Sin(num(t, text)), Cos(num(t, text))} {
			if !x.Inexact() || !x.IsRational() || x.Abs().Cmp(Int(1)) > 0 {
				t.Errorf("sine or cosine of %s° is %v, marked %t", text, x, x.Inexact())
			}
		}
	}
	if x := Sin(Int(30).MarkInexact()); !x.Inexact() || x.String() != "1/2" {
		t.Errorf("the sine of an inexact 30° is %v, marked %t", x, x.Inexact())
	}
	want := Sin(num(t, "15*sqrt(2)").Rounded(40))
	if got := Sin(num(t, "15*sqrt(2)")); !got.Equal(want) {
		t.Errorf("sin (15√2)° = %v, want %v", got, want)
	}
}

// An angle of any size is brought within one turn exactly.
func TestLargeAngles(t *testing.T) {
	turns, _ := newRat("360000000000000000000000000000000000000000")
	for _, deg := range []int64{0, 15, -75, 20, 111} {
		large := FromRat(turns).Add(Int(deg))
		if !Sin(large).Equal(Sin(Int(deg))) || !Cos(large.Neg()).Equal(Cos(Int(deg))) {
			t.Errorf("%d° and many turns: %v", deg, Sin(large))
		}
	}
}
