package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

var momentSlips = []Slip{
	{ID: "turn-of-term", Group: Moment, About: Sense, Source: "GD", find: turnOfTerm,
		Says: "A finger on the centre and a push along the force show the turn, so which way does each force turn this body?"},
	{ID: "sense-of-term", Group: Moment, About: Sense, Source: "GD", find: senseOfTerm,
		Says: "A force counts as positive when it points along the positive direction of the sum, so which way does each one point?"},
	{ID: "turn-of-couple", Group: Moment, About: Sense, Source: "PLM", find: turnOfCouple,
		Says: "A couple has a turn of its own that no centre changes, so does the couple go with the positive turn of the sum or against it?"},
	{ID: "arm-from-elsewhere", General: true, Group: Moment, About: Arm, Source: "GD", find: armFromElsewhere,
		Says: "All arms of one sum start at its centre, so from where is each of yours measured?"},
	{ID: "arm-to-elsewhere", General: true, Group: Moment, About: Arm, Source: "GD, TB", find: armToElsewhere,
		Says: "An arm ends on the line of its own force, so to where is each of yours measured?"},
	{ID: "across-for-up", Group: Moment, About: Arm, Source: "GD, RG", find: acrossForUp,
		Says: "A vertical force needs a horizontal arm and a horizontal force a vertical one, so which distance goes with each force?"},
	{ID: "slant-as-arm", Group: Moment, About: Arm, Source: "RG, TB", find: slantAsArm,
		Says: "The arm is the shortest distance from the centre to the line of the force, so which length meets that line square?"},
	{ID: "moment-through-centre", Group: Moment, About: Presence, Source: "TB", find: momentThroughCentre,
		Says: "A force whose line passes through the centre has no arm, so which forces are left with a moment?"},
	{ID: "taken-as-through-centre", Group: Moment, About: Presence, Source: "TB", find: takenAsThroughCentre,
		Says: "A force is without a moment only if its line meets the centre, so draw each line on: which ones miss it?"},
	{ID: "couple-times-distance", Group: Moment, About: Arm, Source: "SD11, PLM", find: coupleTimesDistance,
		Says: "A couple turns by the same amount about every point and enters as it is, so what does the couple add to this sum?"},
	{ID: "couple-left-out", Group: Moment, About: Presence, Source: "SD11, PLM", find: coupleLeftOut,
		Says: "A couple counts in every moment sum of its body wherever it acts, so is the couple in this one?"},
	{ID: "couple-in-force-sum", Group: Moment, About: Presence, Source: "SD11", find: coupleInForceSum,
		Says: "A couple has no net push and stays out of sums of forces, so what is left in this one?"},
	{ID: "arm-forgotten", Group: Moment, About: Arm, Source: "NC", find: armForgotten,
		Says: "In a sum of moments each force is multiplied by its arm, so does every term have one?"},
	{ID: "distance-in-force-sum", Group: Moment, About: Size, Source: "NC", find: distanceInForceSum,
		Says: "A sum of forces holds forces only, without distances, so what does each term come to?"},
	{ID: "couple-counted-twice", Group: Moment, About: Size, Source: "PLM", find: coupleCountedTwice,
		Says: "A couple is one of the things that act on the body beside the moments of the forces, so how often is it in the sum?"},
	{ID: "centre-changed", General: true, Group: Moment, About: Arm, Source: "DV", find: centreChanged,
		Says: "The centre stays the same from the first term of a sum to the last, so from which point are the arms of the known forces measured?"},
	{ID: "square-force-counted", Group: Moment, About: Presence, Source: "TB", find: squareForceCounted,
		Says: "A force square to the direction of a sum adds nothing to it, so which forces have a share along it?"},
}

// turns turns each load, and each known force that acts as it is named and is not negative.
func (s *scene) turns() []change {
	groups := s.grouped(s.filter(s.known(), func(t statics.Term) bool {
		if t.Force == statics.None {
			return !isCouple(t) && !(s.onMember(t) && s.cut.Quantity == Shear && s.action(t).Shape != statics.AtPoint)
		}
		facing, _ := s.Assembly.Facing(s.sum.Body, t.Force)
		return s.Values[t.Force].Sign() > 0 && (facing > 0 || s.Assembly.Forces[t.Force].Kind == statics.Reaction)
	}), s.byGiver)
	var all []change
	for _, g := range groups {
		all = append(all, s.together(g, turned)...)
	}
	return all
}

func turnOfTerm(s *scene) []change {
	if !s.sum.Moment {
		return nil
	}
	return s.turns()
}

func senseOfTerm(s *scene) []change {
	if s.sum.Moment {
		return nil
	}
	return s.turns()
}

// couples lists the terms of couples that are loads.
func (s *scene) couples() []int {
	return s.filter(s.known(), func(t statics.Term) bool { return isLoad(t) && isCouple(t) })
}

// elsewhereOnly keeps the terms that do not come from the member in which a quantity is asked for: on it, leaving a load
// out or turning it is a slip of its own.
func (s *scene) elsewhereOnly(terms []int) []int {
	return s.filter(terms, func(t statics.Term) bool { return !s.onMember(t) })
}

func turnOfCouple(s *scene) []change { return s.each(s.elsewhereOnly(s.couples()), only(turned)) }

func coupleLeftOut(s *scene) []change { return s.each(s.elsewhereOnly(s.couples()), only(without)) }

// withArms lists the known terms that have an arm.
func (s *scene) withArms() []int {
	if !s.sum.Moment {
		return nil
	}
	return s.filter(s.known(), func(t statics.Term) bool { return !isCouple(t) })
}

// arms alters the arm of each known term that has one, to each of some distances.
func (s *scene) arms(distances func(t statics.Term) []exact.Num) []change {
	return s.each(s.withArms(), func(t statics.Term) []statics.Term {
		var ways []statics.Term
		for _, d := range distinct(distances(t)) {
			ways = append(ways, armed(t, d))
		}
		return ways
	})
}

func armFromElsewhere(s *scene) []change {
	return s.arms(func(t statics.Term) []exact.Num { return s.distances(t.At, t.Toward) })
}

func armToElsewhere(s *scene) []change {
	return s.arms(func(t statics.Term) []exact.Num { return s.distances(s.sum.About, t.Toward) })
}

func acrossForUp(s *scene) []change {
	return s.arms(func(t statics.Term) []exact.Num {
		if slanting(t.Toward) {
			return nil
		}
		return []exact.Num{over(s.sum.About.To(t.At).Dot(t.Toward).Abs(), t.Toward.Length())}
	})
}

func slantAsArm(s *scene) []change {
	return s.arms(func(t statics.Term) []exact.Num {
		from := s.sum.About.To(t.At)
		if !slanting(from) || from.Dot(t.Toward).IsZero() {
			return nil
		}
		return []exact.Num{from.Length()}
	})
}

func armForgotten(s *scene) []change {
	return s.arms(func(statics.Term) []exact.Num { return []exact.Num{one} })
}

// momentThroughCentre gives a known force along an axis, whose line passes through the centre, the distance of a joint.
func momentThroughCentre(s *scene) []change {
	through := s.where(func(t statics.Term) bool {
		return t.Why == statics.ThroughCentre && !slanting(t.Toward) && (isLoad(t) || s.Known(t.Force))
	})
	var all []change
	for _, i := range through {
		t := s.sum.Terms[i]
		for _, d := range s.distances(s.sum.About, t.Toward) {
			for _, sign := range []int{1, -1} {
				t.Arm, t.Sign, t.Why = d, sign, statics.Counts
				all = s.added(all, []statics.Term{t})
			}
		}
	}
	return all
}

// takenAsThroughCentre leaves out a force at a joint straight above or beside the centre, whose line yet misses it.
func takenAsThroughCentre(s *scene) []change {
	return s.leftOut(s.grouped(s.filter(s.withArms(), func(t statics.Term) bool {
		from := s.sum.About.To(t.At)
		return !slanting(from) && t.What == statics.WholeForce && (!isLoad(t) || s.load(t).Joint != statics.None)
	}), s.byGiver))
}

// coupleTimesDistance multiplies a couple by its distance from the centre, across or up, or from another joint.
func coupleTimesDistance(s *scene) []change {
	return s.each(s.couples(), func(t statics.Term) []statics.Term {
		from := s.sum.About.To(t.At)
		list := []exact.Num{from.X.Abs(), from.Y.Abs()}
		list = append(list, s.distances(t.At, statics.Vector{Y: one})...)
		list = append(list, s.distances(t.At, statics.Vector{X: one})...)
		var ways []statics.Term
		for _, d := range distinct(list) {
			ways = append(ways, armed(t, d))
		}
		return ways
	})
}

// coupleInForceSum is another slip where the couple stands on a member in which the shear is asked for.
func coupleInForceSum(s *scene) []change {
	return s.netPush(func(t statics.Term) bool { return !s.onMember(t) })
}

// netPush puts known couples that pass a test into a sum of forces.
func (s *scene) netPush(test func(statics.Term) bool) []change {
	return s.counted(s.where(func(t statics.Term) bool { return t.Why == statics.NoPush && s.hasValue(t) && test(t) }))
}

// hasValue reports whether a term that does not count could be put in with a value.
func (s *scene) hasValue(t statics.Term) bool { return isLoad(t) || s.Known(t.Force) }

// counted puts in terms that do not count, with their whole size and either sign.
func (s *scene) counted(terms []int) []change {
	var all []change
	for _, i := range terms {
		t := s.sum.Terms[i]
		t.Size, t.Why = one, statics.Counts
		if isLoad(t) {
			t.Size = s.action(t).Size.Abs()
		}
		for _, sign := range []int{1, -1} {
			t.Sign = sign
			all = s.added(all, []statics.Term{t})
		}
	}
	return all
}

// distanceInForceSum multiplies a force by its distance from a joint of the body.
func distanceInForceSum(s *scene) []change {
	if s.sum.Moment {
		return nil
	}
	forces := s.filter(s.known(), func(t statics.Term) bool { return !slanting(t.Toward) })
	return s.each(forces, func(t statics.Term) []statics.Term {
		var ways []statics.Term
		for _, d := range s.distances(t.At, t.Toward) {
			ways = append(ways, armed(t, d))
		}
		return ways
	})
}

func coupleCountedTwice(s *scene) []change {
	couples := s.filter(s.known(), func(t statics.Term) bool { return !isLoad(t) && isCouple(t) })
	return s.each(couples, only(func(t statics.Term) statics.Term { return sized(t, two) }))
}

// centreChanged measures all known arms, of several forces, from another joint.
func centreChanged(s *scene) []change {
	terms := s.withArms()
	if len(s.grouped(terms, s.byGiver)) < 2 {
		return nil
	}
	var all []change
	for _, j := range s.joints() {
		if p := s.at(j); !p.Equal(s.sum.About) {
			all = append(all, s.together(terms, func(t statics.Term) statics.Term { return movedTo(t, p, t.At) })...)
		}
	}
	return all
}

// squareForceCounted puts a known force that acts square to the sum into it.
func squareForceCounted(s *scene) []change {
	return s.counted(s.where(func(t statics.Term) bool { return t.Why == statics.SquareTo && s.hasValue(t) }))
}
