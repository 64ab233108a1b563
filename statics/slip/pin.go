package slip

import "unpin/statics"

var pinSlips = []Slip{
	{ID: "pin-force-not-reversed", Group: PinPair, About: Sense, Source: "SD6", find: pinForceNotReversed,
		Says: "What one part gets from a pin the other gives, same size and opposite sense, so which way does the pin force act on this body?"},
	{ID: "one-component-not-reversed", Group: PinPair, About: Sense, Source: "SD6", find: oneComponentNotReversed,
		Says: "Both components of a pin force turn round on the other part, so which way does each act on this body?"},
	{ID: "minus-used-twice", Group: PinPair, About: Sense, Source: "TB", find: minusUsedTwice,
		Says: "A negative value already says that the force acts against its arrow, so with the arrow kept, what sign does the term get?"},
	{ID: "pin-force-left-off", Group: PinPair, About: Presence, Source: "SD4", find: pinForceLeftOff,
		Says: "A pin force cancels only when both parts are inside the cut, so what does each pin do to this body?"},
	{ID: "pin-component-left-off", Group: PinPair, About: Presence, Source: "SD8, TB", find: pinComponentLeftOff,
		Says: "A pin passes two components and each has its own place in the sum, so are both components in the sum?"},
	{ID: "value-of-another-pin", Group: PinPair, About: Size, Source: "DV", find: valueOfAnotherPin,
		Says: "Each pin has a force of its own, so which pin does the value in this term belong to?"},
}

// pinForces lists the terms of known forces that pass between bodies, if the body is not a pin all of them count for.
func (s *scene) pinForces() []int {
	return s.filter(s.known(), func(t statics.Term) bool {
		return t.Force != statics.None && s.Assembly.Forces[t.Force].Kind != statics.Reaction
	})
}

// reversed lists those that act on this body against their names.
func (s *scene) reversed() []int {
	return s.filter(s.pinForces(), func(t statics.Term) bool {
		sign, _ := s.Assembly.Facing(s.sum.Body, t.Force)
		return sign < 0
	})
}

func pinForceNotReversed(s *scene) []change {
	var all []change
	for _, g := range s.grouped(s.reversed(), s.byJoint) {
		all = append(all, s.together(g, turned)...)
	}
	return all
}

func oneComponentNotReversed(s *scene) []change {
	var all []change
	for _, g := range s.grouped(s.reversed(), s.byJoint) {
		if len(s.grouped(g, s.byGiver)) > 1 {
			for _, force := range s.grouped(g, s.byGiver) {
				all = append(all, s.together(force, turned)...)
			}
		}
	}
	return all
}

// minusUsedTwice turns the term of a force whose value is negative.
func minusUsedTwice(s *scene) []change {
	negative := s.filter(s.known(), func(t statics.Term) bool {
		return t.Force != statics.None && s.Values[t.Force].Sign() < 0
	})
	var all []change
	for _, g := range s.grouped(negative, s.byGiver) {
		all = append(all, s.together(g, turned)...)
	}
	return all
}

func pinForceLeftOff(s *scene) []change {
	if s.Assembly.IsPin(s.sum.Body[0]) {
		return nil // the whole pin is balanced by members' forces, which is another slip
	}
	return s.leftOut(s.grouped(s.pinForces(), s.byJoint))
}

func pinComponentLeftOff(s *scene) []change {
	var all []change
	for _, g := range s.grouped(s.pinForces(), s.byJoint) {
		if forces := s.grouped(g, s.byGiver); len(forces) > 1 && !s.Assembly.IsPin(s.sum.Body[0]) {
			all = append(all, s.leftOut(forces)...)
		}
	}
	return all
}

// valueOfAnotherPin puts in the known value of a parallel pin force at another joint.
func valueOfAnotherPin(s *scene) []change {
	var all []change
	for _, g := range s.grouped(s.pinForces(), s.byGiver) {
		i := s.sum.Terms[g[0]].Force
		f := s.Assembly.Forces[i]
		for j, other := range s.Assembly.Forces {
			if other.Couple != f.Couple || other.Joint == f.Joint || !s.Known(j) || other.Kind == statics.Reaction ||
				!other.Along.Cross(f.Along).IsZero() || s.Values[j].IsZero() {
				continue
			}
			ratio := over(s.Values[j], s.Values[i])
			all = append(all, s.altered(g, func(t statics.Term) statics.Term {
				t.Sign *= ratio.Sign()
				return sized(t, ratio.Abs())
			})...)
		}
	}
	return all
}
