package statics

import (
	"slices"
)

// A tree is a walk over one part, depth first: every member is either the way to a new joint or closes a ring back to
// a joint on the way.
type tree struct {
	joints []int // in the order they are reached; the first is the root
	up     []int // the member by which each of them was reached; the root has none
	closes []int // members that close a ring
}

type walker struct {
	tree
	*cutter
	part    int
	reached []bool // joints
	used    []bool // members walked
	over    []int  // by joint, the rings that pass over the member above it
	ring    []bool // members that lie on a ring
}

// walk walks over part p from the start of its first member.
func (w *walker) walk(p int) tree {
	w.closes, w.part = nil, p
	w.visit(w.a.Frame.Members[w.a.Parts[p].Members[0]].From, None)
	for i, j := range w.joints {
		w.reached[j] = false
		if i > 0 {
			w.a.outer[w.up[i]] = j
		}
	}
	if len(w.closes) > 0 {
		w.rings()
	}
	return w.tree
}

// visit reaches joint j by a member and goes on along the part's members there.
func (w *walker) visit(j, by int) {
	w.joints, w.up = append(w.joints, j), append(w.up, by)
	w.reached[j] = true
	for _, m := range w.meeting[j] {
		if w.partOf[m] != w.part || w.used[m] {
			continue
		}
		w.used[m] = true
		far := w.a.Frame.farEnd(m, j)
		if !w.reached[far] {
			w.visit(far, m)
			continue
		}
		w.closes = append(w.closes, m)
		w.ring[m] = true
		w.over[j]++
		w.over[far]--
	}
}

// rings marks the members that some closing member passes over.
func (w *walker) rings() {
	for i := len(w.joints) - 1; i >= 0; i-- {
		j := w.joints[i]
		if i > 0 {
			w.ring[w.up[i]] = w.over[j] > 0
			w.over[w.a.Frame.farEnd(w.up[i], j)] += w.over[j]
		}
		w.over[j] = 0
	}
}

// released is how many of the unknowns in the rings of each part are set free where it is connected to itself.
func (c *cutter) released() []int {
	free := make([]int, len(c.a.Parts))
	for _, conn := range c.a.Frame.Connections {
		for n, piece := range conn.Pieces {
			p := c.partOf[piece[0]]
			same := func(earlier []int) bool { return c.partOf[earlier[0]] == p }
			if slices.ContainsFunc(conn.Pieces[:n], same) {
				free[p] += releases(conn.Kind)
			}
		}
	}
	return free
}

// releases is how many of the three unknowns of a rigid joint a connection of that kind does not pass.
func releases(k ConnectionKind) int {
	if k == Slot {
		return 2
	}
	return 1
}
