package statics

import "slices"

// ThroughBars lists the pairs of members that a pin of three pieces or more parts although they lie in one line through
// it, one on either side, and each is a piece by itself: likely one bar, meant to pass through.
func (f *Frame) ThroughBars(joint int) [][2]int {
	c, ok := f.connectionAt(joint)
	if !ok || c.Kind != Pin || len(c.Pieces) < 3 {
		return nil
	}
	var pairs [][2]int
	taken := make([]bool, len(c.Pieces))
	for i, piece := range c.Pieces {
		for k := i + 1; k < len(c.Pieces) && !taken[i]; k++ {
			if other := c.Pieces[k]; !taken[k] && len(piece) == 1 && len(other) == 1 && f.opposite(joint, piece[0], other[0]) {
				pairs = append(pairs, [2]int{piece[0], other[0]})
				taken[i], taken[k] = true, true
			}
		}
	}
	return pairs
}

// opposite reports whether two members leave a joint in opposite directions.
func (f *Frame) opposite(joint, a, b int) bool {
	v, w := f.leaving(joint, a), f.leaving(joint, b)
	return v.Cross(w).IsZero() && v.Dot(w).Sign() < 0
}

// leaving is the vector along a member from one of its joints.
func (f *Frame) leaving(joint, member int) Vector {
	if f.Members[member].From == joint {
		return f.Span(member)
	}
	return f.Span(member).Neg()
}

// through is the pin at a joint with its through bars joined.
func (f *Frame) through(joint int) Connection {
	c, _ := f.connectionAt(joint)
	main := None
	if c.Main != None {
		main = c.Pieces[c.Main][0]
	}
	pieces := slices.Clone(c.Pieces)
	for _, pair := range f.ThroughBars(joint) {
		pieces = slices.DeleteFunc(pieces, func(p []int) bool { return p[0] == pair[1] })
		i := slices.IndexFunc(pieces, func(p []int) bool { return p[0] == pair[0] })
		pieces[i] = []int{pair[0], pair[1]}
	}
	c.Pieces = pieces
	if main != None {
		c.Main = slices.IndexFunc(pieces, func(p []int) bool { return slices.Contains(p, main) })
	}
	return c
}
