package problems

import (
	"slices"

	"unpin/statics"
	"unpin/statics/wording"
)

// A feature is something a frame or its loads can have.
type feature struct {
	name string
	in   func(Solved) bool
}

// features are those that the library is to show.
var features = []feature{
	{"a fixed support", support(statics.Fixed)},
	{"a pinned support", support(statics.Pinned)},
	{"a guide", support(statics.Guide)},
	{"a roller along an axis", roller(false)},
	{"an inclined roller", roller(true)},
	{"feet at different levels", unevenFeet},
	{"a slot", connection(statics.Slot)},
	{"a sleeve", connection(statics.Sleeve)},
	{"a couple", loadOfKind("couple")},
	{"a uniform load", loadOfKind("uniform")},
	{"a triangular load", triangle},
	{"a trapezoidal load", trapezoid},
	{"a load per run", per("run")},
	{"a load per rise", per("rise")},
	{"a load square to a sloping member", normalLoad},
	{"a spread load that crosses a pin", loadAcrossPin},
	{"a load on a pin itself", loadOnPin},
	{"a load at a pin, given to one part", loadBesidePin},
	{"three parts at one pin", threeAtPin},
	{"a straight two-force member", twoForce(false)},
	{"a bent two-force member", twoForce(true)},
	{"a part that no support holds, between two pins, loaded", suspendedSpan},
	{"a beam with two pins", compoundBeam},
	{"bars that cross at a pin", crossingBars},
	{"a rope over a pulley", anyLoadOf(func(l statics.Load) bool { return l.Kind == statics.RopeLoad })},
	{"a pulley with its radius given", anyLoadOf(func(l statics.Load) bool { return l.Kind == statics.RopeLoad && l.Radius.Sign() > 0 })},
	{"letters for units", letters},
	{"sums that must be solved together", together},
	{"numbers that variants may change", func(p Solved) bool { return len(p.Vary) > 0 }},
}

// skillFeatures is what a frame must have to exercise a skill, where that can be seen in it.
var skillFeatures = map[string]func(Solved) bool{
	"pin-support":           support(statics.Pinned),
	"roller-support":        func(p Solved) bool { return roller(false)(p) || roller(true)(p) },
	"fixed-support":         support(statics.Fixed),
	"pick-body":             severalParts,
	"pin-pair":              severalParts,
	"load-at-pin":           func(p Solved) bool { return loadOnPin(p) || loadBesidePin(p) },
	"two-force-member":      func(p Solved) bool { return twoForce(false)(p) || twoForce(true)(p) },
	"inclined-force-moment": slopingForce,
	"components":            func(p Solved) bool { return slopingForce(p) || slopingMember(p) },
	"couple-in-sum":         loadOfKind("couple"),
	"uniform-resultant":     loadOfKind("uniform"),
	"triangle-resultant":    triangle,
	"trapezoid-resultant":   trapezoid,
	"load-across-pin":       loadAcrossPin,
	"corner-forces":         corner,
	"extreme-moment":        interiorPeak,
	"units-figures":         func(p Solved) bool { return p.Units.String() != "kN m" && p.Units.String() != "kip ft" },
}

func support(kind statics.SupportKind) func(Solved) bool {
	return func(p Solved) bool {
		return slices.ContainsFunc(p.Problem.Frame.Supports, func(s statics.Support) bool { return s.Kind == kind })
	}
}

func roller(inclined bool) func(Solved) bool {
	return func(p Solved) bool {
		return slices.ContainsFunc(p.Problem.Frame.Supports, func(s statics.Support) bool {
			return s.Kind == statics.Roller && inclined != (s.Along.X.IsZero() || s.Along.Y.IsZero())
		})
	}
}

func unevenFeet(p Solved) bool {
	f := p.Problem.Frame
	first := f.Joints[f.Supports[0].Joint].At.Y
	return slices.ContainsFunc(f.Supports, func(s statics.Support) bool { return !f.Joints[s.Joint].At.Y.Equal(first) })
}

func connection(kind statics.ConnectionKind) func(Solved) bool {
	return func(p Solved) bool {
		return slices.ContainsFunc(p.Problem.Frame.Connections, func(c statics.Connection) bool { return c.Kind == kind })
	}
}

func severalParts(p Solved) bool { return len(p.Parts) > 1 }

func threeAtPin(p Solved) bool {
	return slices.ContainsFunc(p.Problem.Frame.Connections, func(c statics.Connection) bool { return len(c.Pieces) > 2 })
}

func crossingBars(p Solved) bool {
	return slices.ContainsFunc(p.Problem.Frame.Connections, func(c statics.Connection) bool {
		return len(c.Pieces) == 2 && len(c.Pieces[0]) == 2 && len(c.Pieces[1]) == 2
	})
}

func loadOfKind(kind string) func(Solved) bool {
	return func(p Solved) bool {
		return slices.ContainsFunc(p.Entries, func(e wording.Entry) bool { return e.Kind == kind })
	}
}

func per(base string) func(Solved) bool {
	return func(p Solved) bool {
		return slices.ContainsFunc(p.Entries, func(e wording.Entry) bool { return e.Per == base })
	}
}

func letters(p Solved) bool { return p.Units.String() == "P L" }

func together(p Solved) bool {
	return slices.ContainsFunc(p.Plan, func(s statics.Step) bool { return len(s.Sums) > 1 })
}

// interiorPeak reports whether a moment has its peak where no load stands and no member ends.
func interiorPeak(p Solved) bool {
	return slices.ContainsFunc(p.Diagrams, func(d statics.Diagram) bool {
		return slices.ContainsFunc(d.Stations(), func(s statics.Station) bool { return s.Found && s.Extreme })
	})
}
