package figure

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A InternalForce is one of the three internal forces.
type InternalForce int

// The internal forces.
const (
	AxialForce    InternalForce = iota // N
	ShearForce                         // V
	BendingMoment                      // M
)

// Letter is the letter of a quantity: N, V or M.
func (q InternalForce) Letter() string { return [...]string{"N", "V", "M"}[q] }

// name is the quantity in words.
func (q InternalForce) name() string {
	return [...]string{"axial force", "shear force", "bending moment"}[q]
}

// dimension is what a quantity measures.
func (q InternalForce) dimension() notation.Dimension {
	if q == BendingMoment {
		return notation.Moment
	}
	return notation.Force
}

// of is the quantity among the internal forces of a section, in the signs that the options ask for.
func (q InternalForce) of(at statics.InternalForces, o Options) exact.Num {
	return [...]exact.Num{at.N, o.Style.Shear.Value(at.V), at.M}[q]
}

// OfDiagram is the scene of one internal force, drawn along the members perpendicular to them, with its critical values. Members
// lists by index those of which it is drawn; nil stands for all. N and V stand above a member where they are positive, or
// to the left of an upright one; M stands on the side that is in tension, unless the options say otherwise. The scale is
// that of all members, so that it stays when members are added. The solution must have its values.
func OfDiagram(s *statics.Solution, q InternalForce, members []int, o Options) Scene {
	d := bareMembers(s, q, o)
	for _, g := range s.Diagrams {
		switch {
		case members != nil && !slices.Contains(members, g.Member):
		case g.Withheld:
			d.withheld(g.Member)
		default:
			d.curve(g)
		}
	}
	d.names(d.joints())
	d.Legend = d.legend()
	if len(d.Curves) == 0 {
		d.Legend = []string{q.Letter() + " = 0 all along"}
	}
	return d.Scene
}

// bareMembers begins the scene of a quantity with all members and connections.
func bareMembers(s *statics.Solution, q InternalForce, o Options) diagramDraft {
	inside := make([]bool, len(s.Frame.Members))
	for i := range inside {
		inside[i] = true
	}
	d := newDraft(&s.Frame, o, inside)
	d.Title = wording.Sentence(q.name() + " " + q.Letter() + " of the members")
	for _, c := range s.Frame.Connections {
		d.connection(c)
	}
	d.Names = map[string]Symbolic{q.Letter(): {Letter: q.Letter()}}
	return diagramDraft{d, q, greatestOf(s, q)}
}

// legend says in which unit and on which sides a quantity is drawn, and what its sign means.
func (d diagramDraft) legend() []string {
	text := d.q.Letter() + d.q.unitWords(d.o) + ", " + d.q.meaning(d.o)
	if d.q == BendingMoment {
		return []string{text, d.sagging()}
	}
	return []string{text, upperSide}
}

// meaning is what the sign of N or V means, and on which side M stands.
func (q InternalForce) meaning(o Options) string {
	switch {
	case q == AxialForce:
		return "+ in tension"
	case q == ShearForce && o.Style.Shear == notation.CounterClockwiseShear:
		return "+ turns a piece counter-clockwise"
	case q == ShearForce:
		return "+ turns a piece clockwise"
	case o.Style.Side == notation.CompressionSide:
		return "drawn on the side in compression"
	}
	return "drawn on the side in tension"
}

// upperSide is the second line of the legends of N and V.
const upperSide = "+ above a member, left of an upright one"

// sagging is on which side a positive M stretches a member: below, in a frame whose members are all named from left to right,
// and right of an upright one if all those are named upward, left if downward; else it is told by the way along a member, since its
// sign turns with that.
func (d *draft) sagging() string {
	up, down := false, false
	for m, k := range d.f.Members {
		switch a, b := d.ends(m); {
		case b.X < a.X, b.X == a.X && (b.Y < a.Y && up || b.Y > a.Y && down):
			return "+ tension on the right, going from " + d.f.Joints[k.From].Name + " to " + d.f.Joints[k.To].Name
		case b.X == a.X && b.Y > a.Y:
			up = true
		case b.X == a.X:
			down = true
		}
	}
	switch {
	case up:
		return "+ tension below, or right of an upright one"
	case down:
		return "+ tension below, or left of an upright one"
	}
	return "+ tension below"
}
