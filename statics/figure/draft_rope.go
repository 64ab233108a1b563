package figure

import (
	"math"

	"unpin/statics"
	"unpin/statics/notation"
)

// rope adds a rope over a wheel: the wheel, and the two pulls where the rope leaves it.
func (d *draft) rope(i int, l statics.Load) {
	look := Look{LoadMark, d.o.load(i)}
	at := d.joint(l.Joint)
	w := Wheel{At: at, Radius: l.Radius.Float(), Look: Look{PinMark, look.Emphasis}, Rope: look}
	for k, pull := range l.Pulls() {
		w.Ends[k], w.Out[k] = vector(pull.Along), vector(pull.Off)
		text := d.o.given(l.Size.Abs(), notation.Force)
		if !w.Ends[k].Level() && !w.Ends[k].Upright() {
			text += " " + d.slant(inclination(pull.Along))
		}
		if k == 0 {
			text += d.bearer(l)
		}
		a := Arrow{At: w.Rim(w.Out[k]), Toward: w.Ends[k], Pull: true, Text: text, Look: Look{LoadMark, d.o.pull(Pull{i, k})}, Slope: slopeOf(pull.Along)}
		if l.Radius.IsZero() {
			d.arrow(a, a.Toward, false)
			continue
		}
		a.Rope, a.Hub = true, at
		d.taken[at] = append(d.taken[at], ray{a.Toward, false})
		d.Arrows = append(d.Arrows, a)
	}
	d.Wheels = append(d.Wheels, w)
	if !l.Radius.IsZero() {
		d.Letters += radiusLetter
		d.Notes = append(d.Notes, Note{at, radiusLetter + " = " + d.o.given(l.Radius, notation.Length), Look{DimensionMark, look.Emphasis}})
	}
}

// radiusLetter stands for the radius of a pulley.
const radiusLetter = "r"

// alongRope reports whether a rope runs from its wheel along a distributed load, on the side on which the load would stand.
func (d *draft) alongRope(s Spread, loads []int) bool {
	for _, i := range loads {
		l := d.f.Loads[i]
		if l.Kind != statics.RopeLoad || l.Size.IsZero() || l.Radius.IsZero() || !s.over(d.joint(l.Joint)) {
			continue
		}
		for _, pull := range l.Pulls() {
			if vector(pull.Off).Dot(s.Outward()) > 0.7 && !d.leavesLoad(s, d.joint(l.Joint), vector(pull.Along)) {
				return true
			}
		}
	}
	return false
}

// leavesLoad reports whether a way from a point of a distributed load's line leads away from the load.
func (d *draft) leavesLoad(s Spread, at Position, toward Direction) bool {
	const step = 0.05
	far := step * d.extent().longer()
	next := Position{at.X + far*toward.X, at.Y + far*toward.Y}
	along := s.From.To(s.To)
	x := (next.X-s.From.X)*along.X + (next.Y-s.From.Y)*along.Y
	return x < 0 || x > math.Hypot(s.To.X-s.From.X, s.To.Y-s.From.Y)
}
