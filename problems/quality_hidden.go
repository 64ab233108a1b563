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
	known := make([]bool, len(p.Forces))
	for n, step := range p.Plan {
		for _, force := range step.Gives {
			h := Hiding{Step: n, Force: force}
			for _, c := range p.slipsAt(step, force, known) {
				if p.Values[force].IsZero() && c.Slip.Group == slip.Algebra {
					continue
				}
				all++
				if looksRight(c, p.Values[force]) && !slices.Contains(h.Slips, c.Slip) {
					h.Slips = append(h.Slips, c.Slip)
				}
			}
			if len(h.Slips) > 0 {
				hidden = append(hidden, h)
			}
		}
		for _, force := range step.Gives {
			known[force] = true
		}
	}
	return hidden, all
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

// slipsAt lists the slips that a step allows for one of the forces it gives.
func (p Solved) slipsAt(step statics.Step, force int, known []bool) []slip.Candidate {
	return slip.Question{
		Assembly:  p.Assembly,
		Sums:      step.Sums,
		Gives:     step.Gives,
		Force:     force,
		Values:    p.Values,
		Known:     func(f int) bool { return known[f] },
		Customary: p.Units.Customary(),
	}.Candidates()
}
