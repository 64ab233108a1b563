package statics

import (
	"fmt"
	"reflect"
	"testing"
)

// TestSidesOfPins compares the groups into which a frame falls at each joint with those that are found by joining, one
// after the other, the bodies between which anything else passes; also where two-force members were taken out.
func TestSidesOfPins(t *testing.T) {
	t.Parallel()
	seen := map[int]int{}
	check := func(a *Assembly) error {
		h := a.hanging()
		for j := range a.Frame.Joints {
			got, want := h.sides(j), sidesByJoining(a, j)
			if got == nil { // nothing is cut off
				got = []FreeBody{a.Whole()}
			}
			if seen[len(want)]++; !reflect.DeepEqual(got, want) {
				return fmt.Errorf("cut at %s: the sides are %v, not %v", a.Frame.Joints[j].Name, got, want)
			}
		}
		return nil
	}
	overSeeds(t, 2000, 400, func(f Frame) error {
		s, err := Solve(f)
		if err != nil {
			return err
		}
		if short := s.WithPulls(); short != nil {
			if err := check(short.Assembly); err != nil {
				return err
			}
		}
		return check(s.Assembly)
	})
	if seen[1] < 100 || seen[2] < 100 || seen[3] < 10 {
		t.Errorf("cuts by the number of sides: %v", seen)
	}
}

// sidesByJoining are the connected groups into which all bodies fall when what passes at a joint is cut.
func sidesByJoining(a *Assembly, cut int) []FreeBody {
	u := newUnion(a.Bodies())
	for _, f := range a.Forces {
		if f.By != None && f.Joint != cut {
			u.join(f.On, f.By)
		}
	}
	var sides []FreeBody
	at := map[int]int{}
	for b := range a.Bodies() {
		root := u.find(b)
		if _, seen := at[root]; !seen {
			at[root] = len(sides)
			sides = append(sides, nil)
		}
		sides[at[root]] = append(sides[at[root]], b)
	}
	return sides
}
