package tutor

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A matter is what a lesson is about: a problem, and its solution as the student has it by now: with unknowns in the senses
// that were assumed, and where the student makes the plan, with the steps that were chosen.
type matter struct {
	problem  *problems.Problem
	solution *statics.Solution
	levels   ladder
	renewed  *renewal // where it has other numbers than a problem that is known, or nil
	signs    bool     // sums are written with the signs of the trade, not in ASCII
}

// style is how the problem wants its sums and numbers written.
func (m *matter) style() notation.Style {
	st := m.problem.Style(!m.signs)
	st.Figures++
	return st
}

func (m *matter) clockwise() bool { return m.problem.Conventions.Moments == notation.ClockwiseMoments }

// words says what there is to say of the lesson's frame.
func (m *matter) words() wording.Speaker { return wording.New(m.solution.Assembly, m.style()) }

// script is which questions are asked of it.
func (m *matter) script() script { return script{m} }
