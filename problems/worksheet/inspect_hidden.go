package worksheet

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/problems/variant"
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
	hidden, all := d.hidden()
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

// showText is the smallest change with which hidden mistakes show; empty if there is none.
func (d inspection) showText() string {
	better, ok := variant.Show(d.solved())
	if !ok {
		return ""
	}
	text := fmt.Sprintf("%s would show %s", madeText(better.Name, better.To), map[bool]string{true: "them all", false: fmt.Sprintf("%d of them", better.Shown)}[better.Remain == 0])
	return "the smallest change: " + text
}

// madeText says what a number becomes. Lengths that keep their angles are only made larger or smaller.
func madeText(name, to string) string {
	if times, ok := strings.CutSuffix(to, " times, raised by 0"); ok {
		to = times + " times as long"
	}
	return name + " made " + to
}
