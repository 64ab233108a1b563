package statics

import "slices"

// A spec is a sum without its terms: a direction, or a centre.
type spec struct {
	moment bool
	along  Vector
	about  Point
	centre int // the joint at about, or None
}

// momentAbout is the sum of moments about joint j.
func (a *Assembly) momentAbout(j int) spec {
	return spec{moment: true, about: a.Frame.Joints[j].At, centre: a.places.first[j]}
}

func (a *Assembly) sum(b FreeBody, s *spec) Sum {
	if s.moment {
		return a.momentSum(b, s.about, s.centre)
	}
	return a.ForceSum(b, s.along)
}

// plain reports whether a sum is along x or y or about a joint.
func (s *spec) plain() bool {
	if s.moment {
		return s.centre != None
	}
	return s.along.X.IsZero() || s.along.Y.IsZero()
}

// counts reports whether a force along a direction d at a place, or a couple, has a part in a sum.
func (s *spec) counts(couple bool, d *Vector, at *Point) bool {
	switch {
	case s.moment && couple:
		return true
	case s.moment && d.X.IsZero():
		return !s.about.X.Equal(at.X)
	case s.moment && d.Y.IsZero():
		return !s.about.Y.Equal(at.Y)
	case s.moment:
		return !s.about.To(*at).Cross(*d).IsZero()
	case couple:
		return false
	}
	return !s.along.Dot(*d).IsZero()
}

// countsForce reports whether force i has a part in a sum of a body on which it acts.
func (a *Assembly) countsForce(s *spec, i int) bool {
	f := &a.Forces[i]
	return f.Joint != s.centre && s.counts(f.Couple, &f.Along, &a.Frame.Joints[f.Joint].At) || s.moment && f.Couple
}

// countsAction reports whether an action has a part in a sum of the body on which it acts.
func (a *Assembly) countsAction(s *spec, i int) bool {
	x := &a.Loads[i]
	return s.counts(x.Shape == Turning, &x.Along, &x.At)
}

// A reach says how far to look for a sum on one free body.
type reach int

const (
	plainSums reach = iota // along x and y, about joints
	anySums                // also square to an unknown, and about the crossing of two
)

// specs lists the sums of a free body that can leave no more than k of its unknowns, and maybe others. The list is good
// until the next call.
func (p *planner) specs(v *view, active []int, k int, r reach) []spec {
	lines := p.lines(active, k+2)
	all := append(p.specList[:0], spec{along: east, centre: None}, spec{along: north, centre: None})
	if r == anySums {
		all = p.directions(all, lines[:min(k+1, len(lines))])
	}
	if !p.a.IsPin(v.FreeBody[0]) || len(v.FreeBody) > 1 { // a pin alone has no sum of moments
		forces := len(all)
		if len(lines) < k+2 {
			all = p.joints(all, v, active)
		}
		all = p.crossings(all, forces, lines, r)
	}
	p.specList = all
	return all
}

// directions adds those square to one of the lines. Where a sum leaves k unknowns, all other forces are square to it,
// so one of any k + 1 is.
func (p *planner) directions(all []spec, lines []int) []spec {
	for _, i := range lines {
		if d := p.a.Forces[i].Along; !d.X.IsZero() && !d.Y.IsZero() {
			all = append(all, spec{along: d.Left(), centre: None})
		}
	}
	return all
}

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

// crossings adds to the centres from the first on the joints at which two of the lines cross, in file order, and, at
// full reach, other such points. Where a sum leaves k unknowns, the lines of all others pass through its centre, so two of any k + 2 lines cross there.
func (p *planner) crossings(all []spec, first int, lines []int, r reach) []spec {
	for n, i := range lines {
		for _, j := range lines[:n] {
			s, ok := p.a.crossing(i, j)
			if ok && (r == anySums || s.centre != None) && !s.isIn(all[first:]) {
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
		if o := &centres[n]; s.centre == o.centre && (s.centre != None || s.about.Equal(o.about)) {
			return true
		}
	}
	return false
}

// lines are the first of the active unknowns that are no couples and lie on so many different lines. The list is good
// until the next call.
func (p *planner) lines(active []int, most int) []int {
	l := p.lineList[:0]
	for _, i := range active {
		if len(l) == most {
			break
		}
		if !p.a.Forces[i].Couple && !p.a.onLineOf(i, l) {
			l = append(l, i)
		}
	}
	p.lineList = l
	return l
}

// onLineOf reports whether force i lies on the line of one of the others.
func (a *Assembly) onLineOf(i int, others []int) bool {
	for _, j := range others {
		if a.sameLine(i, j) {
			return true
		}
	}
	return false
}

// sameLine reports whether two forces lie on one line.
func (a *Assembly) sameLine(i, j int) bool {
	f, g := &a.Forces[i], &a.Forces[j]
	p, q := &a.Frame.Joints[f.Joint].At, &a.Frame.Joints[g.Joint].At
	switch {
	case f.Along.X.IsZero():
		return g.Along.X.IsZero() && p.X.Equal(q.X)
	case f.Along.Y.IsZero():
		return g.Along.Y.IsZero() && p.Y.Equal(q.Y)
	}
	return f.Along.Cross(g.Along).IsZero() && p.To(*q).Cross(f.Along).IsZero()
}

// crossing is the sum of moments about the point where the lines of two forces cross; false if they are parallel.
func (a *Assembly) crossing(i, j int) (spec, bool) {
	f, g := &a.Forces[i], &a.Forces[j]
	det := f.Along.Cross(g.Along)
	if det.IsZero() {
		return spec{}, false
	}
	if f.Joint == g.Joint {
		return a.momentAbout(f.Joint), true
	}
	p, q := a.Frame.Joints[f.Joint].At, a.Frame.Joints[g.Joint].At
	var x Point
	switch {
	case f.Along.X.IsZero() && g.Along.Y.IsZero():
		x = Point{p.X, q.Y}
	case f.Along.Y.IsZero() && g.Along.X.IsZero():
		x = Point{q.X, p.Y}
	default:
		x = p.Plus(f.Along.Times(over(p.To(q).Cross(g.Along), det)))
	}
	return spec{moment: true, about: x, centre: a.JointAt(x)}, true
}
