package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

var componentSlips = []Slip{
	{ID: "sine-for-cosine", Group: Component, About: Size, Source: "GD, IN", find: sineForCosine,
		Says: "The component beside the angle takes the cosine, so which side of the slope does each component go with?"},
	{ID: "sloped-force-whole", Group: Component, About: Size, Source: "TB", find: slopedForceWhole,
		Says: "Of a force aslant only its component along the direction goes in, so what is that component?"},
	{ID: "slope-not-divided", Group: Component, About: Size, Source: "TB", find: slopeNotDivided,
		Says: "Rise and run are divided by the length of the slope before they multiply a force, so what are its components?"},
	{ID: "component-left-off", Group: Component, About: Presence, Source: "IN", find: componentLeftOff,
		Says: "A force aslant has two components and each may turn the body, so are both components in the sum?"},
	{ID: "component-turned", Group: Component, About: Sense, Source: "GD", find: componentTurned,
		Says: "Each component of a force aslant has a sense of its own, so which way does each of them point?"},
	{ID: "degrees-as-radians", Group: Component, About: Size, Source: "GD", find: degreesAsRadians,
		Says: "The sine or cosine of an angle in degrees wants a calculator that is set to degrees, so what are the force's components?"},
	{ID: "share-of-unknown-forgotten", Group: Component, About: Size, Source: "TB", find: shareOfUnknownForgotten,
		Says: "Only the share of an unknown along the sum enters it, so what is the unknown multiplied by?"},
}

// sloped lists the terms of known forces aslant: in a moment sum two for each, in a force sum one, aslant to the sum.
func (s *scene) sloped() []int {
	return s.filter(s.known(), func(t statics.Term) bool {
		if s.sum.Moment {
			return t.What == statics.Horizontal || t.What == statics.Vertical
		}
		return !t.Toward.Cross(s.sum.Along).IsZero()
	})
}

// full is a force aslant that a term is a component of, as a direction.
func (s *scene) full(t statics.Term) statics.Vector {
	if isLoad(t) {
		return s.action(t).Along
	}
	return s.Assembly.Forces[t.Force].Along
}

// lies is a direction's share of its own length along the sum, or along the component: its cosine, and its sine.
func (s *scene) lies(t statics.Term) (cos, sin exact.Num) {
	v := s.full(t)
	base := s.sum.Along
	if s.sum.Moment {
		base = t.Toward
	}
	length := v.Length().Mul(base.Length())
	return over(v.Dot(base).Abs(), length), over(v.Cross(base).Abs(), length)
}

// sineForCosine swaps the two, in both components of a force or in one; where a load aslant does not come in
// components, its direction.
func sineForCosine(s *scene) []change {
	swap := func(t statics.Term) statics.Term {
		cos, sin := s.lies(t)
		return sized(t, over(sin, cos))
	}
	var all []change
	for _, g := range s.grouped(s.sloped(), s.byGiver) {
		all = append(all, s.altered(g, swap)...)
		if len(g) > 1 {
			all = append(all, s.each(g, only(swap))...)
		}
	}
	for _, g := range s.grouped(s.where(s.wholeAslant), s.byGiver) {
		x := s.action(s.sum.Terms[g[0]])
		all = append(all, s.loadRedirected(x.Load, swapped(x.Along))...)
	}
	return all
}

// wholeAslant reports whether a term is a load aslant to the axes that does not come in components.
func (s *scene) wholeAslant(t statics.Term) bool {
	return isLoad(t) && t.What == statics.WholeForce && slanting(s.action(t).Along) && (s.sum.Moment || slanting(s.sum.Along))
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

func slopedForceWhole(s *scene) []change {
	return s.each(s.sloped(), only(func(t statics.Term) statics.Term {
		cos, _ := s.lies(t)
		return sized(t, over(one, cos))
	}))
}

func slopeNotDivided(s *scene) []change {
	var all []change
	aslant := s.filter(s.sloped(), func(t statics.Term) bool { return slanting(s.full(t)) })
	for _, g := range s.grouped(aslant, byAction) {
		all = append(all, s.altered(g, func(t statics.Term) statics.Term { return sized(t, s.full(t).Length()) })...)
	}
	return all
}

// radian is one radian in degrees.
var radian = exact.MustParse("57.29577951308232088")

// degreesAsRadians takes sine and cosine of the number of degrees in radians, for a load at a multiple of 15°: an angle
// from either axis, in all components of the force.
func degreesAsRadians(s *scene) []change {
	var all []change
	loads := s.filter(s.sloped(), func(t statics.Term) bool { return isLoad(t) && slanting(s.full(t)) })
	for _, g := range s.grouped(loads, byAction) {
		for _, fromX := range []bool{true, false} {
			all = append(all, s.altered(g, func(t statics.Term) statics.Term {
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

// inRadians is a term that lies at an angle to its force, which is measured from the x axis or from the y axis.
func (s *scene) inRadians(t statics.Term, deg int64, fromX bool) statics.Term {
	base := s.sum.Along
	if s.sum.Moment {
		base = t.Toward
	}
	share := exact.Cos(exact.Int(deg).Mul(radian))
	if base.Y.IsZero() != fromX {
		share = exact.Sin(exact.Int(90 - deg).Mul(radian))
	}
	t.Sign *= share.Sign()
	return sized(t, over(share.Abs(), exact.Cos(exact.Int(deg))))
}

// components lists the terms of known forces that have two in this sum.
func (s *scene) components() []int {
	return s.filter(s.known(), func(t statics.Term) bool { return t.What == statics.Horizontal || t.What == statics.Vertical })
}

func componentLeftOff(s *scene) []change {
	var all []change
	for _, g := range s.grouped(s.components(), byAction) {
		if len(g) > 1 {
			all = append(all, s.each(g, only(without))...)
		}
	}
	return all
}

func componentTurned(s *scene) []change {
	var all []change
	for _, g := range s.grouped(s.components(), byAction) {
		if len(g) > 1 {
			all = append(all, s.each(g, only(turned))...)
		}
	}
	return all
}

// shareOfUnknownForgotten takes an unknown aslant whole.
func shareOfUnknownForgotten(s *scene) []change {
	if s.sum.Moment {
		return nil
	}
	aslant := s.filter(s.own(), func(t statics.Term) bool { return slanting(t.Toward) })
	return s.each(aslant, only(func(t statics.Term) statics.Term {
		t.Size = one
		return t
	}))
}
