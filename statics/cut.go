package statics

import (
	"slices"

	"unpin/statics/exact"
)

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

// meeting lists the members at each joint, in file order.
func (f *Frame) meeting() [][]int {
	return lists(len(f.Joints), func(tell func(joint, member int)) {
		for m := range f.Members {
			tell(f.Members[m].From, m)
			tell(f.Members[m].To, m)
		}
	})
}

func indexByJoint(joints, n int, joint func(int) int) []int {
	at := noneFor(joints)
	for i := range n {
		at[joint(i)] = i
	}
	return at
}

func noneFor(n int) []int {
	s := make([]int, n)
	for i := range s {
		s[i] = None
	}
	return s
}

// parts joins members that are rigid together and numbers the parts by their first members.
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

func contains(s []int, x int) bool {
	for _, y := range s {
		if y == x {
			return true
		}
	}
	return false
}

// pins makes a body of each pin on which three or more parts, a support or a load act.
func (c *cutter) pins() {
	c.pinBody = noneFor(len(c.a.Frame.Joints))
	loaded := make([]bool, len(c.a.Frame.Joints))
	for i := range c.a.Frame.Loads {
		if l := &c.a.Frame.Loads[i]; l.Joint != None && l.Member == None {
			loaded[l.Joint] = true
		}
	}
	for j := range c.a.Frame.Joints {
		if !c.isPin(j) {
			continue
		}
		if parts := len(c.partsAt(j)); parts > 2 || parts == 2 && (loaded[j] || c.heldItself(j)) {
			c.pinBody[j] = len(c.a.Parts) + len(c.a.Pins)
			c.a.Pins = append(c.a.Pins, PinBody{Name: "pin " + c.a.Frame.Joints[j].Name, Joint: j})
		}
	}
}

func (c *cutter) isPin(j int) bool {
	k := c.conn[j]
	return k != None && c.a.Frame.Connections[k].Kind == Pin
}

// heldItself reports whether a support at joint j acts on the pin and not on one of the members.
func (c *cutter) heldItself(j int) bool {
	k := c.support[j]
	if k == None {
		return false
	}
	s := c.a.Frame.Supports[k]
	return s.On == None && (s.Kind == Pinned || s.Kind == Roller)
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

// supportForces adds the reactions at joint j.
func (c *cutter) supportForces(j int) {
	k := c.support[j]
	if k == None {
		return
	}
	s := c.a.Frame.Supports[k]
	body := c.bodyAt(j, s.On)
	if s.On == None && (s.Kind == Fixed || s.Kind == Guide) {
		body = c.mainPart(j)
	}
	as := Force{Kind: Reaction, Joint: j, On: body, By: None}
	joint := c.a.Frame.Joints[j].Name
	switch s.Kind {
	case Pinned, Fixed:
		c.components(as, joint, "")
	default:
		c.force(as, "R"+joint, s.Along)
	}
	if s.Kind == Fixed || s.Kind == Guide {
		c.couple(as, "M"+joint)
	}
}

// force adds a force along a direction that is otherwise as another.
func (c *cutter) force(as Force, name string, along Vector) {
	as.Name, as.Along = name, along
	c.a.Forces = append(c.a.Forces, as)
}

// couple adds a couple that is otherwise as a force.
func (c *cutter) couple(as Force, name string) {
	as.Name, as.Couple = name, true
	c.a.Forces = append(c.a.Forces, as)
}

// components adds the two force components that pass at the joint of that name.
func (c *cutter) components(as Force, joint, suffix string) {
	c.force(as, joint+"x"+suffix, east)
	c.force(as, joint+"y"+suffix, north)
}

// The directions of the axes.
var (
	east  = Vector{exact.Int(1), exact.Int(0)}
	north = Vector{exact.Int(0), exact.Int(1)}
)

// connectionForces adds what passes between the parts at joint j.
func (c *cutter) connectionForces(j int) {
	parts := c.partsAt(j)
	if c.conn[j] == None || len(parts) < 2 {
		return
	}
	if pin := c.pinBody[j]; pin != None {
		for _, p := range parts {
			c.pair(j, PinOnPart, p, pin, "."+c.a.Parts[p].Name)
		}
		return
	}
	c.pair(j, PinPair, parts[0], parts[1], "")
}

// pair adds the forces that the connection at joint j lets pass from body `by` to body `on`. Where a reaction at the joint
// bears the name of one, the names tell the part.
func (c *cutter) pair(j int, kind ForceKind, on, by int, suffix string) {
	before, as := c.a.Forces, Force{Kind: kind, Joint: j, On: on, By: by}
	c.passing(as, suffix)
	added := c.a.Forces[len(before):]
	if suffix == "" && slices.ContainsFunc(added, func(f Force) bool { return lastBear(before, f.Name) }) {
		c.a.Forces = before
		c.passing(as, "."+c.a.Parts[on].Name)
	}
}

// passing adds what the connection at a force's joint lets pass.
func (c *cutter) passing(as Force, suffix string) {
	conn, joint := &c.a.Frame.Connections[c.conn[as.Joint]], c.a.Frame.Joints[as.Joint].Name
	if conn.Kind == Pin {
		c.components(as, joint, suffix)
		return
	}
	c.force(as, "S"+joint+suffix, conn.Along.Left())
	if conn.Kind == Sleeve {
		c.couple(as, "M"+joint+suffix)
	}
}

// lastBear reports whether one of the last forces, which may be reactions at the same joint, bears the name.
func lastBear(forces []Force, name string) bool {
	for i := len(forces) - 1; i >= 0 && i >= len(forces)-3; i-- {
		if forces[i].Name == name {
			return true
		}
	}
	return false
}
