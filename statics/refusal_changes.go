package statics

import "slices"

// loosenings lists changes that each take one hold away, where a force is among those that equilibrium cannot give. The
// usual ones come first.
func (s state) loosenings() []Change {
	open := s.Undetermined()
	var by [GuideForFixed + 1][]Change
	add := func(c Change) { by[c.Kind] = append(by[c.Kind], c) }
	for _, sup := range s.Frame.Supports {
		for _, i := range open {
			if f := &s.Forces[i]; f.Kind == Reaction && f.Joint == sup.Joint {
				loosened(sup, f, add)
			}
		}
	}
	parts := make([]bool, s.Bodies())
	for _, i := range open {
		parts[s.Forces[i].On] = true
		if by := s.Forces[i].By; by != None {
			parts[by] = true
		}
	}
	for p := range s.Parts {
		if parts[p] {
			s.hingesIn(p, add)
		}
	}
	return slices.Concat(by[:]...)
}

// loosened adds the changes that take reaction f of a support away.
func loosened(s Support, f *Force, add func(Change)) {
	change := Change{Joint: s.Joint, Member: None}
	switch {
	case s.Kind == Fixed && f.Couple:
		change.Kind = PinForFixed
	case s.Kind == Fixed:
		change.Kind, change.Along = GuideForFixed, f.Along.Left()
	case s.Kind == Pinned:
		change.Kind, change.Along = RollerForPin, f.Along.Left()
	case s.Kind == Guide && f.Couple:
		change.Kind, change.Along = RollerForGuide, s.Along
	case s.Kind == Roller:
		change.Kind = NoRoller
	default:
		return
	}
	if change.Kind != RollerForGuide {
		change.Along = upright(change.Along)
	}
	add(change)
}

// hingesIn adds pins at the joints inside a part where members meet that nothing parts yet.
func (s state) hingesIn(p int, add func(Change)) {
	meeting := map[int][]int{}
	for _, m := range s.Parts[p].Members {
		for _, j := range []int{s.Frame.Members[m].From, s.Frame.Members[m].To} {
			meeting[j] = append(meeting[j], m)
		}
	}
	for _, j := range s.Parts[p].Joints {
		members := meeting[j]
		if len(members) < 2 || slices.ContainsFunc(s.Frame.Connections, func(c Connection) bool { return c.Joint == j }) {
			continue
		}
		if len(members) == 2 {
			add(Change{Kind: HingeAt, Joint: j, Member: None})
			continue
		}
		for _, m := range members {
			add(Change{Kind: HingeAt, Joint: j, Member: m})
		}
	}
}

// tightenings lists changes that each add a hold against a motion, or several in one place. Where much is missing the latter
// come first; a fixed support only if one place is to do for all.
func (s state) tightenings(onePlace bool) []Change {
	var by [FixedAt + 1][]Change
	add := func(c Change) { by[c.Kind] = append(by[c.Kind], c) }
	motions := s.Motions()
	for _, m := range motions {
		g := s.grouped(m)
		for _, sup := range s.Frame.Supports {
			if s.moving(m, sup.Joint) != None {
				tightened(sup, add)
			}
		}
		for _, c := range s.Frame.Connections {
			s.closer(g, c, add)
		}
		s.newSupports(m, add)
	}
	single := slices.Concat(by[:PinAt]...)
	switch {
	case len(motions) == 1:
		return single
	case len(motions) == 2 || !onePlace:
		return slices.Concat(by[ThroughAt], by[PinAt], single)
	}
	return slices.Concat(by[ThroughAt], by[FixedAt], by[PinAt], single)
}

// closer adds the changes of a connection that lets its pieces move less on each other.
func (s state) closer(g *grouping, c Connection, add func(Change)) {
	if pairs := s.Frame.ThroughBars(c.Joint); slices.ContainsFunc(pairs, func(pair [2]int) bool { return g.apart(pair[0], pair[1]) }) {
		add(Change{Kind: ThroughAt, Joint: c.Joint, Member: None})
	}
	if !g.parts(c) {
		return
	}
	add(Change{Kind: RigidAt, Joint: c.Joint, Member: None})
	if c.Kind == Slot {
		add(Change{Kind: PinForSlot, Joint: c.Joint, Member: None})
	}
}

// tightened adds the change that makes a support hold one thing more.
func tightened(s Support, add func(Change)) {
	kinds := map[SupportKind]ChangeKind{Roller: PinForRoller, Pinned: FixedForPin, Guide: FixedForGuide}
	if kind, ok := kinds[s.Kind]; ok {
		add(Change{Kind: kind, Joint: s.Joint, Member: None})
	}
}

// moving is the place in the motion of the body of a member at a joint, or None if none there moves.
func (s state) moving(m Motion, joint int) int {
	return slices.IndexFunc(m, func(b BodyMotion) bool {
		return !s.IsPin(b.Body) && slices.Contains(s.Parts[b.Body].Joints, joint)
	})
}

// parts reports whether two pieces that a connection joins move otherwise than one another.
func (g *grouping) parts(c Connection) bool {
	if len(c.Pieces) != 2 {
		return false
	}
	return g.apart(c.Pieces[0][0], c.Pieces[1][0])
}

// apart reports whether two members move otherwise than one another.
func (g *grouping) apart(a, b int) bool { return g.of[g.PartOf(a)] != g.of[g.PartOf(b)] }

// newSupports adds supports at joints that move and have neither support nor connection: rollers, upright where that holds
// them, and what holds more.
func (s state) newSupports(m Motion, add func(Change)) {
	var level []Change // rollers that do not act upright
	for _, j := range s.lowestFirst() {
		at := s.moving(m, j)
		if at == None || supportAt(s.Frame.Supports, j) != nil ||
			slices.ContainsFunc(s.Frame.Connections, func(c Connection) bool { return c.Joint == j }) {
			continue
		}
		add(Change{Kind: PinAt, Joint: j, Member: None})
		add(Change{Kind: FixedAt, Joint: j, Member: None})
		switch v := m[at].at(s.Frame.Joints[j].At); {
		case !v.Y.IsZero():
			add(Change{Kind: RollerAt, Joint: j, Member: None, Along: north})
		case !v.X.IsZero():
			level = append(level, Change{Kind: RollerAt, Joint: j, Member: None, Along: east})
		}
	}
	for _, c := range level {
		add(c)
	}
}

// lowestFirst lists the joints by height, since frames stand on their feet.
func (s state) lowestFirst() []int {
	order := make([]int, len(s.Frame.Joints))
	for j := range order {
		order[j] = j
	}
	slices.SortStableFunc(order, func(a, b int) int { return s.Frame.Joints[a].At.Y.Cmp(s.Frame.Joints[b].At.Y) })
	return order
}

// turns lists changes that exchange one hold for another: that move the middle one of three hinges out of their line, put
// a pin in place of a sleeve or guide, or turn a roller perpendicular to where it acts.
func (s state) turns() []Change {
	var all []Change
	for _, m := range s.Motions() {
		if c, ok := s.outOfLine(s.Reason(m)); ok {
			all = append(all, c)
		}
	}
	for _, c := range s.Frame.Connections {
		if c.Kind == Sleeve {
			all = append(all, Change{Kind: PinForSleeve, Joint: c.Joint, Member: None})
		}
	}
	open := s.Undetermined()
	for _, sup := range s.Frame.Supports {
		if sup.Kind == Guide {
			all = append(all, Change{Kind: PinForGuide, Joint: sup.Joint, Member: None})
		}
		if sup.Kind == Roller && slices.ContainsFunc(open, func(i int) bool {
			return s.Forces[i].Kind == Reaction && s.Forces[i].Joint == sup.Joint
		}) {
			all = append(all, Change{Kind: TurnedRoller, Joint: sup.Joint, Member: None, Along: upright(sup.Along.Left())})
		}
	}
	return all
}

// outOfLine moves the hinge between two groups a quarter of the distance of the other two out of the line.
func (s state) outOfLine(r Reason) (Change, bool) {
	h := r.Hinges
	if r.Cause != HingesInLine || h[0].Joint == None || h[1].Joint == None || h[2].Joint == None {
		return Change{}, false
	}
	way := h[0].At.To(h[2].At).Left().Times(frac(1, 4))
	return Change{Kind: MovedJoint, Joint: h[1].Joint, Member: None, Along: way}, !way.IsZero()
}

// upright is the direction or its opposite, whichever points up, or if neither does, right.
func upright(v Vector) Vector {
	if v.Y.Sign() < 0 || v.Y.IsZero() && v.X.Sign() < 0 {
		return v.Neg()
	}
	return v
}
