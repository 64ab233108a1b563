package screen

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor"
)

// bodyAndSum names the free body of a sum and the sum.
func bodyAndSum(l *tutor.Lesson, s statics.Sum, st notation.Style) string {
	return l.View().Words(st).BodyAndSum(s)
}

// stepTitle is the number of a step with its free body and sum.
func stepTitle(l *tutor.Lesson, i int, st notation.Style) string {
	step := l.View().Step(i)
	text := bodyAndSum(l, step.Sums[0], st)
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
func valueText(l *tutor.Lesson, f int, v exact.Num, st notation.Style) string {
	force := l.View().Assembly().Forces[f]
	text := force.Name + " = " + st.Result(v, notation.ForceDimension(force))
	if !v.IsZero() {
		text += ": " + notation.SenseOf(force, v) + " on " + l.View().Assembly().BodyName(force.On)
	}
	return text
}

// questionOf is the number of the question for force f, or -1 where it is not asked.
func questionOf(l *tutor.Lesson, f int) int {
	return slices.IndexFunc(l.Asked(), func(q tutor.Question) bool { return q.Kind == tutor.ForceValue && q.Force == f })
}

// sides are the words for the side of a member that a direction points to.
var sides = map[string]string{"up": "upper side", "down": "lower side", "left": "left side", "right": "right side"}

// senseOfSections says when N, V and M of a member are positive.
func senseOfSections(l *tutor.Lesson, m int) string {
	f := &l.View().Assembly().Frame
	n := f.Span(m).Left()
	return fmt.Sprintf("N is positive in tension; V where the forces on the side of %s act %s across the member; M where it stretches the %s.",
		f.Joints[f.Members[m].From].Name, across(l.View().ShearDirection(m)), stretched(n))
}

// across is a direction perpendicular to a member in a word.
func across(n statics.Vector) string { return notation.DirectionWord(n) }

// stretched is the side of a member away from n.
func stretched(n statics.Vector) string {
	word := notation.DirectionWord(n.Neg())
	if side, ok := sides[word]; ok {
		return side
	}
	return "side that faces " + word
}

// senseOfAsked says which way what is asked counts as positive.
func senseOfAsked(l *tutor.Lesson, q tutor.Question, st notation.Style) string {
	f := &l.View().Assembly().Frame
	switch q.Kind {
	case tutor.ForceValue:
		force := l.View().Assembly().Forces[q.Force]
		text := fmt.Sprintf("%s acts on %s; %s is positive.", force.Name, l.View().Assembly().BodyName(force.On), notation.SenseOf(force, exact.Int(1)))
		if force.By != statics.None {
			text += " " + wording.Sentence(l.View().Assembly().BodyName(force.By)+" receives the opposite")
		}
		return text
	case tutor.SectionPart:
		n := f.Span(q.Member).Left()
		from := f.Joints[f.Members[q.Member].From].Name
		return [...]string{
			"Tension is positive.",
			"Positive where the forces on the side of " + from + " act " + across(l.View().ShearDirection(q.Member)) + ".",
			"Positive where it stretches the " + stretched(n) + ".",
		}[q.Quantity]
	case tutor.ChooseSum:
		body := l.View().Assembly().BodyName(0)
		at := f.Joints[0]
		return fmt.Sprintf("As in: %s x; whole y; %s M %s; whole M (2, 3), where %s is %s; whole F along [4, 3].", body, body, at.Name,
			at.Name, st.Pair(at.At.X, at.At.Y, notation.Length))
	case tutor.TypeSum:
		return "All terms, in any order and on either side of =; forces by name or, once known, by value."
	case tutor.ZeroPlace:
		return "Measured from " + f.Joints[f.Members[q.Member].From].Name + "."
	case tutor.ShapeDegree:
		return "0 level, 1 straight, 2 or 3 for a curve."
	case tutor.ShapeSlope:
		return "Does the slope of M rise or fall from the start of the stretch to its end? Type rises or falls."
	case tutor.Reading:
		return ""
	}
	return "" // of a term it is asked
}

// senseWord is the positive sense of what is asked in a word or two, or nothing.
func senseWord(l *tutor.Lesson, q tutor.Question) string {
	switch q.Kind {
	case tutor.ForceValue:
		return notation.SenseOf(l.View().Assembly().Forces[q.Force], exact.Int(1))
	case tutor.SectionPart:
		n := l.View().Assembly().Frame.Span(q.Member).Left()
		return [...]string{"tension", across(l.View().ShearDirection(q.Member)), stretched(n)}[q.Quantity]
	}
	return ""
}

// prompt is what stands before the answer, with the positive sense in brackets if there is one.
func prompt(q tutor.Question, sense string, st notation.Style) string {
	unit := st.UnitOf(q.Dim)
	switch {
	case q.Kind == tutor.TermSign:
		unit = "+ or −"
	case unit == "":
		return q.Name + " = "
	}
	if sense != "" {
		sense = " (" + sense + " +)"
	}
	return q.Name + " [" + unit + "]" + sense + " = "
}

// A termState is a term of which sizes, arm and sign are asked, as far as it is settled.
type termState struct {
	giver           string
	size, arm, sign string // settled, or a question mark, or empty where it is not asked
	whole           bool
	inHand          bool // something of it is asked now
}

// text is the term as it stands on the sheet.
func (t termState) text(st notation.Style) string {
	text := t.sign + " "
	if t.size != "" {
		text += t.size
	} else {
		text += t.giver
	}
	if t.arm != "" {
		text += " × " + t.arm
	}
	if t.size != "" {
		text += ", " + t.giver
	}
	if st.ASCII {
		return notation.ASCII(text)
	}
	return text
}

// termsAsked lists the terms of sum n of step i of which something is asked, as they stand.
func termsAsked(l *tutor.Lesson, i, n int) []termState {
	var all []termState
	term := statics.None
	st := style(l, false)
	at, _ := l.Position()
	for k, q := range l.Asked() {
		if q.Step != i || q.Sum != n || q.Kind != tutor.TermSize && q.Kind != tutor.TermArm && q.Kind != tutor.TermSign {
			continue
		}
		t := l.View().Step(i).Sums[n].Terms[q.Term]
		if q.Term != term {
			term = q.Term
			all = append(all, termState{giver: l.View().Words(st).Source(t), whole: true})
		}
		s := &all[len(all)-1]
		_, settled, _, _ := l.Standing(k)
		s.whole = s.whole && settled
		s.inHand = s.inHand || k == at
		field := map[tutor.Kind]*string{tutor.TermSize: &s.size, tutor.TermArm: &s.arm, tutor.TermSign: &s.sign}[q.Kind]
		*field = askedText(l, k, t, st)
	}
	return all
}

// askedText is what stands for question k about a term: what is right once it is settled, in an exam what was typed, and
// after it both where they differ.
func askedText(l *tutor.Lesson, k int, t statics.Term, st notation.Style) string {
	q := l.Asked()[k]
	typed, settled, _, v := l.Standing(k)
	_, asking := l.Now()
	text := ""
	switch q.Kind {
	case tutor.TermSize:
		text = st.WithUnit(t.Size, q.Dim)
	case tutor.TermArm:
		text = st.WithUnit(t.Arm, q.Dim)
	default:
		text = signText(t.Sign, l.View().Step(q.Step).Sums[q.Sum].Moment && st.Moments == notation.ClockwiseMoments)
	}
	switch {
	case l.Exam() && asking && settled:
		return typed
	case l.Exam() && !asking && typed == "":
		return text + " (left open)"
	case l.Exam() && !asking && !v.Right():
		return text + " (not " + typed + ")"
	case !settled:
		return map[tutor.Kind]string{tutor.TermSize: "force?", tutor.TermArm: "arm?", tutor.TermSign: "sign?"}[q.Kind]
	}
	return text
}

// signText is a sign, turned where the sum counts the other way.
func signText(sign int, turned bool) string {
	if sign > 0 != turned {
		return "+"
	}
	return "−"
}
