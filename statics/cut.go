package statics

// Cut cuts a frame at its pins, slots and sleeves. The error names what makes the frame unfit: an index out of range, a
// member without length, a support or load where nothing can carry it.
func Cut(f Frame) (*Assembly, error) {
	meeting, err := f.check()
	if err != nil {
		return nil, err
	}
	c := newCutter(f, meeting)
	c.parts()
	c.pins()
	c.a.Forces = make([]Force, 0, 2*len(f.Supports)+2*len(f.Connections))
	for j := range f.Joints {
		c.supportForces(j)
		c.connectionForces(j)
	}
	c.actions()
	c.runOn()
	c.a.index()
	return c.a, nil
}

// cutter holds what is known of the frame while it is cut.
type cutter struct {
	a       *Assembly
	meeting [][]int // members at each joint, in file order
	partOf  []int   // part of each member
	conn    []int   // connection of each joint, or None
	support []int   // support of each joint, or None
	pinBody []int   // pin body of each joint, or None
	own     []int   // used again and again, as is met
	met     []int
}

func newCutter(f Frame, meeting [][]int) *cutter {
	c := &cutter{a: &Assembly{Frame: f}, meeting: meeting}
	c.a.axes = f.memberAxes()
	c.conn = indexByJoint(len(f.Joints), len(f.Connections), func(i int) int { return f.Connections[i].Joint })
	c.support = indexByJoint(len(f.Joints), len(f.Supports), func(i int) int { return f.Supports[i].Joint })
	return c
}

func indexByJoint(joints, n int, joint func(int) int) []int {
	at := noneFor(joints)
	for i := range n {
		at[joint(i)] = i
	}
	return at
}

// partsAt lists the different parts that meet at joint j, that of the first listed member first. The list is good until
// the next call.
func (c *cutter) partsAt(j int) []int {
	parts := c.met[:0]
	for _, m := range c.meeting[j] {
		if p := c.partOf[m]; !contains(parts, p) {
			parts = append(parts, p)
		}
	}
	c.met = parts
	return parts
}

// bodyAt is the body that a support or load at joint j acts on: the part of the member named, else the pin itself if
// it is a body, else the piece that was not hinged, else the only part there.
func (c *cutter) bodyAt(j, member int) int {
	if member != None {
		return c.partOf[member]
	}
	if b := c.pinBody[j]; b != None {
		return b
	}
	return c.mainPart(j)
}

// mainPart is the part of the piece at joint j that is not hinged, or else of the first member there.
func (c *cutter) mainPart(j int) int {
	if k := c.conn[j]; k != None {
		if conn := c.a.Frame.Connections[k]; conn.Main != None {
			return c.partOf[conn.Pieces[conn.Main][0]]
		}
	}
	return c.partOf[c.meeting[j][0]]
}
