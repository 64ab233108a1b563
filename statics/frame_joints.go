package statics

import (
	"slices"
)

// meeting lists the members at each joint, in file order.
func (f *Frame) meeting() [][]int {
	return lists(len(f.Joints), func(tell func(joint, member int)) {
		for m := range f.Members {
			tell(f.Members[m].From, m)
			tell(f.Members[m].To, m)
		}
	})
}

// farEnd is the other end of member m, seen from joint j.
func (f *Frame) farEnd(m, j int) int {
	if f.Members[m].From == j {
		return f.Members[m].To
	}
	return f.Members[m].From
}

// allHinged reports whether joint j is a pin without a piece that was not named as hinged.
func (f *Frame) allHinged(j int) bool {
	return slices.ContainsFunc(f.Connections, func(c Connection) bool { return c.Joint == j && c.Main == None })
}

// isPin reports whether joint j is a pin.
func (f *Frame) isPin(j int) bool {
	return slices.ContainsFunc(f.Connections, func(c Connection) bool { return c.Joint == j && c.Kind == Pin })
}
