package worksheet

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// mostSought is how many members a frame may have for its mistakes to be gone through: their number grows as the square of
// the members, and nobody is taught on a larger one.
const mostSought = 300

// hiddenText tells which slips the numbers of a problem would hide.
func (d inspection) hiddenText() string {
	if len(d.Frame.Members) > mostSought {
		return fmt.Sprintf("not gone through: the frame has more than %d members", mostSought)
	}
	hidden, all := problems.Solved{Problem: d.p, Solution: d.Solution}.Hidden()
	if len(hidden) == 0 {
		return fmt.Sprintf("none of %s gives the right answer", wording.Counted(all, "common mistake"))
	}
	var list []string
	n := 0
	for _, h := range hidden {
		var names []string
		for _, s := range h.Slips {
			names = append(names, s.ID)
		}
		n += len(names)
		list = append(list, fmt.Sprintf("%s for %s at step %d", notation.List(names), d.Forces[h.Force].Name, h.Step+1))
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
