package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/judging"
)

// What is said of N, V and M at a cut: it speaks of jumps, of areas, of what is zero at pins and free ends, and of
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

// sectionRule is how N, V or M at a cut is found, and when it is positive.
func (m *matter) sectionRule(q Question) string {
	from := m.startOf(q)
	switch q.Quantity {
	case statics.AxialForce:
		return "N balances the forces along the member on the side of " + from + ": positive when it pulls on the piece you kept."
	case statics.ShearForce:
		return "V is the sum of the forces perpendicular to the member on the side of " + from + ": positive when they push " +
			m.words().ShearSense(q.Member) + "."
	}
	return "take moments about the cut of all that acts on the side of " + from + ", couples without an arm: M is positive when the " +
		m.words().MomentSide(q.Member) + " is stretched."
}

// startOf is the joint that distances along the member of a question are measured from.
func (m *matter) startOf(q Question) string {
	return m.solution.Frame.Joints[m.solution.Frame.Members[q.Member].From].Name
}

// sectionRight says why a right internal force is right.
func (fb *feedback) sectionRight(q Question) string {
	at := fb.about.spotOf(q)
	after := q.Station.Side == statics.After && !q.Station.At.IsZero()
	switch {
	case q.Quantity == statics.BendingMoment && q.Station.Extreme && !q.Station.V.IsZero():
		return "the shear changes its sign here, so the moment has a peak."
	case q.Quantity == statics.BendingMoment && q.Station.Extreme:
		return "the shear is zero here, so the moment has a peak."
	case q.Quantity == statics.BendingMoment && q.truth.IsZero():
		return noMoment(at)
	case after:
		return [...]string{
			"a force along the member makes the axial force jump by its own size.",
			"a point load across the member makes the shear jump by its own size.",
			"a couple makes the moment jump by its own size.",
		}[q.Quantity]
	case at == corner && q.Station.At.IsZero():
		return "a rigid joint is in balance: this member takes what the others bring to it."
	case !q.Station.At.IsZero() && q.Quantity == statics.BendingMoment:
		return "from the place before, the moment changes by the area under the shear."
	case !q.Station.At.IsZero() && q.Quantity == statics.ShearForce:
		return "from the place before, the shear changes by the load between."
	}
	return [...]string{
		"the axial force balances what acts along the member on one side of the cut.",
		"the shear balances what acts across the member on one side of the cut.",
		"the moment at the cut balances the moments of all that acts on one side.",
	}[q.Quantity]
}

// noMoment says why there is no moment at a spot.
func noMoment(at spot) string {
	switch at {
	case free:
		return "no couple acts at this free end, so the moment there is zero."
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
	from := fb.about.startOf(q)
	switch fb.sheet.inHand().tries {
	case 0, 1:
		return fb.about.sectionRule(q)
	case 2:
		return fb.fromBefore(q, from)
	case 3:
		return "list every force on the piece on the side of " + from + ", with its value and its sense."
	}
	return helpOffered
}

// fromBefore points to what a value along a member follows from: the place before, the joint, or the piece kept.
func (fb *feedback) fromBefore(q Question, from string) string {
	at := fb.about.spotOf(q)
	switch {
	case q.Quantity == statics.BendingMoment && (at == pinned || at == free):
		return "what joins or holds this end of the member: can it pass a moment?"
	case at == corner && q.Station.At.IsZero():
		return "a rigid joint is in balance: what do the other members and the loads there bring to it?"
	case q.Station.Side == statics.After && !q.Station.At.IsZero():
		return "a load at a place makes a jump there, by its own size: from which value, and which way?"
	case !q.Station.At.IsZero() && q.Quantity == statics.BendingMoment:
		return "from one place to the next the moment changes by the area under the shear: how large is it, and with what sign?"
	case !q.Station.At.IsZero() && q.Quantity == statics.ShearForce:
		return "from one place to the next the shear changes by the load between: how large is that, and which way does it act?"
	}
	return "the piece on the side of " + from + " is in equilibrium: what must act at the cut for that?"
}
