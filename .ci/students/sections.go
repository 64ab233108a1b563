package main

// section is a cut through a member; start tells that the piece with the member's first joint is kept.
type section struct {
	m     *member
	x     float64
	what  string // N, V, M
	start bool
}

// total for a section is N, V or M itself: the sum of the kept piece turned so that it gives the value.
// With e along the member and n turned 90° counter-clockwise: V is the sum along n of the forces on the start side, N minus
// their sum along e, M minus their moment about the cut; from the end side all three change sign.
func (t *task) cut(m *member, x float64, what string, start bool) *equation {
	e := &equation{t: t, parts: map[int]bool{m.part: true}, moment: what == "M", about: m.at(x), turn: 1, section: &section{m, x, what, start}}
	switch what {
	case "N":
		e.along, e.turn = m.u, -1
	case "V":
		e.along = m.u.left()
	case "M":
		e.turn = -1
	}
	if !start {
		e.turn = -e.turn
	}
	e.actOnPiece()
	return e
}

// actOnPiece puts in all that acts on the kept piece.
func (e *equation) actOnPiece() {
	t := e.t
	kept, joints := t.frame.kept(e.section.m, e.section.start)
	for _, u := range t.frame.unknowns {
		if sign := e.inside(u); sign != 0 && joints[u.joint] {
			e.act(u, nil, u.dir.times(sign), u.at, sign, u.couple)
		}
	}
	for _, l := range t.frame.loads {
		for _, sh := range e.onPiece(l, kept) {
			e.act(nil, sh, sh.force, sh.at, sh.couple, sh.shape == "couple")
		}
	}
}

// onPiece gives the shares of a load that act on the kept piece.
func (e *equation) onPiece(l *load, kept map[*member]bool) []*share {
	s := e.section
	switch {
	case kept[l.m]:
		return l.whole()
	case l.m != s.m:
		return nil
	case l.kind == "point" || l.kind == "couple":
		if (l.s < s.x) == s.start {
			return l.whole()
		}
		return nil
	case s.start:
		return l.shares(0, s.x)
	}
	return l.shares(s.x, l.m.length)
}

// kept gives the members that hang on one end of a member within its part, and all joints of that piece.
func (f *frame) kept(m *member, start bool) (map[*member]bool, map[string]bool) {
	members, joints := map[*member]bool{}, map[string]bool{}
	var walk func(joint string)
	walk = func(joint string) {
		if joints[joint] {
			return
		}
		joints[joint] = true
		for _, n := range f.members {
			if n != m && n.part == m.part && (n.a == joint || n.b == joint) {
				members[n] = true
				other := n.a
				if other == joint {
					other = n.b
				}
				walk(other)
			}
		}
	}
	if start {
		walk(m.a)
	} else {
		walk(m.b)
	}
	return members, joints
}
