package exact

import (
	"errors"
	"math"
	"math/big"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

func TestZeroValueIsZero(t *testing.T) {
	var zero Num
	if !zero.IsZero() || !zero.IsInt() || zero.Inexact() || zero.String() != "0" || !zero.Equal(Int(0)) {
		t.Errorf("the zero value is %v", zero)
	}
	if r, ok := zero.Rat(); !ok || r.Sign() != 0 {
		t.Errorf("the zero value as a fraction is %v", r)
	}
}

func TestInt(t *testing.T) {
	for _, n := range []int64{0, 1, -1, math.MaxInt64, math.MinInt64, math.MinInt64 + 1} {
		a := Int(n)
		checkShape(t, a)
		if a.String() != big.NewInt(n).String() || !a.IsInt() {
			t.Errorf("Int(%d) = %v", n, a)
		}
	}
}

func TestFrac(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n, d := drawWord(t, "n"), drawWord(t, "d")
		a, err := Frac(n, d)
		if d == 0 {
			if !errors.Is(err, ErrDivideByZero) {
				t.Fatalf("%d/0: %v", n, err)
			}
			return
		}
		checkShape(t, a)
		if want := big.NewRat(n, d); err != nil || a.String() != want.RatString() {
			t.Fatalf("Frac(%d, %d) = %v, %v; want %v", n, d, a, err, want)
		}
	})
}

func TestFromRatOfNilIsZero(t *testing.T) {
	if !FromRat(nil).IsZero() {
		t.Error("FromRat(nil) is not 0")
	}
}

func TestFromDecimal(t *testing.T) {
	for _, c := range []struct {
		d    string
		want string
	}{{"0", "0"}, {"-15.25", "-61/4"}, {"1.50", "3/2"}, {"12e3", "12000"}, {"12E-5", "3/25000"}} {
		a, err := FromDecimal(decimal.RequireFromString(c.d))
		if err != nil || a.String() != c.want {
			t.Errorf("%s is %v, %v; want %s", c.d, a, err, c.want)
		}
	}
}

func TestFromDecimalBoundsTheExponent(t *testing.T) {
	for exponent, ok := range map[int32]bool{
		1000: true, -1000: true, 1001: false, -1001: false, math.MaxInt32: false, math.MinInt32: false,
	} {
		a, err := FromDecimal(decimal.New(7, exponent))
		if (err == nil) != ok {
			t.Errorf("7·10^%d: %v", exponent, err)
		}
		if ok && !a.ToDecimal(1000).Equal(decimal.New(7, exponent)) {
			t.Errorf("7·10^%d came back as %v", exponent, a.ToDecimal(1000))
		}
	}
}

func TestKinds(t *testing.T) {
	for text, want := range map[string][3]bool{ // whole, rational, terminates
		"0":                                 {true, true, true},
		"-12":                               {true, true, true},
		"123456789012345678901234567890":    {true, true, true},
		"1/2":                               {false, true, true},
		"7/1250":                            {false, true, true},
		"1/3":                               {false, true, false},
		"1/123456789012345678901234567890":  {false, true, false},
		"sqrt(2)":                           {false, false, false},
		"2 + sqrt(2)":                       {false, false, false},
		"1/1267650600228229401496703205376": {false, true, true}, // 2^−100
	} {
		a := num(t, text)
		if got := [3]bool{a.IsInt(), a.IsRational(), a.Terminates()}; got != want {
			t.Errorf("%s: %v, want %v", text, got, want)
		}
		if _, ok := a.Rat(); ok != want[1] {
			t.Errorf("%s: Rat tells %t", text, ok)
		}
	}
}

func TestFloat(t *testing.T) {
	for text, want := range map[string]float64{
		"0": 0, "-1/3": -1.0 / 3, "sqrt(2)": math.Sqrt2, "1/2 + sqrt(5)/2": math.Phi, "1 - sqrt(2)": 1 - 1.4142135623730950488,
	} {
		if got := num(t, text).Float(); got != want {
			t.Errorf("%s: %v, want %v", text, got, want)
		}
	}
	huge, _ := FromDecimal(decimal.New(-1, 400))
	if !math.IsInf(huge.Float(), -1) {
		t.Errorf("−10^400 as a float: %v", huge.Float())
	}
}

// Whatever is done to what goes in or comes out, the number stays.
func TestNothingIsShared(t *testing.T) {
	spoil := func(v *big.Int) {
		for i := range v.Bits() {
			v.Bits()[i] ^= 0x55
		}
		v.Add(v, big.NewInt(99))
	}
	spoilRat := func(r *big.Rat) { spoil(r.Num()); spoil(r.Denom()) }
	for _, text := range []string{
		"7", "-20/3", "123456789012345678901234567890", "1/123456789012345678901234567890", "5*sqrt(2)/2",
		"1/2 + 3*sqrt(2)/4 - sqrt(3)", "123456789012345678901234567890*sqrt(7)/11",
	} {
		a := num(t, text)
		results := []Num{a.Neg(), a.Abs(), a.Add(Int(0)), a.Mul(Int(1)), a.Sub(Int(0)), a.Square(), Sum(a), Max(a, a.Neg())}
		results = append(results, a.Add(num(t, "sqrt(2)")), a.Add(a.Neg()), a.MarkInexact())
		want := make([]string, len(results))
		for i, b := range results {
			want[i] = b.String()
		}
		for _, b := range append(results, a) {
			if r, ok := b.Rat(); ok {
				spoilRat(r)
			}
			spoil(b.Floor())
			spoil(b.ToDecimal(3).Coefficient())
			spoil(b.ToDecimal(3).BigInt())
		}
		if a.String() != text {
			t.Errorf("%s became %v", text, a)
		}
		for i, b := range results {
			if b.String() != want[i] {
				t.Errorf("%s became %v", want[i], b)
			}
		}
	}
	r := big.NewRat(20, 3)
	wide, _ := newRat("123456789012345678901234567890/11")
	a, b := FromRat(r), FromRat(wide)
	spoilRat(r)
	spoilRat(wide)
	if a.String() != "20/3" || b.String() != "123456789012345678901234567890/11" {
		t.Errorf("FromRat kept the fraction it was given: %v, %v", a, b)
	}
}

func TestConstantsStay(t *testing.T) {
	r, _ := Sin(Int(30)).Rat()
	r.SetInt64(7)
	Sin(Int(45)).Mul(Sin(Int(75))).Floor().SetInt64(7)
	Int(1).Floor().SetInt64(7)
	if Sin(Int(30)).String() != "1/2" || Sin(Int(45)).String() != "sqrt(2)/2" || one.Int64() != 1 {
		t.Error("a table of constants was changed from outside")
	}
}
