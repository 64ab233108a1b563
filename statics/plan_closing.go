package statics

import "slices"

// relations puts in, where a part is put down, the force sum of it that has then two unknowns left and is used later.
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
			left := step.Sums[0].Unknowns(func(i int) bool { return at[i] <= put })
			if len(left) == 2 {
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

// putDown is the last step on the part of step s before other bodies were taken, or None if step s is not a single sum
// of forces on it, or if the part was not taken before.
func putDown(step *Step, s int, last []int) int {
	first := &step.Sums[0]
	if len(first.Body) > 1 || len(step.Sums) > 1 || first.Moment || last[first.Body[0]] == s-1 {
		return None
	}
	return last[first.Body[0]]
}

// closingWork bounds the forces and loads looked at for the closing check: in a large frame any joint will do.
const closingWork = 2000

// closing ends with a sum about the whole that was not used and in which most forces count: a sum of moments about a
// joint, or of forces if the moments about all joints were used.
func (p *planner) closing() {
	var best spec
	most := 0
	try := func(s spec) {
		if n := p.counting(&s); n > most && !p.used(&s) {
			best, most = s, n
		}
	}
	tries := max(2, closingWork/(len(p.entire.faces)+len(p.a.Loads)+1))
	for j := range p.a.Frame.Joints[:min(len(p.a.Frame.Joints), tries)] {
		try(p.a.momentAbout(j))
	}
	if most == 0 {
		try(spec{along: east, centre: None})
		try(spec{along: north, centre: None})
	}
	if most > 0 {
		p.steps = append(p.steps, Step{Sums: []Sum{p.a.sum(p.entire.FreeBody, &best)}, Why: ClosingCheck, Check: true})
	}
}

// counting is twice the forces and loads that have a part in a sum of the whole and are not nought, or 1 if only forces
// that are nought have.
func (p *planner) counting(s *spec) int {
	n, nought := 0, 0
	for _, i := range p.entire.faces {
		switch {
		case !p.a.countsForce(s, i):
		case p.values[i].IsZero():
			nought = 1
		default:
			n += 2
		}
	}
	for i := range p.a.Loads {
		if p.a.countsAction(s, i) {
			n += 2
		}
	}
	return max(n, nought)
}

// used reports whether a sum of the whole was a step of the plan.
func (p *planner) used(s *spec) bool {
	return slices.ContainsFunc(p.steps, func(step Step) bool {
		return slices.ContainsFunc(step.Sums, func(o Sum) bool {
			return len(o.Body) == len(p.entire.FreeBody) && s.same(&o)
		})
	})
}

// same reports whether a sum of the same body is that of the spec.
func (s *spec) same(o *Sum) bool {
	if s.moment != o.Moment {
		return false
	}
	if s.moment {
		return s.about.Equal(o.About)
	}
	return s.along.Cross(o.Along).IsZero()
}
