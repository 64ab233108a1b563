package statics

import "slices"

// A spec is a sum without its terms: a direction, or a centre.
type spec struct {
	moment bool
	along  Vector
	about  Point
}

func (a *Assembly) sum(b FreeBody, s spec) Sum {
	if s.moment {
		return a.MomentSum(b, s.about)
	}
	return a.ForceSum(b, s.along)
}

// plain reports whether a sum is along x or y or about a joint.
func (a *Assembly) plain(s spec) bool {
	if s.moment {
		return a.JointAt(s.about) != None
	}
	return s.along.X.IsZero() || s.along.Y.IsZero()
}

// counts reports whether a force along a direction d at a place, or a couple, has a part in a sum.
func (s spec) counts(couple bool, d Vector, at Point) bool {
	switch {
	case s.moment:
		return couple || !s.about.To(at).Cross(d).IsZero()
	case couple:
		return false
	}
	return !s.along.Dot(d).IsZero()
}

// countsForce reports whether force i has a part in a sum of a body on which it acts.
func (a *Assembly) countsForce(s spec, i int) bool {
	f := a.Forces[i]
	return s.counts(f.Couple, f.Along, a.Frame.Joints[f.Joint].At)
}

// A reach says how far to look for a sum on one free body.
type reach int

const (
	plainSums reach = iota // along x and y, about joints
	anySums                // also square to an unknown, and about the crossing of two
)

// specs lists the sums of a free body that can leave no more than k of its unknowns, and maybe others.
func (p *planner) specs(c cut, active []int, k int, r reach) []spec {
	var all []spec
	for _, d := range p.directions(active, k, r) {
		all = append(all, spec{along: d})
	}
	if p.a.IsPin(c.FreeBody[0]) && len(c.FreeBody) == 1 { // a pin alone has no sum of moments
		return all
	}
	for _, x := range p.centres(c, active, k, r) {
		all = append(all, spec{moment: true, about: x})
	}
	return all
}

// directions are x and y and, at full reach, directions square to an unknown. Where a sum leaves k unknowns, all other
// forces are square to it, so one of any k + 1 is.
func (p *planner) directions(active []int, k int, r reach) []Vector {
	all := []Vector{east, north}
	if r == plainSums {
		return all
	}
	for _, i := range p.lines(active, k+1) {
		if d := p.a.Forces[i].Along; !d.X.IsZero() && !d.Y.IsZero() {
			all = append(all, d.Left())
		}
	}
	return all
}

// centres are the joints that can be a centre and, at full reach, crossings of two unknowns' lines. Where a sum leaves
// k unknowns, the lines of all others pass through its centre, so two of any k + 2 lines cross there; with fewer lines
// every joint of the body is tried.
func (p *planner) centres(c cut, active []int, k int, r reach) []Point {
	lines := p.lines(active, k+2)
	var all []Point
	if len(lines) < k+2 {
		for _, j := range p.a.jointsOf(c.FreeBody) {
			all = append(all, p.a.Frame.Joints[j].At)
		}
	}
	for i, f := range lines {
		for _, g := range lines[:i] {
			x, ok := p.a.crossing(f, g)
			if ok && !slices.ContainsFunc(all, x.Equal) && (r == anySums || p.a.JointAt(x) != None) {
				all = append(all, x)
			}
		}
	}
	slices.SortStableFunc(all, func(x, y Point) int { return p.a.fileOrder(x) - p.a.fileOrder(y) })
	return all
}

// lines are the first of the active unknowns that are no couples and lie on so many different lines.
func (p *planner) lines(active []int, most int) []int {
	var l []int
	for _, i := range active {
		onLine := func(j int) bool { return p.a.sameLine(i, j) }
		if len(l) < most && !p.a.Forces[i].Couple && !slices.ContainsFunc(l, onLine) {
			l = append(l, i)
		}
	}
	return l
}

// sameLine reports whether two forces lie on one line.
func (a *Assembly) sameLine(i, j int) bool {
	f, g := a.Forces[i], a.Forces[j]
	if !f.Along.Cross(g.Along).IsZero() {
		return false
	}
	between := a.Frame.Joints[f.Joint].At.To(a.Frame.Joints[g.Joint].At)
	return between.Cross(f.Along).IsZero()
}

// crossing is where the lines of two forces cross; false if they are parallel.
func (a *Assembly) crossing(i, j int) (Point, bool) {
	f, g := a.Forces[i], a.Forces[j]
	det := f.Along.Cross(g.Along)
	if det.IsZero() {
		return Point{}, false
	}
	p, q := a.Frame.Joints[f.Joint].At, a.Frame.Joints[g.Joint].At
	if f.Joint == g.Joint {
		return p, true
	}
	return p.Plus(f.Along.Times(over(p.To(q).Cross(g.Along), det))), true
}

// fileOrder is the number of the joint at a point; a point that is no joint comes last.
func (a *Assembly) fileOrder(x Point) int {
	if j := a.JointAt(x); j != None {
		return j
	}
	return len(a.Frame.Joints)
}
