package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

var componentSlips = []Slip{
	{ID: "sine-for-cosine", Group: Component, About: Size, Needs: Measuring, Source: "GD, TB", find: sineForCosine,
		Says: "The component adjacent to the angle takes the cosine: which component is adjacent to the angle here?"},
	{ID: "sloped-force-whole", Group: Component, About: Size, Needs: Measuring, Source: "TB", find: slopedForceWhole,
		Says: "An inclined force enters by its components, each smaller than the force itself: how large is each component?"},
	{ID: "slope-not-divided", Group: Component, About: Size, Needs: Measuring, Source: "TB", find: slopeNotDivided,
		Says: "Rise and run are divided by the length of the slope before they multiply a force: how large is each component?"},
	{ID: "component-left-off", Group: Component, About: Presence, Needs: Choosing, Source: "TB", find: componentLeftOff,
		Says: "An inclined force has two components, and each may have a moment: are both components in the sum?"},
	{ID: "component-turned", Group: Component, About: Sense, Needs: Measuring, Source: "GD", find: componentTurned,
		Says: "Each component of an inclined force has a sense of its own: which way does each component point?"},
	{ID: "degrees-as-radians", Group: Component, About: Size, Needs: Measuring, Source: "GD", find: degreesAsRadians,
		Says: "An angle in degrees needs a calculator that is set to degrees: how large are the components of the force?"},
	{ID: "share-of-unknown-forgotten", Group: Component, About: Size, Needs: Measuring, Source: "TB", find: shareOfUnknownForgotten,
		Says: "Only the component of the unknown along the sum enters it: what is the unknown multiplied by?"},
}

// sloped lists the terms of known inclined forces: in a moment sum two for each, in a force sum one, aslant to the sum.
func (s *setting) sloped() terms {
	return s.known().filter(func(t statics.Term) bool {
		if s.sum.Moment {
			return t.What == statics.Horizontal || t.What == statics.Vertical
		}
		return !t.Toward.Cross(s.sum.Along).IsZero()
	})
}

// sineForCosine swaps the two, in both components of a force or in one; where an inclined load does not come in
// components, its direction.
func sineForCosine(s *setting) []change {
	swap := func(t statics.Term) statics.Term {
		cos, sin := s.lies(t)
		return sized(t, over(sin, cos))
	}
	var all []change
	for _, g := range s.sloped().grouped(s.byGiver) {
		all = append(all, g.altered(swap)...)
		if len(g.at) > 1 {
			all = append(all, g.each(only(swap))...)
		}
	}
	for _, g := range s.where(s.wholeAslant).grouped(s.byGiver) {
		x := s.action(g.first())
		all = append(all, s.loadRedirected(x.Load, swapped(x.Along))...)
	}
	return all
}

// swapped is a direction with its rise and run exchanged, pointing to the same side of both axes.
func swapped(v statics.Vector) statics.Vector {
	w := statics.Vector{X: v.Y.Abs(), Y: v.X.Abs()}
	if v.X.Sign() < 0 {
		w.X = w.X.Neg()
	}
	if v.Y.Sign() < 0 {
		w.Y = w.Y.Neg()
	}
	return w
}

func slopedForceWhole(s *setting) []change {
	return s.sloped().each(only(func(t statics.Term) statics.Term {
		cos, _ := s.lies(t)
		return sized(t, over(one, cos))
	}))
}

func slopeNotDivided(s *setting) []change {
	var all []change
	aslant := s.sloped().filter(func(t statics.Term) bool { return slanting(s.full(t)) })
	for _, g := range aslant.grouped(byAction) {
		all = append(all, g.altered(func(t statics.Term) statics.Term { return sized(t, s.full(t).Length()) })...)
	}
	return all
}

// radian is one radian in degrees.
var radian = exact.MustParse("57.29577951308232088")

// degreesAsRadians takes sine and cosine of the number of degrees in radians, for a load at a multiple of 15°: an angle
// from either axis, in all components of the force.
func degreesAsRadians(s *setting) []change {
	var all []change
	loads := s.sloped().filter(func(t statics.Term) bool { return isLoad(t) && slanting(s.full(t)) })
	for _, g := range loads.grouped(byAction) {
		for _, fromX := range []bool{true, false} {
			all = append(all, g.altered(func(t statics.Term) statics.Term {
				cos, _ := s.lies(t)
				for deg := int64(15); deg < 90; deg += 15 {
					if cos.Equal(exact.Cos(exact.Int(deg))) {
						return s.inRadians(t, deg, fromX)
					}
				}
				return t
			})...)
		}
	}
	return all
}

// components lists the terms of known forces that have two in this sum.
func (s *setting) components() terms {
	return s.known().filter(func(t statics.Term) bool { return t.What == statics.Horizontal || t.What == statics.Vertical })
}

func componentLeftOff(s *setting) []change {
	var all []change
	for _, g := range s.components().grouped(byAction) {
		if len(g.at) > 1 {
			all = append(all, g.each(only(without))...)
		}
	}
	return all
}

func componentTurned(s *setting) []change {
	var all []change
	for _, g := range s.components().grouped(byAction) {
		if len(g.at) > 1 {
			all = append(all, g.each(only(turned))...)
		}
	}
	return all
}

// shareOfUnknownForgotten takes an inclined unknown whole.
func shareOfUnknownForgotten(s *setting) []change {
	if s.sum.Moment {
		return nil
	}
	aslant := s.own().filter(func(t statics.Term) bool { return slanting(t.Toward) })
	return aslant.each(only(func(t statics.Term) statics.Term {
		t.Size = one
		return t
	}))
}
