package statics

import (
	"testing"

	"unpin/statics/exact"
)

// A rigid body in the plane has three independent sums and no more, wherever their centres are.
func TestIndependent(t *testing.T) {
	s, err := Solve(build(t, `
		joint A 0 0
		joint B 6 0
		joint C 9 4
		member AB A B
		member BC B C
		support A pinned
		support C roller 0 1
		point 10 0 -1 on AB 2`))
	if err != nil {
		t.Fatal(err)
	}
	whole := s.Whole()
	x, y := s.ForceSum(whole, east), s.ForceSum(whole, north)
	a, b, c := s.MomentSum(whole, s.Frame.Joints[0].At), s.MomentSum(whole, s.Frame.Joints[1].At), s.MomentSum(whole, s.Frame.Joints[2].At)
	none := func(int) bool { return false }
	rows := []struct {
		name string
		sums []Sum
		want bool
	}{
		{"ΣFx, ΣFy, ΣM", []Sum{x, y, a}, true},
		{"three centres not in a line", []Sum{a, b, c}, true},
		{"a fourth", []Sum{x, y, a, b}, false},
		{"ΣM about A less ΣM about B is 6 ΣFy", []Sum{y, a, b}, false},
		{"the same twice", []Sum{x, x}, false},
	}
	for _, r := range rows {
		if got := s.Independent(r.sums, none); got != r.want {
			t.Errorf("%s: %v, want %v", r.name, got, r.want)
		}
	}
	if known := func(i int) bool { return i == 0 }; s.Independent([]Sum{x}, known) {
		t.Error("a sum without unknowns gives nothing")
	}
	if !x.Factor(0).Equal(exact.Int(1)) {
		t.Error("Ax is the first unknown")
	}
}
