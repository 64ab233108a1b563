package problems

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// readPulley reads a rope over a pulley.
func (l load) readPulley() {
	x := statics.Load{Kind: statics.RopeLoad, Joint: statics.None, Member: statics.None}
	on, placed := ref{}, false
	if joint := l.values["pulley"]; joint != nil {
		on, placed = l.atJoint(&x, joint, l.values["on"])
	}
	good := l.tension(&x) && placed
	good = l.radius(&x) && good
	good = l.bend(&x, on) && good
	if !good {
		return
	}
	if x.Size.IsZero() {
		l.nothing("its rope has no tension")
	}
	l.add(x)
}

// tension reads the tension of the rope.
func (l load) tension(x *statics.Load) (ok bool) {
	n := l.values["rope"]
	if n == nil {
		return false
	}
	x.Size, ok = l.number(n, "the tension of a rope", notation.Force)
	l.note(n, LoadSize, "rope", x.Size)
	if ok && x.Size.Sign() < 0 {
		l.fault(n.at, "a rope can pull but not push, so its tension is not below 0", "Write the tension without its minus sign; to: says which way the rope pulls.")
		return false
	}
	return ok
}

// radius reads the radius of the wheel, if one is given.
func (l load) radius(x *statics.Load) (ok bool) {
	n := l.values["radius"]
	if n == nil {
		return !l.written("radius")
	}
	x.Radius, ok = l.number(n, "the radius of a pulley", notation.Length)
	if ok && x.Radius.Sign() <= 0 {
		l.fault(n.at, "the radius of a pulley is more than 0", "Write a length such as radius: 0.3, or leave radius out: then both pulls act at the joint.")
		return false
	}
	return ok
}

// bend reads the two directions in which the rope leaves the wheel.
func (l load) bend(x *statics.Load, on ref) bool {
	to := l.values["to"]
	if to == nil {
		return false
	}
	const like = "Write the directions of its two ends, away from the pulley, such as to: [down, left] or to: [down, [3, 4]]."
	if len(to.items) != 2 {
		l.fault(to.at, fmt.Sprintf("a rope leaves its pulley in two directions, and %s", directionsGiven(len(to.items))), like)
		return false
	}
	if to.items[0].numeric && to.items[1].numeric {
		l.fault(to.at, pairText(to)+" is one direction, and a rope leaves its pulley in two", fmt.Sprintf("Write both, such as to: [%s, left].", pairText(to)))
		return false
	}
	var ends [2]statics.Vector
	for i, n := range to.items {
		if !l.shaped(n, "the direction of a rope", "down", scalar, list) {
			return false
		}
		d, ok := l.direction(n, "the direction of a rope", l.values["on"] != nil)
		if !ok {
			return false
		}
		if (d.along || d.normal) && x.Member == statics.None {
			return false // the member is at fault
		}
		ends[i] = l.vectorOn(d, on)
	}
	if ends[0].Cross(ends[1]).IsZero() && ends[0].Dot(ends[1]).Sign() < 0 {
		l.fault(to.at, "the two directions are opposite, so the rope runs straight on and does not bend round the pulley", "Give the directions of the rope's two ends away from the pulley: down and left is a rope from the left over the top.")
		return false
	}
	x.Along, x.Second = ends[0], ends[1]
	return true
}

// directionsGiven says how many directions a rope has.
func directionsGiven(n int) string {
	switch n {
	case 0:
		return "none is given"
	case 1:
		return "one is given"
	}
	return fmt.Sprintf("%d are given", n)
}

// endsText is the directions of a rope as written.
func endsText(to *node) string {
	if to == nil {
		return ""
	}
	var all []string
	for _, n := range to.items {
		if n.shape == list {
			all = append(all, pairText(n))
		} else {
			all = append(all, n.text)
		}
	}
	return "[" + strings.Join(all, ", ") + "]"
}
