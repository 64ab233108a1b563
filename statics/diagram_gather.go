package statics

import (
	"unpin/statics/exact"
)

// A gathering draws together what acts on one part after the other.
type gathering struct {
	a        *Assembly
	values   []exact.Num
	atJoint  []wrench // at and beyond each joint, as the walk over the part goes
	onMember []wrench // between the ends of each member
}

// part draws together, for each joint of part p, all that acts on the part at and beyond it, and for each member what
// acts between its ends.
func (g *gathering) part(p int, t *tree) {
	for _, j := range t.joints {
		g.atJoint[j] = wrench{}
	}
	for _, i := range g.a.forcesOn[p] {
		g.force(p, i)
	}
	for _, i := range g.a.piecesOn[p] {
		x := &g.a.pieces[i]
		w := x.effect(Point{})
		if l := &g.a.Frame.Loads[x.Load]; l.Joint != None {
			g.atJoint[l.Joint].add(&w)
		} else {
			g.onMember[l.Member].add(&w)
		}
	}
	for _, m := range t.closes { // both its ends lie on the ring, so either will do
		g.atJoint[g.a.Frame.Members[m].From].add(&g.onMember[m])
	}
	for i := len(t.joints) - 1; i > 0; i-- {
		j := t.joints[i]
		m := t.up[i]
		before := &g.atJoint[g.a.Frame.farEnd(m, j)]
		before.add(&g.atJoint[j])
		before.add(&g.onMember[m])
	}
}

// force adds force i on part p.
func (g *gathering) force(p, i int) {
	f := &g.a.Forces[i]
	w := f.effect(Vector(g.a.Frame.Joints[f.Joint].At))
	scale := g.values[i]
	if !f.Couple {
		scale = over(scale, f.Along.Length())
	}
	if f.On != p {
		scale = scale.Neg()
	}
	sum := &g.atJoint[f.Joint]
	for k := range w {
		if !w[k].IsZero() {
			sum[k] = sum[k].Add(w[k].Mul(scale))
		}
	}
}

// before draws together what acts on a part at and before the start of member m. Where the walk over the part came to m
// from its start, that is the opposite of what acts beyond, since the whole part balances (S8).
func (g *gathering) before(m int) wrench {
	mem := &g.a.Frame.Members[m]
	if g.a.outer[m] == mem.From { // what is beyond is before
		return g.atJoint[mem.From]
	}
	after := g.atJoint[mem.To]
	after.add(&g.onMember[m])
	return after.neg()
}
