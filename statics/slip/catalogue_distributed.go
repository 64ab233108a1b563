package slip

import (
	"maps"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

var spreadSlips = []Slip{
	{ID: "intensity-as-force", Group: Spread, About: Size, Needs: Measuring, Source: "GD", find: intensityAsForce,
		Says: "A load per length becomes a force when it is multiplied by the length it covers: how large is the resultant?"},
	{ID: "arm-to-far-end", Group: Spread, About: Arm, Needs: Measuring, Source: "GD, TB", find: armToFarEnd,
		Says: "The resultant of a distributed load acts at the centroid of the load, not at its far end: what is the arm of the resultant?"},
	{ID: "arm-to-near-end", Group: Spread, About: Arm, Needs: Measuring, Source: "GD", find: armToNearEnd,
		Says: "The resultant of a distributed load acts at the centroid of the load, not where the load begins: what is the arm of the resultant?"},
	{ID: "halved-twice", Group: Spread, About: Size, Needs: Measuring, Source: "DV", find: halvedTwice,
		Says: "The resultant of a uniform load is its intensity times its length, with no half: how large is the resultant?"},
	{ID: "triangle-as-rectangle", Group: Spread, About: Size, Needs: Measuring, Source: "TB", find: triangleAsRectangle,
		Says: "A triangle has half the area of the rectangle around it: how large is the resultant?"},
	{ID: "triangle-as-uniform", Group: Spread, About: Size, Needs: Measuring, Source: "TB", find: triangleAsUniform,
		Says: "A triangle has half the area of the rectangle around it, and its centroid nearer to its larger end: how large is the resultant, and where?"},
	{ID: "triangle-at-middle", Group: Spread, About: Arm, Needs: Measuring, Source: "TB, EX", find: triangleAtMiddle,
		Says: "The resultant of a triangular load acts one third of its length from the larger end: what is the arm of the resultant?"},
	{ID: "wrong-third", Group: Spread, About: Arm, Needs: Measuring, Source: "TB", find: wrongThird,
		Says: "The resultant of a triangular load acts nearer to its larger end: on which side of the middle does the resultant act?"},
	{ID: "rectangle-only", Group: Spread, About: Presence, Needs: Choosing, Source: "TB", find: rectangleOnly,
		Says: "A linearly varying load can be split into two simple shapes: are both shapes of the load in the sum?"},
	{ID: "triangle-only", Group: Spread, About: Presence, Needs: Choosing, Source: "TB", find: triangleOnly,
		Says: "A linearly varying load can be split into a rectangle and a triangle: are both shapes of the load in the sum?"},
	{ID: "trapezoid-at-middle", Group: Spread, About: Arm, Needs: Measuring, Source: "TB", find: trapezoidAtMiddle,
		Says: "The triangle in a linearly varying load acts one third of its length from its larger end: where does each shape of the load act?"},
	{ID: "uniform-at-third", InSteps: true, Group: Spread, About: Arm, Needs: Measuring, Source: "DV", find: uniformAtThird,
		Says: "A uniform load is the same all along: where does the resultant act?"},
	{ID: "distance-to-load-forgotten", Group: Spread, About: Arm, Needs: Measuring, Source: "GD", find: distanceToLoadForgotten,
		Says: "The arm of a distributed load starts at the centre, not where the load begins: how far is the load from the centre?"},
	{ID: "spread-counted-twice", Group: Spread, About: Size, Needs: Measuring, Source: "TB", find: spreadCountedTwice,
		Says: "A load counts once in a sum, by its resultant: how many times is each load counted?"},
	{ID: "run-for-slope", Group: Spread, About: Size, Needs: Measuring, Source: "TB", find: runForSlope,
		Says: "An intensity belongs to the length on which it is given, along the slope or in projection: which length belongs to this intensity?"},
	{ID: "square-for-upright", Group: Spread, About: Line, Needs: Measuring, Source: "TB", find: squareForUpright,
		Says: "A load on an inclined member may act perpendicular to the member or along an axis: in which direction does this load act?"},
	{ID: "whole-member-loaded", Group: Spread, About: Size, Needs: Measuring, Source: "DV", find: wholeMemberLoaded,
		Says: "Only the length that a load covers counts: where does the load begin, and where does it end?"},
}

// triangles are the shapes of triangular loads.
var triangles = []statics.ActionShape{statics.RisingRamp, statics.FallingRamp}

// intensityAsForce takes the intensity for the force, per length of the member or as it is given, of a triangle also the
// mean one.
func intensityAsForce(s *setting) []change {
	along := func(x statics.Action) exact.Num { return over(x.Intensity, x.Size).Abs() }
	given := func(x statics.Action) exact.Num {
		if s.Assembly.Frame.Loads[x.Load].Per == statics.PerLength {
			return exact.Num{}
		}
		return over(along(x), s.perLength(x))
	}
	mean := s.shaped(triangles...).scaled(func(x statics.Action) exact.Num { return along(x).Mul(half) })
	return slices.Concat(s.spreads().scaled(along), s.spreads().scaled(given), mean)
}

// perLength is the part of a member's length that an intensity on it is given on: 1, or the ratio of its run or rise.
func (s *setting) perLength(x statics.Action) exact.Num {
	l := s.Assembly.Frame.Loads[x.Load]
	span, length := s.Assembly.Frame.Span(l.Member), s.Assembly.Frame.Length(l.Member)
	switch l.Per {
	case statics.PerRun:
		return over(span.X.Abs(), length)
	case statics.PerRise:
		return over(span.Y.Abs(), length)
	}
	return one
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

// triangleAsUniform takes a triangle for the rectangle around it, in size and in place; in a sum of forces that is another
// slip.
func triangleAsUniform(s *setting) []change {
	if !s.sum.Moment {
		return nil
	}
	return s.shaped(triangles...).byLoad(func(t statics.Term, x statics.Action) statics.Term {
		return movedTo(sized(t, two), s.sum.About, s.along(x, middle(x)))
	})
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

// distanceToLoadForgotten measures the arm from the nearer end of the load, or the place on the member from where the load
// begins.
func distanceToLoadForgotten(s *setting) []change {
	if !s.sum.Moment {
		return nil
	}
	all := s.spreads().shifted(func(t statics.Term, x statics.Action) exact.Num {
		from, _ := s.Assembly.Frame.Reach(x)
		return s.along(x, from).To(t.At).Length().Sub(x.Start.Sub(from))
	})
	return append(all, s.spreads().byWhole(func(t statics.Term, x statics.Action) statics.Term {
		near, _ := s.endsOf(t, x)
		arm := over(s.along(x, near).To(t.At).Cross(t.Toward).Abs(), t.Toward.Length())
		if arm.IsZero() || movedTo(t, s.sum.About, s.along(x, near)).Sign != t.Sign {
			return t
		}
		return armed(t, arm)
	})...)
}

func spreadCountedTwice(s *setting) []change {
	return s.forcesOfLoads(func(statics.Term) bool { return true }).scaled(func(statics.Action) exact.Num { return two })
}

// runForSlope counts an intensity on the length along the member instead of its projection, or the reverse.
func runForSlope(s *setting) []change {
	return s.spreads().scaled(func(x statics.Action) exact.Num {
		if l := s.Assembly.Frame.Loads[x.Load]; l.Per == statics.PerLength {
			return over(s.Assembly.Frame.Span(l.Member).X.Abs(), s.Assembly.Frame.Length(l.Member))
		}
		return over(one, s.perLength(x))
	})
}

// squareForUpright turns a load along an axis, on a sloping member, perpendicular to the member, or the reverse.
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
		from, until := s.Assembly.Frame.Reach(x)
		t = sized(t, over(until.Sub(from), x.End.Sub(x.Start)))
		if s.sum.Moment {
			return movedTo(t, s.sum.About, s.along(x, from.Add(until).Mul(half)))
		}
		return t
	})
}
