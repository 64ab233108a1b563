package statics

import "slices"

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
	tries := max(2, closingWork/(len(p.entire.faces)+len(p.a.Actions)+1))
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
	for i := range p.a.Actions {
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
