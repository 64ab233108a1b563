package statics

import (
	"slices"

	"unpin/statics/exact"
)

// internal is N, V and M just at the member's start, from all forces at and before it.
func (x *axes) internal(w *wrench) InternalForces {
	force := Vector{w[0], w[1]}
	return InternalForces{x.along(force.Neg()), x.across(force), Vector(x.origin).Cross(force).Sub(w[2])}
}

// loadsByMember lists the loads on each member between or at its ends, but not those given at a joint.
func (f *Frame) loadsByMember() [][]*Load {
	return lists(len(f.Members), func(tell func(member int, load *Load)) {
		for i := range f.Loads {
			if l := &f.Loads[i]; l.Joint == None {
				tell(l.Member, l)
			}
		}
	})
}

// A diagramRoom is memory for the diagrams of all members, so that they are made in few pieces.
type diagramRoom struct {
	cuts      []exact.Num // used again and again
	stretches []Stretch
	terms     exact.Poly
}

// newDiagramRoom has room for most frames: a member has a stretch, and a load mostly adds one. If it is not enough, more is taken.
func newDiagramRoom(f *Frame) diagramRoom {
	n := len(f.Members) + len(f.Loads)
	return diagramRoom{stretches: make([]Stretch, n), terms: make(exact.Poly, 5*n)}
}

// stretchesOf takes room for n stretches.
func (r *diagramRoom) stretchesOf(n int) (of []Stretch) {
	if len(r.stretches) < n {
		return make([]Stretch, n)
	}
	of, r.stretches = r.stretches[:n:n], r.stretches[n:]
	return of
}

// stretches integrates along the member, from what acts at and before its start: each begins where the last one ended,
// but for the steps there (S12, S13).
func (x *axes) stretches(start *wrench, loads []*Load, room *diagramRoom) []Stretch {
	now := x.internal(start)
	room.cuts = breaks(x.length, loads, room.cuts)
	cuts := room.cuts
	stretches := room.stretchesOf(len(cuts) - 1)
	for i := range stretches {
		x.jump(&now, loads, cuts[i])
		stretches[i] = x.stretch(cuts[i], cuts[i+1], &now, loads, room)
		if i+1 < len(stretches) {
			now = stretches[i].At(cuts[i+1])
		}
	}
	return stretches
}

// breaks are the distances at which the loads on a member begin, end or stand, with both ends, in order, in the room.
func breaks(length exact.Num, loads []*Load, room []exact.Num) []exact.Num {
	cuts := append(room[:0], exact.Num{}, length)
	if len(loads) == 0 {
		return cuts
	}
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

// jump adds how N, V and M step at a distance, by the point loads and couples there.
func (x *axes) jump(now *InternalForces, loads []*Load, at exact.Num) {
	for _, l := range loads {
		switch {
		case l.Kind == SpreadLoad || !l.At.Equal(at):
		case l.Kind == CoupleLoad:
			now.M = now.M.Sub(l.Size)
		default:
			along, across := x.shares(l.Along)
			now.N, now.V = now.N.Sub(l.Size.Mul(along)), now.V.Add(l.Size.Mul(across))
		}
	}
}

// stretch is the stretch between two breaks: it starts with what is now and adds the distributed load over it.
func (x *axes) stretch(from, until exact.Num, now *InternalForces, loads []*Load, room *diagramRoom) Stretch {
	var axial, across line
	for _, l := range loads {
		if l.Kind != SpreadLoad || l.Start.Cmp(from) > 0 || l.End.Cmp(until) < 0 {
			continue
		}
		q := l.intensity().times(x.onLength(l.Per))
		e, n := x.shares(l.Along)
		axial, across = axial.plus(q.times(e.Neg())), across.plus(q.times(n))
	}
	p := Stretch{From: from, Until: until}
	n, v := axial.terms(), across.terms()
	if most := 2*len(v) + len(n) + 4; len(room.terms) < most {
		room.terms = make(exact.Poly, 8*most)
	}
	p.N, room.terms = integral(n, from, now.N, room.terms)
	p.V, room.terms = integral(v, from, now.V, room.terms)
	p.M, room.terms = integral(trimmed(p.V), from, now.M, room.terms)
	return p
}

// A line is the polynomial line[0] + line[1]·x.
type line [2]exact.Num

func (l line) times(k exact.Num) line { return line{l[0].Mul(k), l[1].Mul(k)} }

func (l line) plus(o line) line { return line{l[0].Add(o[0]), l[1].Add(o[1])} }

// terms is the line as a polynomial without powers that are zero.
func (l *line) terms() exact.Poly { return trimmed(l[:]) }

// trimmed is p without its highest powers, as long as they are zero; of zero nothing is left.
func trimmed(p exact.Poly) exact.Poly {
	for len(p) > 0 && p[len(p)-1].IsZero() {
		p = p[:len(p)-1]
	}
	return p
}

// intensity is the load per length of its basis, by the distance along the member.
func (l *Load) intensity() line {
	if l.First.Equal(l.Last) {
		return line{l.First}
	}
	slope := over(l.Last.Sub(l.First), l.End.Sub(l.Start))
	return line{l.First.Sub(slope.Mul(l.Start)), slope}
}

// integral is the polynomial whose derivative is p and whose value at x is y. It takes its place from the room, and what
// is left of that comes back.
func integral(p exact.Poly, x, y exact.Num, room exact.Poly) (q, left exact.Poly) {
	q, left = room[:len(p)+1:len(p)+1], room[len(p)+1:]
	for i, k := range p {
		q[i+1] = k
		if i > 0 {
			q[i+1] = over(k, exact.Int(int64(i+1)))
		}
	}
	switch {
	case len(q) == 1 && y.IsZero(): // zero all along is exact
	case len(q) == 1 || x.IsZero() && !x.Inexact():
		q[0] = y
	default:
		q[0] = y.Sub(q.At(x))
	}
	return q, left
}

// InternalForces is the internal forces at one section.
type InternalForces struct{ N, V, M exact.Num }

// Equal reports whether all three are equal.
func (i InternalForces) Equal(o InternalForces) bool {
	return i.N.Equal(o.N) && i.V.Equal(o.V) && i.M.Equal(o.M)
}

// At is N, V and M at distance x from the member's start, as the stretch's polynomials give them.
func (p Stretch) At(x exact.Num) InternalForces {
	return InternalForces{p.N.At(x), p.V.At(x), p.M.At(x)}
}
