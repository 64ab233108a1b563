package worksheet

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics/notation"
	"unpin/statics/slip"
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
	hidden, all := d.hidden()
	if len(hidden) == 0 {
		return fmt.Sprintf("none of %s gives the right answer", wording.Counted(all, "common mistake"))
	}
	var list []string
	n := 0
	for _, h := range hidden {
		var names []string
		for _, s := range h.Slips {
			names = append(names, s.Kind())
		}
		n += len(names)
		list = append(list, fmt.Sprintf("at step %d, for %s: %s", h.Step+1, d.Forces[h.Force].Name, strings.Join(names, ", ")))
	}
	return fmt.Sprintf("%d of %s %s the right answer: %s", n, wording.Counted(all, "common mistake"), map[bool]string{true: "gives", false: "give"}[n == 1], strings.Join(list, "; "))
}

// hidden is what the numbers hide, and nothing of a frame too large for it.
func (d inspection) hidden() ([]problems.Hiding, int) {
	if len(d.Frame.Members) > mostSought {
		return nil, 0
	}
	return d.solved().Hidden()
}

// solved is the problem with its solution.
func (d inspection) solved() problems.Solved {
	return problems.Solved{Problem: d.p, Solution: d.Solution}
}

// hiddenMore are what each hidden slip goes against, and the smallest change with which slips show.
func (d inspection) hiddenMore() []string {
	hidden, _ := d.hidden()
	var all []string
	told := map[string]bool{}
	for _, h := range hidden {
		for _, s := range h.Slips {
			if !told[s.ID] {
				told[s.ID] = true
				all = append(all, s.Kind()+": "+principle(s))
			}
		}
	}
	if len(hidden) == 0 {
		return nil
	}
	if !variant.Sought(d.solved()) {
		return append(all, fmt.Sprintf("no smallest change is looked for: the frame has more than %d forces", variant.MostForces))
	}
	better, ok := variant.Show(d.solved())
	if !ok {
		return append(all, "no change of one number was found that would show more of them: "+noneFound)
	}
	shown := "them all"
	if better.Remain > 0 {
		shown = fmt.Sprintf("%d of them", better.Shown)
	}
	return append(all, fmt.Sprintf("the smallest change that shows %s: %s", shown, madeText(better.Name, better.To)))
}

// principle is what a slip goes against: its sentence up to the question.
func principle(s *slip.Slip) string {
	text, _, _ := strings.Cut(s.Says, ": ")
	return text
}

// madeText says what a number becomes. What is inclined grows or shrinks as a whole, and may be raised or lowered.
func madeText(name, to string) string {
	times, lift, inclined := strings.Cut(to, " times, raised by ")
	if !inclined {
		return name + " becomes " + to
	}
	var all []string
	if times != "1" {
		all = append(all, "becomes "+times+" times as large")
	}
	if down, lowered := strings.CutPrefix(lift, "-"); lowered {
		all = append(all, "is lowered by "+down)
	} else if lift != "0" {
		all = append(all, "is raised by "+lift)
	}
	return name + " " + notation.List(all)
}
