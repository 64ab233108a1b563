package slip

import (
	"slices"
	"sync"

	"unpin/statics"
	"unpin/statics/exact"
)

var componentSlips = []Slip{
	{ID: "sine-for-cosine", Group: Component, About: Size, Needs: Measuring, Source: "GD, TB", find: sineForCosine,
		Says: "The component adjacent to the angle takes the cosine: which component is adjacent to the angle here?"},
	{ID: "sloped-force-whole", Group: Component, About: Size, Needs: Measuring, Source: "TB", find: slopedForceWhole,
		Says: "An inclined force enters by its components, each smaller than the force itself: how large is each component?"},
	{ID: "slope-not-divided", Group: Component, About: Size, Needs: Measuring, Source: "TB", find: slopeNotDivided,
		Says: "Rise and run are divided by the length of the slope before they multiply a force: by which length are rise and run divided?"},
	{ID: "component-left-off", Group: Component, About: Presence, Needs: Choosing, Source: "TB", find: componentLeftOff,
		Says: "An inclined force has two components, and each may have a moment: are both components of the force in the sum?"},
	{ID: "component-turned", Group: Component, About: Sense, Needs: Measuring, Source: "GD", find: componentTurned,
		Says: "Each component of an inclined force has a sense of its own: which way does each component point?"},
	{ID: "degrees-as-radians", Group: Component, About: Size, Needs: Measuring, Source: "GD", find: degreesAsRadians,
		Says: "An angle in degrees needs a calculator that is set to degrees: to degrees or to radians is the calculator set?"},
	{ID: "component-of-unknown", Group: Component, About: Size, Needs: Measuring, Source: "GD", find: componentOfUnknown,
		Says: "The component adjacent to the angle takes the cosine, in the unknown as in a load: what is the unknown multiplied by?"},
	{ID: "share-of-unknown-forgotten", Group: Component, About: Size, Needs: Measuring, Source: "TB", find: shareOfUnknownForgotten,
		Says: "Only the component of the unknown along the sum enters it: what is the unknown multiplied by?"},
}

// sloped lists the terms of known inclined forces: in a moment sum two for each, in a force sum one, inclined to the sum.
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
		if s.isPull(g.first()) { // or of one pull
			for _, pull := range g.grouped(byAction) {
				all = append(all, pull.altered(swap)...)
			}
		}
	}
	for _, g := range s.where(s.wholeAslant).grouped(s.byGiver) {
		x, rope := s.action(g.first()), s.isPull(g.first())
		if !rope { // of which each pull has its own direction
			all = append(all, s.loadRedirected(x.Load, swapped(x.Along))...)
		}
		for _, shape := range g.grouped(byAction) {
			if rope || len(shape.at) < len(g.at) {
				all = append(all, shape.redirected(s.action(shape.first()).Size, swapped(x.Along)))
			}
		}
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
	inclined := s.sloped().filter(func(t statics.Term) bool { return slanting(s.full(t)) && !byAngle(s.full(t)) })
	for _, g := range inclined.grouped(byAction) {
		way := func(t statics.Term) statics.Term { return sized(t, s.full(t).Length()) }
		all = append(all, g.altered(way)...)
		if len(g.at) > 1 && s.oneByOne() {
			all = append(all, g.each(only(way))...)
		}
	}
	return all
}

// byAngle reports whether a direction is given by an angle: there are no rise and run to be divided.
func byAngle(v statics.Vector) bool {
	return v.X.Inexact() || v.Y.Inexact() || v.Length().Equal(exact.Int(1))
}

// radian is one radian in degrees.
var radian = sync.OnceValue(func() exact.Num { return exact.MustParse("57.29577951308232088") })

// degreesAsRadians takes sine and cosine of the number of degrees in radians, for a load at so many whole tenths of a
// degree: an angle from either axis, or the direction counter-clockwise from the x axis, in all components of the force.
func degreesAsRadians(s *setting) []change {
	var all []change
	loads := s.sloped().filter(func(t statics.Term) bool { return isLoad(t) && slanting(s.full(t)) })
	for _, g := range loads.grouped(byAction) {
		v := s.full(g.first())
		acute, ok := degreesOf(v)
		if !ok {
			continue
		}
		direction := turnedInto(v, acute)
		for _, of := range []func(horizontal bool) (size, times exact.Num){
			func(horizontal bool) (exact.Num, exact.Num) { return ratioInRadians(acute, horizontal) },
			func(horizontal bool) (exact.Num, exact.Num) {
				return ratioInRadians(exact.Int(90).Sub(acute), !horizontal)
			},
			func(horizontal bool) (exact.Num, exact.Num) { return ratioInRadians(direction, horizontal) },
		} {
			way := func(t statics.Term) statics.Term {
				true, read := of(s.isHorizontal(t))
				r := over(read, true)
				t.Sign *= r.Sign()
				return sized(t, r.Abs())
			}
			all = append(all, g.altered(way)...)
			if len(g.at) > 1 && s.oneByOne() {
				all = append(all, g.each(only(way))...)
			}
		}
		if !s.sum.Moment && slanting(s.sum.Along) {
			all = append(all, g.misread(v, acute, direction)...)
		}
	}
	return all
}

// misread lets a load act in the directions that come of a calculator set to radians, in a sum along no axis.
func (ts terms) misread(v statics.Vector, acute, direction exact.Num) []change {
	pointing := func(deg exact.Num) statics.Vector {
		return statics.Vector{X: exact.Cos(deg.Mul(radian())), Y: exact.Sin(deg.Mul(radian()))}
	}
	times := func(x exact.Num, sign int) exact.Num { return x.Mul(exact.Int(int64(sign))) }
	flat, steep := pointing(acute), pointing(exact.Int(90).Sub(acute))
	size := ts.in.action(ts.first()).Size
	var all []change
	for _, w := range []statics.Vector{
		pointing(direction),
		{X: times(flat.X, v.X.Sign()), Y: times(flat.Y, v.Y.Sign())},
		{X: times(steep.Y, v.X.Sign()), Y: times(steep.X, v.Y.Sign())},
	} {
		all = append(all, ts.redirected(size, w))
	}
	return all
}

// ratioInRadians is the cosine or sine of an angle in degrees, and what a calculator set to radians makes of it.
func ratioInRadians(deg exact.Num, cosine bool) (right, read exact.Num) {
	if cosine {
		return exact.Cos(deg), exact.Cos(deg.Mul(radian()))
	}
	return exact.Sin(deg), exact.Sin(deg.Mul(radian()))
}

// isHorizontal reports whether a term is about the horizontal component of its force.
func (s *site) isHorizontal(t statics.Term) bool {
	if s.sum.Moment {
		return t.Toward.Y.IsZero()
	}
	return s.sum.Along.Y.IsZero()
}

// degreesOf is the angle of a direction with the x axis, 0 to 90; false where it is not of so many whole tenths of a degree.
func degreesOf(v statics.Vector) (exact.Num, bool) {
	cos := over(v.X.Abs(), v.Length())
	nearest, found := slices.BinarySearchFunc(cosines(), cos, func(of, cos exact.Num) int {
		if off := cos.Sub(of); off.Abs().Cmp(hair()) > 0 {
			return off.Sign() // the cosine falls
		}
		return 0
	})
	return tenths(nearest), found
}

// cosines are those of 0, 0.1, 0.2 … 90 degrees, which take too long to find anew for every force.
var cosines = sync.OnceValue(func() []exact.Num {
	all := make([]exact.Num, 901)
	for n := range all {
		all[n] = exact.Cos(tenths(n))
	}
	return all
})

// hair is closer than two angles of whole tenths of a degree ever are, and further than the error of their cosines.
var hair = sync.OnceValue(func() exact.Num { return exact.MustParse("0.000000000001") })

func tenths(n int) exact.Num { return over(exact.Int(int64(n)), exact.Int(10)) }

// turnedInto is the direction of a force counter-clockwise from the x axis, in degrees, given its angle with that axis.
func turnedInto(v statics.Vector, acute exact.Num) exact.Num {
	switch {
	case v.X.Sign() > 0 && v.Y.Sign() > 0:
		return acute
	case v.X.Sign() < 0 && v.Y.Sign() > 0:
		return exact.Int(180).Sub(acute)
	case v.X.Sign() < 0:
		return exact.Int(180).Add(acute)
	}
	return exact.Int(360).Sub(acute)
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
	return append(all, s.aslantAs(func(v statics.Vector) []statics.Vector {
		return []statics.Vector{{X: v.X}, {Y: v.Y}}
	})...)
}

// aslantAs lets each inclined load that enters whole at a section act along other vectors, given one along it; as one is
// longer or shorter, so is the load.
func (s *setting) aslantAs(vectors func(statics.Vector) []statics.Vector) []change {
	if s.cut == nil {
		return nil
	}
	var all []change
	for _, g := range s.known().filter(s.wholeAslant).grouped(byAction) {
		x := s.action(g.first())
		for _, v := range vectors(x.Along) {
			all = append(all, g.redirected(over(x.Size.Mul(v.Length()), x.Along.Length()), v))
		}
	}
	return all
}

func componentTurned(s *setting) []change {
	all := s.aslantAs(func(v statics.Vector) []statics.Vector {
		return []statics.Vector{{X: v.X, Y: v.Y.Neg()}, {X: v.X.Neg(), Y: v.Y}}
	})
	for _, g := range s.components().grouped(byAction) {
		if len(g.at) > 1 {
			all = append(all, g.each(only(turned))...)
		}
	}
	return all
}

// componentOfUnknown swaps sine and cosine of an inclined unknown, in all its terms or in one, or leaves one of two out.
func componentOfUnknown(s *setting) []change {
	swap := func(t statics.Term) statics.Term {
		cos, sin := s.lies(t)
		return sized(t, over(sin, cos))
	}
	own := s.own().filter(func(t statics.Term) bool { return !isCouple(t) && slanting(s.full(t)) })
	all := own.altered(swap)
	if len(own.at) > 1 {
		all = append(append(all, own.each(only(swap))...), own.each(only(without))...)
	}
	return all
}

// shareOfUnknownForgotten takes an inclined unknown whole, or where the terms are seen one by one one of its components.
func shareOfUnknownForgotten(s *setting) []change {
	if s.sum.Moment && s.oneByOne() {
		return s.own().filter(func(t statics.Term) bool { return t.What == statics.Horizontal || t.What == statics.Vertical }).each(
			only(func(t statics.Term) statics.Term {
				t.Size = one
				return t
			}))
	}
	if s.sum.Moment {
		return nil
	}
	inclined := s.own().filter(func(t statics.Term) bool { return slanting(t.Toward) })
	return inclined.each(only(func(t statics.Term) statics.Term {
		t.Size = one
		return t
	}))
}
