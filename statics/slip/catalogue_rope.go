package slip

import "unpin/statics"

var ropeSlips = []Slip{
	{ID: "rope-counted-once", Group: Connection, About: Presence, Needs: Choosing, Source: "TB", find: ropeCountedOnce,
		Says: "A rope pulls on its pulley with both of its ends: which pulls of the rope act on this body?"},
	{ID: "radius-in-one-arm", Group: Connection, About: Arm, Needs: Measuring, Source: "TB", find: radiusInOneArm,
		Says: "With the pulley kept on, each pull acts at its rim, and with the pulley taken off, both act at its joint: where does each arm end?"},
	{ID: "tension-halved", Group: Connection, About: Size, Needs: Measuring, Source: "DV", find: tensionHalved,
		Says: "The tension of a rope is the same on both sides of a pulley, and each side pulls with all of it: how large is each pull?"},
}

// isPull reports whether a term is of a pull of a rope.
func (s *site) isPull(t statics.Term) bool { return isLoad(t) && s.load(t).Kind == statics.RopeLoad }

// pulls lists the known terms of ropes, rope by rope.
func pulls(s *setting) groups { return s.known().filter(s.isPull).grouped(s.byGiver) }

// ropeCountedOnce leaves out one of the pulls of a rope. One that has a moment by the radius alone is left to
// radius-in-one-arm.
func ropeCountedOnce(s *setting) []change {
	var all []change
	for _, rope := range pulls(s) {
		for _, pull := range rope.grouped(byAction) {
			if t := pull.first(); !s.sum.Moment || s.load(t).Radius.IsZero() || !movedTo(wholePull(&s.site, t), s.sum.About, s.hub(t)).Arm.IsZero() {
				all = append(all, groups{pull}.leftOut()...)
			}
		}
	}
	return all
}

// hub is where the pulley stands over which the rope of a term runs.
func (s *site) hub(t statics.Term) statics.Point { return s.at(s.load(t).Joint) }

// wholePull is a term of a pull with the direction of the whole of it.
func wholePull(s *site, t statics.Term) statics.Term {
	t.Toward = s.action(t).Along
	return t
}

// radiusInOneArm lets one pull act at the joint of its pulley, or on the other side of it, and the other one on the rim.
func radiusInOneArm(s *setting) []change {
	if !s.sum.Moment {
		return nil
	}
	var all []change
	for _, rope := range pulls(s) {
		for _, pull := range rope.grouped(byAction) {
			hub := s.hub(pull.first())
			across := hub.Plus(pull.first().At.To(hub))
			for _, p := range []statics.Point{hub, across} {
				all = append(all, pull.altered(func(t statics.Term) statics.Term {
					if moved := movedTo(t, s.sum.About, p); moved.Sign*t.Sign >= 0 {
						return moved
					}
					return t // on the other side of the centre it would turn the other way, which is another slip
				})...)
			}
		}
	}
	return all
}

// tensionHalved takes half of the tension for each pull.
func tensionHalved(s *setting) []change {
	var all []change
	for _, rope := range pulls(s) {
		all = append(all, rope.altered(func(t statics.Term) statics.Term { return sized(t, half) })...)
	}
	return all
}

// otherThanOnePull keeps of loads that are left out those that have no other name: of a rope with one pull in the sum leaving it out is
// counting the rope once.
func (gs groups) otherThanOnePull() groups {
	var all groups
	for _, g := range gs {
		if !g.in.isPull(g.first()) || len(g.grouped(byAction)) > 1 {
			all = append(all, g)
		}
	}
	return all
}
