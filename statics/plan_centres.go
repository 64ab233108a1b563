package statics

import (
	"slices"
)

// joints adds every joint of the body as a centre. Of many bodies it adds only those where an unknown acts: with the
// crossings, and the sums of forces, they tell as much as all.
func (p *planner) joints(all []spec, v *view, active []int) []spec {
	if len(v.FreeBody) <= everyGroupUpTo {
		if v.at == nil {
			v.at = p.a.jointsOf(v.FreeBody)
		}
		for _, j := range v.at {
			all = append(all, p.a.momentAbout(j))
		}
		return all
	}
	first := len(all)
	for _, i := range active {
		if s := p.a.momentAbout(p.a.Forces[i].Joint); !s.isIn(all[first:]) {
			all = inFileOrder(all, first, s)
		}
	}
	return all
}

// crossings adds to the centres from the first on the joints at which two of the lines cross, in file order, and then
// other such points. Where a sum leaves k unknowns, the lines of all others pass through its centre, so two of any k + 2 lines cross there.
func (p *planner) crossings(all []spec, first int, lines []int) []spec {
	for n, i := range lines {
		for _, j := range lines[:n] {
			if s, ok := p.a.crossing(i, j); ok && !s.isIn(all[first:]) {
				all = inFileOrder(all, first, s)
			}
		}
	}
	return all
}

// inFileOrder adds a centre to those from the first on: joints in file order, then other points.
func inFileOrder(all []spec, first int, s spec) []spec {
	n := len(all)
	for n > first && s.centre != None && (all[n-1].centre == None || s.centre < all[n-1].centre) {
		n--
	}
	return slices.Insert(all, n, s)
}

// isIn reports whether one of the centres is that of s.
func (s *spec) isIn(centres []spec) bool {
	for n := range centres {
		if o := &centres[n]; s.centre == o.centre && (s.centre != None || s.about().Equal(o.about())) {
			return true
		}
	}
	return false
}

// crossing is the sum of moments about the point where the lines of two forces cross; false if they are parallel.
func (a *Assembly) crossing(i, j int) (spec, bool) {
	f, g := &a.Forces[i], &a.Forces[j]
	k, l := &a.lines[i], &a.lines[j]
	if k.slope == l.slope && k.slope != oblique {
		return spec{}, false
	}
	if k.slope == alongY && l.slope == alongX {
		return a.places.crossingAt(ranks{k.rank, l.rank}), true
	}
	if k.slope == alongX && l.slope == alongY {
		return a.places.crossingAt(ranks{l.rank, k.rank}), true
	}
	det := f.Along.Cross(g.Along)
	if det.IsZero() {
		return spec{}, false
	}
	if f.Joint == g.Joint {
		return a.momentAbout(f.Joint), true
	}
	p, q := a.Frame.Joints[f.Joint].At, a.Frame.Joints[g.Joint].At
	return a.places.momentAt(p.Plus(f.Along.Times(over(p.To(q).Cross(g.Along), det)))), true
}

// crossingAt is the sum of moments about a point with two coordinates of joints.
func (p *places) crossingAt(at ranks) spec {
	return spec{moment: true, to: Vector{p.xs[at.x], p.ys[at.y]}, at: at, centre: p.joint(at)}
}

// aloneInForceSum outweighs any number of terms.
const aloneInForceSum = 1 << 20

// habit is what is added to the cost of a sum of moments. With one unknown left a sum of forces is the plain way, so a
// sum of moments must not beat it; a couple left alone is best taken about its own joint; and a centre at which no
// unknown acts is only taken where it saves more than one term.
func (p *planner) habit(active []int, s *spec, force int) int {
	alone := len(active) == 1
	switch {
	case !s.moment:
		return 0
	case alone && !p.a.Forces[force].Couple:
		return aloneInForceSum
	case alone && p.actsAt(active, s.centre):
		return -3
	case !alone && !p.actsAt(active, s.centre):
		return 2
	}
	return 0
}

// actsAt reports whether one of the forces acts at a joint.
func (p *planner) actsAt(forces []int, joint int) bool {
	for _, i := range forces {
		if p.a.places.first[p.a.Forces[i].Joint] == joint {
			return true
		}
	}
	return false
}
