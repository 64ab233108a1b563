package figure

import (
	"math"
	"testing"
)

// TestHead: a head points to the nearest eighth of a turn; only along an axis is it open.
func TestHead(t *testing.T) {
	t.Parallel()
	known := []rune("►↗▲↖◄↙▼↘")
	assumed := []rune(">↗∧↖<↙∨↘")
	for i := range known {
		for _, off := range []float64{-22, -10, 0, 10, 22} {
			angle := (float64(i)*45 + off) * math.Pi / 180
			v := Direction{X: math.Cos(angle), Y: math.Sin(angle)}
			if got := Head(v, false); got != known[i] {
				t.Errorf("%g° from %d eighths: %c, want %c", off, i, got, known[i])
			}
			if got := Head(v, true); got != assumed[i] {
				t.Errorf("%g° from %d eighths, assumed: %c, want %c", off, i, got, assumed[i])
			}
		}
	}
}

// TestSideToward: what is as steep as it is level counts as upright.
func TestSideToward(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		v    Direction
		want Sides
	}{
		{Direction{X: 2, Y: 1}, AtRight}, {Direction{X: -2, Y: 1}, AtLeft}, {Direction{X: 1, Y: 2}, Above},
		{Direction{X: 1, Y: -2}, Below}, {Direction{X: 1, Y: 1}, Above}, {Direction{X: -1, Y: -1}, Below},
		{Direction{X: 1}, AtRight}, {Direction{X: -1}, AtLeft},
	} {
		if got := SideToward(c.v); got != c.want {
			t.Errorf("%v: side %v, want %v", c.v, got, c.want)
		}
	}
}
