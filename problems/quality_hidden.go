package problems

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A Hiding is a force for which slips lead to the right value, so that nobody would see them.
type Hiding struct {
	Step  int // its place in the plan, from 0
	Force int
	Slips []*slip.Slip
}

// Hidden goes through the plan with every single slip that it allows, as a student may commit it, and returns where the
// numbers hide some, with how many there are in all. A force of zero hides what only stretches it, whatever the numbers
// are; that is not counted.
func (p Solved) Hidden() (hidden []Hiding, all int) {
	p.eachGiven(func(n, force int, q slip.Question) bool {
		h := Hiding{Step: n, Force: force}
		var alike []slip.Candidate
		q.Each(true, func(c slip.Candidate) bool {
			if p.counts(force, c.Slip) {
				if all++; looksRight(c, p.Values[force]) {
					alike = append(alike, c)
				}
			}
			return true
		})
		for _, c := range slip.Sorted(alike) {
			if !slices.Contains(h.Slips, c.Slip) {
				h.Slips = append(h.Slips, c.Slip)
			}
		}
		if len(h.Slips) > 0 {
			hidden = append(hidden, h)
		}
		return true
	})
	return hidden, all
}

// Hides reports whether the numbers hide a slip other than those that may be hidden. It looks no further than it has to.
func (p Solved) Hides(may func(force int, s *slip.Slip) bool) bool {
	hides := false
	p.eachGiven(func(_, force int, q slip.Question) bool {
		q.Each(false, func(c slip.Candidate) bool { // what is reported otherwise is another value
			hides = p.counts(force, c.Slip) && looksRight(c, p.Values[force]) && !may(force, c.Slip)
			return !hides
		})
		return !hides
	})
	return hides
}

// counts reports whether it is asked of a slip whether the numbers hide it for a force.
func (p Solved) counts(force int, s *slip.Slip) bool {
	return !p.Values[force].IsZero() || s.Group != slip.Algebra
}

// eachGiven asks for each force that the plan gives, by its step, until look says no.
func (p Solved) eachGiven(look func(step, force int, q slip.Question) bool) {
	known := make([]bool, len(p.Forces))
	for n, step := range p.Plan {
		for _, force := range step.Gives {
			if !look(n, force, p.question(step, force, known)) {
				return
			}
		}
		for _, force := range step.Gives {
			known[force] = true
		}
	}
}

// visiblyWrong is how far a wrong value lies from the right one, as 1/visiblyWrong of it, for three figures to show it: half
// a unit in the third figure is at most 0.5 %.
var visiblyWrong = exact.Int(200)

// looksRight reports whether the value of a slip may pass for the right one when it is written with three figures. Figures
// exchanged in copying or reporting may lie beyond the third, whatever the numbers of the problem are: that is no matter of
// method, and only the very value counts.
func looksRight(c slip.Candidate, right exact.Num) bool {
	off := c.Value.Sub(right).Abs()
	if off.IsZero() || c.Slip.Needs == slip.Copying || c.Slip.Needs == slip.Reporting {
		return off.IsZero()
	}
	return off.Mul(visiblyWrong).Cmp(right.Abs()) < 0
}

// question is what a step asks for one of the forces it gives.
func (p Solved) question(step statics.Step, force int, known []bool) slip.Question {
	return slip.Question{
		Assembly:  p.Assembly,
		Sums:      step.Sums,
		Gives:     step.Gives,
		Force:     force,
		Values:    p.Values,
		Known:     func(f int) bool { return known[f] },
		Customary: p.Units.Customary(),
	}
}
