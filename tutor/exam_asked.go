package tutor

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
)

// What an exam asks for may be less than all: some reactions, M alone, a value at one place.

// asksFor reports whether force i is asked for, or leads to what is: where the student makes the plan, only the first; N, V and M rest
// on all forces.
func asksFor(m *matter, i int) bool {
	return m.asked == nil || slices.ContainsFunc(m.asked, func(item problems.Item) bool { return item.Force == i || item.Force == statics.None })
}

// spareSteps tells which steps of the plan lead to nothing that is asked for.
func spareSteps(m *matter) []bool {
	steps := m.solution.Plan
	spare, needed := make([]bool, len(steps)), make([]bool, len(m.solution.Forces))
	for i := range needed {
		needed[i] = asksFor(m, i)
	}
	for i := len(steps) - 1; i >= 0; i-- {
		spare[i] = !slices.ContainsFunc(steps[i].Gives, func(f int) bool { return needed[f] })
		if spare[i] {
			continue
		}
		for _, s := range steps[i].Sums {
			for _, t := range s.Terms() {
				if t.Force != statics.None && t.Why == statics.Counts {
					needed[t.Force] = true
				}
			}
		}
	}
	return spare
}

// askedAlong are the questions along the members that are asked for: values and places by their names, a shape where a value of its
// diagram is.
func (sc script) askedAlong() []Question {
	var all []Question
	for _, d := range sc.about.solution.Diagrams {
		wanted := map[string]bool{}
		shapes := [3]bool{}
		for _, item := range sc.about.asked {
			if item.Force == statics.None && item.Member == d.Member {
				wanted[item.Name] = true
				shapes[item.Quantity] = true
			}
		}
		for _, q := range sc.sectionQuestions(d) {
			if wanted[q.Name] || (q.Kind == ShapeDegree || q.Kind == ShapeSlope) && shapes[q.Quantity] {
				all = append(all, q)
				delete(wanted, q.Name)
			}
		}
		for _, item := range sc.about.asked {
			if item.Member == d.Member && wanted[item.Name] && !item.Place {
				all = append(all, sectionQuestion(item))
			}
		}
	}
	return all
}
