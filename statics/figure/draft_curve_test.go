package figure

import (
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

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

// TestWithheldStandsAtTheMiddle of a sloping member, where both coordinates count.
func TestWithheldStandsAtTheMiddle(t *testing.T) {
	t.Parallel()
	num := exact.Int
	f := &statics.Frame{
		Joints:  []statics.Joint{{Name: "A", At: statics.Point{X: num(1), Y: num(2)}}, {Name: "B", At: statics.Point{X: num(5), Y: num(10)}}},
		Members: []statics.Member{{Name: "AB", From: 0, To: 1}},
	}
	d := diagramDraft{draft: newDraft(f, Options{}, []bool{true})}
	d.withheld(0)
	if n := len(d.Notes); n != 1 || d.Notes[0].At != (Position{X: 3, Y: 6}) || d.Notes[0].Text != "withheld" {
		t.Errorf("notes %+v", d.Notes)
	}
}
