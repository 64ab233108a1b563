package tutor

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A lesson asks, shows and speaks in the conventions of its problem. Inside it counts as package statics does, where V is
// positive if it turns a piece clockwise: values of V are turned where they are read and where they are shown.

// shear is the turn that positive shear gives a piece.
func (m *matter) shear() notation.ShearTurn { return m.problem.Conventions.Shear }

// turnedShear reports whether V counts the other way than in package statics, so that dM/dx = −V.
func (m *matter) turnedShear() bool { return m.shear() != notation.ClockwiseShear }

// isShear reports whether a question asks for V at a place.
func isShear(q Question) bool { return q.Kind == SectionPart && q.Quantity == statics.ShearForce }

// asShown turns a value of what q asks from the signs of package statics into those of the lesson, or back.
func (m *matter) asShown(q Question, v exact.Num) exact.Num {
	if isShear(q) {
		return m.shear().Value(v)
	}
	return v
}

// Shown is N, V or M at the place that q asks for, by the conventions of the lesson.
func (v View) Shown(q Question) exact.Num {
	return v.about.asShown(q, q.Station.Of(q.Quantity))
}

// ShearDirection is the way in which the forces on the side of a member's start act across it where V is positive.
func (v View) ShearDirection(member int) statics.Vector {
	left := v.about.solution.Frame.Span(member).Left()
	if v.about.turnedShear() {
		return left.Neg()
	}
	return left
}

// sectionSum is the sum of all that acts on the starting side of a section, with V in the sense of the lesson.
func (m *matter) sectionSum(q Question) (*statics.Assembly, statics.Sum) {
	a, s := m.section(q, m.solution.Values).Sum()
	if q.Quantity == statics.ShearForce && m.turnedShear() {
		terms := slices.Clone(s.Terms())
		own := &terms[len(terms)-1]
		own.Sign, own.Toward = -own.Sign, own.Toward.Neg()
		s = s.With(terms)
	}
	return a, s
}

// slopeOfMoment is what the slope of M is.
func (m *matter) slopeOfMoment() string {
	if m.turnedShear() {
		return "minus the shear"
	}
	return "the shear"
}

// NewPlain begins a lesson for the line mode: its values have the signs of the JSON and its plan is the plain one, and
// where the problem asks for other conventions it says so at its start. Errors are those of New.
func NewPlain(p *problems.Problem, level Level, exam bool) (*Lesson, error) {
	var notes []string
	c := p.Conventions
	if c.Shear != notation.ClockwiseShear {
		c.Shear = notation.ClockwiseShear
		notes = append(notes, "V is positive here where it turns a piece clockwise, not counter-clockwise as the problem or you ask for: here signs are those of the JSON.")
	}
	if c.TwoForce != notation.TwoForcePlain {
		c.TwoForce = notation.TwoForcePlain
		notes = append(notes, "Two-force members are parts like all others here, though the problem or you ask to use them at once: here the plan is that of the JSON.")
	}
	l, err := New(p.In(c), level, exam)
	if err != nil {
		return nil, err
	}
	l.notes = notes
	return l, nil
}
