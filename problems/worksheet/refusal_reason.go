package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// reasonText says why nothing prevents a motion; a critical form is called so and named.
func (d refusal) reasonText(m statics.Motion) string {
	r := d.Reason(m)
	switch r.Cause {
	case statics.AllParallel:
		return fmt.Sprintf("A critical form: %s all parallel, so that nothing holds %s perpendicular to them.", d.holders(&r), d.groupText(r.Groups[r.Main]))
	case statics.AllConcurrent:
		return fmt.Sprintf("A critical form: %s all pass through %s, so that nothing keeps %s from turning about it.",
			strings.TrimSuffix(d.holders(&r), " are"), d.say.Place(r.Point), d.groupText(r.Groups[r.Main]))
	case statics.HingesInLine:
		return d.hingesText(&r)
	case statics.BadPlaces:
		return fmt.Sprintf("A critical form: by their number %s would do for the %s of what moves, but not where they are.",
			d.forcesText(r.Forces), wording.Counted(r.Needed(), "sum"))
	}
	return d.tooFewText(&r)
}

// tooFewText compares the forces that hold what moves with what it takes.
func (d refusal) tooFewText(r *statics.Reason) string {
	if len(r.Groups) == 1 {
		who := d.groupText(r.Groups[0])
		if len(r.Forces) == 0 {
			return fmt.Sprintf("Nothing holds %s at all; it takes three forces to hold a body.%s", who, d.noHelp())
		}
		hold := map[bool]string{true: "holds", false: "hold"}[len(r.Forces) == 1]
		return fmt.Sprintf("Only %s %s %s; it takes three to hold a body.%s", d.names(r.Forces), hold, who, d.noHelp())
	}
	return fmt.Sprintf("The %s bodies that move have %d sums, and only %s to hold them: %s missing.%s", wording.Count(len(r.Groups)),
		r.Needed(), wording.Counted(len(r.Forces), "force"), isOrAreMissing(r.Needed()-len(r.Forces)), d.noHelp())
}

// noHelp says that a force too many is of no use where one is missing.
func (d refusal) noHelp() string {
	if d.Count.Degree() == 0 {
		return ""
	}
	return " What is too many elsewhere is no help there."
}

func isOrAreMissing(n int) string {
	if n == 1 {
		return "one is"
	}
	return wording.Count(n) + " are"
}

// holders are the forces and bars that hold the main group, and "are": "the reactions RA, RB and RC are".
func (d refusal) holders(r *statics.Reason) string {
	var direct []int
	main := r.Groups[r.Main]
	for _, i := range r.Forces {
		if f := d.Forces[i]; !f.Couple && (main.Has(f.On) || f.By != statics.None && main.Has(f.By)) && !d.ofBar(r, i) {
			direct = append(direct, i)
		}
	}
	var bars []string
	for _, b := range r.Bars {
		bars = append(bars, d.Frame.Joints[b.Ends[0]].Name+d.Frame.Joints[b.Ends[1]].Name)
	}
	var all []string
	if len(bars) > 0 {
		all = append(all, "the "+wording.Plural(len(bars), "bar")+" "+notation.List(bars))
	}
	if len(direct) > 0 {
		all = append(all, d.forcesText(direct))
	}
	return strings.Join(all, " and ") + " are"
}

// ofBar reports whether a force acts on a bar.
func (d refusal) ofBar(r *statics.Reason, i int) bool {
	for _, b := range r.Bars {
		if f := d.Forces[i]; r.Groups[b.Group].Has(f.On) || f.By != statics.None && r.Groups[b.Group].Has(f.By) {
			return true
		}
	}
	return false
}

// forcesText is forces by name, called reactions where all are.
func (d refusal) forcesText(forces []int) string {
	what := "reaction"
	for _, i := range forces {
		if d.Forces[i].Kind != statics.Reaction {
			what = "force"
		}
	}
	return "the " + wording.Plural(len(forces), what) + " " + d.names(forces)
}

// groupText names bodies that move as one; a pin goes with its parts unnamed.
func (d refusal) groupText(g statics.FreeBody) string {
	var parts statics.FreeBody
	for _, b := range g {
		if !d.IsPin(b) {
			parts = append(parts, b)
		}
	}
	if d.allParts(parts) {
		return "the whole frame"
	}
	return wording.Body(d.Assembly, parts)
}

// hingesText says which three hinges lie in one line.
func (d refusal) hingesText(r *statics.Reason) string {
	one, other := d.groupText(r.Groups[0]), d.groupText(r.Groups[1])
	head := "A critical form, three hinges in one line: "
	for k, h := range r.Hinges {
		if h.Parallel {
			return head + fmt.Sprintf("%s, which hold %s, are parallel to the line through the other two, %s and %s.", d.forcesText(h.Forces),
				[]string{one, one + " to " + other, other}[k], d.hingeText(r.Hinges[(k+1)%3]), d.hingeText(r.Hinges[(k+2)%3]))
		}
	}
	return head + fmt.Sprintf("%s and %s turn on each other at %s, the one is held at %s, the other at %s.", one, other,
		d.hingeText(r.Hinges[1]), d.hingeText(r.Hinges[0]), d.hingeText(r.Hinges[2]))
}

// hingeText is a hinge by its joint, or by the forces whose lines cross there.
func (d refusal) hingeText(h statics.Hinge) string {
	if h.Joint != statics.None {
		return d.Frame.Joints[h.Joint].Name
	}
	return fmt.Sprintf("%s, where the lines of %s cross", d.say.Place(h.At), d.names(h.Forces))
}
