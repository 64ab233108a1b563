package problems

import (
	"fmt"
	"slices"

	"unpin/statics"
)

// A Difficulty is how hard a problem is, as far as its plan tells.
type Difficulty struct {
	Grade   int      // 1 (gentle) to 6 (hard)
	Reasons []string // what makes it so, a clause each
}

// A hardship is something that makes a problem harder, with how much that counts. The points are fitted to the grades of the library, which a
// person gave: common practice, no source.
type hardship struct {
	points int
	says   string // for fmt, with the number that it finds
	count  func(Solved) int
}

var hardships = []hardship{
	{1, "%d parts or pins to cut free", func(p Solved) int { return above(p.Bodies(), 2) }},
	{1, "%[1]d of them, so that the order matters", func(p Solved) int { return above(p.Bodies(), 4) }},
	{1, "members in %d directions", severalDirections},
	{1, "inclined members between several parts: %d", inclinedMembers},
	{1, "inclined forces in %d terms", inclinedTerms},
	{1, "free bodies of several parts: %d steps", severalAtOnce},
	{3, "%d sums solved together", solvedTogether},
	{1, "inclined rollers: %d", func(p Solved) int {
		return counted(p.Problem.Frame.Supports, func(s statics.Support) bool { return !s.Along.X.IsZero() && !s.Along.Y.IsZero() })
	}},
	{0, "ropes over pulleys: %d", func(p Solved) int { // said, since it is looked for: the grades of the library bear out no point for it
		return counted(p.Problem.Frame.Loads, func(l statics.Load) bool { return l.Kind == statics.RopeLoad })
	}},
	{1, "slots and sleeves: %d", func(p Solved) int {
		return counted(p.Problem.Frame.Connections, func(c statics.Connection) bool { return c.Kind != statics.Pin })
	}},
}

// Difficulty tells how hard a problem is. Each point of hardship is three quarters of a grade.
func (p Solved) Difficulty() Difficulty {
	d, points := Difficulty{}, 0
	for _, h := range hardships {
		if n := h.count(p); n > 0 {
			points += h.points
			d.Reasons = append(d.Reasons, fmt.Sprintf(h.says, n))
		}
	}
	if len(d.Reasons) == 0 {
		d.Reasons = []string{"one part, one unknown at a time"}
	}
	d.Grade = min(6, 1+(3*points+2)/4)
	return d
}

// above is n where it is at least a limit, else 0.
func above(n, limit int) int {
	if n < limit {
		return 0
	}
	return n
}

func counted[T any](all []T, holds func(T) bool) (n int) {
	for _, x := range all {
		if holds(x) {
			n++
		}
	}
	return n
}

// severalDirections is how many directions members have, where there are several parts and directions.
func severalDirections(p Solved) int {
	var directions []statics.Vector
	for m := range p.Problem.Frame.Members {
		span := p.Problem.Frame.Span(m)
		if !slices.ContainsFunc(directions, func(v statics.Vector) bool { return v.Cross(span).IsZero() }) {
			directions = append(directions, span)
		}
	}
	if p.Bodies() < 2 {
		return 0
	}
	return above(len(directions), 2)
}

func inclinedMembers(p Solved) int {
	if p.Bodies() < 2 {
		return 0
	}
	n := 0
	for m := range p.Problem.Frame.Members {
		if span := p.Problem.Frame.Span(m); !span.X.IsZero() && !span.Y.IsZero() {
			n++
		}
	}
	return n
}

// inclinedTerms is how many terms are of inclined forces, where they are two or more.
func inclinedTerms(p Solved) int {
	n := 0
	for _, step := range p.Plan {
		if step.Check {
			continue
		}
		for _, s := range step.Sums {
			n += counted(s.Terms(), func(t statics.Term) bool {
				return t.Why == statics.Counts && (t.What == statics.Horizontal || t.What == statics.Vertical || t.Force != statics.None && !t.Size.IsInt())
			})
		}
	}
	return above(n, 2)
}

func severalAtOnce(p Solved) int {
	return counted(p.Plan, func(s statics.Step) bool { return !s.Check && len(s.Sums) > 0 && len(s.Sums[0].Body) > 1 })
}

// solvedTogether is the most sums that are solved together.
func solvedTogether(p Solved) int {
	most := 0
	for _, step := range p.Plan {
		most = max(most, len(step.Sums))
	}
	return above(most, 2)
}
