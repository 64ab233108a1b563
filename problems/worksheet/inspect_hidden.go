package worksheet

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// A hiding is a force for which slips lead to the right value, so that nobody would see them.
type hiding struct {
	step  int
	force int
	slips []*slip.Slip
}

// hidings goes through the plan with every single slip that it allows, as a student may commit it, and returns where the
// numbers hide some, with how many there are in all. A force of zero hides what only stretches it, whatever the numbers
// are; that is not counted.
func (d inspection) hidings() (hidden []hiding, all int) {
	known := make([]bool, len(d.Forces))
	for n, step := range d.Plan {
		for _, force := range step.Gives {
			h := hiding{step: n + 1, force: force}
			for _, c := range d.slipsAt(step, force, known) {
				if d.Values[force].IsZero() && c.Slip.Group == slip.Algebra {
					continue
				}
				all++
				if c.Value.Equal(d.Values[force]) && !slices.Contains(h.slips, c.Slip) {
					h.slips = append(h.slips, c.Slip)
				}
			}
			if len(h.slips) > 0 {
				hidden = append(hidden, h)
			}
		}
		for _, force := range step.Gives {
			known[force] = true
		}
	}
	return hidden, all
}

func (d inspection) slipsAt(step statics.Step, force int, known []bool) []slip.Candidate {
	return slip.Question{
		Assembly:  d.Assembly,
		Sums:      step.Sums,
		Gives:     step.Gives,
		Force:     force,
		Values:    d.Values,
		Known:     func(f int) bool { return known[f] },
		Customary: d.p.Units.Customary(),
	}.Candidates()
}

// hiddenText tells which slips the numbers of a problem would hide.
func (d inspection) hiddenText() string {
	hidden, all := d.hidings()
	if len(hidden) == 0 {
		return fmt.Sprintf("none of %s gives the right answer", wording.Counted(all, "common mistake"))
	}
	var list []string
	n := 0
	for _, h := range hidden {
		var names []string
		for _, s := range h.slips {
			names = append(names, s.ID)
		}
		n += len(names)
		list = append(list, fmt.Sprintf("%s for %s at step %d", notation.List(names), d.Forces[h.force].Name, h.step))
	}
	return fmt.Sprintf("%d of %s %s the right answer: %s", n, wording.Counted(all, "common mistake"), map[bool]string{true: "gives", false: "give"}[n == 1], strings.Join(list, "; "))
}

// unitArmText tells in which steps an arm is 1, so that who forgets it loses nothing; empty if in none.
func (d inspection) unitArmText() string {
	var steps []string
	for n, step := range d.Plan {
		if slices.ContainsFunc(step.Sums, hasUnitArm) {
			steps = append(steps, fmt.Sprint(n+1))
		}
	}
	if len(steps) == 0 {
		return ""
	}
	s := ""
	if len(steps) > 1 {
		s = "s"
	}
	return fmt.Sprintf("an arm of 1, which can be left out unnoticed, at step%s %s", s, notation.List(steps))
}

func hasUnitArm(s statics.Sum) bool {
	return s.Moment && slices.ContainsFunc(s.Terms, func(t statics.Term) bool {
		return t.Sign != 0 && t.What != statics.TurnOnly && t.Arm.Equal(exact.Int(1))
	})
}
