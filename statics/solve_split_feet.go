package statics

import "slices"

// atFoot is the way round two sums of moments about two feet that give the force of the pin between the bodies on
// them: instead the reaction at one foot is split along the line to the other. Both bodies together, about the other foot,
// then give its vertical part, and the body on it, about the pin, the part along the line. It is nil if a sum would hold
// anything else that is unknown.
func (a splitter) atFoot(step *Step) *Split {
	first, second := &step.Sums[0], &step.Sums[1]
	pin := a.Forces[step.Gives[0]].Joint
	if !first.Moment || !second.Moment || !a.isFoot(first.Centre) || !a.isFoot(second.Centre) || a.isFoot(pin) {
		return nil
	}
	for _, way := range [2][2]*Sum{{second, first}, {first, second}} {
		own, other := way[0], way[1]
		along := a.reactionAt(own.Centre, own.Body)
		if along == None || own.About.X.Equal(other.About.X) ||
			own.About.To(other.About).Length().Inexact() {
			continue
		}
		s := &Split{Along: along, Upward: along + 1, Toward: other.About}
		s.Assembly, s.Values = a.parted(s), slices.Clone(a.values)
		s.components(a.Assembly, a.values)
		both := append(slices.Clone(own.Body), other.Body...)
		slices.Sort(both)
		s.add(s.MomentSum(slices.Compact(both), other.About), s.Upward, 2)
		s.add(s.MomentSum(own.Body, a.Frame.Joints[pin].At), s.Along, 1)
		if s.oneAtATime(step.Gives, a.known) {
			return s
		}
	}
	return nil
}

// reactionAt is the first of the two components of the reaction at a joint, on one of the bodies, or None. They are
// neighbours (S3).
func (a splitter) reactionAt(joint int, on FreeBody) int {
	for i := range a.Forces[:len(a.Forces)-1] {
		f, g := &a.Forces[i], &a.Forces[i+1]
		if f.Kind == Reaction && f.Joint == joint && on.Has(f.On) && !f.Couple && g.Kind == Reaction && g.Joint == joint && !g.Couple {
			return i
		}
	}
	return None
}

// add adds a sum as a step that gives one force.
func (s *Split) add(sum Sum, gives, left int) {
	s.Steps = append(s.Steps, Step{Sums: []Sum{sum}, Gives: []int{gives}, Why: SplitForce, Left: left})
}

// oneAtATime reports whether each step has one unknown when its turn comes, where what the plan's step gives is not known.
func (s *Split) oneAtATime(gives []int, known []bool) bool {
	now := slices.Clone(known)
	for _, i := range gives {
		now[i] = false
	}
	for _, step := range s.Steps {
		left := step.Sums[0].Unknowns(func(i int) bool { return now[i] })
		if !slices.Equal(left, step.Gives) {
			return false
		}
		now[step.Gives[0]] = true
	}
	return true
}
