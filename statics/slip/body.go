package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

var bodySlips = []Slip{
	{ID: "inner-pin-force", Group: Body, About: Presence, Source: "SD4, FI", find: innerPinForce,
		Says: "Inside one cut the two halves of a pin force cancel, so which forces come from outside this body?"},
	{ID: "neighbours-load", Group: Body, About: Presence, Source: "SD5", find: neighboursLoad,
		Says: "A load reaches another part only through the pin between them, so which loads touch this body itself?"},
	{ID: "load-left-off", Group: Body, About: Presence, Source: "SD3", find: loadLeftOff,
		Says: "Every load on the outline of the body goes in, so walk round it once more: which one is not yet in the sum?"},
	{ID: "reaction-left-off", Group: Body, About: Presence, Source: "SD3, EX", find: reactionLeftOff,
		Says: "Where a body is cut from its support, what the support exerts takes its place, so which reaction belongs in this sum too?"},
	{ID: "bodies-mixed", Group: Body, About: Presence, Source: "SD1", find: bodiesMixed,
		Says: "Loads and forces of one sum come from one body, so which body is this sum for?"},
	{ID: "pin-load-on-both", Group: Body, About: Presence, Source: "TB, SD6", find: pinLoadOnBoth,
		Says: "A load at a pin goes on one part only, and the other feels it through the pin force, so which part carries it here?"},
	{ID: "pin-load-on-neither", Group: Body, About: Presence, Source: "TB", find: pinLoadOnNeither,
		Says: "A load at a pin must be carried by one of the parts, so which part carries it here?"},
	{ID: "shared-by-halves", Group: Body, About: Answer, Source: "IN, NC", find: sharedByHalves,
		Says: "Equal shares need a frame and loads that are both symmetric, so what does the sum itself give?"},
	{ID: "not-split-at-pin", Group: Body, About: Presence, Source: "TB, SD1", find: notSplitAtPin,
		Says: "A load that runs across a pin is split there before anything else, so which stretch of it lies on this body?"},
	{ID: "whole-load-on-stretch", Group: Body, About: Size, Source: "SD1", find: wholeLoadOnStretch,
		Says: "A part carries only the stretch of a load that lies on it, so what length of it is on this body?"},
}

// innerPinForce puts in what passes between two parts that are both inside the cut: as it acts on one of them.
func innerPinForce(s *scene) []change {
	var all []change
	inside := s.where(func(t statics.Term) bool { return t.Why == statics.InsideBody && s.Known(t.Force) })
	for _, joint := range s.grouped(inside, s.byJoint) {
		for _, face := range []bool{true, false} {
			var stray []statics.Term
			for _, i := range joint {
				f := s.Assembly.Forces[s.sum.Terms[i].Force]
				body := f.By
				if face {
					body = f.On
				}
				alone := counting(s.sumOn(body), func(t statics.Term) bool { return t.Force == s.sum.Terms[i].Force })
				stray = append(stray, alone...)
				all = s.added(all, alone)
			}
			if len(joint) > 1 && len(stray) > 1 {
				all = s.added(all, stray)
			}
		}
	}
	return all
}

// sumOn is the same sum for another body.
func (s *scene) sumOn(body int) statics.Sum {
	if s.sum.Moment {
		return s.Assembly.MomentSum(statics.FreeBody{body}, s.sum.About)
	}
	return s.Assembly.ForceSum(statics.FreeBody{body}, s.sum.Along)
}

// counting lists the terms of a sum that count and that are wanted.
func counting(sum statics.Sum, want func(statics.Term) bool) []statics.Term {
	var all []statics.Term
	for _, t := range sum.Terms {
		if t.Why == statics.Counts && want(t) {
			all = append(all, t)
		}
	}
	return all
}

// added appends the change of putting in stray terms, unless they come to nothing.
func (s *scene) added(all []change, stray []statics.Term) []change {
	var amount exact.Num
	for _, t := range stray {
		amount = amount.Add(s.amount(t))
	}
	if amount.IsZero() {
		return all
	}
	return append(all, change{giver: s.giver(stray[0]), stray: stray})
}

// neighbours lists the bodies outside the cut that a force joins to it.
func (s *scene) neighbours() []int {
	next := map[int]bool{}
	for _, i := range s.Assembly.ForcesOn(s.sum.Body) {
		if f := s.Assembly.Forces[i]; f.By != statics.None {
			next[f.On], next[f.By] = true, true
		}
	}
	var all []int
	for b := range s.Assembly.Bodies() {
		if next[b] && !s.sum.Body.Has(b) {
			all = append(all, b)
		}
	}
	return all
}

// foreign lists, for each neighbour, the terms of its loads in this sum, by the load.
func (s *scene) foreign(want func(l statics.Load) bool) [][]statics.Term {
	var all [][]statics.Term
	for _, b := range s.neighbours() {
		var loads []int
		for _, t := range counting(s.sumOn(b), isLoad) {
			l := s.action(t).Load
			if !want(s.Assembly.Frame.Loads[l]) {
				continue
			}
			if n := len(loads); n == 0 || loads[n-1] != l {
				loads, all = append(loads, l), append(all, nil)
			}
			all[len(all)-1] = append(all[len(all)-1], t)
		}
	}
	return all
}

// sharedPin reports whether a load of another body acts at a joint that this body has too.
func (s *scene) sharedPin(l statics.Load) bool {
	for _, j := range s.joints() {
		if l.Joint == j {
			return true
		}
	}
	return false
}

// continued reports whether a load of another body is a stretch of one that this body carries too.
func (s *scene) continued(l statics.Load) bool {
	for _, i := range s.Assembly.ActionsOn(s.sum.Body) {
		if m := s.Assembly.Frame.Loads[s.Assembly.Loads[i].Load]; m.Entry == l.Entry && l.Kind == statics.SpreadLoad {
			return true
		}
	}
	return false
}

// addedLoads makes a change of putting in each of the foreign loads that are wanted.
func (s *scene) addedLoads(want func(l statics.Load) bool) []change {
	var all []change
	for _, stray := range s.foreign(want) {
		all = s.added(all, stray)
	}
	return all
}

func neighboursLoad(s *scene) []change {
	return s.addedLoads(func(l statics.Load) bool { return !s.sharedPin(l) && !s.continued(l) })
}

func pinLoadOnBoth(s *scene) []change { return s.addedLoads(s.sharedPin) }

func notSplitAtPin(s *scene) []change { return s.addedLoads(s.continued) }

// bodiesMixed puts in all loads of one neighbour, where they are several.
func bodiesMixed(s *scene) []change {
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

// atPin reports whether a load's term is of a load at a joint where parts meet.
func (s *scene) atPin(t statics.Term) bool {
	l := s.load(t)
	for _, c := range s.Assembly.Frame.Connections {
		if l.Joint != statics.None && c.Joint == l.Joint {
			return true
		}
	}
	return false
}

// leftOut makes a change of leaving out the terms of each group.
func (s *scene) leftOut(groups [][]int) []change {
	var all []change
	for _, g := range groups {
		all = append(all, s.together(g, without)...)
	}
	return all
}

// forcesOfLoads lists the terms of loads that are forces, and pass a test.
func (s *scene) forcesOfLoads(test func(statics.Term) bool) []int {
	return s.filter(s.known(), func(t statics.Term) bool { return isLoad(t) && !isCouple(t) && test(t) })
}

// filter keeps those of some terms that pass a test.
func (s *scene) filter(terms []int, test func(statics.Term) bool) []int {
	var all []int
	for _, i := range terms {
		if test(s.sum.Terms[i]) {
			all = append(all, i)
		}
	}
	return all
}

func loadLeftOff(s *scene) []change {
	loads := s.forcesOfLoads(func(t statics.Term) bool {
		return !s.atPin(t) && !(s.onMember(t) && s.cut.Quantity == Shear) // which is a slip of its own
	})
	all := s.leftOut(s.grouped(loads, s.byGiver))
	for _, entry := range s.grouped(loads, func(t statics.Term) [2]int { return [2]int{s.load(t).Entry} }) {
		if len(s.grouped(entry, s.byGiver)) > 1 { // one load over several members of this body
			all = append(all, s.leftOut([][]int{entry})...)
		}
	}
	return all
}

func pinLoadOnNeither(s *scene) []change {
	return s.leftOut(s.grouped(s.forcesOfLoads(s.atPin), s.byGiver))
}

// reactionLeftOff leaves out a known reaction force, but for the components of a pinned support.
func reactionLeftOff(s *scene) []change {
	return s.leftOut(s.grouped(s.reactions(func(f statics.Force) bool { return !f.Couple && !s.pinned(f) }), s.byGiver))
}

// reactions lists the terms of known reactions that pass a test.
func (s *scene) reactions(test func(statics.Force) bool) []int {
	return s.filter(s.known(), func(t statics.Term) bool {
		return t.Force != statics.None && s.Assembly.Forces[t.Force].Kind == statics.Reaction && test(s.Assembly.Forces[t.Force])
	})
}

// support is the support at a joint; false if there is none.
func (s *scene) support(joint int) (statics.Support, bool) {
	for _, p := range s.Assembly.Frame.Supports {
		if p.Joint == joint {
			return p, true
		}
	}
	return statics.Support{}, false
}

// pinned reports whether a reaction is a component of a pinned support.
func (s *scene) pinned(f statics.Force) bool {
	p, ok := s.support(f.Joint)
	return ok && p.Kind == statics.Pinned
}

// sharedByHalves gives a reaction half of the load along its line, whatever the moments say.
func sharedByHalves(s *scene) []change {
	f := s.Assembly.Forces[s.Force]
	if f.Couple || f.Kind != statics.Reaction || slanting(f.Along) {
		return nil
	}
	var load exact.Num
	for _, t := range s.Assembly.ForceSum(s.sum.Body, f.Along).Terms {
		if isLoad(t) {
			load = load.Add(t.Value())
		}
	}
	if load.IsZero() {
		return nil
	}
	share := load.Mul(half).Neg()
	return []change{{giver: nobody, given: &share}}
}

// wholeLoadOnStretch takes the size of a uniform load that runs on beyond the body, at the middle of the body's stretch.
func wholeLoadOnStretch(s *scene) []change {
	whole := func(t statics.Term) []statics.Term {
		x := s.action(t)
		size := x.Size
		for _, y := range s.Assembly.Loads {
			if y.Load != x.Load && y.Shape == statics.Uniform && !s.sum.Body.Has(y.Body) &&
				s.Assembly.Frame.Loads[y.Load].Entry == s.load(t).Entry {
				size = size.Add(y.Size)
			}
		}
		return []statics.Term{sized(t, over(size, x.Size).Abs())}
	}
	var all []change
	for _, g := range s.grouped(s.shaped(statics.Uniform), byAction) {
		all = append(all, s.altered(g, func(t statics.Term) statics.Term { return whole(t)[0] })...)
	}
	return all
}

// shaped lists the terms of spread loads of some shapes.
func (s *scene) shaped(shapes ...statics.ActionShape) []int {
	return s.forcesOfLoads(func(t statics.Term) bool {
		for _, shape := range shapes {
			if s.action(t).Shape == shape {
				return true
			}
		}
		return false
	})
}

// altered is together where the way makes a difference.
func (s *scene) altered(terms []int, way func(statics.Term) statics.Term) []change {
	for _, i := range terms {
		if t := s.sum.Terms[i]; !way(t).Value().Equal(t.Value()) {
			return s.together(terms, way)
		}
	}
	return nil
}
