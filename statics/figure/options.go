package figure

import (
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Options say how a scene is written and what in it is set off.
type Options struct {
	Style notation.Style // the conventions in it turn the sign of V and the side of M

	LitForces, FadedForces []int // indices into Assembly.Forces
	LitLoads, FadedLoads   []int // indices into Frame.Loads
	LitMembers             []int // indices into Frame.Members: curves
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
