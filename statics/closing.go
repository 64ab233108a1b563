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
	if len(body) > 1 || slices.Equal(p.steps[max(s-1, 0)].Sums[0].Body, body) {
		return None
	}
	for t := s - 1; t >= 0; t-- {
		if slices.Equal(p.steps[t].Sums[0].Body, body) {
			return t
		}
	}
	return None
}

// closing ends with a sum about the whole that was not used and in which most forces count.
func (p *planner) closing() {
	var best *Sum
	most := 0
	for _, j := range p.a.Frame.Joints {
		s := p.a.MomentSum(p.entire.FreeBody, j.At)
		if n := p.counting(s); n > most && !p.used(s) {
			best, most = &s, n
		}
	}
	if best != nil {
		p.steps = append(p.steps, Step{Sums: []Sum{*best}, Why: ClosingCheck, Check: true})
	}
}

// counting is how many terms of a sum are not nought.
func (p *planner) counting(s Sum) int {
	n := 0
	for _, t := range s.Terms {
		if !t.Amount(p.values).IsZero() {
			n++
		}
	}
	return n
}

// used reports whether a moment sum of the whole was a step of the plan.
func (p *planner) used(s Sum) bool {
	for _, step := range p.steps {
		for _, o := range step.Sums {
			if o.Moment && slices.Equal(o.Body, s.Body) && o.About.Equal(s.About) {
				return true
			}
		}
	}
	return false
}
