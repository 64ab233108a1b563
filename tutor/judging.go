package tutor

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/slip"
)

// A bench is where answers are read and judged: with the values that the student has by now.
type bench struct {
	about *matter
	sheet *sheet
}

// judge is what answers are held against now.
func (b bench) judge() judging.Judge {
	return judging.Judge{Solution: b.about.solution, Own: b.sheet.own(), Found: b.sheet.foundAlong(), Style: b.about.style()}
}

// caseOf is what an answer to a question is held against.
func (b bench) caseOf(q Question) *judging.Case {
	j := b.judge()
	switch q.Kind {
	case ForceValue:
		return j.Force(b.judgedStep(q), q.Force)
	case SectionPart:
		return j.Section(q.Member, q.Station, q.Quantity)
	case ZeroPlace:
		return j.Place(q.Member, q.Station, q.Stretch)
	case TermSize, TermArm, TermSign:
		entry := map[Kind]judging.Entry{TermSize: judging.Size, TermArm: judging.Arm, TermSign: judging.Sign}[q.Kind]
		return j.Term(b.judgedStep(q), q.Sum, q.Term, entry)
	}
	return j.Plain(q.truth)
}

// judgedStep is the step of the plan that a question is about, as package judging takes it.
func (b bench) judgedStep(q Question) judging.Step {
	step, before := b.about.solution.Plan[q.Step], b.about.solution.KnownBefore(q.Step)
	level := b.about.levels.of(q.Step)
	return judging.Step{
		Sums:  step.Sums,
		Gives: step.Gives,
		Known: func(f int) bool {
			_, known := before(f)
			return known
		},
		// In an exam the terms that were typed may be wrong.
		Stands:  level == Values || !b.sheet.exam,
		Written: level != Values && !b.sheet.exam,
	}
}

// asked is what a line is read as an answer to.
func (b bench) asked(q Question) judging.Asked {
	a := judging.Asked{Name: q.Name, Dim: q.Dim, Axial: q.Kind == SectionPart && q.Quantity == statics.AxialForce, Shear: isShear(q)}
	if q.Kind == SectionPart {
		a.Bends, a.Span = q.Quantity == statics.BendingMoment, b.about.solution.Frame.Span(q.Member)
	}
	if q.Kind == ForceValue {
		a.Force = &b.about.solution.Forces[q.Force]
	}
	return a
}

// read reads a line as an answer to q. The error is a sentence for the student, perhaps with lines beneath.
func (b bench) read(q Question, line string) (judging.Typed, error) {
	switch q.Kind {
	case TermSign:
		return b.judge().ReadSign(b.about.solution.Plan[q.Step].Sums[q.Sum], line)
	case ShapeDegree, ShapeSlope:
		return b.readShape(q, line)
	}
	return b.judge().Read(b.asked(q), line)
}

// unread is the reply to a line that could not be read.
func unread(err error) Reply {
	return Reply{Kind: Unread, Lines: strings.Split(err.Error(), "\n")}
}

// namesForce reports whether a typed name is one of a force, alone or with the part that it acts on.
func (m *matter) namesForce(name string) bool {
	f, _ := judging.ForceMeant(m.solution.Assembly, name)
	return f != statics.None
}

// forceNamed is the force that a typed name means, or None.
func (m *matter) forceNamed(name string) int { return judging.ForceNamed(m.solution.Assembly, name) }

// section is the sum of the piece kept at the place of a question, with these values of the forces.
func (m *matter) section(q Question, values []exact.Num) slip.Section {
	return judging.Judge{Solution: m.solution, Style: m.style()}.Cut(q.Member, q.Station, q.Quantity, values)
}

// noCouple is said of a wrong moment at an end that is free or can turn: whatever led to it, this it missed.
const noCouple = "an end that is free or can turn passes no couple, so what moment can be left at this end of the member?"

// idleBeyond is said of a wrong moment elsewhere, where on one side of the cut nothing has a moment.
const idleBeyond = "on one side of this cut nothing can turn the piece, so what moment can be left here?"

// idleAlong and idleAcross are said of a wrong N and V where on one side of the cut nothing acts that way.
const (
	idleAlong  = "on one side of this cut nothing acts along the member, so what axial force can be left here?"
	idleAcross = "on one side of this cut nothing acts across the member, so what shear can be left here?"
)

// passesNoCouple reports whether a question is for the moment at such an end.
func (fb *feedback) passesNoCouple(q Question) bool {
	if q.Kind != SectionPart || q.Quantity != statics.BendingMoment || !q.truth.IsZero() {
		return false
	}
	switch fb.about.spotOf(q) {
	case pinned, supported, free:
		return true
	}
	return false
}

// slipOr says which slip a wrong value came from, or asks; if it fits none, it says where to look.
func (fb *feedback) slipOr(q Question, c *judging.Case, v judging.Verdict, typed judging.Typed, where func(Question, judging.Verdict) string) string {
	if first := fb.sheet.inHand().tries <= 1; fb.passesNoCouple(q) || c.OnlyZero() {
		switch {
		case !first:
			return where(q, v)
		case fb.passesNoCouple(q):
			return noCouple
		case q.Quantity == statics.BendingMoment:
			return idleBeyond
		case q.Quantity == statics.AxialForce:
			return idleAlong
		}
		return idleAcross
	}
	if says := fb.found(c.Find(v, typed)); says != "" && !fb.againstAssumed(q, v) {
		return says
	}
	return where(q, v)
}

// againstAssumed reports whether a force is given in the sense opposite to the one that the student assumed for it.
func (fb *feedback) againstAssumed(q Question, v judging.Verdict) bool {
	return q.Kind == ForceValue && v == judging.OtherSense && fb.about.solution.Forces[q.Force].Turned
}

// found notes the slips that lead to the line in hand, and gives what is said of them.
func (fb *feedback) found(f judging.Finding) string {
	fb.slips = f.Slips
	return f.Says
}
