package slip

import (
	"maps"

	"unpin/statics"
	"unpin/statics/exact"
)

var spreadSlips = []Slip{
	{ID: "intensity-as-force", Group: Spread, About: Size, Source: "GD", find: intensityAsForce,
		Says: "A load per length becomes a force only when multiplied by the length it covers, so what is its resultant?"},
	{ID: "arm-to-far-end", Group: Spread, About: Arm, Source: "GD, TB", find: armToFarEnd,
		Says: "The resultant of a spread load acts at the centroid of its diagram, not at its far end, so what is its arm?"},
	{ID: "arm-to-near-end", Group: Spread, About: Arm, Source: "GD", find: armToNearEnd,
		Says: "The arm of a spread load runs to its centroid and not to where the load begins, so to where is it measured?"},
	{ID: "halved-twice", Group: Spread, About: Size, Source: "DV", find: halvedTwice,
		Says: "The half of a uniform load belongs to its arm only, so what is its whole resultant?"},
	{ID: "triangle-as-rectangle", Group: Spread, About: Size, Source: "TB", find: triangleAsRectangle,
		Says: "A triangle holds half of the rectangle around it, so what is its resultant?"},
	{ID: "triangle-at-middle", Group: Spread, About: Arm, Source: "TB, EX", find: triangleAtMiddle,
		Says: "The resultant of a triangle lies at a third of its length from the tall end, so what is its arm?"},
	{ID: "wrong-third", Group: Spread, About: Arm, Source: "TB", find: wrongThird,
		Says: "The resultant of a triangle lies nearer to the tall end, so on which side of its middle does it act?"},
	{ID: "rectangle-only", Group: Spread, About: Presence, Source: "TB", find: rectangleOnly,
		Says: "A trapezoid is a rectangle and a triangle together, so which shape is still to be put in?"},
	{ID: "triangle-only", Group: Spread, About: Presence, Source: "TB", find: triangleOnly,
		Says: "A trapezoid is a triangle on top of a rectangle, so which shape is still to be put in?"},
	{ID: "trapezoid-at-middle", Group: Spread, About: Arm, Source: "TB", find: trapezoidAtMiddle,
		Says: "With one end heavier the resultant moves toward that end, so where do the rectangle and the triangle each act?"},
	{ID: "uniform-at-third", Group: Spread, About: Arm, Source: "DV", find: uniformAtThird,
		Says: "A uniform load is the same all along, so where does its resultant act?"},
	{ID: "distance-to-load-forgotten", Group: Spread, About: Arm, Source: "GD", find: distanceToLoadForgotten,
		Says: "The arm of a spread load starts at the centre and not where the load begins, so what distance lies between the centre and the load?"},
	{ID: "spread-counted-twice", Group: Spread, About: Size, Source: "TB", find: spreadCountedTwice,
		Says: "Once a spread load is replaced by its resultant it is gone, so how often is it in the sum?"},
	{ID: "run-for-slope", Group: Spread, About: Size, Source: "TB", find: runForSlope,
		Says: "An intensity goes with the length it is given on, along the slope or in plan, so which length belongs to this intensity?"},
	{ID: "square-for-upright", Group: Spread, About: Sense, Source: "TB", find: squareForUpright,
		Says: "The arrowheads tell whether a load stands square to the member or along an axis, so which way does this load act?"},
	{ID: "whole-member-loaded", Group: Spread, About: Size, Source: "DV", find: wholeMemberLoaded,
		Says: "Only the stretch that a load covers counts, so from where to where does the load run?"},
}

// triangles are the shapes of triangular loads.
var triangles = []statics.ActionShape{statics.RisingRamp, statics.FallingRamp}

func intensityAsForce(s *setting) []change {
	return s.spreads().scaled(func(x statics.Action) exact.Num { return over(x.Intensity, x.Size).Abs() })
}

func armToFarEnd(s *setting) []change {
	return s.spreads().shifted(func(t statics.Term, x statics.Action) exact.Num {
		_, far := s.endsOf(t, x)
		return far
	})
}

func armToNearEnd(s *setting) []change {
	return s.spreads().shifted(func(t statics.Term, x statics.Action) exact.Num {
		near, _ := s.endsOf(t, x)
		return near
	})
}

func halvedTwice(s *setting) []change {
	return s.shaped(statics.Uniform).scaled(func(statics.Action) exact.Num { return half })
}

func triangleAsRectangle(s *setting) []change {
	return s.shaped(triangles...).scaled(func(statics.Action) exact.Num { return two })
}

func triangleAtMiddle(s *setting) []change {
	return s.shaped(triangles...).filter(s.pure).shifted(func(_ statics.Term, x statics.Action) exact.Num { return middle(x) })
}

func trapezoidAtMiddle(s *setting) []change {
	return s.shaped(triangles...).filter(s.mixed).shifted(func(_ statics.Term, x statics.Action) exact.Num { return middle(x) })
}

func wrongThird(s *setting) []change {
	return s.shaped(triangles...).shifted(func(_ statics.Term, x statics.Action) exact.Num {
		third := over(x.End.Sub(x.Start), exact.Int(3))
		if x.Shape == statics.RisingRamp {
			return x.Start.Add(third)
		}
		return x.End.Sub(third)
	})
}

func rectangleOnly(s *setting) []change {
	return s.shaped(triangles...).filter(s.mixed).grouped(byAction).leftOut()
}

func triangleOnly(s *setting) []change {
	return s.shaped(statics.Uniform).filter(s.mixed).grouped(byAction).leftOut()
}

func uniformAtThird(s *setting) []change {
	var all []change
	for _, share := range []exact.Num{over(one, exact.Int(3)), over(two, exact.Int(3))} {
		all = append(all, s.shaped(statics.Uniform).shifted(func(_ statics.Term, x statics.Action) exact.Num {
			return x.Start.Add(x.End.Sub(x.Start).Mul(share))
		})...)
	}
	return all
}

// distanceToLoadForgotten measures the arm from the nearer end of the load.
func distanceToLoadForgotten(s *setting) []change {
	if !s.sum.Moment {
		return nil
	}
	return s.spreads().byLoad(func(t statics.Term, x statics.Action) statics.Term {
		near, _ := s.endsOf(t, x)
		arm := over(s.along(x, near).To(t.At).Cross(t.Toward).Abs(), t.Toward.Length())
		if arm.IsZero() || movedTo(t, s.sum.About, s.along(x, near)).Sign != t.Sign {
			return t
		}
		return armed(t, arm)
	})
}

func spreadCountedTwice(s *setting) []change {
	return s.shaped(statics.Uniform).scaled(func(statics.Action) exact.Num { return two })
}

// runForSlope counts an intensity on the length along the member instead of its projection, or the reverse.
func runForSlope(s *setting) []change {
	return s.spreads().scaled(func(x statics.Action) exact.Num {
		l := s.Assembly.Frame.Loads[x.Load]
		span, length := s.Assembly.Frame.Span(l.Member), s.Assembly.Frame.Length(l.Member)
		switch l.Per {
		case statics.PerRun:
			return over(length, span.X.Abs())
		case statics.PerRise:
			return over(length, span.Y.Abs())
		}
		return over(span.X.Abs(), length)
	})
}

// squareForUpright turns a load along an axis, on a sloping member, square to the member, or the reverse.
func squareForUpright(s *setting) []change {
	var all []change
	for i, l := range s.Assembly.Frame.Loads {
		if l.Kind != statics.SpreadLoad || !slanting(s.Assembly.Frame.Span(l.Member)) {
			continue
		}
		if v := uprightOrSquare(l.Along, s.Assembly.Frame.Span(l.Member).Left()); !v.IsZero() {
			all = append(all, s.loadRedirected(i, v)...)
		}
	}
	return all
}

// uprightOrSquare is along turned onto the line square, if it is vertical, or upright, if it lies along that line.
func uprightOrSquare(along, square statics.Vector) statics.Vector {
	switch {
	case along.X.IsZero() && along.Dot(square).Sign() < 0:
		return square.Neg()
	case along.X.IsZero():
		return square
	case along.Cross(square).IsZero():
		return statics.Vector{Y: along.Y}
	}
	return statics.Vector{}
}

// loadRedirected lets all shapes of a load act along another line.
func (s *setting) loadRedirected(load int, along statics.Vector) []change {
	c := change{giver: Giver{statics.None, load}, terms: map[int]statics.Term{}}
	for _, g := range s.where(func(t statics.Term) bool { return isLoad(t) && s.action(t).Load == load }).grouped(byAction) {
		size, v := s.action(g.first()).Size, along
		if size.Sign() < 0 {
			size, v = size.Neg(), along.Neg()
		}
		one := g.redirected(size, v)
		maps.Copy(c.terms, one.terms)
		c.stray = append(c.stray, one.stray...)
	}
	if len(c.terms) == 0 {
		return nil
	}
	return []change{c}
}

// wholeMemberLoaded lets a uniform load run over the whole of its member.
func wholeMemberLoaded(s *setting) []change {
	return s.shaped(statics.Uniform).byLoad(func(t statics.Term, x statics.Action) statics.Term {
		length := s.Assembly.Frame.Length(s.Assembly.Frame.Loads[x.Load].Member)
		t = sized(t, over(length, x.End.Sub(x.Start)))
		if s.sum.Moment {
			return movedTo(t, s.sum.About, s.along(x, length.Mul(half)))
		}
		return t
	})
}
