package worksheet

import (
	"fmt"
	"math/big"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
)

// Inspect is what there is to say about a frame before it is solved: count, verdict, warnings; of a frame that is not
// determinate, which forces equilibrium cannot give and how the frame can move; of a determinate one, how tidy its answers
// are and how long its plan.
func Inspect(p *problems.Problem, s *statics.Solution, o Options) string {
	d := newDocument(p, s, o.ASCII)
	d.title(oneLine(p.Title))
	d.count()
	for _, w := range p.Warnings {
		d.item("Warning    ", w)
	}
	if s.Count.Verdict() != statics.Determinate {
		d.refusal()
		return d.asText(o)
	}
	d.item("Answers    ", d.tidiness())
	d.item("Plan       ", d.planText())
	return d.asText(o)
}

// tidiness tells how the values of the forces look.
func (d *document) tidiness() string {
	var whole, short, long, roots, inexact int
	largest := big.NewInt(1)
	for _, v := range d.Values {
		r, rational := v.Rat()
		switch {
		case v.Inexact():
			inexact++
		case !rational:
			roots++
		case r.IsInt():
			whole++
		case v.Terminates():
			short++
		default:
			long++
		}
		if rational && !v.Inexact() && r.Denom().Cmp(largest) > 0 {
			largest = r.Denom()
		}
	}
	var all []string
	for _, kind := range []struct {
		n    int
		what string
	}{{whole, "whole"}, {short, "decimals that end"}, {long, "fractions that do not end"}, {roots, "with roots"}, {inexact, "resting on an inexact angle"}} {
		if kind.n > 0 {
			all = append(all, fmt.Sprintf("%d %s", kind.n, kind.what))
		}
	}
	text := fmt.Sprintf("%s: %s", counted(len(d.Values), "force"), notation.List(all))
	if largest.IsInt64() && largest.Int64() > 1 {
		text += fmt.Sprintf("; the largest denominator is %v", largest)
	}
	return text
}

// planText tells how long the plan is and where sums must be solved together.
func (d *document) planText() string {
	largest := 0
	for _, step := range d.Plan {
		largest = max(largest, len(step.Sums))
	}
	text := counted(len(d.Plan), "step")
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
