package statics

import (
	"fmt"
	"reflect"
	"slices"
	"testing"
)

// TestSidesOfPins compares the groups into which a frame falls at each joint with those that are found by joining, one
// after the other, the bodies between which anything else passes; also where two-force members were taken out.
func TestSidesOfPins(t *testing.T) {
	t.Parallel()
	seen := map[int]int{}
	check := func(a *Assembly) error {
		h := a.hanging(None)
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

// sidesByJoining are the connected groups into which all bodies fall when what passes at some joints is cut.
func sidesByJoining(a *Assembly, cut ...int) []FreeBody {
	u := newUnion(a.Bodies())
	for _, f := range a.Forces {
		if f.By != None && !slices.Contains(cut, f.Joint) {
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

// TestSidesOfPairs compares the sides of pairs of pins with those found by joining, pair by pair, in random frames.
func TestSidesOfPairs(t *testing.T) {
	t.Parallel()
	seen := 0
	overSeeds(t, 1500, 200, func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return err
		}
		got := map[string]bool{}
		groups := bodyGroups{a}
		_, rest := groups.sidesOfPins()
		for _, g := range groups.sidesOfPairs(rest) {
			got[fmt.Sprint(g)] = true
		}
		want := map[string]bool{}
		for n, c := range f.Connections {
			for _, d := range f.Connections[:n] {
				both := bodyGroups{a}.withoutPins(sidesByJoining(a, c.Joint, d.Joint))
				first, second := bodyGroups{a}.withoutPins(sidesByJoining(a, c.Joint)), bodyGroups{a}.withoutPins(sidesByJoining(a, d.Joint))
				if len(both) == 2 && len(first) < 2 && len(second) < 2 {
					want[fmt.Sprint(both[0])], want[fmt.Sprint(both[1])] = true, true
				}
			}
		}
		if seen += len(want); !reflect.DeepEqual(got, want) {
			return fmt.Errorf("the sides of pairs of pins are %v, not %v", got, want)
		}
		return nil
	})
	if seen < 100 {
		t.Errorf("only %d sides of pairs of pins", seen)
	}
}
