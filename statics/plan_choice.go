package statics

import "slices"

// An option is a sum that gives one force, and what it would cost to write.
type option struct {
	spec
	force int
	cost  int
}

// optionFor is the best sum of a free body with exactly one unknown, within reach; its force is None if there is no such sum.
func (p *planner) optionFor(v *view, r reach) *option {
	k := &v.best
	if k.fresh {
		return &k.it[r]
	}
	k.it[plainSums].force, k.it[anySums].force = None, None
	p.open(v)
	if sample := p.sample(v, 1); sample != nil && p.hopeless(v, sample, 1) {
		p.rest(v, &k.fresh, sample)
		return &k.it[r]
	}
	active := p.active(v)
	if !p.overfull(active, 1) {
		p.look(v, active, &k.it)
	}
	p.rest(v, &k.fresh, active)
	return &k.it[r]
}

// HasSumForOne reports whether some sum of a free body, about whatever point or along whatever line, has just one unknown
// (S11).
func (a *Assembly) HasSumForOne(b FreeBody, known func(force int) bool) bool {
	active := slices.DeleteFunc(slices.Clone(a.facesOf(b)), known)
	if len(active) == 0 {
		return false
	}
	p := &planner{a: a}
	specs := p.specs(&view{FreeBody: b}, active, 1)
	return slices.ContainsFunc(specs, func(s spec) bool { return p.single(active, &s) != None })
}

// look finds the best sum of a free body with exactly one unknown, for each reach.
func (p *planner) look(v *view, active []int, best *[2]option) {
	if len(active) == 0 {
		return
	}
	specs := p.specs(v, active, 1)
	for n := range specs {
		s := &specs[n]
		i := p.single(active, s)
		if i == None {
			continue
		}
		cost := p.cost(v, s) + p.habit(active, s, i)
		for r := range best {
			if o := &best[r]; (o.force == None || cost < o.cost) && (reach(r) == anySums || s.plain()) {
				*o = option{*s, i, cost}
			}
		}
	}
}

// single is the only one of the active unknowns that has a part in a sum, or None. It asks the spec and writes no terms
// (S6), since most sums that are looked at are never written.
func (p *planner) single(active []int, s *spec) int {
	found := None
	for _, i := range active {
		if p.a.countsForce(s, i) {
			if found != None {
				return None
			}
			found = i
		}
	}
	return found
}

// cost weighs what a sum costs to write: twice its terms, one for a moment, and three if it is not plain. Forces known
// to be zero cost nothing.
func (p *planner) cost(v *view, s *spec) int {
	cost := 2
	for _, i := range v.faces {
		if p.known[i] && !p.values[i].IsZero() && p.a.countsForce(s, i) {
			cost += 2
		}
	}
	for _, b := range v.FreeBody {
		for _, i := range p.a.actionsOn[b] {
			if p.countsLoad(s, i) {
				cost += 2
			}
		}
	}
	if s.moment {
		cost++
	}
	if !s.plain() {
		cost += 3
	}
	return cost
}

// countsLoad is whether action i has a part in a sum of the body on which it acts.
func (p *planner) countsLoad(s *spec, i int) bool {
	if l := &p.loads[i]; l.slope != oblique && (l.rank != None || s.centre != None || !s.moment) {
		return s.countsLine(l)
	}
	return p.a.countsAction(s, i)
}
