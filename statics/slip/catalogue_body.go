package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

var bodySlips = []Slip{
	{ID: "inner-pin-force", Group: Body, About: Presence, Needs: Choosing, Source: "SD4", find: innerPinForce,
		Says: "Pin forces inside the free body cancel: which forces act on the free body from outside?"},
	{ID: "neighbours-load", Seldom: true, Group: Body, About: Presence, Needs: Choosing, Source: "SD5", find: neighboursLoad,
		Says: "A load on another body reaches this one only through the joint between them: which loads act on this body itself?"},
	{ID: "load-left-off", Group: Body, About: Presence, Needs: Choosing, Source: "SD3", find: loadLeftOff,
		Says: "Every load on the free body must be accounted for: is each one in your calculation?"},
	{ID: "reaction-left-off", Group: Body, About: Presence, Needs: Choosing, Source: "SD3, EX", find: reactionLeftOff,
		Says: "A support that is cut away is replaced by its reactions: is every reaction in your calculation?"},
	{ID: "bodies-mixed", Seldom: true, Group: Body, About: Presence, Needs: Choosing, Source: "SD1", find: bodiesMixed,
		Says: "All forces in one sum act on the same free body: which body is this sum for?"},
	{ID: "pin-load-on-both", Group: Body, About: Presence, Needs: Choosing, Source: "TB, SD6", find: pinLoadOnBoth,
		Says: "A load at a pin is counted on one body only, and the others feel it through the pin forces: which body carries the load at this pin?"},
	{ID: "pin-load-on-neither", Group: Body, About: Presence, Needs: Choosing, Source: "TB", find: pinLoadOnNeither,
		Says: "A load at a pin must be carried by one of the bodies there: which body carries the load at this pin?"},
	{ID: "shared-by-halves", Group: Body, About: Answer, Needs: Choosing, Source: "NC, TB", find: sharedByHalves,
		Says: "A load may be halved only when the frame and its loads are both symmetric: are the frame and its loads symmetric here?"},
	{ID: "not-split-at-pin", Group: Body, About: Presence, Needs: Choosing, Source: "TB, SD1", find: notSplitAtPin,
		Says: "A load that runs across a pin is split there first: which stretch of the load lies on this body?"},
	{ID: "whole-load-on-stretch", Group: Body, About: Size, Needs: Measuring, Source: "SD1", find: wholeLoadOnStretch,
		Says: "A body carries only the stretch of a load that lies on it: how long is the stretch on this body?"},
}

// innerPinForce puts in what passes between two parts that are both inside the cut: as it acts on one of them.
func innerPinForce(s *setting) []change {
	var all []change
	inside := s.where(func(t statics.Term) bool { return t.Why == statics.InsideBody && s.question.Known(t.Force) })
	for _, joint := range inside.grouped(s.byJoint) {
		for _, face := range []bool{true, false} {
			var stray []statics.Term
			for _, inner := range joint.list() {
				f := s.Assembly.Forces[inner.Force]
				body := f.By
				if face {
					body = f.On
				}
				alone := counting(s.sumOn(body), func(t statics.Term) bool { return t.Force == inner.Force })
				stray = append(stray, alone...)
				all = s.added(all, alone)
			}
			if len(joint.at) > 1 && len(stray) > 1 {
				all = s.added(all, stray)
			}
		}
	}
	return all
}

// counting lists the terms of a sum that count and that are wanted.
func counting(sum statics.Sum, want func(statics.Term) bool) []statics.Term {
	var all []statics.Term
	for _, t := range sum.Terms() {
		if t.Why == statics.Counts && want(t) {
			all = append(all, t)
		}
	}
	return all
}

// addedLoads makes a change of putting in each of the foreign loads that are wanted.
func (s *setting) addedLoads(want func(l statics.Load) bool) []change {
	var all []change
	for _, stray := range s.foreign(want) {
		all = s.added(all, stray)
	}
	return all
}

func neighboursLoad(s *setting) []change {
	return s.addedLoads(func(l statics.Load) bool { return !s.sharedPin(l) && !s.continued(l) })
}

func pinLoadOnBoth(s *setting) []change { return s.addedLoads(s.sharedPin) }

// notSplitAtPin puts in a stretch of a load that lies on a neighbour, or all stretches on other bodies together.
func notSplitAtPin(s *setting) []change {
	all := s.addedLoads(s.continued)
	for _, stray := range s.stretchesElsewhere() {
		all = s.added(all, stray)
	}
	return all
}

// bodiesMixed puts in all loads of one neighbour, where they are several.
func bodiesMixed(s *setting) []change {
	var all []change
	for _, b := range s.neighbours() {
		stray := counting(s.sumOn(b), isLoad)
		loads := map[int]bool{}
		for _, t := range stray {
			loads[s.action(t).Load] = true
		}
		if len(loads) > 1 {
			all = s.added(all, stray)
		}
	}
	for i := range all {
		all[i].giver = nobody
	}
	return all
}

func loadLeftOff(s *setting) []change {
	loads := s.forcesOfLoads(func(t statics.Term) bool {
		return !s.atPin(t) && !(s.onMember(t) && s.cut.Quantity == statics.ShearForce) // which is a slip of its own
	})
	all := loads.grouped(s.byGiver).otherThanOnePull().leftOut()
	for _, entry := range loads.grouped(s.byEntry) {
		if len(entry.grouped(s.byGiver)) > 1 { // one load over several members of this body
			all = append(all, groups{entry}.leftOut()...)
		}
	}
	for _, g := range loads.grouped(s.byGiver) {
		all = append(all, g.withoutAStretch()...)
	}
	return all
}

// withoutAStretch leaves out of a load that runs on over several members the stretch of one of them.
func (whole terms) withoutAStretch() []change {
	s := whole.in
	of := s.action(whole.first()).Loads
	if of == nil {
		return nil
	}
	apart := s.sum.Again(s.Assembly.Apart())
	var all []change
	for _, left := range of {
		c := whole.together(without)[0]
		for _, t := range apart.Terms() {
			if !isLoad(t) || t.Why != statics.Counts {
				continue
			}
			if l := s.Assembly.Apart().Actions[t.Action].Load; l != left && slices.Contains(of, l) {
				c.stray = append(c.stray, amountOf(t.Value())...)
			}
		}
		all = append(all, c)
	}
	return all
}

// At a cut the load lies on the piece kept or does not: there it is a load left off as any other.
func pinLoadOnNeither(s *setting) []change {
	if s.cut != nil {
		return nil
	}
	return s.forcesOfLoads(s.atPin).grouped(s.byGiver).otherThanOnePull().leftOut()
}

// reactionLeftOff leaves out a known reaction force, but for the components of a pinned support.
func reactionLeftOff(s *setting) []change {
	return s.reactions(func(f statics.Force) bool { return !f.Couple && !s.pinned(f) }).grouped(s.byGiver).leftOut()
}

// sharedByHalves gives a reaction half of the load along its line, whatever the moments say, or where a sum of moments
// stands a pin force, with either sign.
func sharedByHalves(s *setting) []change {
	f := s.Assembly.Forces[s.question.Force]
	pin := f.Kind != statics.Reaction
	if f.Couple || slanting(f.Along) || pin && !(s.question.Stands && s.sum.Moment) {
		return nil
	}
	var load exact.Num
	for _, t := range s.Assembly.ForceSum(s.sum.Body, f.Along).Terms() {
		if isLoad(t) {
			load = load.Add(t.Value())
		}
	}
	if load.IsZero() {
		return nil
	}
	share := load.Mul(half).Neg()
	if pin {
		return bothWays(share)
	}
	return []change{{giver: nobody, given: &share}}
}

// wholeLoadOnStretch takes the size of a uniform load that runs on beyond the body, at the middle of the body's stretch;
// where the terms are written, also with the other stretches on the body.
func wholeLoadOnStretch(s *setting) []change {
	with := []func(body int) bool{func(body int) bool { return !s.sum.Body.Has(body) }}
	if s.question.Written {
		with = append(with, func(int) bool { return true })
	}
	var all []change
	for _, counts := range with {
		for _, g := range s.shaped(statics.Uniform).grouped(byAction) {
			all = append(all, g.altered(func(t statics.Term) statics.Term { return sized(t, s.runningOn(t, counts)) })...)
		}
	}
	return all
}

// runningOn is how many times as large a uniform load is as the stretch of a term, with its stretches on the bodies that
// count.
func (s *site) runningOn(t statics.Term, counts func(body int) bool) exact.Num {
	x := s.action(t)
	size := x.Size
	for _, y := range s.Assembly.Actions {
		if y.Load != x.Load && y.Shape == statics.Uniform && counts(y.Body) && s.Assembly.Frame.Loads[y.Load].Entry == s.load(t).Entry {
			size = size.Add(y.Size)
		}
	}
	return over(size, x.Size).Abs()
}
