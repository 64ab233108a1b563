package statics

import (
	"slices"

	"unpin/statics/exact"
)

// runOn takes the stretches of a load that runs on in line over several members of one part together, so that a sum has them
// as one resultant, or as one of each simple shape. What each member bears by itself stays in pieces.
func (c *cutter) runOn() {
	c.a.pieces = c.a.Actions
	var whole []Action
	loads := c.a.Frame.Loads
	next := 0 // of the pieces
	taken := false
	for i := 0; i < len(loads); {
		n := i + 1
		if i+1 < len(loads) && loads[i].joins(&loads[i+1]) {
			r := c.a.Frame.RunAt(i)
			n = c.onePart(r)
			if n-i > 1 {
				if !taken {
					whole, taken = slices.Clone(c.a.pieces[:next]), true
				}
				whole = append(whole, c.inOne(r.Between(0, n-i))...)
			}
		}
		for ; next < len(c.a.pieces) && c.a.pieces[next].Load < n; next++ {
			if taken && n-i == 1 {
				whole = append(whole, c.a.pieces[next])
			}
		}
		i = n
	}
	if taken {
		c.a.Actions = whole
	}
}

// onePart is the first load after those with which a run begins that lie on one part.
func (c *cutter) onePart(r Run) int {
	part := func(k int) int { return c.partOf[c.a.Frame.Loads[r.Loads[k]].Member] }
	n := 1
	for n < len(r.Loads) && part(n) == part(0) {
		n++
	}
	return r.Loads[0] + n
}

// inOne is what a run does, in simple shapes.
func (c *cutter) inOne(r Run) []Action {
	l, r := c.a.Frame.together(r)
	base := r.Loads[0]
	if r.Back[0] {
		base = r.Loads[len(r.Loads)-1]
	}
	kept := c.a.Actions
	c.a.Actions = nil
	c.spread(base, l)
	made := c.a.Actions
	c.a.Actions = kept
	for i := range made {
		made[i].Loads = r.Loads
	}
	return made
}

// Apart is the assembly with the stretches of loads that run on over several members each for itself.
func (a *Assembly) Apart() *Assembly {
	b := *a
	b.Actions, b.actionsOn = a.pieces, a.piecesOn
	return &b
}

// AllLoads lists the loads of the frame that an action stems from: one, or those of a load that runs on over several members.
func (x Action) AllLoads() []int {
	if x.Loads != nil {
		return x.Loads
	}
	return []int{x.Load}
}

// Bearer is the member on which a distance of a distributed load's action lies, and how far from its start.
func (f *Frame) Bearer(x Action, d exact.Num) (member int, at exact.Num) {
	base := f.Loads[x.Load].Member
	if x.Loads == nil {
		return base, d
	}
	place := f.Along(base, d)
	for _, i := range x.Loads {
		member = f.Loads[i].Member
		e, length := f.Span(member).unit()
		if at = f.Joints[f.Members[member].From].At.To(place).Dot(e); at.Sign() >= 0 && at.Cmp(length) <= 0 {
			break
		}
	}
	return member, at
}

// CentroidOf is the member on which the resultant of a distributed load's action stands, and how far from its start.
func (f *Frame) CentroidOf(x Action) (member int, at exact.Num) {
	return f.Bearer(x, x.Start.Add(x.End.Sub(x.Start).Mul(centroids[x.Shape])))
}

// Reach is where the members of a distributed load's action begin and end, as distances from the start of its load's member.
func (f *Frame) Reach(x Action) (from, until exact.Num) {
	base := f.Loads[x.Load].Member
	e, until := f.Span(base).unit()
	start := f.Joints[f.Members[base].From].At
	for _, i := range x.Loads {
		m := f.Members[f.Loads[i].Member]
		for _, j := range []int{m.From, m.To} {
			d := start.To(f.Joints[j].At).Dot(e)
			from, until = exact.Min(from, d), exact.Max(until, d)
		}
	}
	return from, until
}
