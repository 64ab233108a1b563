package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/judging"
)

// What is said of N, V and M at a cut: it speaks of jumps, of areas, of what is nought at pins and free ends, and of
// corners in balance.

// A spot is where along its member a cut is.
type spot int

// The spots.
const (
	within    spot = iota // between the ends
	corner                // at an end, rigidly joined to other members
	pinned                // at an end, on a pin or a slot
	supported             // at an end, on a support alone that lets it turn
	stiffly               // at an end, held by a support or a sleeve that keeps it from turning
	free                  // at an end with nothing
)

// spotOf tells where the cut of a question is.
func (m *matter) spotOf(q Question) spot {
	f := &m.solution.Frame
	mem := f.Members[q.Member]
	j := mem.From
	switch {
	case q.Station.At.Equal(m.solution.Diagrams[q.Member].Length):
		j = mem.To
	case !q.Station.At.IsZero():
		return within
	}
	hinged, others := m.joined(j, q.Member)
	turns := func(s statics.Support) bool {
		return s.Joint == j && (s.Kind == statics.Pinned || s.Kind == statics.Roller)
	}
	stiff := func(s statics.Support) bool { return s.Joint == j && !turns(s) }
	switch {
	case others:
		return corner
	case slices.ContainsFunc(f.Supports, stiff) || m.sleeved(j):
		return stiffly
	case hinged:
		return pinned
	case slices.ContainsFunc(f.Supports, turns):
		return supported
	}
	return free
}

// sleeved reports whether there is a sleeve at joint j.
func (m *matter) sleeved(j int) bool {
	return slices.ContainsFunc(m.solution.Frame.Connections, func(c statics.Connection) bool { return c.Joint == j && c.Kind == statics.Sleeve })
}

// joined reports whether joint j has a connection that lets pieces move, and whether other members are rigidly joined
// there to this one.
func (m *matter) joined(j, member int) (connection, rigidly bool) {
	f := &m.solution.Frame
	for _, c := range f.Connections {
		if c.Joint != j {
			continue
		}
		for _, piece := range c.Pieces {
			if slices.Contains(piece, member) {
				return true, len(piece) > 1
			}
		}
	}
	for i, m := range f.Members {
		if i != member && (m.From == j || m.To == j) {
			return false, true
		}
	}
	return false, false
}

// sectionRule is how N, V or M at a cut is found.
func (m *matter) sectionRule(q statics.Quantity, from string) string {
	switch q {
	case statics.AxialForce:
		return "the axial force is what the cut must supply along the member; a pull away from the kept piece is tension, positive."
	case statics.ShearForce:
		_, side := m.shearSigns()
		return "the shear is the sum, square to the member, of all forces on the side of " + from +
			"; positive to the " + side + " as one looks along the member."
	}
	return "take moments about the cut of all that acts on the side of " + from + "; a couple counts as it is."
}

// sectionRight says why a right internal force is right.
func (fb *feedback) sectionRight(q Question) string {
	at := fb.about.spotOf(q)
	after := q.Station.Side == statics.After && !q.Station.At.IsZero()
	switch {
	case q.Quantity == statics.BendingMoment && q.Station.Extreme:
		return "the shear passes through nought here, so the moment has a peak."
	case q.Quantity == statics.BendingMoment && q.truth.IsZero():
		return nought(at)
	case after:
		return [...]string{
			"a force along the member makes the axial force step by its own size.",
			"a point load across the member makes the shear step by its own size.",
			"a couple makes the moment step by its own size.",
		}[q.Quantity]
	case at == corner && q.Station.At.IsZero():
		return "a rigid joint is in balance: what the other members bring to it, this one takes on."
	case !q.Station.At.IsZero() && q.Quantity == statics.BendingMoment:
		return "from the place before, the moment changes by the area under the shear."
	case !q.Station.At.IsZero() && q.Quantity == statics.ShearForce:
		return "from the place before, the shear changes by the load between."
	}
	return "the cut supplies what the forces on one side of it lack."
}

// nought says why there is no moment at a spot.
func nought(at spot) string {
	switch at {
	case free:
		return "beyond a free end nothing acts, so the moment there is nought."
	case pinned:
		return "what joins the member here lets it turn, so it passes no moment."
	case supported:
		return "this support lets the member turn, so it passes no moment."
	case corner:
		return "what meets at this joint brings no moment to it."
	}
	return "the forces on one side of the cut have no moment about it."
}

// sectionWrong says where to look after a wrong internal force.
func (fb *feedback) sectionWrong(q Question, v judging.Verdict) string {
	if v == judging.OtherSense {
		switch q.Quantity {
		case statics.AxialForce:
			return "the size is right: does the cut face pull away from the member or push into it?"
		case statics.ShearForce:
			return "the size is right: which way counts as positive for the shear?"
		}
		return "the size is right: which side of the member is stretched?"
	}
	from := fb.about.solution.Frame.Joints[fb.about.solution.Frame.Members[q.Member].From].Name
	switch fb.sheet.inHand().tries {
	case 0, 1:
		return fb.about.sectionRule(q.Quantity, from)
	case 2:
		return fb.fromBefore(q, from)
	case 3:
		return "a cut is only as good as the forces on its piece: list each one on the side of " + from + ", with its value and its sense here."
	}
	return helpOffered
}

// fromBefore points to what a value along a member follows from: the place before, the joint, or the piece kept.
func (fb *feedback) fromBefore(q Question, from string) string {
	at := fb.about.spotOf(q)
	switch {
	case q.Quantity == statics.BendingMoment && (at == pinned || at == free):
		return "a moment needs something to pass it: what can this end of the member pass?"
	case at == corner && q.Station.At.IsZero():
		return "a rigid joint is in balance: what do the other members and the loads there bring, that this member must take on?"
	case q.Station.Side == statics.After && !q.Station.At.IsZero():
		return "a load at a place makes a step there, by its own size: from which value, and which way?"
	case !q.Station.At.IsZero() && q.Quantity == statics.BendingMoment:
		return "from one place to the next the moment changes by the area under the shear: how large is it, and with what sign?"
	case !q.Station.At.IsZero() && q.Quantity == statics.ShearForce:
		return "from one place to the next the shear changes by the load between: how large is that, and which way does it act?"
	}
	return "the piece on the side of " + from + " is at rest like every other: what must the cut supply for that?"
}
