package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

var internalSlips = []Slip{
	{ID: "shear-sign", Group: Internal, About: Answer, Needs: Reporting, Source: "TB", find: signOf(statics.ShearForce),
		Says: "The size is right, but the sign of the shear follows a convention: which sense of the shear counts as positive?"},
	{ID: "moment-side", Group: Internal, About: Answer, Needs: Reporting, Source: "TB", find: signOf(statics.BendingMoment),
		Says: "The size is right, but the sign of the moment tells which side of the member is in tension: which side of the member is in tension here?"},
	{ID: "axial-sign", Group: Internal, About: Answer, Needs: Reporting, Source: "TB", find: signOf(statics.AxialForce),
		Says: "The size is right, but the axial force is positive only in tension: does the axial force pull or push on the kept piece?"},
	{ID: "axial-for-shear", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: axialForShear,
		Says: "Axial force acts along the member and shear across it, whichever way the member runs: which forces act along this member?"},
	{ID: "not-along-member", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: notAlongMember,
		Says: "On an inclined member the forces are resolved along and perpendicular to it: what are the components of the forces in these two directions?"},
	{ID: "end-force-ignored", Group: Internal, About: Presence, Needs: Choosing, Source: "JH", find: endForceIgnored,
		Says: "What acts at the start of a member sets the first value: which forces act at the start of this member?"},
	{ID: "corner-not-passed", OfZero: true, Group: Internal, About: Presence, Needs: Choosing, Source: "TB", find: cornerNotPassed,
		Says: "A rigid joint passes on everything that acts beyond it: what acts on the kept piece besides the loads on this member?"},
	{ID: "shear-as-local-load", Group: Internal, About: Answer, Needs: Choosing, Source: "JH", find: shearAsLocalLoad,
		Says: "The shear balances all the forces on one side of the cut: what do the forces on the kept piece add up to?"},
	{ID: "no-step-at-load", Group: Internal, About: Presence, Needs: Choosing, Source: "TB", find: noStepAtLoad,
		Says: "A point load makes the shear jump by its component across the member: which jumps come before this place?"},
	{ID: "shear-step-at-couple", Group: Internal, About: Presence, Needs: Choosing, Source: "SD11", find: shearStepAtCouple,
		Says: "A couple makes the moment jump, but not the shear: which forces make up the shear?"},
	{ID: "no-step-at-couple", Group: Internal, About: Presence, Needs: Choosing, Source: "TB", find: noStepAtCouple,
		Says: "A couple makes the moment jump by its own size: what is the moment just past the couple?"},
	{ID: "step-other-way", Group: Internal, About: Sense, Needs: Measuring, Source: "TB", find: stepOtherWay,
		Says: "The sense of a couple on the kept piece decides which way the moment jumps: does the moment jump up or down here?"},
	{ID: "moment-step-at-load", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: momentStepAtLoad,
		Says: "A point load changes the slope of the moment, not its value: what is the moment here?"},
	{ID: "resultant-before-cut", Group: Internal, About: Size, Needs: Measuring, Source: "TB, EX", find: resultantBeforeCut,
		Says: "The cut comes first, and the resultant after it: which load lies on the kept piece?"},
	{ID: "whole-load-for-part", Group: Internal, About: Size, Needs: Measuring, Source: "TB", find: wholeLoadForPart,
		Says: "Only the load up to the cut acts on the kept piece: how much of the load is on the kept piece?"},
	{ID: "piece-of-ramp", Group: Internal, About: Size, Needs: Measuring, Source: "TB", find: pieceOfRamp,
		Says: "The intensity of a triangular load changes along it: how large is the intensity at the cut?"},
	{ID: "straight-under-spread", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: straightUnderSpread,
		Says: "Where the shear changes, the moment is a curve: how large is the area under the shear up to this place?"},
	{ID: "bulge-other-way", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: bulgeOtherWay,
		Says: "Drawn on the tension side, the moment curve bulges the way the load acts: on which side of its chord does the curve lie?"},
	{ID: "shear-kept-level", Group: Internal, About: Presence, Needs: Choosing, Source: "TB", find: shearKeptLevel,
		Says: "Under a distributed load the shear changes all along: how much of the load lies before this place?"},
	{ID: "load-slope-turned", Group: Internal, About: Sense, Needs: Measuring, Source: "TB", find: loadSlopeTurned,
		Says: "The sense of a distributed load decides whether the shear rises or falls: does the shear rise or fall under this load?"},
	{ID: "peak-at-middle", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: peakAtMiddle,
		Says: "The moment peaks where the shear is zero, which need not be the middle: what is the moment where the shear is zero?"},
	{ID: "from-other-end", Group: Internal, About: Answer, Needs: Choosing, Source: "DV", find: fromOtherEnd,
		Says: "Distances along a member are measured from its first joint: from which end is this place measured?"},
	{ID: "triangle-without-half", Group: Internal, About: Answer, Needs: Choosing, Source: "DV", find: triangleWithoutHalf,
		Says: "The moment changes by the area under the shear, and a triangle has half of base times height: how large is the area under the shear?"},
	{ID: "area-sign-lost", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: areaSignLost,
		Says: "Positive shear adds its area to the moment, and negative shear subtracts it: what is the sign of the area before this place?"},
	{ID: "zero-at-fixed-end", OfZero: true, Group: Internal, About: Answer, Needs: Choosing, Source: "SD7", find: zeroAtFixedEnd,
		Says: "A fixed support exerts a couple, and the moment there need not be zero: how large is the couple at the fixed end?"},
	{ID: "roles-kept-at-corner", Group: Internal, About: Answer, Needs: Choosing, Source: "TB", find: rolesKeptAtCorner,
		Says: "The directions of axial force and shear turn with the member at a corner: which forces act along this member, and which across it?"},
	{ID: "load-beyond-cut", Group: Internal, About: Presence, Needs: Choosing, Source: "TB", find: loadBeyondCut,
		Says: "A load acts on the piece on which it lies, and on no other: on which side of the cut does each load lie?"},
}

// signOf turns the sign of one quantity.
func signOf(q statics.Quantity) func(*setting) []change {
	return func(s *setting) []change {
		if s.cut == nil || s.cut.Quantity != q {
			return nil
		}
		return s.finally(one.Neg())
	}
}

// keptAlong is what the forces on the kept piece add up to along a direction.
func (s *setting) keptAlong(v statics.Vector) exact.Num {
	return s.cut.kept.Only(s.Assembly, s.Assembly.ForceSum(statics.FreeBody{s.cut.part}, v)).Residual(s.question.Values)
}

// force reports whether the question is for N or V.
func (s *setting) force() bool { return s.cut != nil && s.cut.Quantity != statics.BendingMoment }

func axialForShear(s *setting) []change {
	switch {
	case !s.force():
		return nil
	case s.cut.Quantity == statics.AxialForce:
		return bothWays(s.keptAlong(s.cut.along.Left()))
	}
	return bothWays(s.keptAlong(s.cut.along))
}

func notAlongMember(s *setting) []change {
	switch {
	case !s.force() || !slanting(s.cut.along):
		return nil
	case s.cut.Quantity == statics.AxialForce:
		return bothWays(s.keptAlong(statics.Vector{X: one}))
	}
	return bothWays(s.keptAlong(statics.Vector{Y: one}))
}

// endForceIgnored leaves out all forces at the joint of the member on the piece.
func endForceIgnored(s *setting) []change {
	if s.cut == nil {
		return nil
	}
	all := s.known().filter(func(t statics.Term) bool {
		return !isLoad(t) && s.Assembly.Forces[t.Force].Joint == s.cut.far()
	}).together(without)
	for i := range all {
		all[i].giver = nobody
	}
	return all
}

// cornerNotPassed leaves out all but the loads of the member, where other members come before it.
func cornerNotPassed(s *setting) []change {
	if s.cut == nil {
		return nil
	}
	if _, members := s.cut.kept.Beyond(); len(members) == 0 {
		return nil
	}
	all := s.known().filter(func(t statics.Term) bool { return !s.onCutMember(t) }).together(without)
	for i := range all {
		all[i].giver = nobody
	}
	return all
}

func shearAsLocalLoad(s *setting) []change {
	if s.cut == nil || s.cut.Quantity != statics.ShearForce {
		return nil
	}
	var all []change
	for _, l := range s.cut.loadsHere() {
		across := s.cut.along.Left()
		all = append(all, bothWays(over(l.Size.Mul(l.Along.Dot(across)), l.Along.Length().Mul(across.Length())))...)
		if !l.Along.Cross(across).IsZero() {
			all = append(all, bothWays(l.Size)...)
		}
	}
	return all
}

// stepsOf lists the loads of some shape on the cut member before the section, if the question is for a quantity.
func (s *setting) stepsOf(q statics.Quantity, shapes ...statics.ActionShape) terms {
	if s.cut == nil || s.cut.Quantity != q {
		return terms{in: s}
	}
	return s.known().filter(func(t statics.Term) bool {
		for _, shape := range shapes {
			if s.onMember(t) && s.action(t).Shape == shape {
				return true
			}
		}
		return false
	})
}

// spreadShapes are all shapes of distributed loads.
var spreadShapes = []statics.ActionShape{statics.Uniform, statics.RisingRamp, statics.FallingRamp}

func noStepAtLoad(s *setting) []change {
	return s.stepsOf(statics.ShearForce, statics.AtPoint).grouped(s.byGiver).leftOut()
}

func shearKeptLevel(s *setting) []change {
	return s.stepsOf(statics.ShearForce, spreadShapes...).grouped(s.byGiver).leftOut()
}

func loadSlopeTurned(s *setting) []change {
	var all []change
	for _, g := range s.stepsOf(statics.ShearForce, spreadShapes...).grouped(s.byGiver) {
		all = append(all, g.together(turned)...)
		if len(g.at) > 1 {
			all = append(all, g.each(only(turned))...)
		}
	}
	return all
}

func shearStepAtCouple(s *setting) []change {
	if s.cut == nil || s.cut.Quantity != statics.ShearForce {
		return nil
	}
	return append(s.netPush(s.onMember), s.couplesBeyond()...)
}

func noStepAtCouple(s *setting) []change {
	return s.stepsOf(statics.BendingMoment, statics.Turning).each(only(without))
}

func stepOtherWay(s *setting) []change {
	return s.stepsOf(statics.BendingMoment, statics.Turning).each(only(turned))
}

// momentStepAtLoad adds a point load at the section to the moment.
func momentStepAtLoad(s *setting) []change {
	if s.cut == nil || s.cut.Quantity != statics.BendingMoment {
		return nil
	}
	var all []change
	for _, l := range s.cut.loadsHere() {
		all = append(all, given(s.right.Add(l.Size)), given(s.right.Sub(l.Size)))
	}
	return all
}

// cutThrough alters the terms of distributed loads that the section cuts through.
func (s *setting) cutThrough(way func(t statics.Term, whole statics.Action) statics.Term) []change {
	if s.cut == nil {
		return nil
	}
	return s.spreads().filter(s.onCutMember).byLoad(func(t statics.Term, _ statics.Action) statics.Term {
		if y, ok := s.cut.whole(s.action(t)); ok {
			return way(t, y)
		}
		return t
	})
}

// resultantBeforeCut puts in the whole resultant where its place is before the cut, and nothing where it is beyond: of each
// shape of a load, and of all of it.
func resultantBeforeCut(s *setting) []change {
	return append(s.wholeLoads(false), s.cutThrough(func(t statics.Term, y statics.Action) statics.Term {
		if s.cut.at.To(y.At).Dot(s.cut.along).Sign() == s.cut.kept.Facing() {
			return without(t)
		}
		t = sized(t, over(y.Size, s.action(t).Size).Abs())
		if s.sum.Moment {
			return movedTo(t, s.sum.About, y.At)
		}
		return t
	})...)
}

// wholeLoadForPart puts in the size of the whole load, at the place of the part that is kept or at its own beyond the cut.
func wholeLoadForPart(s *setting) []change {
	return append(s.wholeLoads(true), s.cutThrough(func(t statics.Term, y statics.Action) statics.Term {
		return sized(t, over(y.Size, s.action(t).Size).Abs())
	})...)
}

// wholeLoads puts in each load that the section cuts through as it was before the cut, at its own place, where its resultant
// lies beyond the cut; or where it lies before, and leaves out those whose resultant lies beyond.
func (s *setting) wholeLoads(beyond bool) []change {
	if s.cut == nil {
		return nil
	}
	var all []change
	for _, g := range s.known().filter(s.onCutMember).grouped(s.byGiver) {
		load := s.action(g.first()).Load
		if !s.cut.parts(load) {
			continue
		}
		off := s.cut.resultantBeyond(load)
		c := g.together(without)[0]
		if off == beyond {
			c.stray = amountOf(s.cut.wholePart(s.sum, load))
		}
		if off || !beyond {
			all = append(all, c)
		}
	}
	return all
}

// wholePart is what all of a load adds to partSum.
func (k *cut) wholePart(like statics.Sum, load int) exact.Num {
	a, sum := k.partSum(like)
	var amount exact.Num
	for _, t := range sum.Terms() {
		if isLoad(t) && t.Why == statics.Counts && a.Actions[t.Action].Load == load {
			amount = amount.Add(t.Value())
		}
	}
	return amount
}

// partSum is the sum for all of the part that is like one of a piece of it.
func (k *cut) partSum(like statics.Sum) (*statics.Assembly, statics.Sum) {
	a := k.Solution.Apart()
	if like.Moment {
		return a, a.MomentSum(statics.FreeBody{k.part}, like.About)
	}
	return a, a.ForceSum(statics.FreeBody{k.part}, like.Along)
}

// amountOf is an amount as one term that stands for itself.
func amountOf(v exact.Num) []statics.Term {
	return []statics.Term{{Force: statics.None, Action: statics.None, Size: v.Abs(), Arm: one, Sign: v.Sign()}}
}

// pieceOfRamp takes the piece of a triangular load before the cut for a triangle with the intensity of the whole.
func pieceOfRamp(s *setting) []change {
	if s.cut == nil {
		return nil
	}
	var all []change
	for _, g := range s.spreads().filter(s.onCutMember).grouped(s.byGiver) {
		ramp := g.filter(func(t statics.Term) bool {
			y, cut := s.cut.whole(s.action(t))
			return cut && y.Shape != statics.Uniform
		})
		if len(ramp.at) == 0 {
			continue
		}
		all = append(all, g.altered(func(t statics.Term) statics.Term {
			y, cut := s.cut.whole(s.action(t))
			if !cut {
				return without(t) // the rectangle that is left of a falling load
			}
			return sized(t, over(y.Intensity, s.action(t).Intensity).Abs())
		})...)
	}
	return all
}

func straightUnderSpread(s *setting) []change {
	var all []change
	for _, p := range s.spans() {
		if v, ok := s.cut.straight(p); ok {
			all = append(all, given(v))
		}
	}
	return all
}

func bulgeOtherWay(s *setting) []change {
	var all []change
	for _, p := range s.spans() {
		if v, ok := s.cut.straight(p); ok {
			all = append(all, given(v.Mul(two).Sub(s.right)))
		}
	}
	return all
}

// elsewhere is the moment at another place of the member instead of the one that had to be found.
func (s *setting) elsewhere(x func(length exact.Num) exact.Num) []change {
	if s.cut == nil || s.cut.Quantity != statics.BendingMoment || !s.cut.Station.Found {
		return nil
	}
	d := s.cut.Solution.Diagrams[s.cut.Member]
	if v, ok := d.Section(x(d.Length), statics.Both); ok {
		return []change{given(v.M)}
	}
	return nil
}

func peakAtMiddle(s *setting) []change {
	return s.elsewhere(func(length exact.Num) exact.Num { return length.Mul(half) })
}

func fromOtherEnd(s *setting) []change {
	return s.elsewhere(func(length exact.Num) exact.Num { return length.Sub(s.cut.Station.At) })
}

// triangleWithoutHalf takes twice the area under the shear of a span up to the section, where that is a triangle or near it.
func triangleWithoutHalf(s *setting) []change {
	var all []change
	for _, p := range s.spans() {
		if v := p.first.V.Abs(); p.first.V.IsZero() || p.section.V.Abs().Mul(exact.Int(100)).Cmp(v) <= 0 {
			all = append(all, given(p.first.M.Add(p.section.M.Sub(p.first.M).Mul(two))))
			base := s.cut.Station.At.Sub(p.from)
			all = append(all, given(p.first.M.Add(p.first.V.Add(p.section.V).Mul(base))))
		}
	}
	return all
}

func areaSignLost(s *setting) []change {
	var all []change
	for _, p := range s.spans() {
		all = append(all, given(p.first.M.Mul(two).Sub(p.section.M)))
	}
	return all
}

func zeroAtFixedEnd(s *setting) []change {
	if s.cut == nil || s.cut.Quantity != statics.BendingMoment || s.right.IsZero() {
		return nil
	}
	if p, ok := s.support(s.cut.place()); ok && p.Kind == statics.Fixed {
		return []change{given(exact.Num{})}
	}
	return nil
}

// rolesKeptAtCorner takes N or V of the other member at a corner of two.
func rolesKeptAtCorner(s *setting) []change {
	if !s.force() || s.cut.place() == statics.None {
		return nil
	}
	f := &s.cut.Solution.Frame
	var all []change
	for _, m := range s.cut.Solution.Parts[s.cut.part].Members {
		mem, d := f.Members[m], s.cut.Solution.Diagrams[m]
		x, side := exact.Num{}, statics.After
		if mem.To == s.cut.place() {
			x, side = d.Length, statics.Before
		}
		if m == s.cut.Member || mem.From != s.cut.place() && mem.To != s.cut.place() || f.Span(m).Cross(s.cut.along).IsZero() {
			continue
		}
		other := s.cut.Section
		other.Member, other.Station, other.Side = m, statics.Station{At: x, Side: side}, statics.FromStart
		all = append(all, bothWays(other.Value())...)
	}
	return all
}

// loadBeyondCut puts in a load of the part that lies beyond the cut.
func loadBeyondCut(s *setting) []change {
	if s.cut == nil {
		return nil
	}
	a, sum := s.cut.partSum(s.sum)
	kept := map[int]bool{} // the loads of which some acts on the kept piece
	for _, t := range s.known().filter(isLoad).list() {
		kept[s.action(t).Load] = true
	}
	beyond := map[int]exact.Num{}
	var loads []int
	for _, t := range sum.Terms() {
		if !isLoad(t) || t.Why != statics.Counts {
			continue
		}
		l := a.Actions[t.Action].Load
		if kept[l] {
			continue
		}
		if _, seen := beyond[l]; !seen {
			loads = append(loads, l)
		}
		beyond[l] = beyond[l].Add(t.Value())
	}
	var all []change
	for _, l := range loads {
		all = append(all, beyondCut(l, beyond[l])...)
	}
	return all
}

// beyondCut makes a change of putting in an amount of a load. The assembly of the cut numbers actions anew, so the term
// stands for itself.
func beyondCut(load int, v exact.Num) []change {
	if v.IsZero() {
		return nil
	}
	return []change{{giver: Giver{statics.None, load}, stray: amountOf(v)}}
}

// couplesBeyond puts a couple beyond the cut into a sum of forces across the member, with either sign.
func (s *setting) couplesBeyond() []change {
	a, sum := s.cut.partSum(s.sum)
	var all []change
	for _, t := range sum.Terms() {
		if x := t.Action; isLoad(t) && t.Why == statics.NoPush && !s.cut.kept.Keeps(a, t) {
			size := a.Actions[x].Size
			all = append(all, beyondCut(a.Actions[x].Load, size)...)
			all = append(all, beyondCut(a.Actions[x].Load, size.Neg())...)
		}
	}
	return all
}
