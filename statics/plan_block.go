package statics

import "slices"

// block is the smallest set of the sums of the single bodies that hold as many unknowns as there are sums. Every sum is
// matched with an unknown of its own; a sum then needs the sums matched with its other unknowns, and so on.
func (p *planner) block() []*candidate {
	m := matching{sums: p.own(), sumOf: map[int]int{}}
	for n := range m.sums {
		m.match(n, map[int]bool{})
	}
	var best []int
	for n := range m.sums {
		if needed := m.needed(n); best == nil || len(needed) < len(best) {
			best = needed
		}
	}
	slices.Sort(best)
	var chosen []*candidate
	for _, n := range best {
		chosen = append(chosen, m.sums[n])
	}
	return chosen
}

// own lists the sums of each part and pin, moments about where most of its unknowns act, that have unknowns left and
// are independent. They give all that is not known yet.
func (p *planner) own() []*candidate {
	var all []*candidate
	var independent basis
	for b := range p.singles {
		specs := []spec{eastward, northward}
		if !p.a.IsPin(b) {
			specs = append(specs, p.a.momentAbout(p.a.reference(b)))
		}
		v := p.singles[b]
		active := p.active(v)
		for n := range specs {
			if x := p.candidate(v, active, &specs[n], 0); independent.add(x.factors) {
				all = append(all, x)
			}
		}
	}
	return all
}

// A matching gives each unknown a sum that holds it.
type matching struct {
	sums  []*candidate
	sumOf map[int]int
}

// match finds an unknown for sum n, if need be by giving other sums other unknowns.
func (m *matching) match(n int, tried map[int]bool) bool {
	for _, i := range m.sums[n].unknowns {
		if tried[i] {
			continue
		}
		tried[i] = true
		if other, taken := m.sumOf[i]; !taken || m.match(other, tried) {
			m.sumOf[i] = n
			return true
		}
	}
	return false
}

// needed lists the sums that must be solved to solve sum n, with n.
func (m *matching) needed(n int) []int {
	needed, seen := []int{n}, map[int]bool{n: true}
	for k := 0; k < len(needed); k++ {
		for _, i := range m.sums[needed[k]].unknowns {
			if other := m.sumOf[i]; !seen[other] {
				seen[other] = true
				needed = append(needed, other)
			}
		}
	}
	return needed
}
