package statics

import "strings"

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
