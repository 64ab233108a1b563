package statics

import "slices"

// relations puts in, where a part is put down, the force sum of it that says then that two forces are equal, if it is used as
// soon as the next free body is done. It gives nothing, so that the steps that follow stay as they are (S9). Other sums with
// two unknowns are written when they give a force: kept, they would say nothing and pile up.
func (p *planner) relations() {
	at := make([]int, len(p.a.Forces)) // step at which each force comes out
	for s, step := range p.steps {
		for _, i := range step.Gives {
			at[i] = s
		}
	}
	inserted := map[int][]Step{}
	last := noneFor(p.a.Bodies()) // the last step on each single body
	for s := range p.steps {
		step := &p.steps[s]
		if put := putDown(step, s, last); put != None {
			if p.oneBodyBetween(put, s) && p.sayEqual(&step.Sums[0], func(i int) bool { return at[i] <= put }) {
				step.Why = RelationUsed
				inserted[put] = append(inserted[put], Step{Sums: step.Sums, Why: KeptRelation, Relation: true, Left: 2})
			}
		}
		for _, sum := range step.Sums {
			if len(sum.Body) == 1 {
				last[sum.Body[0]] = s
			}
		}
	}
	if len(inserted) == 0 {
		return
	}
	all := make([]Step, 0, cap(p.steps))
	for s, step := range p.steps {
		all = append(append(all, step), inserted[s]...)
	}
	p.steps = all
}

// sayEqual reports whether a sum of a single body has two unknowns and nothing else that is not zero.
func (p *planner) sayEqual(s *Sum, known func(force int) bool) bool {
	spec, unknowns := s.spec(p.a), 0
	for _, i := range p.a.forcesOn[s.Body[0]] {
		switch {
		case !p.a.countsForce(&spec, i):
		case !known(i):
			unknowns++
		case !p.values[i].IsZero():
			return false
		}
	}
	return unknowns == 2 && !spec.loaded(p.a, s.Body)
}

// oneBodyBetween reports whether all steps between two are on one free body.
func (p *planner) oneBodyBetween(put, s int) bool {
	between := p.steps[put+1 : s]
	return !slices.ContainsFunc(between, func(step Step) bool {
		return slices.ContainsFunc(step.Sums, func(o Sum) bool { return !slices.Equal(o.Body, between[0].Sums[0].Body) })
	})
}

// putDown is the last step on the part of step s before other bodies were taken, or None if step s is not a single sum
// of forces on it, or if the part was not taken before.
func putDown(step *Step, s int, last []int) int {
	first := &step.Sums[0]
	if len(first.Body) > 1 || len(step.Sums) > 1 || first.Moment || last[first.Body[0]] == s-1 {
		return None
	}
	return last[first.Body[0]]
}
