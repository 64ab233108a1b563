package statics

// parts joins members that are rigid together and numbers the parts by their first members (S1).
func (c *cutter) parts() {
	f := &c.a.Frame
	group := newUnion(len(f.Members))
	for j, members := range c.meeting {
		if k := c.conn[j]; k == None {
			group.joinAll(members)
		} else {
			for _, piece := range f.Connections[k].Pieces {
				group.joinAll(piece)
			}
		}
	}
	number, parts := noneFor(len(f.Members)), 0 // the part of each member that stands for one
	c.partOf = make([]int, len(f.Members))
	for m := range f.Members {
		root := group.find(m)
		if number[root] == None {
			number[root] = parts
			parts++
		}
		c.partOf[m] = number[root]
	}
	c.a.Parts = make([]Part, parts)
	for p, members := range lists(parts, func(tell func(part, member int)) {
		for m, p := range c.partOf {
			tell(p, m)
		}
	}) {
		c.a.Parts[p].Members = members
	}
	c.shapes()
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
