package statics

import "slices"

// hinges finds the three hinges of two groups that hold each other and are held to what is at rest, each by forces in two
// lines at least; false if they are not so held, or if more than one of the hinges is a direction. That the three lie
// in one line is Kennedy's theorem on instantaneous centres.
func (g *grouping) hinges(r *Reason) bool {
	parallel := 0
	for k, pair := range [3][2]int{{0, None}, {0, 1}, {1, None}} {
		h, ok := g.hinge(pair[0], pair[1], r.Forces)
		if !ok {
			return false
		}
		if h.Parallel {
			parallel++
		}
		r.Hinges[k] = h
	}
	return parallel < 2
}

// hinge is that between groups j and k, of which the second may be what is at rest.
func (g *grouping) hinge(j, k int, forces []int) (Hinge, bool) {
	h := Hinge{Joint: None}
	for _, i := range forces {
		if g.between(i, j, k) {
			h.Forces = append(h.Forces, i)
		}
	}
	if !g.inTwoLines(h.Forces) {
		return h, false
	}
	move := g.against(j, k)
	if move.Turn.IsZero() {
		h.Parallel, h.Along = true, move.Slide.Left()
		return h, true
	}
	h.At = move.Centre
	if at := g.Forces[h.Forces[0]].Joint; g.onePlace(h.Forces) {
		h.Joint = at
	}
	return h, true
}

// mostGroups is how many groups a form with a name has at most.
const mostGroups = 12

// barred finds the one group that all others, if there are any, hold as bars; false if it is not so, or if bars and forces
// are fewer than three.
func (g *grouping) barred(r *Reason) bool {
	r.Main = None
	if len(g.bodies) > mostGroups {
		return false
	}
	holds := make([]int, 0, mostGroups) // the group that each bar holds
	for k := range g.bodies {
		switch b, on := g.bar(k, r.Forces); {
		case on != None:
			r.Bars, holds = append(r.Bars, b), append(holds, on)
		case r.Main != None:
			return false
		default:
			r.Main = k
		}
	}
	if r.Main == None || slices.ContainsFunc(holds, func(on int) bool { return on != r.Main }) {
		return false
	}
	direct := len(r.Forces)
	for _, i := range r.Forces {
		if !g.between(i, r.Main, None) {
			direct--
		}
	}
	return direct+len(r.Bars) >= 3
}

// bar is group k as a bar, and the group that it holds to what is at rest; None if it does more or less than that.
func (g *grouping) bar(k int, forces []int) (Link, int) {
	rest, ok := g.hinge(k, None, forces)
	if !ok || rest.Joint == None {
		return Link{}, None
	}
	touching := 0
	for _, i := range forces {
		if on, by := g.sides(i); on == k || by == k {
			touching++
		}
	}
	for j := range g.bodies {
		h, ok := g.hinge(k, j, forces)
		if j != k && ok && h.Joint != None && len(h.Forces)+len(rest.Forces) == touching {
			return Link{k, [2]int{rest.Joint, h.Joint}}, j
		}
	}
	return Link{}, None
}

// between reports whether force i acts between groups j and k, of which the second may be what is at rest.
func (g *grouping) between(i, j, k int) bool {
	on, by := g.sides(i)
	return on == j && by == k || on == k && by == j
}

// inTwoLines reports whether the forces act in at least two lines; a couple counts as one.
func (g *grouping) inTwoLines(forces []int) bool {
	return len(forces) > 1 && slices.ContainsFunc(forces[1:], func(i int) bool { return !g.inLine(forces[0], i) })
}

// inLine reports whether two forces act in the same line.
func (g *grouping) inLine(i, j int) bool {
	f, h := &g.Forces[i], &g.Forces[j]
	if f.Couple || h.Couple {
		return f.Couple == h.Couple
	}
	way := g.Frame.Joints[f.Joint].At.To(g.Frame.Joints[h.Joint].At)
	return f.Along.Cross(h.Along).IsZero() && f.Along.Cross(way).IsZero()
}

// onePlace reports whether the forces act at one joint.
func (g *grouping) onePlace(forces []int) bool {
	return !slices.ContainsFunc(forces, func(i int) bool { return g.Forces[i].Joint != g.Forces[forces[0]].Joint })
}
