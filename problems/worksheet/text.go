package worksheet

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// width is the longest line of a text.
const width = 80

// Text is the whole solution as a handbook sets it out: given, count, free bodies, sums with their reasons, summary, and
// N, V and M at the critical points. Of a frame that is not determinate it is what Inspect says.
func Text(p *problems.Problem, s *statics.Solution) string {
	if s.Values == nil {
		return Inspect(p, s)
	}
	d := newDocument(p, s)
	d.heading()
	d.given()
	d.count()
	d.bodies()
	d.steps()
	d.summary()
	d.internal()
	return d.String()
}

// A document is a text in the making.
type document struct {
	strings.Builder
	p  *problems.Problem
	s  *statics.Solution
	st notation.Style
}

func newDocument(p *problems.Problem, s *statics.Solution) *document {
	return &document{p: p, s: s, st: notation.Style{
		Units: p.Units, Figures: p.Ask.Figures + 1, ClockwisePositive: p.Ask.Moments == "cw", Comma: p.Ask.Decimal == "comma",
	}}
}

// line writes a paragraph, folded at the width; what goes over stands under the text after the indent.
func (d *document) line(indent, text string) {
	rest := []rune(indent + text)
	pad := strings.Repeat(" ", len([]rune(indent)))
	for len(rest) > width {
		cut := width
		for cut > len([]rune(pad)) && rest[cut] != ' ' {
			cut--
		}
		if cut <= len([]rune(pad)) {
			cut = width
		}
		d.WriteString(strings.TrimRight(string(rest[:cut]), " ") + "\n")
		rest = []rune(pad + strings.TrimLeft(string(rest[cut:]), " "))
	}
	d.WriteString(strings.TrimRight(string(rest), " ") + "\n")
}

func (d *document) title(text string) {
	d.WriteString("\n" + text + "\n" + strings.Repeat("-", len([]rune(text))) + "\n")
}

func (d *document) heading() {
	d.line("", d.p.Title)
	if d.p.Text != "" {
		d.line("", strings.Join(strings.Fields(d.p.Text), " "))
	}
	d.line("", "For teaching only: a real structure needs the local codes and a licensed engineer.")
}

func (d *document) given() {
	f, st := &d.s.Frame, d.st
	d.title("Given")
	var joints []string
	for _, j := range f.Joints {
		joints = append(joints, fmt.Sprintf("%s(%s; %s)", j.Name, st.Given(j.At.X, notation.Length), st.Given(j.At.Y, notation.Length)))
	}
	d.line("Joints    ", strings.Join(joints, ", ")+" in "+st.UnitOf(notation.Length))
	for i := range d.s.Loads {
		d.line("Load      ", notation.ActionText(d.s.Assembly, i, st))
	}
}

func (d *document) count() {
	c := d.s.Count
	d.title("Count")
	sums := fmt.Sprintf("3 × %d parts", len(d.s.Parts))
	if n := len(d.s.Pins); n > 0 {
		sums += fmt.Sprintf(" + 2 × %d pins", n)
	}
	d.line("", fmt.Sprintf("%d unknowns, %s = %d sums, of which %d independent: %s.", c.Unknowns, sums, c.Sums, c.Rank, c.Verdict()))
	if c.Inner > 0 {
		d.line("", fmt.Sprintf("%d more unknowns are hidden in closed rings of parts; they are left out here.", c.Inner))
	}
	if c.Inexact {
		d.line("", "An angle is not a multiple of 15°: it is carried to 34 figures, and so is all that rests on it.")
	}
}

func (d *document) bodies() {
	d.title("Free bodies")
	for b := range d.s.Bodies() {
		body := statics.FreeBody{b}
		var what []string
		for _, i := range d.s.ForcesOn(body) {
			name := d.s.Forces[i].Name
			if sign, _ := d.s.Facing(body, i); sign < 0 {
				name += " reversed"
			}
			what = append(what, name)
		}
		for _, i := range d.s.ActionsOn(body) {
			what = append(what, notation.ActionText(d.s.Assembly, i, d.st))
		}
		d.line(fmt.Sprintf("%-10s", notation.BodyText(d.s.Assembly, body)), strings.Join(what, ", "))
	}
	for _, f := range d.s.Forces {
		text := f.Name + " is positive " + notation.SenseOf(f, exact.Int(1)) + " on " + d.s.BodyName(f.On)
		if f.By != statics.None {
			text += ", reversed on " + d.s.BodyName(f.By)
		}
		d.line("  ", text)
	}
}

func (d *document) steps() {
	d.title("Sums")
	known := map[int]bool{}
	value := func(i int) (exact.Num, bool) { return d.s.Values[i], known[i] }
	for n, step := range d.s.Plan {
		d.line(fmt.Sprintf("%2d  ", n+1), notation.Because(d.s.Assembly, step, func(i int) bool { return known[i] }, d.st))
		for _, s := range step.Sums {
			d.line("    ", notation.BodyText(d.s.Assembly, s.Body)+", "+notation.SumTitle(d.s.Assembly, s, d.st))
			symbols, numbers := notation.SumSymbols(d.s.Assembly, s, d.st), notation.SumNumbers(d.s.Assembly, s, value, d.st)
			d.line("      ", symbols)
			if numbers != symbols {
				d.line("      ", numbers)
			}
		}
		for _, i := range step.Gives {
			known[i] = true
			d.line("      ", d.force(i))
		}
	}
}

// force is a force with its value, its exact value where that was rounded, and its sense.
func (d *document) force(i int) string {
	f, v := d.s.Forces[i], d.s.Values[i]
	text := f.Name + " = " + d.st.WithUnit(v, notation.ForceDimension(f))
	if !v.Terminates() && !v.Inexact() && !d.p.Units.Letters() {
		text += " [" + v.String() + "]"
	}
	if !v.IsZero() {
		text += " (" + notation.SenseOf(f, v) + " on " + d.s.BodyName(f.On) + ")"
	}
	return text
}

func (d *document) summary() {
	d.title("Summary")
	for i := range d.s.Forces {
		d.line("  ", d.force(i))
	}
	d.line("", "Rounded values are shown; exact ones are carried on.")
}

func (d *document) internal() {
	d.title("N, V and M")
	d.line("", "x from the start of the member's name; N + in tension; V + where the forces before the cut act to the left as one looks along the member; dM/dx = V.")
	for _, g := range d.s.Diagrams {
		d.diagram(g)
	}
}

func (d *document) diagram(g statics.Diagram) {
	m := d.s.Frame.Members[g.Member]
	d.WriteString("\n")
	d.line("", "Member "+m.Name+", length "+d.st.WithUnit(g.Length, notation.Length))
	if g.Withheld {
		d.line("  ", notation.Sentence(withheld(d.s, g.Member)))
		return
	}
	d.line("  ", fmt.Sprintf("%-18s %13s %13s %13s", "x ["+d.st.UnitOf(notation.Length)+"]",
		"N ["+d.st.UnitOf(notation.Force)+"]", "V ["+d.st.UnitOf(notation.Force)+"]", "M ["+d.st.UnitOf(notation.Moment)+"]"))
	for _, x := range g.Stations() {
		place := d.st.Given(x.At, notation.Length)
		if !x.At.IsZero() && !x.At.Equal(g.Length) {
			place += map[statics.Side]string{statics.Before: " before", statics.After: " after"}[x.Side]
		}
		note := ""
		if x.Extreme {
			note = "  peak"
		}
		d.line("  ", fmt.Sprintf("%-18s %13s %13s %13s%s", place, d.st.Given(x.N, notation.Force),
			d.st.Given(x.V, notation.Force), d.st.Given(x.M, notation.Moment), note))
	}
}
