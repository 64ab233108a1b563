package notation

import "testing"

func TestReadPreferences(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ text, want, fault string }{
		{"moments=cw", "moments=cw", ""},
		{" moments = clockwise , shear=ccw", "moments=cw,shear=counter-clockwise", ""},
		{"figures=4,decimal=comma", "figures=4,decimal=comma", ""},
		{"", "", `"" is no convention and its word: write such as moments=cw,shear=counter-clockwise`},
		{"cw", "", `"cw" is no convention and its word: write such as moments=cw,shear=counter-clockwise`},
		{"moments=cw,", "", `"" is no convention and its word: write such as moments=cw,shear=counter-clockwise`},
		{"moments=left", "", `moments cannot be "left": write ccw or cw`},
		{"colour=red", "", `there is no convention "colour": they are figures, moments, shear, side, decimal and two-force`},
		{"moments=cw,moments=ccw", "", "moments is settled twice: settle it once"},
	} {
		p, err := ReadPreferences(c.text)
		switch {
		case err == nil && c.fault != "" || err != nil && err.Error() != c.fault:
			t.Errorf("%q: fault %v, want %q", c.text, err, c.fault)
		case p.String() != c.want:
			t.Errorf("%q: %q, want %q", c.text, p, c.want)
		}
	}
}

// What is preferred wins over a problem's conventions, the latest word over earlier ones, and the rest stays.
func TestPreferencesOver(t *testing.T) {
	t.Parallel()
	first, _ := ReadPreferences("moments=cw,side=compression")
	then, _ := ReadPreferences("moments=ccw,figures=5")
	problem := Conventions{Figures: 4, Moments: ClockwiseMoments, Shear: CounterClockwiseShear}
	want := Conventions{Figures: 5, Shear: CounterClockwiseShear, Side: CompressionSide}
	if got := first.With(then).Over(problem); got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got := Preferences(nil).Over(problem); got != problem || first.String() != "moments=cw,side=compression" {
		t.Errorf("no preference gives %s, and the first are now %s", got, first)
	}
}
