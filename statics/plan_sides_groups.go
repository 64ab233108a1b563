package statics

import (
	"cmp"
	"slices"
)

// pairsOfPinsUpTo is how many bodies a frame may have for pairs of pins to be cut: in a ring these are as many as the square
// of its parts.
const pairsOfPinsUpTo = 40

// sideGroups lists the groups of more than three bodies into which a large frame falls when one pin is cut, or two.
func (a bodyGroups) sideGroups() []FreeBody {
	if a.Bodies() <= everyGroupUpTo {
		return nil
	}
	all, rest := a.sidesOfPins()
	if a.Bodies() <= pairsOfPinsUpTo {
		all = append(all, a.sidesOfPairs(rest)...)
	}
	all = slices.DeleteFunc(all, func(g FreeBody) bool { return len(g) <= 3 || len(g) == a.Bodies() })
	slices.SortStableFunc(all, func(x, y FreeBody) int {
		return cmp.Or(len(x)-len(y), slices.Compare(x, y))
	})
	return slices.CompactFunc(all, func(x, y FreeBody) bool { return slices.Equal(x, y) })
}

// sidesOfPins lists the sides of each pin that alone parts the frame, and the joints of the pins that part nothing but pins from it.
func (a bodyGroups) sidesOfPins() (all []FreeBody, rest []int) {
	h := a.hanging(None)
	for _, c := range a.Frame.Connections {
		sides := h.sides(c.Joint)
		if len(sides) > 1 {
			all = append(all, sides...)
		}
		if len(a.withoutPins(slices.Clone(sides))) <= 1 {
			rest = append(rest, c.Joint)
		}
	}
	return all, rest
}

// sidesOfPairs lists the two sides of each two of these pins that part the frame together.
func (a bodyGroups) sidesOfPairs(pins []int) []FreeBody {
	var all []FreeBody
	for n, c := range pins {
		h := a.hanging(c)
		for _, d := range pins[n+1:] {
			if sides := a.withoutPins(h.sides(d)); len(sides) == 2 {
				all = append(all, sides...)
			}
		}
	}
	return all
}

// withoutPins leaves out pins that stand alone.
func (a bodyGroups) withoutPins(sides []FreeBody) []FreeBody {
	return slices.DeleteFunc(sides, func(g FreeBody) bool { return len(g) == 1 && a.IsPin(g[0]) })
}
