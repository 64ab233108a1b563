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
	for s := range p.steps {
		step := &p.steps[s]
		put := p.putDown(s)
		if put == None || len(step.Sums) > 1 || step.Sums[0].Moment {
			continue
		}
		left := step.Sums[0].Unknowns(func(i int) bool { return at[i] <= put })
		if len(left) == 2 {
			step.Why = RelationUsed
			inserted[put] = append(inserted[put], Step{Sums: step.Sums, Why: KeptRelation, Relation: true, Left: 2})
		}
	}
	var all []Step
	for s, step := range p.steps {
		all = append(append(all, step), inserted[s]...)
	}
	p.steps = all
}

// putDown is the last step on the part of step s before other bodies were taken, or None if it was not taken before.
func (p *planner) putDown(s int) int {
	body := p.steps[s].Sums[0].Body
	if len(body) > 1 || s == 0 || p.steps[s-1].takes(body) {
		return None
	}
	for t := s - 2; t >= 0; t-- {
		if p.steps[t].takes(body) {
			return t
		}
	}
	return None
}

// takes reports whether one of the step's sums is of the free body.
func (s Step) takes(b FreeBody) bool {
	return slices.ContainsFunc(s.Sums, func(sum Sum) bool { return slices.Equal(sum.Body, b) })
}

// closingCentres is how many joints are tried for the closing check: in a large frame any will do.
const closingCentres = 30

// closing ends with a sum about the whole that was not used and in which most forces count: a sum of moments about a
// joint, or of forces if the moments about all joints were used.
func (p *planner) closing() {
	var best spec
	most := 0
	try := func(s spec) {
		if n := p.counting(s); n > most && !p.used(s) {
			best, most = s, n
		}
	}
	for _, j := range p.a.Frame.Joints[:min(len(p.a.Frame.Joints), closingCentres)] {
		try(spec{moment: true, about: j.At})
	}
	if most == 0 {
		try(spec{along: east})
		try(spec{along: north})
	}
	if most > 0 {
		p.steps = append(p.steps, Step{Sums: []Sum{p.a.sum(p.entire.FreeBody, best)}, Why: ClosingCheck, Check: true})
	}
}

// counting is how many forces and loads have a part in a sum of the whole that is not nought.
func (p *planner) counting(s spec) int {
	n := 0
	for _, i := range p.entire.faces {
		if !p.values[i].IsZero() && p.a.countsForce(s, i) {
			n++
		}
	}
	for _, x := range p.a.Loads {
		if s.counts(x.Shape == Turning, x.Along, x.At) {
			n++
		}
	}
	return n
}

// used reports whether a sum of the whole was a step of the plan.
func (p *planner) used(s spec) bool {
	return slices.ContainsFunc(p.steps, func(step Step) bool {
		return slices.ContainsFunc(step.Sums, func(o Sum) bool {
			return slices.Equal(o.Body, p.entire.FreeBody) && p.a.sameSum(s, o)
		})
	})
}

// sameSum reports whether a sum is that of a spec.
func (a *Assembly) sameSum(s spec, o Sum) bool {
	if s.moment != o.Moment {
		return false
	}
	if s.moment {
		return s.about.Equal(o.About)
	}
	return s.along.Cross(o.Along).IsZero()
}
