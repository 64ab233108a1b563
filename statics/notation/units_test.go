package notation

import (
	"testing"

	"unpin/statics/exact"
)

// NIST Special Publication 811 (2008), appendix B.8, prints these factors to the figures given here; those it sets in bold
// are exact. Those of mm and cm are the SI prefixes (SP 811, table 5).
var published = []struct {
	unit  string
	d     Dimension
	si    string
	exact bool
}{
	{"ft", Length, "0.3048", true},
	{"in", Length, "0.0254", true},
	{"mm", Length, "0.001", true},
	{"cm", Length, "0.01", true},
	{"lbf", Force, "4.448222", false},
	{"kip", Force, "4448.222", false},
	{"kN", Force, "1000", true},
	{"MN", Force, "1000000", true},
	{"lbf·ft", Moment, "1.355818", false},
	{"lbf·in", Moment, "0.1129848", false},
	{"lbf/ft", Intensity, "14.59390", false},
	{"lbf/in", Intensity, "175.1268", false},
}

func TestFactorsAreThoseOfSP811(t *testing.T) {
	for _, p := range published {
		k, err := Factor(p.unit, Units{"N", "m"}, p.d)
		if err != nil {
			t.Fatal(err)
		}
		figures := 7
		if got := k.Figures(figures); !p.exact && got != p.si {
			t.Errorf("1 %s is %s in SI units to %d figures, not %s", p.unit, got, figures, p.si)
		}
		if p.exact && !k.Equal(exact.MustParse(p.si)) {
			t.Errorf("1 %s is %s in SI units, not %s", p.unit, k, p.si)
		}
	}
}

// SP 811 defines the pound-force by the pound, 0.45359237 kg, and standard gravity, 9.80665 m/s²; both are exact.
func TestPoundForceIsExact(t *testing.T) {
	k, err := Factor("lb", Units{"N", "m"}, Force)
	if want := exact.MustParse("0.45359237").Mul(exact.MustParse("9.80665")); err != nil || !k.Equal(want) {
		t.Errorf("1 lb is %s N, not %s (%v)", k, want, err)
	}
}

// Every spelling of a unit is the same unit.
func TestSpellings(t *testing.T) {
	for _, c := range []struct {
		d     Dimension
		u     Units
		words []string
	}{
		{Moment, Units{"kN", "m"}, []string{"kN·m", "kNm", "kN m", "kN*m", "kN.m", "kN-m", "kN⋅m", "kN × m", "m·kN", "KNm", "kN·metres"}},
		{Moment, Units{"kip", "ft"}, []string{"kip·ft", "k-ft", "kip-ft", "ft-kip", "ft-kips", "kipft", "kft", "ft·k", "KIP FT", "kip ft."}},
		{Moment, Units{"lb", "ft"}, []string{"lb·ft", "ft·lb", "ft-lb", "lb-ft", "lbft", "ftlb", "lbf ft", "ft lbf", "lbs-ft", "ft.lb"}},
		{Moment, Units{"lb", "in"}, []string{"lb·in", "in·lb", "in-lb", "lb-in", "inlb", "in. lb.", "lb.-in."}},
		{Moment, Units{"N", "mm"}, []string{"N·mm", "Nmm", "N mm"}},
		{Intensity, Units{"kN", "m"}, []string{"kN/m", "N/mm", "KN/M", "kN per m"}},
		{Intensity, Units{"lb", "ft"}, []string{"lb/ft", "plf", "lbf/ft", "lbs/ft", "PLF"}},
		{Intensity, Units{"kip", "ft"}, []string{"kip/ft", "klf", "k/ft", "kips/ft"}},
		{Intensity, Units{"lb", "in"}, []string{"lb/in", "pli"}},
		{Force, Units{"lb", "ft"}, []string{"lb", "lbf", "lbs", "pounds", "lb.", "LB"}},
		{Force, Units{"kip", "ft"}, []string{"kip", "kips", "k", "KIP", "kipf"}},
		{Length, Units{"kN", "m"}, []string{"m", "metre", "metres", "meter", "meters", "M"}},
		{Length, Units{"lb", "ft"}, []string{"ft", "foot", "feet", "FT", "ft."}},
		{Length, Units{"lb", "in"}, []string{"in", "inch", "inches", "in."}},
		{Degrees, Units{"kN", "m"}, []string{"deg", "°", "degrees", "degree"}},
		{Force, Units{"P", "L"}, []string{"P", "p"}},
		{Moment, Units{"P", "L"}, []string{"PL", "P·L", "LP", "P L"}},
		{Intensity, Units{"P", "L"}, []string{"P/L"}},
	} {
		for _, word := range append(c.words, c.u.Of(c.d), c.u.ASCII(c.d)) {
			if k, err := Factor(word, c.u, c.d); err != nil || !k.Equal(exact.Int(1)) {
				t.Errorf("one %s is %s %s: %v", word, k, c.u.Of(c.d), err)
			}
		}
	}
}

func TestFactor(t *testing.T) {
	transcript(t, "factors.txt", func(s setting, text string) string {
		k, err := Factor(text, s.units, s.want)
		if err != nil {
			return faultText(err, text)
		}
		return k.String()
	})
}

func TestParseUnits(t *testing.T) {
	transcript(t, "units.txt", func(_ setting, text string) string {
		u, err := ParseUnits(text)
		if err != nil {
			return faultText(err, text)
		}
		if again, err := ParseUnits(u.String()); err != nil || again != u {
			return "NOT READ AGAIN: " + u.String()
		}
		line := u.String()
		for _, d := range []Dimension{Pure, Force, Length, Moment, Intensity, Degrees} {
			line += " | " + u.Of(d)
			if u.ASCII(d) != u.Of(d) {
				line += " (" + u.ASCII(d) + ")"
			}
		}
		if u.Letters() {
			line += " | letters"
		}
		return line
	})
}

// A unit is foreign where a problem's own of that dimension belongs to the other system.
func TestForeign(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ units, text, want string }{
		{"kN m", "h - k - r", ""}, {"kN m", "3 k", ""}, {"kN m", "3 kip - k", "kip"}, // k is a name here
		{"kN m", "40 kip", "kip"}, {"kN m", "12000 N", ""}, {"kN m", "2 MN + 300 mm", ""}, {"kN m", "8 kN/ft", "ft"}, {"kN m", "3 kft", "kft"},
		{"kN m", "30deg", ""}, {"kN m", "h/2", ""}, {"N mm", "5 kNm", ""}, {"MN m", "5 lb", "lb"}, {"kip ft", "5 kN", "kN"}, {"kip ft", "6 in", ""},
		{"kip ft", "2 lb/in", ""}, {"kip m", "3 ft", "ft"}, {"kip m", "3 kip", ""}, {"P L", "3 P", ""}, {"lb in", "2 klf", ""}, {"lb in", "200 Nm", "Nm"},
	} {
		u, err := ParseUnits(c.units)
		if err != nil {
			t.Fatal(err)
		}
		if got := u.Foreign(c.text, map[string]exact.Num{"k": exact.Int(2)}); got != c.want {
			t.Errorf("in %s the foreign unit of %q is %q, not %q", c.units, c.text, got, c.want)
		}
	}
}
