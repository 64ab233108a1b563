package statics

import (
	"fmt"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// TestPulls holds where a rope leaves its wheel, of radius 2 about (10, 20), worked by hand: perpendicular to the way out from the middle, on the
// side away from the rope's other end.
func TestPulls(t *testing.T) {
	for _, c := range []struct{ along, second, places string }{
		{"0 -1", "-1 0", "12 20, 10 22"}, // from the left over the top, and down
		{"-1 0", "0 -1", "10 22, 12 20"},
		{"0 -1", "1 0", "8 20, 10 22"},  // from the right over the top
		{"0 1", "-1 0", "12 20, 10 18"}, // from the left under it, and up
		{"0 -1", "0 -1", "12 20, 8 20"}, // both ends down: over the top
		{"0 1", "0 1", "8 20, 12 20"},
		{"-1 0", "-1 0", "10 18, 10 22"},
		{"0 -1", "-4 3", "12 20, 56/5 108/5"},   // up to the left: 2·(3, 4)/5 from the middle
		{"0 -5", "4 3", "8 20, 44/5 108/5"},     // 2·(−3, 4)/5
		{"3 4", "-3 4", "58/5 94/5, 42/5 94/5"}, // hung up: under the wheel
		{"1 0", "-4 3", "10 18, 44/5 92/5"},     // nearly straight on: both below
	} {
		b := builder{words: strings.Fields(c.along + " " + c.second)}
		l := Load{Kind: RopeLoad, Size: exact.Int(7), Along: b.direction(), Second: b.direction(), Radius: exact.Int(2)}
		var places string
		var turn exact.Num
		for i, p := range l.Pulls() {
			at := Point{exact.Int(10), exact.Int(20)}.Plus(p.Off)
			if i > 0 {
				places += ", "
			}
			places += fmt.Sprint(at.X, " ", at.Y)
			u, _ := p.Along.unit()
			turn = turn.Add(p.Off.Cross(u))
			if !p.Off.Dot(p.Along).IsZero() || !p.Off.Length().Equal(l.Radius) {
				t.Errorf("%s and %s: the rope is not tangent at %s", c.along, c.second, places)
			}
		}
		if places != c.places || !turn.IsZero() {
			t.Errorf("%s and %s: at %s, want %s; turning %s", c.along, c.second, places, c.places, turn)
		}
	}
}

// TestWheelsTakenOff changes the radius of every wheel of random frames, or takes it off and puts the two pulls on its joint: no
// force, and nowhere N, V or M, is changed by it.
func TestWheelsTakenOff(t *testing.T) {
	t.Parallel()
	ropes := 0
	overSeeds(t, 250, 100, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		other, bare := clone(f), clone(f)
		bare.Loads = nil
		for i, l := range f.Loads {
			if l.Kind != RopeLoad {
				bare.Loads = append(bare.Loads, l)
				continue
			}
			ropes++
			other.Loads[i].Radius = l.Radius.Add(exact.Int(1)).Mul(exact.Int(3))
			first, second := l, l
			first.Kind, second.Kind, second.Along = PointLoad, PointLoad, l.Second
			bare.Loads = append(bare.Loads, first, second)
		}
		for _, g := range []Frame{other, bare} {
			r, err := Solve(g)
			if err != nil {
				return err
			}
			if err := answersOf(r).same(answersOf(s), unchanged, keep); err != nil {
				return err
			}
		}
		return nil
	})
	t.Logf("%d ropes", ropes)
	if ropes < 30 && !testing.Short() {
		t.Errorf("only %d ropes", ropes)
	}
}

// TestUnfitRopes holds what is said of ropes that cannot be.
func TestUnfitRopes(t *testing.T) {
	for entry, want := range map[string]string{
		"rope 5 0 -1 0 1 1 at B":    "load 1 is a rope that does not bend round its wheel",
		"rope 5 0 -1 0 0 1 at B":    "load 1 is a rope that needs a second direction",
		"rope 5 0 -1 1 0 -1 at B":   "load 1 is a rope over a wheel of negative radius",
		"rope 5 0 -1 1 0 1 on AB 2": "load 1 is a rope, whose wheel needs a joint",
	} {
		_, err := Cut(build(t, "joint A 0 0\njoint B 4 0\nmember AB A B\nsupport A fixed\n"+entry))
		if err == nil || err.Error() != want {
			t.Errorf("%s: %v, want %s", entry, err, want)
		}
	}
}
