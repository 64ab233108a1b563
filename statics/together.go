package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A candidate is a sum with several unknowns left.
type candidate struct {
	body FreeBody
	spec
	unknowns []int // in rising order
	cost     int
}

// together solves the smallest set of sums that give as many unknowns as there are sums. It is called only when no sum
// of the family has one unknown.
func (p *planner) together() {
	all := p.candidates()
	for k := 2; k < p.unknown; k++ {
		if set := p.smallest(all, k); set != nil {
			p.writeTogether(set)
			return
		}
	}
	p.writeTogether(p.independent(all, p.remaining()))
}

func (p *planner) writeTogether(set []candidate) {
	var sums []Sum
	var gives []int
	for _, c := range set {
		sums = append(sums, p.a.sum(c.body, c.spec))
		gives = append(gives, c.unknowns...)
	}
	slices.Sort(gives)
	p.write(sums, slices.Compact(gives), SolvedTogether, len(set))
	p.hand = sums[len(sums)-1].Body
}

func (p *planner) remaining() []int {
	var left []int
	for i, known := range p.known {
		if !known {
			left = append(left, i)
		}
	}
	return left
}

// candidates lists the sums of the family that have unknowns left, the cheaper first.
func (p *planner) candidates() []candidate {
	var all []candidate
	for _, b := range p.family() {
		active := p.active(b)
		if len(active) == 0 {
			continue
		}
		for _, s := range p.specs(b, active) {
			if c := p.candidate(b, active, s); len(c.unknowns) > 0 {
				all = append(all, c)
			}
		}
	}
	slices.SortStableFunc(all, func(x, y candidate) int { return x.cost - y.cost })
	return all
}

// family is every free body of the family.
func (p *planner) family() []FreeBody {
	var all []FreeBody
	for b := range p.a.Bodies() {
		all = append(all, FreeBody{b})
	}
	if len(p.entire) > 1 {
		all = append(all, p.entire)
	}
	return append(all, p.groups...)
}

// specs lists the sums of one free body.
func (p *planner) specs(b FreeBody, active []int) []spec {
	all := []spec{{along: east}, {along: north}}
	var centres []Point
	for _, j := range p.a.Frame.Joints {
		centres = append(centres, j.At)
	}
	for n, i := range active {
		f := p.a.Forces[i]
		if f.Couple {
			continue
		}
		if !f.Along.X.IsZero() && !f.Along.Y.IsZero() {
			all = append(all, spec{along: f.Along.Left()})
		}
		for _, j := range active[:n] {
			if x, ok := p.a.crossing(i, j); ok && !p.a.Forces[j].Couple && p.a.JointAt(x) == None {
				centres = append(centres, x)
			}
		}
	}
	if p.turns(b) {
		for _, c := range centres {
			all = append(all, spec{moment: true, about: c})
		}
	}
	return all
}

// candidate reckons which unknowns a sum has and what it costs: its terms, and more if its centre is no joint.
func (p *planner) candidate(b FreeBody, active []int, s spec) candidate {
	c := candidate{body: b, spec: s}
	for _, i := range active {
		if p.a.countsForce(s, i) {
			c.unknowns = append(c.unknowns, i)
		}
	}
	c.cost = p.price(b, active, s, active[0]).cost
	if c.cost >= aloneInForceSum {
		c.cost -= aloneInForceSum
	}
	if s.moment && p.a.JointAt(s.about) == None || !s.moment && !s.along.X.IsZero() && !s.along.Y.IsZero() {
		c.cost += 3
	}
	return c
}

// searchLimit bounds the sets of unknowns that smallest looks at.
const searchLimit = 20000

// smallest finds k independent sums that hold only k unknowns among them, the cheapest such set that it meets, or nil.
func (p *planner) smallest(all []candidate, k int) []candidate {
	var best []candidate
	bestCost := 0
	seen := map[string]bool{}
	var grow func(set []int)
	grow = func(set []int) {
		key := keyOf(set)
		if seen[key] || len(seen) > searchLimit {
			return
		}
		seen[key] = true
		if len(set) == k {
			if found := p.independent(all, set); len(found) == k {
				if cost := costOf(found); best == nil || cost < bestCost {
					best, bestCost = found, cost
				}
			}
			return
		}
		for _, c := range all {
			if wider := merged(set, c.unknowns); len(wider) > len(set) && len(wider) <= k {
				grow(wider)
			}
		}
	}
	for _, c := range all {
		if len(c.unknowns) <= k {
			grow(c.unknowns)
		}
	}
	return best
}

func costOf(set []candidate) int {
	cost := 0
	for _, c := range set {
		cost += c.cost
	}
	return cost
}

// keyOf is a text that stands for a sorted set.
func keyOf(set []int) string {
	var key []byte
	for _, i := range set {
		key = append(key, byte(i), byte(i>>8), byte(i>>16))
	}
	return string(key)
}

// merged is the union of two sorted sets.
func merged(x, y []int) []int {
	all := append(slices.Clone(x), y...)
	slices.Sort(all)
	return slices.Compact(all)
}

// independent picks, the cheapest first, independent sums that hold only unknowns of the set.
func (p *planner) independent(all []candidate, set []int) []candidate {
	var chosen []candidate
	var rows []row
	for _, c := range all {
		if len(chosen) == len(set) {
			break
		}
		if !within(c.unknowns, set) {
			continue
		}
		next := append(slices.Clone(rows), p.unknownsRow(c, set))
		if eliminate(slices.Clone(next), len(set)).rank() == len(next) {
			chosen, rows = append(chosen, c), next
		}
	}
	return chosen
}

// within reports whether the sorted set x lies in the sorted set y.
func within(x, y []int) bool {
	for _, i := range x {
		if _, ok := slices.BinarySearch(y, i); !ok {
			return false
		}
	}
	return true
}

// unknownsRow is the left side of a candidate, its columns numbered as in set.
func (p *planner) unknownsRow(c candidate, set []int) row {
	var r row
	for col, i := range set {
		f := p.a.Forces[i]
		sign, _ := p.a.Facing(c.body, i)
		var k exact.Num
		switch {
		case sign == 0 || !c.moment && f.Couple:
			continue
		case f.Couple:
			k = exact.Int(1)
		case c.moment:
			k = c.about.To(p.a.Frame.Joints[f.Joint].At).Cross(f.Along)
		default:
			k = c.along.Dot(f.Along)
		}
		if sign < 0 {
			k = k.Neg()
		}
		if !k.IsZero() {
			r.entries = append(r.entries, entry{col, k})
		}
	}
	return r
}
