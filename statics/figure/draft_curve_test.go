package figure

import "testing"

// TestCurveAt: the place at a share of a sloping member, where both coordinates count.
func TestCurveAt(t *testing.T) {
	t.Parallel()
	c := Curve{From: Position{X: 1, Y: 2}, To: Position{X: 5, Y: 10}}
	for share, want := range map[float64]Position{0: {X: 1, Y: 2}, 0.25: {X: 2, Y: 4}, 0.5: {X: 3, Y: 6}, 1: {X: 5, Y: 10}} {
		if got := c.at(share); got != want {
			t.Errorf("at %g: %v, want %v", share, got, want)
		}
	}
}
