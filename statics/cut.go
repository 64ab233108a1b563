package statics

import "unpin/statics/exact"

// Cut cuts a frame at its pins, slots and sleeves. The error names what makes the frame unfit: an index out of range, a
// member without length, a support or load where nothing can carry it.
func Cut(f Frame) (*Assembly, error) {
	if err := f.check(); err != nil {
		return nil, err
	}
	c := newCutter(f)
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
	own     []int   // used again and again
}

func newCutter(f Frame) *cutter {
	c := &cutter{a: &Assembly{Frame: f}, meeting: f.meeting()}
	c.a.axes = f.memberAxes()
	c.conn = indexByJoint(len(f.Joints), len(f.Connections), func(i int) int { return f.Connections[i].Joint })
	c.support = indexByJoint(len(f.Joints), len(f.Supports), func(i int) int { return f.Supports[i].Joint })
	return c
}

// meeting lists the members at each joint, in file order.
func (f *Frame) meeting() [][]int {
	at := make([][]int, len(f.Joints))
	for m, mem := range f.Members {
		at[mem.From] = append(at[mem.From], m)
		at[mem.To] = append(at[mem.To], m)
	}
	return at
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
		for _, piece := range c.pieces(j, members) {
			for _, m := range piece[1:] {
				group.join(piece[0], m)
			}
		}
	}
	number := map[int]int{}
	c.partOf = make([]int, len(f.Members))
	for m := range f.Members {
		root := group.find(m)
		if _, seen := number[root]; !seen {
			number[root] = len(c.a.Parts)
			c.a.Parts = append(c.a.Parts, Part{})
		}
		p := number[root]
		c.partOf[m] = p
		c.a.Parts[p].Members = append(c.a.Parts[p].Members, m)
	}
	c.shapes()
}

// pieces is how the members at joint j are grouped; all in one where there is no connection.
func (c *cutter) pieces(j int, members []int) [][]int {
	if k := c.conn[j]; k != None {
		return c.a.Frame.Connections[k].Pieces
	}
	if len(members) == 0 {
		return nil
	}
	return [][]int{members}
}

// partsAt lists the different parts that meet at joint j, that of the first listed member first.
func (c *cutter) partsAt(j int) []int {
	var parts []int
	for _, m := range c.meeting[j] {
		if p := c.partOf[m]; !contains(parts, p) {
			parts = append(parts, p)
		}
	}
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
	loaded := map[int]bool{}
	for _, l := range c.a.Frame.Loads {
		if l.Joint != None && l.Member == None {
			loaded[l.Joint] = true
		}
	}
	for j := range c.a.Frame.Joints {
		if !c.isPin(j) || len(c.partsAt(j)) < 2 {
			continue
		}
		if len(c.partsAt(j)) > 2 || loaded[j] || c.heldItself(j) {
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
	for _, r := range reactionsOf(s, c.a.Frame.Joints[j].Name) {
		r.Kind, r.Joint, r.On, r.By = Reaction, j, body, None
		c.a.Forces = append(c.a.Forces, r)
	}
}

// reactionsOf is what a support of that kind exerts at the joint of that name.
func reactionsOf(s Support, joint string) []Force {
	couple := Force{Name: "M" + joint, Couple: true}
	switch s.Kind {
	case Pinned:
		return components(joint)
	case Fixed:
		return append(components(joint), couple)
	case Guide:
		return []Force{{Name: "R" + joint, Along: s.Along}, couple}
	}
	return []Force{{Name: "R" + joint, Along: s.Along}}
}

// components are the two force components that pass at the joint of that name.
func components(joint string) []Force {
	return []Force{{Name: joint + "x", Along: east}, {Name: joint + "y", Along: north}}
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

// pair adds the forces that the connection at joint j lets pass from body `by` to body `on`.
func (c *cutter) pair(j int, kind ForceKind, on, by int, suffix string) {
	forces := passing(c.a.Frame.Connections[c.conn[j]], c.a.Frame.Joints[j].Name)
	for _, p := range forces {
		if suffix == "" && c.taken(p.Name) {
			suffix = "." + c.a.Parts[on].Name
		}
	}
	for _, p := range forces {
		p.Name += suffix
		p.Kind, p.Joint, p.On, p.By = kind, j, on, by
		c.a.Forces = append(c.a.Forces, p)
	}
}

// passing is what a connection lets pass at the joint of that name.
func passing(conn Connection, joint string) []Force {
	square := Force{Name: "S" + joint, Along: conn.Along.Left()}
	switch conn.Kind {
	case Slot:
		return []Force{square}
	case Sleeve:
		return []Force{square, {Name: "M" + joint, Couple: true}}
	}
	return components(joint)
}

// taken reports whether a reaction at the same joint, added just before, bears the name.
func (c *cutter) taken(name string) bool {
	for i := len(c.a.Forces) - 1; i >= 0 && i >= len(c.a.Forces)-3; i-- {
		if c.a.Forces[i].Name == name {
			return true
		}
	}
	return false
}
