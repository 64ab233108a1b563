package problems

import (
	"fmt"

	"unpin/statics"
)

// pins reads the pins: a list of joints, a table of what is hinged at each, or a list with such tables in it.
func (r *pinReader) pins(n *node) {
	switch {
	case n == nil:
	case n.shape == table:
		r.pinTable(n)
	default:
		for _, item := range n.items {
			r.pinEntry(item)
		}
	}
}

// pinEntry reads an entry of a list of pins: a joint, or a table.
func (r *pinReader) pinEntry(n *node) {
	if !r.shaped(n, "an entry of a list of pins", "pins: [B, {C: [CD]}]", scalar, table) {
		return
	}
	if n.shape == table {
		r.pinTable(n)
		return
	}
	if m, ok := r.members[n.text]; ok {
		end := r.frame().Joints[r.frame().Members[m.member].To].Name
		r.fault(n.at, n.text+" is a member, and a pin is at a joint", fmt.Sprintf("Write the joint, or to hinge %[1]s alone, the joint with it: {%[2]s: [%[1]s]}.", n.text, end))
		return
	}
	if j, ok := r.connection(n, "pin"); ok {
		r.connect(r.allHinged(j))
	}
}

// pinTable reads joints with what is hinged at each.
func (r *pinReader) pinTable(n *node) {
	for _, e := range n.entries {
		if j, ok := r.connection(e.key, "pin"); ok {
			r.pin(e.value, j)
		}
	}
}

// allHinged is a pin on which each member turns by itself.
func (r *pinReader) allHinged(j int) statics.Connection {
	c := statics.Connection{Joint: j, Kind: statics.Pin, Main: statics.None}
	for _, m := range r.meeting[j] {
		c.Pieces = append(c.Pieces, []int{m})
	}
	return c
}

// pin reads what is hinged at joint j: all, or a list of members and of pieces.
func (r *pinReader) pin(n *node, j int) {
	name := r.frame().Joints[j].Name
	if !r.shaped(n, "the pin at "+name, name+": all", list, scalar) {
		return
	}
	if n.shape == scalar {
		if n.text != "all" {
			r.fault(n.at, fmt.Sprintf("%s is not what is hinged at %s", quoted(n.text), name), r.inBrackets(n, name))
			return
		}
		r.connect(r.allHinged(j))
		return
	}
	pieces, ok := r.pieces(n, j)
	if !ok {
		return
	}
	c := r.grouped(j, statics.Pin, pieces)
	if len(c.Pieces) < 2 {
		r.fault(n.at, fmt.Sprintf("all members at %s stay joined, so nothing is hinged", name), fmt.Sprintf("List what is hinged there: %s: [%s].", name, r.frame().Members[r.meeting[j][0]].Name))
		return
	}
	r.connect(c)
}

// inBrackets is what would be right where a single word says what is hinged at the joint of that name.
func (r *pinReader) inBrackets(n *node, name string) string {
	if isMemberName(n.text) || walkName().MatchString(n.text) {
		return fmt.Sprintf("Write it in brackets: %s: [%s].", name, n.text)
	}
	return fmt.Sprintf("Write %s: all, or the members in brackets.", name)
}

// pieces reads a list of members and of pieces at joint j: a walk, or a list within the list, is members that stay joined.
func (r *pinReader) pieces(n *node, j int) ([][]int, bool) {
	good := true
	if len(n.items) == 0 {
		r.fault(n.at, "nothing is listed as hinged", "Write all, or the members that are hinged.")
		return nil, false
	}
	var pieces [][]int
	taken := map[int]bool{}
	for _, item := range n.items {
		if !r.shaped(item, "what is hinged", "C: [CD]", scalar, list) {
			good = false
			continue
		}
		piece := []*node{item}
		if item.shape == list {
			piece = item.items
		}
		members, ok := r.piece(piece, j, taken)
		good = good && ok
		if len(members) > 0 {
			pieces = append(pieces, members)
		}
	}
	return pieces, good
}
