package exact

import (
	"fmt"
	"math"
	"math/big"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"
)

func TestRoundingTable(t *testing.T) {
	checkAnswers(t, "testdata/rounding.txt", 1, func(t *testing.T, question []string) string {
		a := num(t, question[0])
		return strings.Join([]string{a.Decimal(6), a.Places(2), a.Places(-1), a.Figures(3)}, " | ")
	})
}

// big.Rat.FloatString rounds half away from zero too.
func TestPlacesAgreesWithBigRat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, n := drawRat(t, "r"), rapid.IntRange(0, 40).Draw(t, "places")
		want := r.FloatString(n)
		if strings.Trim(want, "-0.") == "" {
			want = strings.TrimPrefix(want, "-")
		}
		if got := FromRat(r).Places(n); got != want {
			t.Fatalf("%v to %d places: %s, want %s", r, n, got, want)
		}
	})
}

// A half is always rounded away from zero, and what is a hair off a half goes
// to the nearer side.
func TestHalves(t *testing.T) {
	hair := num(t, "1/1000000000000000000000000000000000000000000000")
	rapid.Check(t, func(t *rapid.T) {
		m, places := rapid.Int64Range(0, 1e9).Draw(t, "m"), rapid.IntRange(-6, 6).Draw(t, "places")
		unit := fraction(pow10(-places))
		a := Int(m).scale(unit.r()).Add(unit.scale(half))
		up, down := Int(m+1).scale(unit.r()), Int(m).scale(unit.r())
		for _, c := range []struct{ a, want Num }{
			{a, up}, {a.Add(hair), up}, {a.Sub(hair), down}, {a.Neg(), up.Neg()}, {a.Neg().Add(hair), down.Neg()},
		} {
			if got := parsed(t, c.a.Places(places)); !got.Equal(c.want) {
				t.Fatalf("%v to %d places: %v, want %v", c.a, places, got, c.want)
			}
		}
	})
}

// Figures keeps exactly n digits, unless the last is left of the point, and is
// within half a unit of the last.
func TestFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawTwin(t, 1)
		n := rapid.IntRange(1, 30).Draw(t, "figures")
		if a.n.IsZero() {
			t.Skip("no figures")
		}
		text := a.n.Figures(n)
		places := n - 1 - a.n.exponent()
		if gap := parsed(t, text).Sub(a.n).Abs(); gap.scale(pow10(places)).Cmp(fraction(half)) > 0 {
			t.Fatalf("%v to %d figures: %s", a.n, n, text)
		}
		digits := strings.TrimLeft(strings.ReplaceAll(text, ".", ""), "-0")
		if strings.Contains(text, ".") && len(digits) != n || len(digits) < n {
			t.Fatalf("%v to %d figures: %s", a.n, n, text)
		}
	})
}

// Decimal is exact where it can be, else right to its last digit, and never
// ends in a zero after the point.
func TestDecimal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawTwin(t, 1)
		sig := rapid.IntRange(1, 50).Draw(t, "digits")
		text := a.n.Decimal(sig)
		if strings.Contains(text, ".") && strings.HasSuffix(text, "0") || strings.ContainsAny(text, "eE+") {
			t.Fatalf("%v: %s", a.n, text)
		}
		back := parsed(t, text)
		if a.n.Terminates() {
			if !back.Equal(a.n) {
				t.Fatalf("%v: %s", a.n, text)
			}
			return
		}
		unit := pow10(sig - 1 - a.n.exponent())
		if back.Sub(a.n).Abs().scale(unit).Cmp(fraction(half)) > 0 {
			t.Fatalf("%v to %d digits: %s", a.n, sig, text)
		}
	})
}

func TestToDecimal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, n := drawTwin(t, 1).n, rapid.Int32Range(-5, 40).Draw(t, "places")
		want := decimal.RequireFromString(a.Places(int(n)))
		if got := a.ToDecimal(n); !got.Equal(want) {
			t.Fatalf("%v to %d places: %v, want %v", a, n, got, want)
		}
	})
}

func TestFloor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawTwin(t, 2).n
		floor := FromRat(new(big.Rat).SetInt(a.Floor()))
		if gap := a.Sub(floor); gap.Sign() < 0 || gap.Cmp(Int(1)) >= 0 {
			t.Fatalf("⌊%v⌋ = %v", a, floor)
		}
	})
}

// A sum of roots as near to a whole number as 1e−16 and 1e−50 needs more than
// the first precision: (√5−2)ⁿ = aₙ − bₙ√5 is small though aₙ is large.
func TestSmallDifferencesOfRoots(t *testing.T) {
	small := num(t, "-2 + sqrt(5)")
	a, oracle := Int(1), newFloat().SetInt64(1)
	step := newFloat().Sub(newFloat().Sqrt(newFloat().SetInt64(5)), newFloat().SetInt64(2))
	for n := 1; n <= 80; n++ {
		a, oracle = a.Mul(small), newFloat().Mul(oracle, step)
		if a.Sign() != 1 || a.Floor().Sign() != 0 || a.Neg().Floor().Int64() != -1 {
			t.Errorf("(√5−2)^%d: sign %d, floor %v", n, a.Sign(), a.Floor())
		}
		want, exponent := oracle.Text('e', 9), a.exponent()
		mantissa := strings.Split(want, "e")[0]
		if got := a.scale(pow10(-exponent)).Places(9); got != mantissa || !strings.HasSuffix(want, fmt.Sprintf("e-%02d", -exponent)) {
			t.Errorf("(√5−2)^%d = %s·10^%d, want %s", n, got, exponent, want)
		}
	}
}

// Counts of digits out of all reason are held to a bound.
func TestRoundingIsBounded(t *testing.T) {
	for _, text := range []string{"0", "20/3", "-20/3", "sqrt(2)", "1/2"} {
		a := num(t, text)
		for _, n := range []int{math.MaxInt, math.MinInt, math.MaxInt32, math.MinInt32, 1001, -1001} {
			for _, s := range []string{a.Places(n), a.Figures(n), a.Decimal(n), a.ToDecimal(int32(n)).String()} {
				if len(s) > maxExponent+10 {
					t.Errorf("%s to %d places or figures has %d characters", text, n, len(s))
				}
			}
		}
	}
	if got := num(t, "20/3").Places(-2000); got != "0" {
		t.Errorf("20/3 to the nearest 10^2000: %s", got)
	}
	if got := num(t, "20/3").Figures(-3); got != "7" {
		t.Errorf("20/3 to −3 figures: %s", got)
	}
}
