package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A candidate is a sum with several unknowns left.
type candidate struct {
	cut
	spec
	unknowns []int // in rising order
	factors  row   // what each unknown is multiplied by
	cost     int
}

// together solves the smallest set of sums that give as many unknowns as there are sums. It is called only when no sum
// of the family has one unknown.
func (p *planner) together() {
	set := p.smallest()
	var sums []Sum
	var gives []int
	for _, c := range set {
		sums = append(sums, p.a.sum(c.FreeBody, c.spec))
		gives = append(gives, c.unknowns...)
	}
	slices.Sort(gives)
	last := set[len(set)-1].cut
	p.write(sums, slices.Compact(gives), SolvedTogether, len(set))
	p.hand = &last
}

// candidates lists the sums of the family that have up to k unknowns left, the cheaper first. Of the sums of one free
// body with the same unknowns only independent ones are kept.
func (p *planner) candidates(k int) []candidate {
	var all []candidate
	for _, c := range p.family() {
		active := p.active(c)
		var own []candidate
		for _, s := range p.specs(c, active, k, anySums) {
			if x := p.candidate(c, active, s); len(x.unknowns) > 0 && len(x.unknowns) <= k {
				own = append(own, x)
			}
		}
		all = append(all, independentByUnknowns(own)...)
	}
	slices.SortStableFunc(all, byCost)
	return all
}

func byCost(x, y candidate) int { return x.cost - y.cost }

// family is every free body of the family.
func (p *planner) family() []cut {
	all := slices.Clone(p.singles)
	if len(p.entire.FreeBody) > 1 {
		all = append(all, p.entire)
	}
	return append(all, p.connected()...)
}

// candidate reckons which unknowns a sum has, with what factors, and what it costs.
func (p *planner) candidate(c cut, active []int, s spec) candidate {
	x := candidate{cut: c, spec: s, cost: p.cost(c, s)}
	for _, i := range active {
		k := p.factor(s, i)
		if k.IsZero() {
			continue
		}
		if sign, _ := p.a.Facing(c.FreeBody, i); sign < 0 {
			k = k.Neg()
		}
		x.unknowns = append(x.unknowns, i)
		x.factors.entries = append(x.factors.entries, entry{i, k})
	}
	return x
}

// factor is the part that one unscaled unit of force i has in a sum of a body on which it acts as named.
func (p *planner) factor(s spec, i int) exact.Num {
	f := p.a.Forces[i]
	switch {
	case s.moment && f.Couple:
		return exact.Int(1)
	case s.moment:
		return s.about.To(p.a.Frame.Joints[f.Joint].At).Cross(f.Along)
	case f.Couple:
		return exact.Num{}
	}
	return s.along.Dot(f.Along)
}

// independentByUnknowns keeps of the sums with the same unknowns the cheapest that are independent.
func independentByUnknowns(all []candidate) []candidate {
	slices.SortStableFunc(all, byCost)
	var kept []candidate
	bases := map[string]*basis{}
	for _, c := range all {
		key := keyOf(c.unknowns)
		if bases[key] == nil {
			bases[key] = &basis{}
		}
		if bases[key].add(c.factors) {
			kept = append(kept, c)
		}
	}
	return kept
}

// A basis is a set of independent rows.
type basis struct {
	rows   []row
	pivots []int // the column that each row has and the later ones have not
}

// add takes a row in if it is independent of those taken before.
func (b *basis) add(r row) bool {
	for i, s := range b.rows {
		if k := r.coef(b.pivots[i]); !k.IsZero() {
			r = r.minus(over(k, s.coef(b.pivots[i])), s)
		}
	}
	if len(r.entries) == 0 {
		return false
	}
	b.rows, b.pivots = append(b.rows, r), append(b.pivots, r.entries[0].col)
	return true
}

// keyOf is a text that stands for a sorted set.
func keyOf(set []int) string {
	key := make([]byte, 0, 3*len(set))
	for _, i := range set {
		key = append(key, byte(i), byte(i>>8), byte(i>>16))
	}
	return string(key)
}
