package tutor

import (
	"fmt"
	"slices"

	"unpin/problems"
	"unpin/statics"
)

// A material is a problem as something to practise with.
type material struct {
	problem *problems.Problem
	skills  []string // that its steps and members ask for, in teaching order
	grade   int
	steps   int    // and members, that are asked
	shape   string // alike for frames that begin alike: how many parts, and the sum that comes first
}

// materialOf looks a problem over; false for one that is not determinate, which cannot be practised.
func materialOf(p *problems.Problem) (material, bool) {
	s, err := solved(p)
	if err != nil || s.Count.Determinacy() != statics.Determinate {
		return material{}, false
	}
	both := problems.Solved{Problem: p, Solution: s}
	m := material{problem: p, grade: both.Difficulty().Grade}
	add := func(skills []string) {
		m.steps++
		for _, skill := range skills {
			if !slices.Contains(m.skills, skill) {
				m.skills = append(m.skills, skill)
			}
		}
	}
	for _, step := range s.Plan {
		if len(step.Gives) > 0 {
			add(stepSkills(both, step))
		}
	}
	for _, d := range s.Diagrams {
		add(both.MemberSkills(d))
	}
	first := s.Plan[0].Sums[0]
	m.shape = fmt.Sprint(both.Bodies(), first.Moment, len(first.Body), len(s.Plan[0].Sums))
	return m, true
}

// stepSkills are what a step asks for: what its sums show, and to solve it.
func stepSkills(p problems.Solved, step statics.Step) []string {
	return append(p.StepSkills(step), "solve-with-sense")
}
