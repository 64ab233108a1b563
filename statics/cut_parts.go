package statics

import (
	"slices"
	"strings"
)

// A tree is a walk over one part, depth first: every member is either the way to a new joint or closes a ring back to
// a joint on the way.
type tree struct {
	joints []int // in the order they are reached; the first is the root
	up     []int // the member by which each of them was reached; the root has none
	closes []int // members that close a ring
}

// shapes names the parts and finds their rings.
func (c *cutter) shapes() {
	f := &c.a.Frame
	w := walker{cutter: c, reached: make([]bool, len(f.Joints)), used: make([]bool, len(f.Members)), over: make([]int, len(f.Joints))}
	w.ring = make([]bool, len(f.Members))
	room := make([]int, 2*(len(f.Members)+len(c.a.Parts))) // a part has no more joints than members and one
	c.a.outer = noneFor(len(f.Members))
	c.a.trees = make([]tree, len(c.a.Parts))
	released := c.released()
	for p := range c.a.Parts {
		part := &c.a.Parts[p]
		most := len(part.Members) + 1
		w.joints, w.up, room = room[:0:most], room[most:most:2*most], room[2*most:]
		t := w.walk(p)
		c.a.trees[p] = t
		part.Name, part.Joints = c.nameOf(p, t)
		part.Inner = 3*len(t.closes) - released[p]
		if len(t.closes) == 0 {
			continue
		}
		for _, m := range part.Members {
			if w.ring[m] {
				part.Ring = append(part.Ring, m)
			}
		}
	}
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

// farEnd is the other end of member m, seen from joint j.
func (f *Frame) farEnd(m, j int) int {
	if f.Members[m].From == j {
		return f.Members[m].To
	}
	return f.Members[m].From
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

// nameOf is the name of part p and its joints: in walking order if no more than two of its members meet anywhere.
func (c *cutter) nameOf(p int, t tree) (string, []int) {
	f, first := &c.a.Frame, c.a.Parts[p].Members[0]
	start, ends := None, 0
	for _, j := range t.joints {
		switch own := c.ownAt(p, j); {
		case len(own) > 2:
			return f.Members[first].Name + "+", t.joints
		case len(own) == 1:
			ends++
			if start == None || c.leadsForward(p, j) {
				start = j
			}
		}
	}
	if ends == 0 { // a single ring
		start = f.Members[first].From
	}
	joints := c.walkFrom(p, start, first)
	var name strings.Builder
	name.Grow(len(joints) * (len(f.Joints[start].Name) + 1))
	for _, j := range joints {
		name.WriteString(f.Joints[j].Name)
	}
	if ends == 0 {
		name.WriteString(f.Joints[start].Name)
	}
	return name.String(), joints
}

// ownAt lists the members of part p at joint j. The list is good until the next call.
func (c *cutter) ownAt(p, j int) []int {
	own := c.own[:0]
	for _, m := range c.meeting[j] {
		if c.partOf[m] == p {
			own = append(own, m)
		}
	}
	c.own = own
	return own
}

// leadsForward reports whether a walk along the unbranched part p from its end j passes its first member from start to
// end, as that member is named.
func (c *cutter) leadsForward(p, j int) bool {
	first := c.a.Parts[p].Members[0]
	joints := c.walkFrom(p, j, c.ownAt(p, j)[0])
	for i := range joints[1:] {
		if joints[i] == c.a.Frame.Members[first].From && joints[i+1] == c.a.Frame.Members[first].To {
			return true
		}
	}
	return false
}

// walkFrom lists the joints of the unbranched part p in order from joint j; on a ring it sets out along member first.
func (c *cutter) walkFrom(p, j, first int) []int {
	joints, last := make([]int, 1, len(c.a.Parts[p].Members)+1), None
	joints[0] = j
	for next := first; ; {
		own := c.ownAt(p, j)
		if last != None || len(own) == 1 {
			next = other(own, last)
		}
		if next == None {
			return joints
		}
		j, last = c.a.Frame.farEnd(next, j), next
		if j == joints[0] {
			return joints
		}
		joints = append(joints, j)
	}
}

// other is the first of own that is not m, or None.
func other(own []int, m int) int {
	for _, o := range own {
		if o != m {
			return o
		}
	}
	return None
}
