package slip

import (
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// The angle of a direction is found where it is of whole tenths of a degree.
func TestDegreesOf(t *testing.T) {
	t.Parallel()
	for _, r := range []struct {
		deg, acute, direction string
	}{
		{"30", "30", "30"}, {"250", "70", "250"}, {"12.5", "12.5", "12.5"}, {"163", "17", "163"}, {"-36.9", "36.9", "323.1"}, {"36.87", "", ""},
	} {
		deg := exact.MustParse(r.deg)
		v := statics.Vector{X: exact.Cos(deg), Y: exact.Sin(deg)}
		acute, ok := degreesOf(v)
		if ok != (r.acute != "") {
			t.Errorf("%s: found %v, %s", r.deg, ok, acute)
		}
		if ok && (!acute.Equal(exact.MustParse(r.acute)) || !turnedInto(v, acute).Equal(exact.MustParse(r.direction))) {
			t.Errorf("%s: %s from the axis, %s around", r.deg, acute, turnedInto(v, acute))
		}
	}
	if _, ok := degreesOf(statics.Vector{X: exact.Int(3), Y: exact.Int(4)}); ok {
		t.Error("3:4 has an angle of whole tenths of a degree")
	}
}
