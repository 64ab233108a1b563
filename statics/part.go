package statics

// A tree is a walk over one part, depth first: every member is either the way to a new joint or closes a ring back to
// a joint on the way.
type tree struct {
	joints []int        // in the order they are reached; the first is the root
	up     map[int]int  // joint → the member by which it was reached; the root has none
	closes []int        // members that close a ring
	ring   map[int]bool // members that lie on a ring
}

// shapes names the parts and finds their rings.
func (c *cutter) shapes() {
	for p := range c.a.Parts {
		t := c.walk(p)
		c.a.trees = append(c.a.trees, t)
		part := &c.a.Parts[p]
		part.Name, part.Joints = c.nameOf(p, t)
		part.Inner = 3*len(t.closes) - c.released(p)
		for _, m := range part.Members {
			if t.ring[m] {
				part.Ring = append(part.Ring, m)
			}
		}
	}
}

// walk walks over part p from the start of its first member.
func (c *cutter) walk(p int) tree {
	w := walker{cutter: c, part: p, depth: map[int]int{}, used: map[int]bool{}, over: map[int]int{}}
	w.up, w.ring = map[int]int{}, map[int]bool{}
	w.visit(c.a.Frame.Members[c.a.Parts[p].Members[0]].From)
	w.rings()
	return w.tree
}

type walker struct {
	tree
	*cutter
	part  int
	depth map[int]int  // of each joint reached, from 1
	used  map[int]bool // members walked
	over  map[int]int  // joint → rings that pass over the member above it
}

// visit reaches joint j and goes on along the part's members there.
func (w *walker) visit(j int) {
	w.joints = append(w.joints, j)
	w.depth[j] = len(w.depth) + 1
	for _, m := range w.meeting[j] {
		if w.partOf[m] != w.part || w.used[m] {
			continue
		}
		w.used[m] = true
		far := w.a.Frame.farEnd(m, j)
		if w.depth[far] == 0 {
			w.up[far] = m
			w.visit(far)
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
	for i := len(w.joints) - 1; i > 0; i-- {
		j := w.joints[i]
		m := w.up[j]
		w.ring[m] = w.over[j] > 0
		w.over[w.a.Frame.farEnd(m, j)] += w.over[j]
	}
}

// farEnd is the other end of member m, seen from joint j.
func (f *Frame) farEnd(m, j int) int {
	if f.Members[m].From == j {
		return f.Members[m].To
	}
	return f.Members[m].From
}

// released is how many of the unknowns in the rings of part p are set free where it is connected to itself.
func (c *cutter) released(p int) int {
	n := 0
	for _, conn := range c.a.Frame.Connections {
		own := 0
		for _, piece := range conn.Pieces {
			if c.partOf[piece[0]] == p {
				own++
			}
		}
		if own > 1 {
			n += (own - 1) * releases(conn.Kind)
		}
	}
	return n
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
	name := ""
	for _, j := range joints {
		name += f.Joints[j].Name
	}
	if ends == 0 {
		return name + f.Joints[start].Name, joints
	}
	return name, joints
}

// ownAt lists the members of part p at joint j.
func (c *cutter) ownAt(p, j int) []int {
	var own []int
	for _, m := range c.meeting[j] {
		if c.partOf[m] == p {
			own = append(own, m)
		}
	}
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
	joints, last := []int{j}, None
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
