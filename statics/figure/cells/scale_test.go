package cells

import (
	"testing"

	"unpin/statics/figure"
)

// TestSnap: equal bays come out equal where 12 % of the scale can buy it, and the scale never changes by more.
func TestSnap(t *testing.T) {
	bays := func(widths ...float64) []figure.Station {
		list, x := []figure.Station{{At: 0, Gap: 4}}, 0.0
		for _, w := range widths {
			x += w
			list = append(list, figure.Station{At: x, Gap: 4})
		}
		return list
	}
	for _, c := range []struct {
		name  string
		list  []figure.Station
		scale float64
	}{
		{"two equal", bays(4, 4), 8.88},
		{"three equal", bays(5, 5, 5), 4.7},
		{"mirrored", bays(2, 3, 3, 2), 7.3},
		{"six equal", bays(6, 6, 6, 6, 6, 6), 1.62},
		{"one", bays(7), 9.99},
	} {
		r := snap(c.list, c.scale, 4)
		if uneven(r) != 0 {
			t.Errorf("%s: bays come out at %v", c.name, r.Steps)
		}
		if r.Scale > c.scale || r.Scale < c.scale*(1-maxShrink) {
			t.Errorf("%s: the scale went from %v to %v", c.name, c.scale, r.Scale)
		}
	}
}
