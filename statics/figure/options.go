package figure

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Options say how a scene is written and what in it is set off.
type Options struct {
	Style notation.Style // the conventions in it turn the sign of V and the side of M

	LitForces, FadedForces []int // indices into Assembly.Forces
	LitLoads, FadedLoads   []int // indices into Frame.Loads
	LitPulls, FadedPulls   []Pull
	LitMembers             []int // indices into Frame.Members: curves
}

// A Pull is one end of a rope that runs over a pulley: an index into Frame.Loads, and 0 or 1 for its two directions.
type Pull struct{ Load, End int }

// pull is how one end of a rope is set off: as the whole rope, unless it is set off by itself.
func (o Options) pull(p Pull) Emphasis {
	switch {
	case slices.Contains(o.LitPulls, p):
		return Lit
	case slices.Contains(o.FadedPulls, p):
		return Faded
	}
	return o.load(p.Load)
}

// Pulls adds the pull of a rope that an action is, if it is one, to a list.
func Pulls(list []Pull, a *statics.Assembly, action int) []Pull {
	if end := a.PullOf(action); end != statics.None {
		return append(list, Pull{a.Actions[action].Load, end})
	}
	return list
}

// emphasis is how item i is set off.
func emphasis(i int, lit, faded []int) Emphasis {
	switch {
	case slices.Contains(lit, i):
		return Lit
	case slices.Contains(faded, i):
		return Faded
	}
	return Plain
}

func (o Options) force(i int) Emphasis { return emphasis(i, o.LitForces, o.FadedForces) }

func (o Options) load(i int) Emphasis { return emphasis(i, o.LitLoads, o.FadedLoads) }

// result is a value that was worked out, with its unit.
func (o Options) result(n exact.Num, d notation.Dimension) string {
	return o.Style.Result(n, d)
}

// given is a number of the problem with its unit.
func (o Options) given(n exact.Num, d notation.Dimension) string {
	return strings.TrimSpace(o.Style.WithUnit(n, d))
}
