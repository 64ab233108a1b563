package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A wrench is a set of forces drawn together: a force and a moment about the origin.
type wrench [3]exact.Num

func (w wrench) plus(v [3]exact.Num) wrench {
	return wrench{w[0].Add(v[0]), w[1].Add(v[1]), w[2].Add(v[2])}
}

func (w wrench) neg() wrench { return wrench{w[0].Neg(), w[1].Neg(), w[2].Neg()} }

// diagrams finds N, V and M of every member from the forces on its part to one side of each cut.
func (a *Assembly) diagrams(values []exact.Num) []Diagram {
	d := make([]Diagram, len(a.Frame.Members))
	loads := a.Frame.loadsByMember()
	for p := range a.Parts {
		beyond, onMember := a.beyond(p, values)
		t := a.trees[p]
		for _, m := range a.Parts[p].Members {
			d[m] = Diagram{Member: m, Length: a.Frame.Length(m), Withheld: t.ring[m]}
			if t.ring[m] {
				continue
			}
			from := a.Frame.Members[m].From
			start := beyond[from]
			if t.up[from] != m || from == t.joints[0] { // the walk came along m from its start
				start = beyond[a.Frame.Members[m].To].plus(onMember[m]).neg()
			}
			d[m].Pieces = a.Frame.pieces(m, d[m].Length, start, loads[m])
		}
	}
	return d
}

// beyond draws together, for each joint of part p, all that acts on the part at and beyond it as the walk goes, and for
// each member what acts between its ends.
func (a *Assembly) beyond(p int, values []exact.Num) (atJoint, onMember map[int]wrench) {
	atJoint, onMember = map[int]wrench{}, map[int]wrench{}
	for _, i := range a.forcesOn[p] {
		f := a.Forces[i]
		w := wrench(f.effect(Point{}.To(a.Frame.Joints[f.Joint].At)))
		scale := values[i]
		if !f.Couple {
			scale = over(scale, f.Along.Length())
		}
		if f.On != p {
			scale = scale.Neg()
		}
		atJoint[f.Joint] = atJoint[f.Joint].plus(wrench{w[0].Mul(scale), w[1].Mul(scale), w[2].Mul(scale)})
	}
	for _, i := range a.actionsOn[p] {
		x := a.Loads[i]
		l := a.Frame.Loads[x.Load]
		if l.Joint != None {
			atJoint[l.Joint] = atJoint[l.Joint].plus(x.effect(Point{}))
		} else {
			onMember[l.Member] = onMember[l.Member].plus(x.effect(Point{}))
		}
	}
	a.gatherUp(p, atJoint, onMember)
	return atJoint, onMember
}

// gatherUp adds to each joint of part p what lies beyond it.
func (a *Assembly) gatherUp(p int, atJoint, onMember map[int]wrench) {
	t := a.trees[p]
	for _, m := range t.closes { // both its ends lie on the ring, so either will do
		j := a.Frame.Members[m].From
		atJoint[j] = atJoint[j].plus(onMember[m])
	}
	for i := len(t.joints) - 1; i > 0; i-- {
		j := t.joints[i]
		m := t.up[j]
		before := a.Frame.farEnd(m, j)
		atJoint[before] = atJoint[before].plus(atJoint[j]).plus(onMember[m])
	}
}

// loadsByMember lists the loads on each member between or at its ends, but not those given at a joint.
func (f *Frame) loadsByMember() [][]Load {
	on := make([][]Load, len(f.Members))
	for _, l := range f.Loads {
		if l.Joint == None {
			on[l.Member] = append(on[l.Member], l)
		}
	}
	return on
}

// pieces integrates along member m, from what acts at and before its start.
func (f *Frame) pieces(m int, length exact.Num, start wrench, loads []Load) []Piece {
	axes := newAxes(f, m, length)
	n, v, mom := axes.internal(start)
	cuts := breaks(length, loads)
	var pieces []Piece
	for i, from := range cuts[:len(cuts)-1] {
		dn, dv, dm := axes.jump(loads, from)
		n, v, mom = n.Add(dn), v.Add(dv), mom.Add(dm)
		p := axes.piece(from, cuts[i+1], n, v, mom, loads)
		n, v, mom = p.N.At(p.Until), p.V.At(p.Until), p.M.At(p.Until)
		pieces = append(pieces, p)
	}
	return pieces
}

// breaks are the distances at which the loads on a member begin, end or stand, with both ends, in order.
func breaks(length exact.Num, loads []Load) []exact.Num {
	cuts := []exact.Num{{}, length}
	for _, l := range loads {
		if l.Kind == SpreadLoad {
			cuts = append(cuts, l.Start, l.End)
		} else {
			cuts = append(cuts, l.At)
		}
	}
	slices.SortFunc(cuts, exact.Num.Cmp)
	return slices.CompactFunc(cuts, exact.Num.Equal)
}

// memberAxes are the unit vectors along a member and square to it, counter-clockwise.
type memberAxes struct {
	frame  *Frame
	e, n   Vector
	origin Point
}

func newAxes(f *Frame, m int, length exact.Num) memberAxes {
	span := f.Span(m)
	e := Vector{over(span.X, length), over(span.Y, length)}
	return memberAxes{f, e, e.Left(), f.Joints[f.Members[m].From].At}
}

// internal is N, V and M just at the member's start, from all forces at and before it.
func (x memberAxes) internal(w wrench) (n, v, m exact.Num) {
	force := Vector{w[0], w[1]}
	moment := w[2].Sub(Point{}.To(x.origin).Cross(force))
	return force.Dot(x.e).Neg(), force.Dot(x.n), moment.Neg()
}

// jump is how N, V and M step at a distance, by the point loads and couples there.
func (x memberAxes) jump(loads []Load, at exact.Num) (n, v, m exact.Num) {
	for _, l := range loads {
		switch {
		case l.Kind == SpreadLoad || !l.At.Equal(at):
		case l.Kind == CoupleLoad:
			m = m.Sub(l.Size)
		default:
			along, across := x.shares(l.Along)
			n, v = n.Sub(l.Size.Mul(along)), v.Add(l.Size.Mul(across))
		}
	}
	return n, v, m
}

// shares are the cosines of a direction along the member and square to it.
func (x memberAxes) shares(along Vector) (e, n exact.Num) {
	length := along.Length()
	return over(along.Dot(x.e), length), over(along.Dot(x.n), length)
}

// piece is the stretch between two breaks: it starts with n, v and m and adds the spread loads over it.
func (x memberAxes) piece(from, until, n, v, m exact.Num, loads []Load) Piece {
	var axial, across exact.Poly
	for _, l := range loads {
		if l.Kind != SpreadLoad || l.Start.Cmp(from) > 0 || l.End.Cmp(until) < 0 {
			continue
		}
		q := l.intensity().Scale(x.frame.onLength(l))
		e, s := x.shares(l.Along)
		axial, across = axial.Add(q.Scale(e)), across.Add(q.Scale(s))
	}
	p := Piece{From: from, Until: until}
	p.N = integral(axial.Scale(exact.Int(-1)), from, n)
	p.V = integral(across, from, v)
	p.M = integral(p.V, from, m)
	return p
}

// intensity is the load per length of its basis, by the distance along the member.
func (l Load) intensity() exact.Poly {
	slope := over(l.Last.Sub(l.First), l.End.Sub(l.Start))
	return exact.Poly{l.First.Sub(slope.Mul(l.Start)), slope}
}

// integral is the polynomial whose derivative is p and whose value at x is y.
func integral(p exact.Poly, x, y exact.Num) exact.Poly {
	q := make(exact.Poly, len(p)+1)
	for i, k := range p {
		q[i+1] = over(k, exact.Int(int64(i+1)))
	}
	q[0] = y.Sub(q.At(x))
	return q.Trim()
}
