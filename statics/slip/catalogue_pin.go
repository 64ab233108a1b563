package slip

import "unpin/statics"

var pinSlips = []Slip{
	{ID: "pin-force-not-reversed", Group: PinPair, About: Sense, Needs: Measuring, Source: "SD6", find: pinForceNotReversed,
		Says: "Two bodies exert equal and opposite forces on each other: which way does the force at the joint act on this body?"},
	{ID: "one-component-not-reversed", Group: PinPair, About: Sense, Needs: Measuring, Source: "SD6", find: oneComponentNotReversed,
		Says: "Whatever one body exerts at a joint is reversed on the other: which way does each component act on this body?"},
	{ID: "minus-used-twice", Group: PinPair, About: Sense, Needs: Measuring, Source: "TB", find: minusUsedTwice,
		Says: "A negative value already means that the force acts opposite to its assumed sense: with that sense kept, which sign does the term have?"},
	{ID: "pin-force-left-off", Group: PinPair, About: Presence, Needs: Choosing, Source: "SD4", find: pinForceLeftOff,
		Says: "The forces at a joint cancel only when both bodies are inside the cut: which joint forces act on this body?"},
	{ID: "pin-component-left-off", Group: PinPair, About: Presence, Needs: Choosing, Source: "SD8, TB", find: pinComponentLeftOff,
		Says: "A pin force has two components, and each has its own place in the sum: are both components of the pin force in the sum?"},
	{ID: "value-of-another-pin", Group: PinPair, About: Size, Needs: Copying, Source: "DV", find: valueOfAnotherPin,
		Says: "Each force has a value of its own: which force does the value in this term belong to?"},
}

// reversed lists those that act on this body against their names.
func (s *setting) reversed() terms {
	return s.pinForces().filter(func(t statics.Term) bool {
		sign, _ := s.Assembly.Facing(s.sum.Body, t.Force)
		return sign < 0
	})
}

func pinForceNotReversed(s *setting) []change {
	var all []change
	for _, g := range s.reversed().grouped(s.byJoint) {
		all = append(all, g.together(turned)...)
	}
	return all
}

func oneComponentNotReversed(s *setting) []change {
	var all []change
	for _, g := range s.reversed().grouped(s.byJoint) {
		if len(g.grouped(s.byGiver)) > 1 {
			for _, force := range g.grouped(s.byGiver) {
				all = append(all, force.together(turned)...)
			}
		}
	}
	return all
}

// minusUsedTwice turns the term of a force whose value is negative.
func minusUsedTwice(s *setting) []change {
	negative := s.known().filter(func(t statics.Term) bool {
		return t.Force != statics.None && s.question.Values[t.Force].Sign() < 0
	})
	var all []change
	for _, g := range negative.grouped(s.byGiver) {
		all = append(all, g.together(turned)...)
	}
	return all
}

func pinForceLeftOff(s *setting) []change {
	if s.Assembly.IsPin(s.sum.Body[0]) {
		return nil // the whole pin is balanced by members' forces, which is another slip
	}
	return s.pinForces().grouped(s.byJoint).leftOut()
}

func pinComponentLeftOff(s *setting) []change {
	var all []change
	for _, g := range s.pinForces().grouped(s.byJoint) {
		if forces := g.grouped(s.byGiver); len(forces) > 1 && !s.Assembly.IsPin(s.sum.Body[0]) {
			all = append(all, forces.leftOut()...)
		}
	}
	return all
}

// valueOfAnotherPin puts in the known value of a parallel pin force at another joint; where the sum stands with its names,
// and at a section, of any other force that is known.
func valueOfAnotherPin(s *setting) []change {
	named, any := s.pinForces(), s.question.Stands || s.cut != nil
	if any {
		named = s.known().filter(func(t statics.Term) bool { return t.Force != statics.None })
	}
	var all []change
	for _, g := range named.grouped(s.byGiver) {
		i := g.first().Force
		for j := range s.Assembly.Forces {
			if j == i || !s.question.Known(j) || s.question.Values[j].IsZero() || !s.mistakable(i, j, any) {
				continue
			}
			ratio := over(s.question.Values[j], s.question.Values[i])
			all = append(all, g.altered(func(t statics.Term) statics.Term {
				t.Sign *= ratio.Sign()
				return sized(t, ratio.Abs())
			})...)
		}
	}
	return all
}

// mistakable reports whether the value of one force may be put in for another: of any, or of like pin forces only.
func (s *setting) mistakable(i, j int, any bool) bool {
	if any {
		return s.Assembly.Forces[i].Couple == s.Assembly.Forces[j].Couple && s.Assembly.Forces[j].Kind != statics.CutForce
	}
	return s.likePin(i, j)
}

// likePin reports whether two forces are parallel pin forces at different joints.
func (s *setting) likePin(i, j int) bool {
	f, other := s.Assembly.Forces[i], s.Assembly.Forces[j]
	return other.Couple == f.Couple && other.Joint != f.Joint && other.Kind != statics.Reaction && other.Along.Cross(f.Along).IsZero()
}
