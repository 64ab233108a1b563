package tutor

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/slip"
)

// How a lesson asks package judging: with the values that the student has by now.

// judge is what answers are held against now.
func (l *Lesson) judge() judging.Judge {
	return judging.Judge{Solution: l.Solution, Own: l.own(), Style: l.style()}
}

// own lists the values of the forces as the student has them: what was typed and accepted, else the exact one.
func (l *Lesson) own() []exact.Num {
	own := append([]exact.Num(nil), l.Solution.Values...)
	for i, q := range l.Questions {
		if a := l.answers[i]; q.Kind == ForceValue && a.accepted {
			own[q.Force] = a.value
		}
	}
	return own
}

// caseOf is what an answer to a question is held against.
func (l *Lesson) caseOf(q Question) *judging.Case {
	j := l.judge()
	switch q.Kind {
	case ForceValue:
		return j.Force(l.judgedStep(q), q.Force)
	case SectionPart:
		return j.Section(q.Member, q.Station, statics.Quantity(q.Quantity))
	case TermSize, TermArm, TermSign:
		entry := map[Kind]judging.Entry{TermSize: judging.Size, TermArm: judging.Arm, TermSign: judging.Sign}[q.Kind]
		return j.Term(l.judgedStep(q), q.Sum, q.Term, entry)
	}
	return j.Plain(q.truth)
}

// judgedStep is the step of the plan that a question is about, as package judging takes it.
func (l *Lesson) judgedStep(q Question) judging.Step {
	step, before := l.Solution.Plan[q.Step], l.Solution.KnownBefore(q.Step)
	return judging.Step{
		Sums:  step.Sums,
		Gives: step.Gives,
		Known: func(f int) bool {
			_, known := before(f)
			return known
		},
		Written: l.RungOf(q.Step) >= Terms,
	}
}

// asked is what a line is read as an answer to.
func (l *Lesson) asked(q Question) judging.Asked {
	a := judging.Asked{Name: q.Name, Dim: q.Dim, Axial: q.Kind == SectionPart && q.Quantity == AxialForce, Shear: isShear(q)}
	if q.Kind == ForceValue {
		a.Force = &l.Solution.Forces[q.Force]
	}
	return a
}

// read reads a line as an answer to q. The error is a sentence for the student, perhaps with lines beneath.
func (l *Lesson) read(q Question, line string) (judging.Typed, error) {
	switch q.Kind {
	case TermSign:
		return l.judge().ReadSign(l.Solution.Plan[q.Step].Sums[q.Sum], line)
	case ShapeDegree, ShapeSlope:
		return l.readShape(q, line)
	}
	return l.judge().Read(l.asked(q), line)
}

// unread is the reply to a line that could not be read.
func unread(err error) Reply {
	return Reply{Kind: Unread, Lines: strings.Split(err.Error(), "\n")}
}

// forceNamed is the force that a typed name means, or None.
func (l *Lesson) forceNamed(name string) int { return judging.ForceNamed(l.Solution.Assembly, name) }

// section is the sum of the piece kept at the place of a question, with these values of the forces.
func (l *Lesson) section(q Question, values []exact.Num) slip.Section {
	return l.judge().Cut(q.Member, q.Station, statics.Quantity(q.Quantity), values)
}

// noCouple is said of a wrong moment at an end that is free or can turn: whatever led to it, this it missed.
const noCouple = "an end that is free or can turn passes no couple, so what moment can be left at this end of the member?"

// passesNoCouple reports whether a question is for the moment at such an end.
func (l *Lesson) passesNoCouple(q Question) bool {
	if q.Kind != SectionPart || q.Quantity != BendingMoment || !q.truth.IsZero() {
		return false
	}
	switch l.spotOf(q) {
	case pinned, supported, free:
		return true
	}
	return false
}

// slipOr says which slip a wrong value came from, or asks; if it fits none, it says where to look.
func (l *Lesson) slipOr(q Question, c *judging.Case, v judging.Verdict, typed judging.Typed, where func(Question, judging.Verdict) string) string {
	if l.passesNoCouple(q) {
		if l.answers[l.at].tries > 1 {
			return where(q, v)
		}
		return noCouple
	}
	if says := l.found(c.Find(v, typed)); says != "" {
		return says
	}
	return where(q, v)
}

// found notes the slips that lead to the line in hand, and gives what is said of them.
func (l *Lesson) found(f judging.Finding) string {
	l.traced = f.Slips
	return f.Says
}
