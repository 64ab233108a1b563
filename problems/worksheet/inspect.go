package worksheet

import (
	"fmt"
	"math/big"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Inspect is what there is to say about a frame before it is solved: count, verdict, warnings; of a frame that is not
// determinate, which forces equilibrium cannot give and how the frame can move; of a determinate one, how tidy its answers
// are, how long its plan, and which slips its numbers would hide.
func Inspect(p *problems.Problem, s *statics.Solution, o Options) string {
	d := inspection{newDocument(p, s, o.ASCII)}
	d.title(oneLine(d.p.Title))
	counting(d).write()
	for _, w := range d.p.Warnings {
		d.item("Warning    ", w)
	}
	if s.Count.Determinacy() != statics.Determinate {
		refusal(d).write()
		return d.asText(o)
	}
	d.item("Answers    ", d.tidiness())
	d.item("Plan       ", d.planText())
	d.item("Mistakes   ", d.hiddenText())
	if arms := d.unitArmText(); arms != "" && !d.p.Units.Letters() {
		d.item("           ", arms)
	}
	return d.asText(o)
}

// inspection says what there is to say of a frame beyond its count.
type inspection struct{ *document }

// valueKinds are the kinds of exact values, in words and for programs.
var valueKinds = [...]struct{ text, name string }{
	{"whole", "whole"},
	{"terminating decimals", "decimals"},
	{"fractions that do not terminate", "fractions"},
	{"with roots", "roots"},
	{"resting on an inexact angle", "inexact"},
}

// A tally is how many values there are of each kind.
type tally struct {
	of          [len(valueKinds)]int
	denominator *big.Int // the largest
}

// tally counts the values of the forces.
func (d inspection) tally() tally {
	t := tally{denominator: big.NewInt(1)}
	for _, v := range d.Values {
		r, rational := v.Rat()
		switch {
		case v.Inexact():
			t.of[4]++
		case !rational:
			t.of[3]++
		case r.IsInt():
			t.of[0]++
		case v.Terminates():
			t.of[1]++
		default:
			t.of[2]++
		}
		if rational && !v.Inexact() && r.Denom().Cmp(t.denominator) > 0 {
			t.denominator = r.Denom()
		}
	}
	return t
}

// tidiness tells how the values of the forces look.
func (d inspection) tidiness() string {
	t := d.tally()
	var all []string
	for i, kind := range valueKinds {
		if t.of[i] > 0 {
			all = append(all, fmt.Sprintf("%d %s", t.of[i], kind.text))
		}
	}
	text := fmt.Sprintf("%s: %s", wording.Counted(len(d.Values), "force"), notation.List(all))
	if t.denominator.IsInt64() && t.denominator.Int64() > 1 {
		text += fmt.Sprintf("; the largest denominator is %v", t.denominator)
	}
	return text
}

// planText tells how long the plan is and where sums must be solved together.
func (d inspection) planText() string {
	largest := 0
	for _, step := range d.Plan {
		largest = max(largest, len(step.Sums))
	}
	text := wording.Counted(len(d.Plan), "step")
	if largest < 2 {
		return text + ", one unknown at a time"
	}
	var where []string
	for n, step := range d.Plan {
		if len(step.Sums) > 1 {
			where = append(where, fmt.Sprintf("%d sums must be solved together at step %d", len(step.Sums), n+1))
		}
	}
	return text + "; " + notation.List(where)
}
