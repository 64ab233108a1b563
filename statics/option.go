package statics

import (
	"slices"
)

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

// An option is a sum that gives one force, and what it would cost to write.
type option struct {
	spec
	force int
	cost  int // twice the terms, and one for a moment
	rid   int // other unknowns that have no part in it
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

// look finds the best sum of a free body with exactly one unknown, within reach, or nil.
func (p *planner) look(b FreeBody, r reach) *option {
	active := p.active(b)
	if len(active) == 0 {
		return nil
	}
	var best *option
	try := func(s spec) {
		if i := p.single(active, s); i != None {
			o := p.price(b, active, s, i)
			if best == nil || o.cost < best.cost || o.cost == best.cost && o.rid > best.rid {
				best = &o
			}
		}
	}
	for _, d := range p.directions(active, r) {
		try(spec{along: d})
	}
	if p.turns(b) {
		for _, c := range p.centres(b, active, r) {
			try(spec{moment: true, about: c})
		}
	}
	return best
}

// turns reports whether the free body has a moment sum: a pin alone has none.
func (p *planner) turns(b FreeBody) bool { return !p.a.IsPin(b[0]) }

// single is the only one of the active unknowns that has a part in a sum, or None.
func (p *planner) single(active []int, s spec) int {
	found := None
	for _, i := range active {
		if p.a.countsForce(s, i) {
			if found != None {
				return None
			}
			found = i
		}
	}
	return found
}

// price reckons what a sum costs. With one unknown left a force sum is the plain way, so a moment sum must not beat it;
// a couple left alone is best taken about its own joint.
func (p *planner) price(b FreeBody, active []int, s spec, force int) option {
	o := option{spec: s, force: force, cost: 2, rid: len(active) - 1}
	for _, i := range p.a.ForcesOn(b) {
		if !p.known[i] || p.values[i].IsZero() {
			continue
		}
		if sign, _ := p.a.Facing(b, i); sign != 0 && p.a.countsForce(s, i) {
			o.cost += 2
		}
	}
	for _, i := range p.a.ActionsOn(b) {
		if x := p.a.Loads[i]; s.counts(x.Shape == Turning, x.Along, x.At) {
			o.cost += 2
		}
	}
	if f := p.a.Forces[force]; s.moment {
		o.cost++
		switch {
		case len(active) == 1 && !f.Couple:
			o.cost += aloneInForceSum
		case len(active) == 1 && p.a.Frame.Joints[f.Joint].At.Equal(s.about):
			o.cost -= 3
		}
	}
	return o
}

// aloneInForceSum outweighs any number of terms.
const aloneInForceSum = 1 << 20

// directions are x and y and, at full reach, the directions square to an unknown. If all unknowns but one are parallel,
// then so are two of any three, so the first three are enough.
func (p *planner) directions(active []int, r reach) []Vector {
	d := []Vector{east, north}
	if r == plainSums {
		return d
	}
	for _, i := range p.lines(active) {
		d = append(d, p.a.Forces[i].Along.Left())
	}
	return d
}

// lines are the first three of the active unknowns that are no couples.
func (p *planner) lines(active []int) []int {
	var l []int
	for _, i := range active {
		if !p.a.Forces[i].Couple && len(l) < 3 {
			l = append(l, i)
		}
	}
	return l
}

// centres are the joints that can be a centre for one unknown and, at full reach, crossings of two unknowns' lines. If
// all lines but one pass through a point, then so do two of any three, so the crossings of the first three are enough;
// with fewer lines every joint of the body is tried.
func (p *planner) centres(b FreeBody, active []int, r reach) []Point {
	lines := p.lines(active)
	var all []Point
	if len(lines) < 3 {
		for _, j := range p.a.jointsOf(b) {
			all = append(all, p.a.Frame.Joints[j].At)
		}
	}
	for i, f := range lines {
		for _, g := range lines[:i] {
			x, ok := p.a.crossing(f, g)
			if ok && (r == anySums || p.a.JointAt(x) != None) {
				all = append(all, x)
			}
		}
	}
	if len(lines) == 3 {
		slices.SortStableFunc(all, func(x, y Point) int { return p.a.fileOrder(x) - p.a.fileOrder(y) })
	}
	return all
}

// fileOrder is the number of the joint at a point; a point that is no joint comes last.
func (a *Assembly) fileOrder(x Point) int {
	if j := a.JointAt(x); j != None {
		return j
	}
	return len(a.Frame.Joints)
}

// jointsOf lists the joints of the bodies in b, in file order.
func (a *Assembly) jointsOf(b FreeBody) []int {
	var joints []int
	for _, i := range b {
		if a.IsPin(i) {
			joints = append(joints, a.joint(i))
		} else {
			joints = append(joints, a.Parts[i].Joints...)
		}
	}
	slices.Sort(joints)
	return slices.Compact(joints)
}

// crossing is where the lines of two forces cross; false if they are parallel.
func (a *Assembly) crossing(i, j int) (Point, bool) {
	f, g := a.Forces[i], a.Forces[j]
	p, q := a.Frame.Joints[f.Joint].At, a.Frame.Joints[g.Joint].At
	if f.Joint == g.Joint {
		return p, !f.Along.Cross(g.Along).IsZero()
	}
	det := f.Along.Cross(g.Along)
	if det.IsZero() {
		return Point{}, false
	}
	return p.Plus(f.Along.Times(over(p.To(q).Cross(g.Along), det))), true
}

// groups lists the connected groups of two or more bodies but not all: every one up to 7 bodies, beyond that the sides
// of each pin. Smaller groups come first.
func (a *Assembly) groups() []FreeBody {
	var all []FreeBody
	if n := a.Bodies(); n <= 7 {
		for set := 1; set < 1<<n-1; set++ {
			if g := bodiesIn(set, n); len(g) > 1 && len(a.sides(g, None)) == 1 {
				all = append(all, g)
			}
		}
	} else {
		for j := range a.Frame.Connections {
			sides := a.sides(a.Whole(), a.Frame.Connections[j].Joint)
			for _, g := range sides {
				if len(sides) > 1 && len(g) > 1 {
					all = append(all, g)
				}
			}
		}
	}
	slices.SortStableFunc(all, func(x, y FreeBody) int { return len(x) - len(y) })
	return all
}

func bodiesIn(set, n int) FreeBody {
	var g FreeBody
	for i := range n {
		if set>>i&1 == 1 {
			g = append(g, i)
		}
	}
	return g
}

// sides are the connected groups into which the bodies of b fall when what passes at the joint cut is cut.
func (a *Assembly) sides(b FreeBody, cut int) []FreeBody {
	u := newUnion(a.Bodies())
	for _, f := range a.Forces {
		if f.By != None && f.Joint != cut && b.Has(f.On) && b.Has(f.By) {
			u.join(f.On, f.By)
		}
	}
	var sides []FreeBody
	at := map[int]int{}
	for _, i := range b {
		root := u.find(i)
		if _, seen := at[root]; !seen {
			at[root] = len(sides)
			sides = append(sides, nil)
		}
		sides[at[root]] = append(sides[at[root]], i)
	}
	return sides
}
