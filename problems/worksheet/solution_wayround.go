package worksheet

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// wayRound writes how an expert avoids solving two sums together, after the step that does.
func (w working) wayRound(round *statics.Split, gives []int, known []bool) {
	plan := w.of
	w = w.with(&statics.Solution{Assembly: round.Assembly, Values: round.Values})
	along, upward := w.of.Forces[round.Along], w.of.Forces[round.Upward]
	joint := w.Frame.Joints[along.Joint].Name
	own := plan.Forces[round.Along].Name + " and " + plan.Forces[round.Upward].Name
	toward := w.say.Place(round.Toward)
	w.because("    ", fmt.Sprintf("Or one unknown at a time: for %s take %s, along the line from %s to %s, and %s, vertical. %s has no moment about %s.",
		own, along.Name, joint, toward, upward.Name, along.Name, toward))
	w.list[len(w.list)-1].around = true
	now := append([]bool(nil), known...)
	for k, step := range round.Steps {
		w.because(fmt.Sprintf("    (%c) ", 'a'+k), wording.Capital(w.say.BodyAndSum(step.Sums[0])))
		w.equation("        ", step.Sums[0], step, now)
		i := step.Gives[0]
		w.conclude("        ", w.of.Forces[i].Name+" = "+w.say.Value(w.of.Values[i], notation.Force))
		now[i] = true
	}
	if slices.Contains(gives, round.Along) {
		w.because("    ", fmt.Sprintf("With the components of %s these are the same %s.", along.Name, own))
		return
	}
	w.because("    ", fmt.Sprintf("With the components of %s these are %s, and then the sums of forces give %s.", along.Name, own, w.names(gives)))
}
