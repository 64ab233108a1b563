package notation

import (
	"fmt"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/exact"
)

var allUnits = []Units{{"kN", "m"}, {"N", "mm"}, {"MN", "m"}, {"lb", "ft"}, {"kip", "in"}, {"P", "L"}}

var allDimensions = []Dimension{Pure, Force, Length, Moment, Intensity, Degrees}

// rationals are fractions with small parts.
func rationals() *rapid.Generator[exact.Num] {
	return rapid.Custom(func(t *rapid.T) exact.Num {
		n, d := rapid.Int64Range(-99999, 99999).Draw(t, "n"), rapid.Int64Range(1, 999).Draw(t, "d")
		return exact.FromRat(big.NewRat(n, d))
	})
}

// What Value writes, ReadAnswer reads: the same number, rounded to the figures; in letters the very number.
func TestValueReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rationals().Draw(t, "n")
		u, d := rapid.SampledFrom(allUnits).Draw(t, "u"), rapid.SampledFrom(allDimensions).Draw(t, "d")
		figures := rapid.IntRange(1, 8).Draw(t, "figures")
		text := Value(n, d, u, figures)
		for _, form := range []string{text, Pretty(text), ASCII(text)} {
			a, err := ReadAnswer(form, u, d)
			if err != nil {
				t.Fatalf("%q: %v", form, err)
			}
			want := exact.MustParse(n.Figures(figures))
			if u.Letters() && d != Pure && d != Degrees {
				want = n
			}
			if !a.Value.Equal(want) {
				t.Fatalf("%q reads as %s, not %s", form, a.Value, want)
			}
		}
	})
}

// A unit of another system and the factor undo each other.
func TestConversionThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		measured := rapid.SampledFrom(allUnits[:len(allUnits)-1])
		u, v := measured.Draw(t, "u"), measured.Draw(t, "v")
		d := rapid.SampledFrom(allDimensions[1:]).Draw(t, "d")
		there, err := Factor(u.Of(d), v, d)
		back, err2 := Factor(v.Of(d), u, d)
		if err != nil || err2 != nil || !there.Mul(back).Equal(one) {
			t.Fatalf("%s to %s and back is %s (%v, %v)", u.Of(d), v.Of(d), there.Mul(back), err, err2)
		}
	})
}

// The coefficients of a typed sum are the differences that its forces make when they are put in as numbers.
func TestSumIsLinear(t *testing.T) {
	forces := []string{"Ax", "By", "Cy.CD"}
	known := func(name string) bool { return oneOf(forces, name) }
	rapid.Check(t, func(t *rapid.T) {
		left, right := linear(forces).Draw(t, "left"), linear(forces).Draw(t, "right")
		s, err := ReadSum(left+" = "+right, Units{"kN", "m"}, known)
		if err != nil {
			t.Fatal(left, right, err)
		}
		values := map[string]exact.Num{}
		for _, f := range forces {
			values[f] = rationals().Draw(t, f)
		}
		sum := s.Coefficient("")
		for _, f := range forces {
			sum = sum.Add(s.Coefficient(f).Mul(values[f]))
		}
		if want := put(t, left, values).Sub(put(t, right, values)); !sum.Equal(want) {
			t.Fatalf("%s = %s comes to %s, not %s", left, right, sum, want)
		}
	})
}

// linear are sums of products of numbers with at most one force in each.
func linear(forces []string) *rapid.Generator[string] {
	forms := []string{"2*%s", "2.5%s", "(%s)*3/2", "%s", "3(%s - 1)", "-%s", "7/2", "1.5*(2 + 1)", "(%s + 2*3)/4", "4*-%s", "-(%s)", "-(2+1)*3"}
	return rapid.Custom(func(t *rapid.T) string {
		text := "1"
		for range rapid.IntRange(1, 5).Draw(t, "terms") {
			form := rapid.SampledFrom(forms).Draw(t, "form")
			if f := rapid.SampledFrom(forces).Draw(t, "force"); form != "7/2" && form != "1.5*(2 + 1)" && form != "-(2+1)*3" {
				form = fmt.Sprintf(form, f)
			}
			text += rapid.SampledFrom([]string{" + ", " - "}).Draw(t, "sign") + form
		}
		return text
	})
}

// put is what a side comes to with numbers for its forces.
func put(t *rapid.T, text string, values map[string]exact.Num) exact.Num {
	names := map[string]exact.Num{"Ax": values["Ax"], "By": values["By"], "Cy_CD": values["Cy.CD"]}
	n, err := ReadNumber(replaceDot(text), names, Units{"kN", "m"}, Force)
	if err != nil {
		t.Fatal(text, err)
	}
	return n
}

// replaceDot gives the force Cy.CD a name without a point.
func replaceDot(text string) string {
	out := []byte(text)
	for i := 1; i+1 < len(out); i++ {
		if out[i] == '.' && out[i-1] == 'y' {
			out[i] = '_'
		}
	}
	return string(out)
}

// A number of digits alone is read as any other, and is plain unless it is long or begins with an idle zero.
func TestPlainNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`-?[0-9]{1,9}(\.[0-9]{1,9})?`).Draw(t, "text")
		v, plain := PlainNumber(text)
		if want, err := ReadNumber(text, nil, allUnits[0], Any); plain && (err != nil || !v.Equal(want)) {
			t.Fatalf("%q: %s, want %s, %v", text, v, want, err)
		}
	})
	for text, want := range map[string]bool{
		"0": true, "12": true, "-3": true, "0.25": true, "-0.5": true, "12345678901234.5": true,
		"": false, "-": false, ".5": false, "5.": false, "007": false, "1e3": false, "+4": false, "2,5": false, "1.2.3": false, "--1": false,
		"12345678901234567": false, "4 m": false, "3/4": false, "−3": false,
	} {
		if _, plain := PlainNumber(text); plain != want {
			t.Errorf("%q is plain: %t, want %t", text, plain, want)
		}
	}
}
