package worksheet

import (
	"fmt"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
)

// Inspect is the count and the verdict; of a frame that is not determinate, which forces equilibrium cannot give and in
// which ways the frame can move.
func Inspect(p *problems.Problem, s *statics.Solution) string {
	d := newDocument(p, s)
	d.line("", p.Title)
	d.count()
	for _, w := range p.Warnings {
		d.line("Warning: ", w)
	}
	if s.Values == nil {
		d.refusal()
		return d.String()
	}
	together := 0
	for _, step := range s.Plan {
		if len(step.Sums) > 1 {
			together++
		}
	}
	d.line("", fmt.Sprintf("The plan has %d steps; sums must be solved together %d times.", len(s.Plan), together))
	return d.String()
}

// refusal says in words why the frame is not determinate.
func (d *document) refusal() {
	c := d.s.Count
	if c.Degree() > 0 {
		var names []string
		for _, i := range d.s.Undetermined() {
			names = append(names, d.s.Forces[i].Name)
		}
		d.line("", fmt.Sprintf("Indeterminate to degree %d: equilibrium alone cannot give %s.", c.Degree(), notation.List(names)))
	}
	if c.Motions() > 0 {
		d.line("", fmt.Sprintf("Unstable: it can move in %d independent ways.", c.Motions()))
		for i, m := range d.s.Motions() {
			for _, b := range m {
				d.line(fmt.Sprintf("  way %d: ", i+1), d.movement(b))
			}
		}
	}
}

// movement is how one body moves, in words.
func (d *document) movement(b statics.BodyMotion) string {
	name := notation.BodyText(d.s.Assembly, statics.FreeBody{b.Body})
	if b.Turn.IsZero() {
		return name + " slides along (" + d.st.Given(b.Slide.X, notation.Pure) + "; " + d.st.Given(b.Slide.Y, notation.Pure) + ")"
	}
	if j := d.s.JointAt(b.Centre); j != statics.None {
		return name + " turns about " + d.s.Frame.Joints[j].Name
	}
	return name + " turns about (" + d.st.Given(b.Centre.X, notation.Length) + "; " + d.st.Given(b.Centre.Y, notation.Length) + ")"
}
