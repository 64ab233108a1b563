package notation

import (
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// Each line of values.txt is an expression; the third field of the setting is the significant figures.
func TestValue(t *testing.T) {
	transcript(t, "values.txt", func(s setting, text string) string {
		n, err := ReadNumber(text, nil, Units{}, Any)
		if err != nil {
			return faultText(err, text)
		}
		figures := int(exact.MustParse(s.forms[0]).Float())
		value := Value(n, s.want, s.units, figures)
		return value + " | " + Pretty(value) + " | " + ASCII(value)
	})
}

func TestNumber(t *testing.T) {
	for _, c := range []struct {
		n       string
		figures int
		want    string
	}{
		{"9.5", 3, "9.5"}, {"36", 3, "36"}, {"36", 1, "40"}, {"46/3", 4, "15.33"}, {"46/3", 3, "15.3"}, {"2/3", 3, "0.667"},
		{"106.16", 3, "106"}, {"1234.6", 3, "1230"}, {"-0.05", 3, "-0.05"}, {"0", 3, "0"}, {"9.996", 3, "10.0"},
		{"9.9999999", 3, "10.0"}, {"1000", 3, "1000"}, {"14.25", 3, "14.3"}, {"14.25", 4, "14.25"}, {"100/3", 3, "33.3"},
		{"59/1000", 3, "0.059"}, {"-2/3", 1, "-0.7"}, {"9.5", 0, "10"},
	} {
		if got := Number(exact.MustParse(c.n), c.figures); got != c.want {
			t.Errorf("Number(%s, %d) = %s, want %s", c.n, c.figures, got, c.want)
		}
	}
}

func TestPrettyAndASCII(t *testing.T) {
	if got := Pretty("-9.5 kN"); got != "−9.5 kN" {
		t.Error(got)
	}
	if got := ASCII("−9.5 kN·m, 30°, 2×√3"); got != "-9.5 kN.m, 30 deg, 2*sqrt3" {
		t.Error(got)
	}
}

func TestNameMatches(t *testing.T) {
	for _, c := range []struct {
		typed, name string
		want        bool
	}{
		{"Cy", "Cy", true}, {"C_y", "Cy", true}, {"C_y.CD", "Cy.CD", true}, {"Cy.CD", "Cy.CD", true}, {" Cy ", "Cy", true},
		{"F_BD", "FBD", true}, {"FBD", "F_BD", true}, {"B’x", "B'x", true}, {"Cy", "Cy.CD", false}, {"cy", "Cy", false},
		{"Cy.CD", "Cy.DC", false}, {"Cx", "Cy", false}, {"", "Cy", false},
	} {
		if got := NameMatches(c.typed, c.name); got != c.want {
			t.Errorf("NameMatches(%q, %q) = %v", c.typed, c.name, got)
		}
	}
}

func TestSenses(t *testing.T) {
	along := func(x, y string) statics.Force {
		return statics.Force{Along: statics.Vector{X: exact.MustParse(x), Y: exact.MustParse(y)}}
	}
	couple := statics.Force{Couple: true}
	pull := statics.Force{Kind: statics.MemberPull, Along: statics.Vector{X: exact.MustParse("3"), Y: exact.MustParse("4")}}
	for _, c := range []struct {
		f               statics.Force
		plus, minus     string
		agree, disagree []Sense
	}{
		{along("1", "0"), "right", "left", []Sense{Right}, []Sense{Left}},
		{along("0", "1"), "up", "down", []Sense{Up}, []Sense{Down}},
		{along("0", "-2"), "down", "up", []Sense{Down}, []Sense{Up}},
		{along("-3", "4"), "up to the left", "down to the right", []Sense{UpLeft, Up, Left}, []Sense{DownRight, Down, Right}},
		{along("3", "4"), "up to the right", "down to the left", []Sense{UpRight, Up, Right}, []Sense{DownLeft, Down, Left}},
		{couple, "counter-clockwise", "clockwise", []Sense{CounterClockwise}, []Sense{Clockwise}},
		{pull, "tension", "compression", []Sense{Tension}, []Sense{Compression}},
	} {
		if got := SenseOf(c.f, exact.MustParse("7.5")); got != c.plus {
			t.Errorf("%+v acts %q, not %q", c.f, got, c.plus)
		}
		if got := SenseOf(c.f, exact.MustParse("-7.5")); got != c.minus {
			t.Errorf("%+v of negative value acts %q, not %q", c.f, got, c.minus)
		}
		if got := SenseOf(c.f, exact.Num{}); got != "" {
			t.Errorf("nought acts %q", got)
		}
		signs := map[Sense]int{}
		for _, s := range c.agree {
			signs[s] = 1
		}
		for _, s := range c.disagree {
			signs[s] = -1
		}
		for s := NoSense; s <= Compression; s++ {
			if got := SignOf(c.f, s); got != signs[s] {
				t.Errorf("%+v in the sense %q has the sign %d, not %d", c.f, s, got, signs[s])
			}
		}
	}
}

// Every sense reads back from its own words, and its opposite's opposite is itself.
func TestSenseWords(t *testing.T) {
	for s := Up; s <= Compression; s++ {
		a, err := ReadAnswer("9.5 "+s.String(), Units{"kN", "m"}, Force)
		if err != nil || a.Sense != s {
			t.Errorf("%q reads as %q: %v", s, a.Sense, err)
		}
		if s.Opposite() == NoSense || s.Opposite().Opposite() != s {
			t.Errorf("the opposite of %q is %q", s, s.Opposite())
		}
	}
}

// TestNumberOfManyDigits writes numbers longer than any that can be typed, as products of long ones are.
func TestNumberOfManyDigits(t *testing.T) {
	small := exact.MustParse("0." + strings.Repeat("0", 38) + "1")
	for _, c := range []struct {
		n    exact.Num
		want string
	}{
		{small.Mul(small), "0." + strings.Repeat("0", 77) + "1"},
		{small.Mul(exact.MustParse("0.12345")), "0." + strings.Repeat("0", 39) + "123"},
		{exact.MustParse("9.5").Add(small), "9.50"},
	} {
		if got := Number(c.n, 3); got != c.want {
			t.Errorf("%v: %s, not %s", c.n, got, c.want)
		}
	}
}
