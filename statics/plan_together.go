package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A candidate is a sum with several unknowns left.
type candidate struct {
	view *view
	spec
	unknowns []int // in rising order
	factors  row   // what each unknown is multiplied by
	cost     int
	place    int     // its place in the list of all
	search   *search // the last that looked at it

	unknownRoom [2]int // most have two at most
	factorRoom  [2]entry
}

// together solves the smallest set of sums that give as many unknowns as there are sums. It is called only when no sum
// of the family has one unknown.
func (p *planner) together() {
	set := p.smallest()
	var sums []Sum
	var gives []int
	for _, c := range set {
		sums = append(sums, p.a.sum(c.view.FreeBody, &c.spec))
		gives = append(gives, c.unknowns...)
	}
	slices.Sort(gives)
	p.write(sums, slices.Compact(gives), SolvedTogether, len(set))
	p.hand = set[len(set)-1].view
}

// family lists every free body of the family.
func (p *planner) family() []*view {
	all := slices.Clone(p.singles)
	if len(p.entire.FreeBody) > 1 {
		all = append(all, p.entire)
	}
	return append(append(all, p.connected()...), p.sideViews()...)
}

// candidates lists the sums of the free bodies that have up to k unknowns left.
func (p *planner) candidates(k int, bodies []*view) []*candidate {
	all := make([]*candidate, 0, 2*len(bodies))
	for _, v := range bodies {
		all = append(all, p.candidatesOf(v, k)...)
	}
	for n, c := range all {
		c.place = n
	}
	return all
}

// candidatesOf lists the sums of one free body that have up to k unknowns left, the cheaper first. Of those with the
// same unknowns only independent ones are kept.
func (p *planner) candidatesOf(v *view, k int) []*candidate {
	if len(v.sets) <= k {
		v.sets = append(v.sets, make([]*kept[[]*candidate], k+1-len(v.sets))...)
	}
	if v.sets[k] == nil {
		v.sets[k] = new(kept[[]*candidate])
	}
	known := v.sets[k]
	if known.fresh {
		return known.it
	}
	known.it = nil
	p.open(v)
	if sample := p.sample(v, k); sample != nil && p.hopeless(v, sample, k) {
		p.rest(v, &known.fresh, sample)
		return nil
	}
	active := p.active(v)
	var own []*candidate
	if len(active) > 0 && !p.overfull(active, k) {
		specs := p.specs(v, active, k)
		own = make([]*candidate, 0, len(specs))
		for n := range specs {
			if c := p.count(active, &specs[n], k); c > 0 && c <= k {
				own = append(own, p.candidate(v, active, &specs[n], c))
			}
		}
	}
	known.it = independentByUnknowns(own)
	p.rest(v, &known.fresh, active)
	return known.it
}

func byCost(x, y *candidate) int { return x.cost - y.cost }

// candidate finds which so many unknowns a sum has, with what factors, and what it costs.
func (p *planner) candidate(v *view, active []int, s *spec, many int) *candidate {
	x := &candidate{view: v, spec: *s, cost: p.cost(v, s)}
	x.unknowns, x.factors.entries = x.unknownRoom[:0], x.factorRoom[:0]
	if many > len(x.unknownRoom) {
		x.unknowns, x.factors.entries = make([]int, 0, many), make([]entry, 0, many)
	}
	for _, i := range active {
		if p.a.countsForce(s, i) {
			x.unknowns = append(x.unknowns, i)
			x.factors.entries = append(x.factors.entries, entry{i, p.factorOn(v.FreeBody, s, i)})
		}
	}
	return x
}

// factorOn is what force i is multiplied by in a sum of a free body on which it acts from outside.
func (p *planner) factorOn(b FreeBody, s *spec, i int) exact.Num {
	if sign, _ := p.a.Facing(b, i); sign < 0 {
		return p.factor(s, i).Neg()
	}
	return p.factor(s, i)
}

// factor is the part that one unscaled unit of force i has in a sum of a body on which it acts as named.
func (p *planner) factor(s *spec, i int) exact.Num {
	f, slope := &p.a.Forces[i], p.a.lines[i].slope
	at := &p.a.Frame.Joints[f.Joint].At
	switch {
	case s.moment && f.Couple:
		return exact.Int(1)
	case s.moment && slope == alongY:
		return at.X.Sub(s.to.X).Mul(f.Along.Y)
	case s.moment && slope == alongX:
		return s.to.Y.Sub(at.Y).Mul(f.Along.X)
	case s.moment:
		return s.about().To(*at).Cross(f.Along)
	case f.Couple:
		return exact.Num{}
	}
	return s.to.Dot(f.Along)
}

// independentByUnknowns keeps of the sums with the same unknowns the cheapest that are independent.
func independentByUnknowns(all []*candidate) []*candidate {
	slices.SortStableFunc(all, byCost)
	kept := make([]*candidate, 0, len(all))
	for _, c := range all {
		var same basis
		for _, o := range kept {
			if slices.Equal(o.unknowns, c.unknowns) {
				same.add(o.factors)
			}
		}
		if len(same.rows) == 0 || len(same.rows) < len(c.unknowns) && same.add(c.factors) {
			kept = append(kept, c)
		}
	}
	return kept
}
