package statics

import "slices"

// part makes one rigid part through the joints of its holds and some more, and holds it.
func (g *generator) part(holds []hold) {
	var through []int
	for _, h := range holds {
		if !slices.Contains(through, h.joint) {
			through = append(through, h.joint)
		}
	}
	through = append(through, g.more(through)...)
	members := g.tree(through)
	var closing []int
	if len(through) > 2 && g.chance(12) {
		closing = g.ring(through, &members)
	}
	for _, h := range holds {
		if h.connect != nil {
			g.connect(h.joint, *h.connect, members)
		}
	}
	for _, h := range holds {
		if h.support != nil {
			g.support(h.joint, *h.support, members)
		}
	}
	if len(closing) > 0 && g.chance(40) {
		g.hingeRing(closing)
	}
}

// more makes further joints for a part, at least so many that it has two; some in one line, so that pins can come to
// lie inside the line of a member.
func (g *generator) more(through []int) []int {
	n := g.weighted(4, 4, 2, 1)
	if len(through) < 2 {
		n = max(n, 2-len(through))
	}
	var extra []int
	for len(extra) < n {
		j := None
		if g.chance(40) {
			j = g.inLine(append(slices.Clone(through), extra...))
		}
		if j == None {
			j = g.newJoint()
		}
		extra = append(extra, j)
	}
	return extra
}

// inLine makes a joint as far beyond the last of the joints as that is beyond the one before, if there is room.
func (g *generator) inLine(joints []int) int {
	if len(joints) < 2 {
		return None
	}
	a, b := g.halves(joints[len(joints)-2]), g.halves(joints[len(joints)-1])
	x, y := 2*b[0]-a[0], 2*b[1]-a[1]
	if g.taken[[2]int{x, y}] || x < -20 || x > 40 || y < -20 || y > 40 {
		return None
	}
	return g.jointAt(x, y)
}

// tree joins the joints by members, mostly one after the other, else with branches, and lists the members.
func (g *generator) tree(joints []int) []int {
	order := slices.Clone(joints)
	if g.chance(70) {
		for i := len(order) - 1; i > 0; i-- {
			k := g.pick(0, i)
			order[i], order[k] = order[k], order[i]
		}
	}
	branched := g.chance(30)
	var members []int
	for i := 1; i < len(order); i++ {
		from := i - 1
		if branched {
			from = g.pick(0, i-1)
		}
		members = append(members, g.member(order[from], order[i]))
	}
	return members
}

func (g *generator) member(from, to int) int {
	if g.chance(30) {
		from, to = to, from
	}
	name := g.f.Joints[from].Name + g.f.Joints[to].Name
	for slices.ContainsFunc(g.f.Members, func(m Member) bool { return m.Name == name }) {
		name += "'"
	}
	g.f.Members = append(g.f.Members, Member{name, from, to})
	return len(g.f.Members) - 1
}

// ring adds a member that closes a ring, if two of the joints are not joined yet, and lists its two joints.
func (g *generator) ring(joints []int, members *[]int) []int {
	a, b := joints[g.pick(0, len(joints)-1)], joints[g.pick(0, len(joints)-1)]
	for _, m := range *members {
		ends := [2]int{g.f.Members[m].From, g.f.Members[m].To}
		if a == b || ends == [2]int{a, b} || ends == [2]int{b, a} {
			return nil
		}
	}
	*members = append(*members, g.member(a, b))
	return []int{a, b}
}

// hingeRing hinges a ring to itself at one of the ends of the member that closes it, if nothing else is there.
func (g *generator) hingeRing(ends []int) {
	j := ends[g.pick(0, 1)]
	at := g.f.meeting()[j]
	if len(at) == 2 && g.connectionAt(j) == None && g.supportAt(j) == None {
		g.f.Connections = append(g.f.Connections, Connection{Joint: j, Kind: Pin, Pieces: [][]int{{at[0]}, {at[1]}}, Main: None})
	}
}

// connect connects the piece that the given members form at joint j to what stands there. A third piece makes a pin of
// any connection.
func (g *generator) connect(j int, kind ConnectionKind, members []int) {
	var piece, rest []int
	for _, m := range g.f.meeting()[j] {
		if slices.Contains(members, m) {
			piece = append(piece, m)
		} else {
			rest = append(rest, m)
		}
	}
	if k := g.connectionAt(j); k != None {
		c := &g.f.Connections[k]
		c.Kind, c.Along, c.Pieces = Pin, Vector{}, append(c.Pieces, piece)
		return
	}
	c := Connection{Joint: j, Kind: kind, Pieces: [][]int{piece, rest}, Main: 1}
	if kind != Pin {
		c.Along = g.direction()
		if g.chance(30) {
			c.Main = 0
		}
	} else if g.chance(50) {
		c.Main = None
	}
	if k := g.supportAt(j); k != None {
		s := &g.f.Supports[k]
		stiff := s.Kind == Fixed || s.Kind == Guide
		if stiff || g.chance(30) {
			s.On = rest[g.pick(0, len(rest)-1)]
		}
	}
	g.f.Connections = append(g.f.Connections, c)
}

// support holds joint j, at which the given members have a piece; where the joint is a connection it holds that piece.
func (g *generator) support(j int, kind SupportKind, members []int) {
	if g.supportAt(j) != None {
		return
	}
	s := Support{Joint: j, Kind: kind, On: None}
	if kind == Roller || kind == Guide {
		s.Along = g.direction()
	}
	if g.connectionAt(j) != None {
		for _, m := range g.f.meeting()[j] {
			if slices.Contains(members, m) {
				s.On = m
			}
		}
	}
	g.f.Supports = append(g.f.Supports, s)
}

// disturb takes away, adds or changes one hold.
func (g *generator) disturb() {
	switch s, c := len(g.f.Supports), len(g.f.Connections); g.weighted(3, 3, 2, 2) {
	case 0:
		if s > 1 {
			k := g.pick(0, s-1)
			g.f.Supports = slices.Delete(g.f.Supports, k, k+1)
		}
	case 1:
		j := g.pick(0, len(g.f.Joints)-1)
		if g.supportAt(j) == None && g.connectionAt(j) == None {
			kind := SupportKind(g.pick(0, 3))
			g.support(j, kind, nil)
		}
	case 2:
		if c > 0 && !g.loadedPin(c-1) {
			g.f.Connections = g.f.Connections[:c-1]
		}
	case 3:
		if s > 0 {
			g.f.Supports[g.pick(0, s-1)].Along = g.direction()
		}
	}
}

// loadedPin reports whether connection k has loads or a support, which would change their meaning without it.
func (g *generator) loadedPin(k int) bool {
	j := g.f.Connections[k].Joint
	for _, l := range g.f.Loads {
		if l.Joint == j {
			return true
		}
	}
	return g.supportAt(j) != None
}
