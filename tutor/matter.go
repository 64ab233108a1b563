package tutor

import (
	"cmp"
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A matter is what a lesson is about: a problem, and its solution as the student has it by now: with unknowns in the senses
// that were assumed, and where the student makes the plan, with the steps that were chosen.
type matter struct {
	problem  *problems.Problem
	solution *statics.Solution
	levels   ladder
	renewed  *renewal        // where it has other numbers than a problem that is known, or nil
	asked    []problems.Item // what is asked for in an exam, each with what leads to it; none for all
	aside    *aside          // at the level gradual: what is asked once beside the values, or nil
	signs    bool            // sums are written with the signs of the trade, not in ASCII
}

// solved is the solution of a problem; if the problem asks for it, that in which two-force members are used at once.
func solved(p *problems.Problem) (*statics.Solution, error) {
	s, err := statics.Solve(p.Frame)
	if err != nil || p.Conventions.TwoForce != notation.TwoForceShortcut {
		return s, err
	}
	return cmp.Or(s.WithPulls(), s), nil
}

// fullKnown are the known forces as those of the solution in which two-force members are parts like all others, in the
// senses that are given.
func (m *matter) fullKnown(known map[int]exact.Num) map[int]exact.Num {
	values := slices.Clone(m.solution.Values)
	for i, v := range known {
		values[i] = v
	}
	full := map[int]exact.Num{}
	for i, v := range m.solution.FullValues(m.asGiven(values)) {
		if _, ok := known[m.solution.FullForce(i)]; ok {
			full[i] = v
		}
	}
	return full
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
