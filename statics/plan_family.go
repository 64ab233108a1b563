package statics

// A reach says how far to look for a sum on one free body.
type reach int

const (
	plainSums reach = iota // along x and y, about joints
	anySums                // also perpendicular to an unknown, and about the crossing of two
)

// specs lists the sums of a free body that can leave no more than k of its unknowns, and maybe others (S11). The list is good
// until the next call.
func (p *planner) specs(v *view, active []int, k int) []spec {
	lines := p.lines(active, k+2)
	all := append(p.specList[:0], eastward, northward)
	all = p.directions(all, lines[:min(k+1, len(lines))])
	if !p.a.IsPin(v.FreeBody[0]) || len(v.FreeBody) > 1 { // a pin alone has no sum of moments
		forces := len(all)
		if len(lines) < k+2 {
			all = p.joints(all, v, active)
		}
		all = p.crossings(all, forces, lines)
	}
	p.specList = all
	return all
}

// directions adds those perpendicular to one of the lines. Where a sum leaves k unknowns, all other forces are perpendicular to it,
// so one of any k + 1 is.
func (p *planner) directions(all []spec, lines []int) []spec {
	for _, i := range lines {
		if p.a.lines[i].slope == oblique {
			all = append(all, forceAlong(p.a.Forces[i].Along.Left()))
		}
	}
	return all
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
	if a.lines[i].slope != oblique || a.lines[j].slope != oblique {
		return a.lines[i] == a.lines[j]
	}
	f, g := &a.Forces[i], &a.Forces[j]
	p, q := &a.Frame.Joints[f.Joint].At, &a.Frame.Joints[g.Joint].At
	return f.Along.Cross(g.Along).IsZero() && p.To(*q).Cross(f.Along).IsZero()
}
