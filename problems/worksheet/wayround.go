package worksheet

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// wayRound writes how an expert avoids solving two sums together, after the step that does.
func (d *document) wayRound(w *statics.Split, gives []int, known []bool) {
	plan := d.Solution
	d.Solution = &statics.Solution{Assembly: w.Assembly, Values: w.Values}
	defer func() { d.Solution = plan }()

	along, upward := d.Forces[w.Along], d.Forces[w.Upward]
	joint := d.Frame.Joints[along.Joint].Name
	own := plan.Forces[w.Along].Name + " and " + plan.Forces[w.Upward].Name
	d.because("    ", fmt.Sprintf("Or one unknown at a time: for %s take %s, along the line from %s to %s, and %s, vertical. %s has no moment about %s.",
		own, along.Name, joint, d.place(w.Toward), upward.Name, along.Name, d.place(w.Toward)))
	now := append([]bool(nil), known...)
	for k, step := range w.Steps {
		d.because(fmt.Sprintf("    (%c) ", 'a'+k), wording.Capital(d.sumTitle(step.Sums[0])))
		d.equation("        ", step.Sums[0], step, now)
		i := step.Gives[0]
		d.conclude("        ", d.Forces[i].Name+" = "+d.result(d.Values[i], notation.Force))
		now[i] = true
	}
	if slices.Contains(gives, w.Along) {
		d.because("    ", fmt.Sprintf("With the components of %s these are the same %s.", along.Name, own))
		return
	}
	d.because("    ", fmt.Sprintf("With the components of %s these are %s, and then the sums of forces give %s.", along.Name, own, d.names(gives)))
}

// place is a point by its joint, or by its coordinates.
func (d *document) place(p statics.Point) string {
	if j := d.JointAt(p); j != statics.None {
		return d.Frame.Joints[j].Name
	}
	return "the point " + d.point(p)
}
