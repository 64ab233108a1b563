package variant

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// sameShape reports whether two frames that differ in numbers only look alike: their joints lie in the same order from left
// to right and from bottom to top, members that are in line or perpendicular are so in both, and a member whose length is
// rational keeps such a length.
func sameShape(f, g *statics.Frame) bool {
	return sameOrder(f, g) && !rougher(f, g) && sameAngles(f, g)
}

// sameOrder reports whether the joints of both lie in the same order from left to right and from bottom to top.
func sameOrder(f, g *statics.Frame) bool {
	x := func(f *statics.Frame) func(int) exact.Num { return func(j int) exact.Num { return f.Joints[j].At.X } }
	y := func(f *statics.Frame) func(int) exact.Num { return func(j int) exact.Num { return f.Joints[j].At.Y } }
	n := len(f.Joints)
	return slices.Equal(ranks(n, x(f)), ranks(n, x(g))) && slices.Equal(ranks(n, y(f)), ranks(n, y(g)))
}

// rougher reports whether a member whose length is rational in the first has no such length in the second.
func rougher(f, g *statics.Frame) bool {
	for m := range f.Members {
		if f.Length(m).IsRational() && !g.Length(m).IsRational() {
			return true
		}
	}
	return false
}

// ranks are the places of n values in rising order; equal ones share one.
func ranks(n int, value func(int) exact.Num) []int {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(i, j int) int { return value(i).Cmp(value(j)) })
	places, rank := make([]int, n), 0
	for k, i := range order {
		if k > 0 && !value(i).Equal(value(order[k-1])) {
			rank++
		}
		places[i] = rank
	}
	return places
}

// sameAngles reports whether members that meet turn the same way from each other in both frames.
func sameAngles(f, g *statics.Frame) bool {
	meeting := make([][]int, len(f.Joints))
	for m, member := range f.Members {
		meeting[member.From] = append(meeting[member.From], m)
		meeting[member.To] = append(meeting[member.To], m)
	}
	for _, members := range meeting {
		for i, m := range members {
			for _, n := range members[:i] {
				a, b, c, d := f.Span(m), f.Span(n), g.Span(m), g.Span(n)
				if a.Cross(b).Sign() != c.Cross(d).Sign() || a.Dot(b).Sign() != c.Dot(d).Sign() {
					return false
				}
			}
		}
	}
	return true
}
