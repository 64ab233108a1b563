package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

var momentSlips = []Slip{
	{ID: "turn-of-term", Group: Moment, About: Sense, Needs: Measuring, Source: "GD", find: turnOfTerm,
		Says: "Imagine the body pinned at the centre and pushed along the force: does each force turn the body clockwise or counter-clockwise?"},
	{ID: "sense-of-term", Group: Moment, About: Sense, Needs: Measuring, Source: "GD", find: senseOfTerm,
		Says: "A force is positive when it points in the positive direction of the sum: which way does each force point?"},
	{ID: "turn-of-couple", Group: Moment, About: Sense, Needs: Measuring, Source: "PLM", find: turnOfCouple,
		Says: "A couple has the same sense about every centre: is the couple clockwise or counter-clockwise?"},
	{ID: "arm-from-elsewhere", General: true, Group: Moment, About: Arm, Needs: Measuring, Source: "GD", find: armFromElsewhere,
		Says: "Every arm in a moment sum is measured from the centre: from which point is each of your arms measured?"},
	{ID: "arm-to-elsewhere", General: true, Group: Moment, About: Arm, Needs: Measuring, Source: "GD, TB", find: armToElsewhere,
		Says: "An arm ends on the line of action of its own force: where does each of your arms end?"},
	{ID: "across-for-up", Group: Moment, About: Arm, Needs: Measuring, Source: "GD, RG", find: acrossForUp,
		Says: "A vertical force has a horizontal arm, and a horizontal force a vertical one: which distance goes with each force?"},
	{ID: "slant-as-arm", Group: Moment, About: Arm, Needs: Measuring, Source: "RG, TB", find: slantAsArm,
		Says: "The arm is the perpendicular distance from the centre to the line of action: which length is perpendicular to the line of the force?"},
	{ID: "moment-through-centre", Group: Moment, About: Presence, Needs: Choosing, Source: "TB", find: momentThroughCentre,
		Says: "A force whose line of action passes through the centre has no moment about it: which forces do have a moment?"},
	{ID: "taken-as-through-centre", Group: Moment, About: Presence, Needs: Choosing, Source: "TB", find: takenAsThroughCentre,
		Says: "A force has no moment only if its line of action passes through the centre: which lines of action miss the centre?"},
	{ID: "couple-times-distance", Group: Moment, About: Arm, Needs: Measuring, Source: "SD11, PLM", find: coupleTimesDistance,
		Says: "A couple has the same moment about every point and needs no arm: what does the couple add to this sum?"},
	{ID: "couple-left-out", Group: Moment, About: Presence, Needs: Choosing, Source: "SD11, PLM", find: coupleLeftOut,
		Says: "A couple counts in every moment sum of its body, wherever it acts: is the couple in this sum?"},
	{ID: "couple-in-force-sum", Seldom: true, Group: Moment, About: Presence, Needs: Choosing, Source: "SD11", find: coupleInForceSum,
		Says: "A couple has no resultant force and stays out of force sums: which forces belong in this sum?"},
	{ID: "arm-forgotten", Group: Moment, About: Arm, Needs: Measuring, Source: "NC", find: armForgotten,
		Says: "In a moment sum each force is multiplied by its arm: does every force have its arm here?"},
	{ID: "distance-in-force-sum", InSteps: true, Group: Moment, About: Size, Needs: Measuring, Source: "NC", find: distanceInForceSum,
		Says: "A force sum contains forces only, without distances: what is the force in each term?"},
	{ID: "couple-counted-twice", Group: Moment, About: Size, Needs: Measuring, Source: "PLM", find: coupleCountedTwice,
		Says: "A couple enters a moment sum once, beside the moments of the forces: how many times is the couple counted?"},
	{ID: "placed-from-other-end", Aside: true, Group: Moment, About: Arm, Needs: Measuring, Source: "DV", find: placedFromOtherEnd,
		Says: "The place of a load is measured from the end that is named first: from which end of its member is each load placed?"},
	{ID: "slope-as-run", Group: Moment, About: Arm, Needs: Measuring, Source: "RG, TB", find: slopeAsRun,
		Says: "A distance along an inclined member is longer than its horizontal and its vertical part: which of the distances used runs along the member?"},
	{ID: "centre-changed", General: true, Group: Moment, About: Arm, Needs: Measuring, Source: "DV", find: centreChanged,
		Says: "The centre is the same for every term of a moment sum: from which point are the arms of the known forces measured?"},
	{ID: "square-force-counted", InSteps: true, Group: Moment, About: Presence, Needs: Choosing, Source: "TB", find: squareForceCounted,
		Says: "A force perpendicular to the direction of a sum adds nothing to it: which forces have a component along the sum?"},
}

// turns turns each load, at a section and where the terms are written also each of its shapes, and each known force that acts
// as it is named and is not negative.
func (s *setting) turns() []change {
	forces := s.known().filter(func(t statics.Term) bool {
		if t.Force == statics.None {
			return !isCouple(t) && !(s.onMember(t) && s.cut.Quantity == statics.ShearForce && s.action(t).Shape != statics.AtPoint)
		}
		facing, _ := s.Assembly.Facing(s.sum.Body, t.Force)
		return s.question.Values[t.Force].Sign() > 0 && (facing > 0 || s.Assembly.Forces[t.Force].Kind == statics.Reaction)
	})
	var all []change
	for _, g := range forces.grouped(s.byGiver) {
		all = append(all, g.together(turned)...)
		if shapes := g.grouped(byAction); (s.cut != nil || s.question.Written || s.isPull(g.first())) && len(shapes) > 1 {
			for _, shape := range shapes {
				all = append(all, shape.together(turned)...)
			}
		}
	}
	return all
}

func turnOfTerm(s *setting) []change {
	if !s.sum.Moment {
		return nil
	}
	return s.turns()
}

func senseOfTerm(s *setting) []change {
	if s.sum.Moment {
		return nil
	}
	return s.turns()
}

func turnOfCouple(s *setting) []change { return s.couples().offMember().each(only(turned)) }

func coupleLeftOut(s *setting) []change { return s.couples().offMember().each(only(without)) }

// arms alters the arm of each known term that has one, to each of some distances.
func (s *setting) arms(distances func(t statics.Term) []exact.Num) []change {
	return s.withArms().each(func(t statics.Term) []statics.Term { return armedEach(t, distances(t)) })
}

func armFromElsewhere(s *setting) []change {
	return s.arms(func(t statics.Term) []exact.Num { return s.distances(t.At, t.Toward) })
}

func armToElsewhere(s *setting) []change {
	return s.arms(func(t statics.Term) []exact.Num {
		list := s.distances(s.sum.About, t.Toward)
		if s.isPull(t) { // to its own joint is a slip of its own
			own := movedTo(t, s.sum.About, s.hub(t)).Arm
			list = slices.DeleteFunc(list, own.Equal)
		}
		return list
	})
}

func acrossForUp(s *setting) []change {
	across := func(t statics.Term) []exact.Num {
		if slanting(t.Toward) {
			return nil
		}
		return []exact.Num{over(s.sum.About.To(t.At).Dot(t.Toward).Abs(), t.Toward.Length())}
	}
	return append(s.arms(across), s.withArms().armsOfComponents(across)...)
}

func slantAsArm(s *setting) []change {
	slant := func(t statics.Term) []exact.Num {
		from := s.sum.About.To(t.At)
		if !slanting(from) || from.Dot(t.Toward).IsZero() {
			return nil
		}
		return []exact.Num{from.Length()}
	}
	return slices.Concat(s.wholeAtDistance(), s.arms(slant), s.withArms().armsOfComponents(slant))
}

// wholeAtDistance lets an inclined force act whole, with the distance to the point where it acts for its arm: across, up,
// or straight.
func (s *setting) wholeAtDistance() []change {
	var all []change
	for _, g := range s.withArms().grouped(byAction) {
		all = append(all, g.whole()...)
	}
	return all
}

// whole lets the two components of a force act as one term, with the distance across, up or straight for its arm.
func (ts terms) whole() []change {
	if len(ts.at) != 2 || !ts.in.sum.Moment {
		return nil
	}
	t, sign := ts.first(), ts.list()[0].Value().Add(ts.list()[1].Value()).Sign()
	t.What, t.Size, t.Sign = statics.WholeForce, one, sign
	if isLoad(t) {
		t.Size = ts.in.action(t).Size.Abs()
	}
	from := ts.in.sum.About.To(t.At)
	arms := []exact.Num{from.Length()}
	if isLoad(t) || ts.in.Assembly.Forces[t.Force].Kind != statics.Reaction {
		arms = append(arms, from.X.Abs(), from.Y.Abs()) // a roller taken for vertical is another slip
	}
	var all []change
	for _, arm := range distinct(arms) {
		c := ts.together(without)[0]
		c.stray = []statics.Term{armed(t, arm)}
		all = append(all, c)
	}
	return all
}

// onMembers lists the terms of forces that are loads between the ends of members.
func (s *setting) onMembers() terms {
	return s.withArms().filter(func(t statics.Term) bool {
		return isLoad(t) && s.load(t).Joint == statics.None
	})
}

// placedFromOtherEnd turns the places on the member of a load end for end, at a section also that of each of its shapes.
func placedFromOtherEnd(s *setting) []change {
	way := func(t statics.Term) statics.Term {
		l := s.load(t)
		from := s.at(s.Assembly.Frame.Members[l.Member].From)
		d := s.Assembly.Frame.Length(l.Member).Sub(from.To(t.At).Length())
		return movedTo(t, s.sum.About, s.along(s.action(t), d))
	}
	var all []change
	for _, g := range s.onMembers().grouped(s.byGiver) {
		all = append(all, g.altered(way)...)
		if s.cut != nil && len(g.at) > 1 {
			all = append(all, g.each(only(way))...)
		}
	}
	return all
}

// slopeAsRun takes the distance of a load along an inclined member, from either end, for its horizontal or vertical part, or
// one of these for the distance along it.
func slopeAsRun(s *setting) []change {
	var all []change
	for _, g := range s.onMembers().grouped(s.byGiver) {
		if !slanting(s.Assembly.Frame.Span(s.load(g.first()).Member)) {
			continue
		}
		for _, way := range append(s.slopesAsRuns(g), s.runsAsSlopes(g)...) {
			all = append(all, g.altered(way)...)
			if len(g.at) > 1 && (s.oneByOne() || s.cut != nil) {
				all = append(all, g.each(only(way))...)
			}
			all = append(all, g.componentwise(only(way))...)
		}
	}
	return all
}

// slopesAsRuns are the ways to take the distance of a load along its member, from either end, across or up.
func (s *site) slopesAsRuns(load terms) []func(statics.Term) statics.Term {
	member := s.Assembly.Frame.Members[s.load(load.first()).Member]
	var all []func(statics.Term) statics.Term
	for _, end := range []int{member.From, member.To} {
		from := s.at(end)
		all = append(all, func(t statics.Term) statics.Term {
			if slanting(t.Toward) {
				return t
			}
			v := from.To(t.At)
			d, p := v.Length(), from
			p.X = p.X.Add(d.Mul(exact.Int(int64(v.X.Sign()))))
			p.Y = p.Y.Add(d.Mul(exact.Int(int64(v.Y.Sign()))))
			return movedTo(t, s.sum.About, p)
		})
	}
	return all
}

// runsAsSlopes are the ways to take the horizontal or vertical part of the distance of a point load from the start of its
// member along it. A stretch has two places.
func (s *site) runsAsSlopes(load terms) []func(statics.Term) statics.Term {
	x := s.action(load.first())
	if x.Shape != statics.AtPoint {
		return nil
	}
	from := s.fromStart(load.first())
	var all []func(statics.Term) statics.Term
	for _, d := range []exact.Num{from.X.Abs(), from.Y.Abs()} {
		all = append(all, func(t statics.Term) statics.Term { return movedTo(t, s.sum.About, s.along(x, d)) })
	}
	return all
}

// fromStart is the way of a load on a member from the start of that to where it acts.
func (s *site) fromStart(t statics.Term) statics.Vector {
	return s.at(s.Assembly.Frame.Members[s.load(t).Member].From).To(t.At)
}

func armForgotten(s *setting) []change {
	return s.arms(func(statics.Term) []exact.Num { return []exact.Num{one} })
}

// momentThroughCentre gives a known force along an axis, whose line passes through the centre, the distance of a joint, or
// of the point where it acts if the sum stands, for its arm.
func momentThroughCentre(s *setting) []change {
	through := s.where(func(t statics.Term) bool {
		return t.Why == statics.ThroughCentre && !slanting(t.Toward) && (isLoad(t) || s.question.Known(t.Force))
	})
	var all []change
	for _, t := range through.list() {
		list := s.distances(s.sum.About, t.Toward)
		if s.question.Stands {
			list = append(list, over(s.sum.About.To(t.At).Dot(t.Toward).Abs(), t.Toward.Length()))
		}
		for _, d := range distinct(list) {
			for _, sign := range []int{1, -1} {
				t.Arm, t.Sign, t.Why = d, sign, statics.Counts
				all = s.added(all, []statics.Term{t})
			}
		}
	}
	return all
}

// takenAsThroughCentre leaves out a force at a joint straight above or beside the centre, whose line yet misses it.
func takenAsThroughCentre(s *setting) []change {
	return s.withArms().filter(func(t statics.Term) bool {
		from := s.sum.About.To(t.At)
		return !slanting(from) && t.What == statics.WholeForce && (!isLoad(t) || s.load(t).Joint != statics.None) && !s.isPull(t)
	}).grouped(s.byGiver).leftOut()
}

// coupleTimesDistance multiplies a couple by its distance from the centre, across or up, or from another joint; at a section
// that of a support as well.
func coupleTimesDistance(s *setting) []change {
	if s.cut != nil {
		return s.known().filter(isCouple).each(func(t statics.Term) []statics.Term { return armedEach(t, s.coupleDistances(t)) })
	}
	return s.couples().each(func(t statics.Term) []statics.Term {
		from := s.sum.About.To(t.At)
		list := []exact.Num{from.X.Abs(), from.Y.Abs()}
		list = append(list, s.distances(t.At, statics.Vector{Y: one})...)
		list = append(list, s.distances(t.At, statics.Vector{X: one})...)
		if l := s.load(t); s.oneByOne() && l.Joint == statics.None {
			list = append(list, s.fromStart(t).Length())
		}
		return armedEach(t, list)
	})
}

// coupleInForceSum is another slip where the couple stands on a member in which the shear is asked for.
func coupleInForceSum(s *setting) []change {
	return s.netPush(func(t statics.Term) bool { return !s.onMember(t) })
}

// netPush puts known couples that pass a test into a sum of forces.
func (s *setting) netPush(test func(statics.Term) bool) []change {
	return s.where(func(t statics.Term) bool { return t.Why == statics.NoPush && s.hasValue(t) && test(t) }).counted()
}

// distanceInForceSum multiplies a force by its distance from a joint of the body, or where the sum
// stands a load by its place on the member.
func distanceInForceSum(s *setting) []change {
	if s.sum.Moment {
		return nil
	}
	return s.known().each(func(t statics.Term) []statics.Term {
		var list []exact.Num
		if !slanting(t.Toward) {
			list = s.distances(t.At, t.Toward)
		}
		if s.question.Stands && isLoad(t) && s.load(t).Joint == statics.None {
			from := s.fromStart(t)
			list = append(list, from.Length(), from.X.Abs(), from.Y.Abs(), s.Assembly.Frame.Length(s.load(t).Member).Sub(from.Length()))
		}
		var ways []statics.Term
		for _, d := range distinct(list) {
			ways = append(ways, armed(t, d))
		}
		return ways
	})
}

func coupleCountedTwice(s *setting) []change {
	couples := s.known().filter(func(t statics.Term) bool { return !isLoad(t) && isCouple(t) })
	return couples.each(only(func(t statics.Term) statics.Term { return sized(t, two) }))
}

// centreChanged measures all known arms, of several forces, from another joint.
func centreChanged(s *setting) []change {
	arms := s.withArms()
	if len(arms.grouped(s.byGiver)) < 2 {
		return nil
	}
	var all []change
	for _, j := range s.joints() {
		if p := s.at(j); !p.Equal(s.sum.About) {
			all = append(all, arms.together(func(t statics.Term) statics.Term { return movedTo(t, p, t.At) })...)
		}
	}
	return all
}

// squareForceCounted puts a known force that acts perpendicular to the sum into it.
func squareForceCounted(s *setting) []change {
	return s.where(func(t statics.Term) bool { return t.Why == statics.SquareTo && s.hasValue(t) }).counted()
}
