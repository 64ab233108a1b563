package worksheet

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Inspect is what there is to say about a frame before it is solved: count, verdict, warnings; of a frame that is not
// determinate, which forces equilibrium cannot give and how the frame can move; of a determinate one, how tidy its answers
// are, how long its plan, and which slips its numbers would hide.
func Inspect(p *problems.Problem, s *statics.Solution, o Options) string {
	return inspected(p, s, o.ASCII).asText(o)
}

// inspected is all that Inspect says, not set in lines yet.
func inspected(p *problems.Problem, s *statics.Solution, ascii bool) inspection {
	d := inspection{newDocument(p, s, ascii)}
	d.title(oneLine(d.p.Title))
	counting(d).write()
	for _, w := range d.p.Warnings {
		d.item("Warning    ", w)
	}
	if s.Count.Determinacy() != statics.Determinate {
		refusal(d).write()
		return d
	}
	d.item("Answers    ", d.tidiness())
	d.item("Grade      ", d.gradeText())
	d.item("Mistakes   ", d.hiddenText())
	for _, text := range d.hiddenMore() {
		d.item("           ", text)
	}
	d.untidy()
	if few := d.fewText(); few != "" {
		d.item("Copies     ", few)
	}
	d.planning()
	return d
}

// inspection says what there is to say of a frame beyond its count.
type inspection struct{ *document }

// valueKinds are the kinds of exact values, in words and for programs.
var valueKinds = [...]struct{ one, more, name string }{
	{"whole", "whole", "whole"},
	{"terminating decimal", "terminating decimals", "decimals"},
	{"fraction that does not terminate", "fractions that do not terminate", "fractions"},
	{"with a root", "with roots", "roots"},
	{"resting on an inexact angle", "resting on an inexact angle", "inexact"},
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
		switch n := t.of[i]; {
		case n == 1:
			all = append(all, "1 "+kind.one)
		case n > 1:
			all = append(all, fmt.Sprintf("%d %s", n, kind.more))
		}
	}
	text := fmt.Sprintf("%s: %s", wording.Counted(len(d.Values), "force"), notation.List(all))
	if t.denominator.IsInt64() && t.denominator.Int64() > 1 {
		text += fmt.Sprintf("; the largest denominator is %v", t.denominator)
	}
	return text
}

// gradeText tells how hard the problem is, and why.
func (d inspection) gradeText() string {
	hard := d.solved().Difficulty()
	text := fmt.Sprintf("about %d of 6", hard.Grade)
	if d.p.Grade != 0 && d.p.Grade != hard.Grade {
		text += fmt.Sprintf(" (the file says %d)", d.p.Grade)
	}
	return text + ": " + strings.Join(hard.Reasons, "; ")
}

// untidy lists where the numbers break a rule.
func (d inspection) untidy() {
	label := "Untidy     "
	left := d.solved().Shortcomings()
	for len(left) > 0 {
		rule, details := left[0].Rule, []string(nil)
		for len(left) > 0 && left[0].Rule.Name == rule.Name {
			if text := d.signs(left[0].Detail); !slices.Contains(details, text) {
				details = append(details, text)
			}
			left = left[1:]
		}
		d.item(label, notation.List(details)+"; better: "+rule.Says+", for "+rule.Why)
		label = "           "
	}
	if label != "Untidy     " {
		d.item(label, d.tidierText())
	}
}

// signs is a detail with its roots as they are printed.
func (d inspection) signs(detail string) string {
	if d.st.ASCII {
		return notation.ASCII(detail)
	}
	return notation.Roots(detail)
}

// tidierText is the smallest change with which the numbers break no rule, or that there is none.
func (d inspection) tidierText() string {
	steps := variant.Tidy(d.solved())
	switch {
	case !variant.Sought(d.solved()):
		return fmt.Sprintf("no smallest change is looked for: the frame has more than %d forces", variant.MostForces)
	case len(steps) == 0:
		text := "no change of one number or two was found that would make it tidy: "
		if why := variant.Endless(d.solved()); why != "" {
			return text + why
		}
		return text + noneFound
	}
	var made []string
	for _, s := range steps {
		made = append(made, madeText(s.Name, s.To))
	}
	return "the smallest change that makes it tidy: " + notation.List(made)
}

// noneFound says what could be changed all the same.
const noneFound = "try other lengths, or larger changes"

// fewText warns where a class would hardly find copies enough; empty where it would.
func (d inspection) fewText() string {
	if !variant.Sought(d.solved()) {
		return ""
	}
	few, why := variant.Few(d.p)
	switch {
	case few != nil:
		return "few for a class: " + why
	case why != "":
		return "none: " + why
	}
	return ""
}

// planning lists the plan, a step a line with what it gives and the skills that it asks for.
func (d inspection) planning() {
	d.section("Plan: " + d.planText())
	for n, step := range d.Plan {
		d.item(fmt.Sprintf("%-4s", fmt.Sprintf("%d.", n+1)), d.stepText(step)+skillText(d.solved().StepSkills(step)))
	}
}

// skillText is skills in brackets.
func skillText(skills []string) string {
	if len(skills) == 0 {
		return ""
	}
	return " (" + strings.Join(skills, ", ") + ")"
}

// stepText is a step in a line: "part AB, ΣM about A: RB".
func (d inspection) stepText(step statics.Step) string {
	var sums, gives []string
	for _, s := range step.Sums {
		sum, _, _ := strings.Cut(d.say.BodyAndSum(s), " (") // without its positive sense
		sums = append(sums, sum)
	}
	for _, f := range step.Gives {
		gives = append(gives, d.Forces[f].Name)
	}
	text := strings.Join(sums, "; ")
	switch {
	case step.Check:
		return text + ": check"
	case len(gives) == 0:
		return text + ": kept for later"
	}
	return text + ": " + notation.List(gives)
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
