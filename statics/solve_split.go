package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A Split is the expert's way round two sums that hold the two components of one force, so that neither has one unknown
// alone: the force is split otherwise, along the line from its joint to the centre of one of the sums and vertically. The
// part along that line passes through the centre, so that sum gives the vertical part, and then the second sum gives the
// part along the line. Of a frame whose feet are at different levels the line is that which joins the feet.
//
// Where the plan gives the force of a pin between two feet, it is the reaction at one foot that is split so.
//
// Its sums and steps are those of an Assembly of its own, which differs from that of the plan by the two forces only.
type Split struct {
	*Assembly
	Values []exact.Num // of its forces
	Along  int         // the force along the line, named Et; it stands for Ex
	Upward int         // the vertical force, named Ev; it stands for Ey
	Toward Point       // the line leads there from the joint of the forces
	Steps  []Step      // what gives the vertical force, and what gives that along the line
}

// Split finds the way round a step of the plan that solves two sums together, before which the known forces came out. It
// is nil if there is none: the step does not give the two components of one force, neither sum is one of moments, or the
// line has no exact length.
func (s *Solution) Split(step *Step, known []bool) *Split {
	a := s.Assembly
	if len(step.Sums) != 2 || !a.ofOneForce(step.Gives) {
		return nil
	}
	by := splitter{a, s.Values, known}
	if w := by.atFoot(step); w != nil {
		return w
	}
	first := by.bestCentre(step)
	if first == None || a.Frame.Joints[a.Forces[step.Gives[0]].Joint].At.To(step.Sums[first].About).Length().Inexact() {
		return nil
	}
	w := &Split{Along: step.Gives[0], Upward: step.Gives[1], Toward: step.Sums[first].About}
	w.Assembly, w.Values = by.parted(w), slices.Clone(s.Values)
	w.components(a, s.Values)
	w.steps(step.Sums[first], w.Upward, 2)
	w.steps(step.Sums[1-first], w.Along, 1)
	return w
}

// A splitter looks for the way round: in an assembly, with the values of its forces, of which some are known before the
// step.
type splitter struct {
	*Assembly
	values []exact.Num
	known  []bool
}

// bestCentre is the sum of moments toward whose centre the force is split: one about a foot if there is one, else the
// first; None if there is no sum of moments.
func (a splitter) bestCentre(step *Step) int {
	best := None
	for n := range step.Sums {
		s := &step.Sums[n]
		if s.Moment && (best == None || a.isFoot(s.Centre) && !a.isFoot(step.Sums[best].Centre)) {
			best = n
		}
	}
	return best
}

// parted is the assembly with the two forces along the line and vertical. The line is not vertical itself, for then
// the force's vertical component had no part in the sum.
func (a splitter) parted(s *Split) *Assembly {
	b := *a.Assembly
	b.Forces = slices.Clone(a.Forces)
	along, upward := &b.Forces[s.Along], &b.Forces[s.Upward]
	joint := a.Frame.Joints[along.Joint]
	suffix := along.Name[len(joint.Name)+1:] // the part on which it acts, where the name tells it
	along.Along = joint.At.To(s.Toward)
	upward.Along = north
	b.lines = b.places.linesOf(b.Forces)
	along.Name, upward.Name = a.unusedName(joint.Name, "t", suffix), a.unusedName(joint.Name, "v", suffix)
	return &b
}

// unusedName is a name for a force at a joint that no force has yet.
func (a splitter) unusedName(joint, kind, suffix string) string {
	name := joint + kind + suffix
	for slices.ContainsFunc(a.Forces, func(f Force) bool { return f.Name == name }) {
		kind += "'"
		name = joint + kind + suffix
	}
	return name
}

// components finds the values of the two forces, whose resultant is that of the two they stand for (S15).
func (s *Split) components(a *Assembly, values []exact.Num) {
	var whole Vector
	for _, i := range []int{s.Along, s.Upward} {
		u, _ := a.Forces[i].Along.unit()
		whole = whole.Plus(u.Times(values[i]))
	}
	along, _ := s.Forces[s.Along].Along.unit()
	s.Values[s.Along] = over(whole.X, along.X)
	s.Values[s.Upward] = whole.Y.Sub(along.Y.Mul(s.Values[s.Along]))
}

// steps adds a sum of the plan's assembly as a step.
func (s *Split) steps(sum Sum, gives, left int) {
	same := sum.spec(s.Assembly)
	s.add(s.sum(sum.Body, &same), gives, left)
}
