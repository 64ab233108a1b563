package notation

import (
	"strings"
	"testing"

	"unpin/statics/exact"
)

// Every word of every convention settles it and it alone, and is written by the first word of its value.
func TestConventionWords(t *testing.T) {
	t.Parallel()
	for _, name := range ConventionNames() {
		written, read := ConventionWords(name)
		for i, word := range written {
			var c Conventions
			if err := c.Set(name, word); err != nil || c.Word(name) != word {
				t.Errorf("%s %s is written %s: %v", name, word, c.Word(name), err)
			}
			if first := i == 0; first != (c.String() == Conventions{}.String()) {
				t.Errorf("%s=%s beside what holds by default: %s", name, word, c)
			}
			for _, other := range ConventionNames() {
				if other != name && c.Word(other) != (Conventions{}).Word(other) {
					t.Errorf("%s=%s changes %s", name, word, other)
				}
			}
		}
		for _, word := range read {
			var c Conventions
			if err := c.Set(name, word); err != nil {
				t.Error(err)
			}
		}
	}
}

// The two words of a turn are one word, whatever is turned.
func TestTurnWords(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"moments", "shear"} {
		for _, same := range [][2]string{{"cw", "clockwise"}, {"ccw", "counter-clockwise"}} {
			var a, b Conventions
			if err := a.Set(name, same[0]); err != nil {
				t.Error(err)
			}
			if err := b.Set(name, same[1]); err != nil || a != b {
				t.Errorf("%s: %s is %s, %s is %s: %v", name, same[0], a, same[1], b, err)
			}
		}
	}
	var c Conventions
	if _ = c.Set("moments", "cw"); c.Moments != ClockwiseMoments {
		t.Error(c)
	}
	if _ = c.Set("shear", "ccw"); c.Shear != CounterClockwiseShear {
		t.Error(c)
	}
}

func TestConventionsSetRefuses(t *testing.T) {
	t.Parallel()
	for _, test := range []struct{ name, word, want string }{
		{"moments", "left", `moments cannot be "left": write ccw or cw`},
		{"shear", "", `shear cannot be "": write clockwise or counter-clockwise`},
		{"figures", "2", `figures cannot be "2": write 3, 4, 5, 6, 7 or 8`},
		{"colour", "red", `there is no convention "colour": they are figures, moments, shear, side, decimal and two-force`},
	} {
		c := Conventions{Figures: 5, Shear: CounterClockwiseShear}
		before := c
		if err := c.Set(test.name, test.word); err == nil || err.Error() != test.want || c != before {
			t.Errorf("%s=%s: %v, and it is %s", test.name, test.word, err, c)
		}
	}
}

func TestConventionValues(t *testing.T) {
	t.Parallel()
	three := exact.Int(3)
	for _, test := range []struct {
		what      string
		got, want exact.Num
	}{
		{"counter-clockwise moments", CounterClockwiseMoments.Value(three), three},
		{"clockwise moments", ClockwiseMoments.Value(three), three.Neg()},
		{"clockwise shear", ClockwiseShear.Value(three), three},
		{"counter-clockwise shear", CounterClockwiseShear.Value(three), three.Neg()},
	} {
		if !test.got.Equal(test.want) {
			t.Errorf("%s: %s, not %s", test.what, test.got, test.want)
		}
	}
	for turn, sense := range map[MomentTurn]Sense{CounterClockwiseMoments: CounterClockwise, ClockwiseMoments: Clockwise} {
		if turn.Positive() != sense || !turn.Value(exact.Int(int64(turn.Sign(1)))).Equal(exact.Int(1)) {
			t.Errorf("%s: positive %s, sign %d", turn, turn.Positive(), turn.Sign(1))
		}
	}
	if text := DecimalComma.In("1.5") + DecimalComma.Between() + DecimalPoint.In("2.5") + DecimalPoint.Between(); text != "1,5; 2.5, " {
		t.Error(text)
	}
}

// A convention's word in a list of all of them stands after its name.
func TestConventionsString(t *testing.T) {
	t.Parallel()
	c := Conventions{Moments: ClockwiseMoments, Side: CompressionSide, Decimal: DecimalComma, TwoForce: TwoForceShortcut}
	const want = "figures=3,moments=cw,shear=clockwise,side=compression,decimal=comma,two-force=shortcut"
	if c.String() != want || strings.Count(want, "=") != len(ConventionNames()) {
		t.Errorf("%s, not %s", c, want)
	}
}
