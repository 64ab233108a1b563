package judging

import (
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
)

// TestSaidTwice: a minus and the sense that it stands for say the same, as in the results of a solution; a minus before the other sense
// turns it. On a member named from left to right V is positive when the forces left of the cut push up, and M when the bottom is stretched.
func TestSaidTwice(t *testing.T) {
	t.Parallel()
	p, there := problems.Library("hillside-garage")
	if !there {
		t.Fatal("no hillside-garage")
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	usual := Judge{Solution: s, Style: p.Style(false)}
	turned := usual
	turned.Style.Shear = notation.CounterClockwiseShear
	force := func(name string) Asked {
		return Asked{Name: name, Dim: notation.Force, Force: &s.Forces[ForceNamed(s.Assembly, name)]}
	}
	level := statics.Vector{X: p.Frame.Joints[3].At.X}
	axial := Asked{Name: "N", Dim: notation.Force, Axial: true, Span: level}
	shear := Asked{Name: "V", Dim: notation.Force, Shear: true, Span: level}
	moment := Asked{Name: "M", Dim: notation.Moment, Bends: true, Span: level}
	for _, k := range []struct {
		judge      Judge
		asked      Asked
		line, want string
	}{
		{usual, force("Cx"), "12 left", "-12"}, {usual, force("Cx"), "-12 left", "-12"}, {usual, force("Cx"), "−12 kN left", "-12"},
		{usual, force("Cx"), "-12 right", "-12"}, {usual, force("Cx"), "12 right", "12"}, {usual, force("Cx"), "-12", "-12"},
		{usual, force("Cx"), "12 left on CDE", "12"}, {usual, force("Cx"), "-12 left on CDE", "12"}, {usual, force("Cx"), "-12 on CDE", "12"},
		{usual, axial, "-12 compression", "-12"}, {usual, axial, "-12 tension", "-12"}, {usual, axial, "12 tension", "12"},
		{usual, shear, "-14.5 down", "-14.5"}, {usual, shear, "-14.5 up", "-14.5"}, {usual, shear, "14.5 down", "-14.5"},
		{turned, shear, "14.5", "-14.5"}, {turned, shear, "-14.5 up", "14.5"}, {turned, shear, "-14.5 down", "14.5"}, {turned, shear, "14.5 down", "-14.5"},
		{usual, moment, "-27 top", "-27"}, {usual, moment, "-27 tension top", "-27"}, {usual, moment, "-27 bottom", "-27"}, {usual, moment, "27 top", "-27"},
	} {
		v, err := k.judge.Read(k.asked, k.line)
		if err != nil {
			t.Errorf("%s = %s: %v", k.asked.Name, k.line, err)
		} else if got := v.Value.Decimal(3); got != k.want {
			t.Errorf("%s = %s is read as %s, not %s", k.asked.Name, k.line, got, k.want)
		}
	}
}
