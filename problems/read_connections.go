package problems

import (
	"fmt"
	"slices"

	"unpin/statics"
)

// A pinReader reads pins, slots and sleeves, and knows them when what holds or loads a joint is read.
type pinReader struct {
	*frameReader
	connected map[int]*node // joints with a pin, slot or sleeve, and where that is written
	pinned    map[int]int   // connection at each joint
}

// connections reads pins, slots and sleeves.
func (r *pinReader) connections(values map[string]*node) {
	r.connected, r.pinned = map[int]*node{}, map[int]int{}
	r.pins(values["pins"])
	r.slides(values["slots"], statics.Slot, "slot")
	r.slides(values["sleeves"], statics.Sleeve, "sleeve")
}

// connection finds the joint that a connection names, at which at least two members end and no other connection is.
func (r *pinReader) connection(n *node, what string) (int, bool) {
	j, ok := r.joint(n)
	if !ok {
		return 0, false
	}
	if earlier := r.connected[j]; earlier != nil {
		r.fault(n.at, fmt.Sprintf("%s has a pin, slot or sleeve already, on line %d", n.text, earlier.at.line), "A joint has one of them: keep one.")
		return 0, false
	}
	r.connected[j] = n
	switch ends := len(r.meeting[j]); {
	case len(r.absent) > 0 || len(r.members) == 0 || ends == 0: // which is told elsewhere
		return j, ends > 1
	case ends < 2:
		r.fault(n.at, fmt.Sprintf("at %s only one member ends, so a %s there joins it to nothing", n.text, what), "Take it out; for a support, write it under supports.")
		return 0, false
	}
	return j, true
}

// connect notes a connection that has been read.
func (r *pinReader) connect(c statics.Connection) {
	r.pinned[c.Joint] = len(r.frame().Connections)
	r.frame().Connections = append(r.frame().Connections, c)
}

// connectionAt is the connection at joint j, or nil.
func (r *pinReader) connectionAt(j int) *statics.Connection {
	if k, ok := r.pinned[j]; ok {
		return &r.frame().Connections[k]
	}
	return nil
}

// grouped is a connection at joint j of the pieces named and of the rest of the members there, which stay joined as the
// main piece. Pieces are in the order of their first members.
func (r *pinReader) grouped(j int, kind statics.ConnectionKind, named [][]int) statics.Connection {
	c := statics.Connection{Joint: j, Kind: kind, Main: statics.None, Pieces: named}
	var rest []int
	for _, m := range r.meeting[j] {
		if !slices.ContainsFunc(named, func(piece []int) bool { return slices.Contains(piece, m) }) {
			rest = append(rest, m)
		}
	}
	if len(rest) > 0 {
		c.Pieces = append(c.Pieces, rest)
	}
	slices.SortFunc(c.Pieces, func(a, b []int) int { return a[0] - b[0] })
	if len(rest) > 0 {
		c.Main = slices.IndexFunc(c.Pieces, func(piece []int) bool { return piece[0] == rest[0] })
	}
	return c
}

// slides reads slots or sleeves.
func (r *pinReader) slides(n *node, kind statics.ConnectionKind, what string) {
	if n == nil {
		return
	}
	for _, e := range n.entries {
		j, ok := r.connection(e.key, what)
		if !r.shaped(e.value, "the "+what+" at "+e.key.text, e.key.text+": {free: [CD], along: CD}", table) {
			continue
		}
		values := r.fields(e.value, "a "+what, slideFields)
		if ok && values["free"] != nil && values["along"] != nil {
			r.slide(values, j, kind, what)
		}
	}
}

// slide reads a slot or sleeve at joint j.
func (r *pinReader) slide(values map[string]*node, j int, kind statics.ConnectionKind, what string) {
	free, along := values["free"], values["along"]
	line, lineOK := r.slideLine(along)
	members, ok := r.piece(free.items, j, map[int]bool{})
	if !ok {
		return
	}
	if len(members) == 0 {
		r.fault(free.at, "nothing is listed as free", "List the members that slide: free: ["+r.frame().Members[r.meeting[j][0]].Name+"].")
		return
	}
	c := r.grouped(j, kind, [][]int{members})
	if c.Main == statics.None {
		r.fault(free.at, fmt.Sprintf("all members at %s are free, so the %s holds on to nothing", r.frame().Joints[j].Name, what), "Leave out at least one of them.")
		return
	}
	c.Along = line
	if lineOK {
		r.connect(c)
	}
}

// slideLine reads the line of sliding: the line of a member, or a direction.
func (r *pinReader) slideLine(n *node) (statics.Vector, bool) {
	if n.shape == scalar && isMemberName(n.text) {
		m, ok := r.member(n)
		if !ok || !r.sure(m) {
			return statics.Vector{}, false
		}
		return r.span(m), true
	}
	d, ok := r.direction(n, "the line of sliding", false)
	return d.vector, ok
}
