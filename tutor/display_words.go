package tutor

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// bodyAndSum names the free body of a sum and the sum.
func (d Display) bodyAndSum(s statics.Sum) string {
	return d.Words(d.Style()).BodyAndSum(s)
}

// StepTitle is the number of a step with its free body and sum.
func (d Display) StepTitle(i int) string {
	step := d.step(i)
	text := d.bodyAndSum(step.Sums[0])
	switch {
	case len(step.Sums) > 1:
		text = wording.Count(len(step.Sums)) + " sums solved together"
	case step.Check:
		text = "check: " + text
	case step.Relation:
		text += ", kept for later"
	}
	return fmt.Sprintf("%d. %s", i+1, wording.Capital(text))
}

// valueText is a force with its value and how it acts.
func (d Display) valueText(f int) string {
	force, v := d.assembly().Forces[f], d.value(f)
	text := force.Name + " = " + d.Style().Result(v, notation.ForceDimension(force))
	if !v.IsZero() {
		text += ": " + notation.SenseOf(force, v) + " on " + d.assembly().BodyName(force.On)
	}
	return text
}

// questionOf is the number of the question for force f, or -1 where it is not asked.
func (d Display) questionOf(f int) int {
	return slices.IndexFunc(d.lesson.Asked(), func(q Question) bool { return q.Kind == ForceValue && q.Force == f })
}

// sides are the words for the side of a member that a direction points to.
var sides = map[string]string{"up": "upper side", "down": "lower side", "left": "left side", "right": "right side"}

// SenseOfSections says when N, V and M of a member are positive.
func (d Display) SenseOfSections(m int) string {
	f := &d.assembly().Frame
	n := f.Span(m).Left()
	return fmt.Sprintf("N is positive in tension; V where the forces on the side of %s act %s across the member; M where it stretches the %s.",
		f.Joints[f.Members[m].From].Name, across(d.ShearDirection(m)), stretchedSide(n))
}

// across is a direction perpendicular to a member in a word.
func across(n statics.Vector) string { return notation.DirectionWord(n) }

// stretchedSide is the side of a member away from n.
func stretchedSide(n statics.Vector) string {
	word := notation.DirectionWord(n.Neg())
	if side, ok := sides[word]; ok {
		return side
	}
	return "side that faces " + word
}

// SenseOfAsked says which way what is asked counts as positive.
func (d Display) SenseOfAsked(q Question) string {
	f := &d.assembly().Frame
	switch q.Kind {
	case ForceValue:
		force := d.assembly().Forces[q.Force]
		text := fmt.Sprintf("%s acts on %s; %s is positive.", force.Name, d.assembly().BodyName(force.On), notation.SenseOf(force, exact.Int(1)))
		if force.By != statics.None {
			text += " " + wording.Sentence(d.assembly().BodyName(force.By)+" receives the opposite")
		}
		return text
	case SectionPart:
		n := f.Span(q.Member).Left()
		from := f.Joints[f.Members[q.Member].From].Name
		return [...]string{
			"Tension is positive.",
			"Positive where the forces on the side of " + from + " act " + across(d.ShearDirection(q.Member)) + ".",
			"Positive where it stretches the " + stretchedSide(n) + ".",
		}[q.Quantity]
	case ChooseSum:
		body := d.assembly().BodyName(0)
		at := f.Joints[0]
		return fmt.Sprintf("As in: %s x; whole y; %s M %s; whole M (2, 3), where %s is %s; whole F along [4, 3].", body, body, at.Name,
			at.Name, d.Style().Pair(at.At.X, at.At.Y, notation.Length))
	case CheckSum:
		return checkForm(d.about)
	case TypeSum:
		return "All terms, in any order and on either side of =; forces by name or, once known, by value."
	case ZeroPlace:
		return "Measured from " + f.Joints[f.Members[q.Member].From].Name + "."
	case ShapeDegree:
		return "0 level, 1 straight, 2 or 3 for a curve."
	case ShapeSlope:
		return "Does the slope of M rise or fall from the start of the stretch to its end? Type rises or falls."
	case Reading:
		return ""
	}
	return "" // of a term it is asked
}

// AlsoTyped says what longer line may be typed in answer to a question, where one may: the whole term or the whole sum, or
// functions for a whole stretch. It is said once, where such a line would begin.
func (d Display) AlsoTyped(q Question) string {
	first := func(o Question) bool { return o.Step == q.Step && o.Sum == q.Sum && o.ofTerm() }
	all := d.lesson.Asked()
	at, _ := d.lesson.Position()
	switch {
	case q.ofTerm() && !d.lesson.Exam() && slices.IndexFunc(all, first) == at:
		return "Or the whole sum in one line, with = 0; or a whole term."
	case takesFunction(d.about, q):
		return "Or N(x), V(x), M(x) as functions, as in M(x) = 5x - 2x^2; x from " + d.about.startOf(q) + "."
	}
	return ""
}

// SenseWord is the positive sense of what is asked in a word or two, or nothing.
func (d Display) SenseWord(q Question) string {
	switch q.Kind {
	case ForceValue:
		return notation.SenseOf(d.assembly().Forces[q.Force], exact.Int(1))
	case SectionPart:
		n := d.assembly().Frame.Span(q.Member).Left()
		return [...]string{"tension", across(d.ShearDirection(q.Member)), stretchedSide(n)}[q.Quantity]
	}
	return ""
}

// Heading is what stands above the question: the step, the sum or the member that it belongs to.
func (d Display) Heading() string {
	q, asking := d.lesson.Now()
	switch {
	case !asking:
		return "All done"
	case q.Step != statics.None:
		if step := d.step(q.Step); len(step.Sums) > 1 && q.Kind != ForceValue && q.Kind != Reading {
			return fmt.Sprintf("%d. %s", q.Step+1, wording.Capital(d.bodyAndSum(step.Sums[q.Sum])))
		}
		return d.StepTitle(q.Step)
	case q.Kind == CheckSum:
		return "Check the work"
	case q.Kind == ChooseSum:
		return "Choose a free body and a sum of it"
	case q.Kind == TypeSum:
		return wording.Capital(d.bodyAndSum(d.chosen()))
	}
	return "Member " + d.assembly().Frame.Members[q.Member].Name + ", distances from " + d.startOf(q.Member)
}
