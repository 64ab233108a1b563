package tutor

import (
	"fmt"
	"runtime"
	"slices"
	"sync"
	"weak"

	"unpin/problems"
	"unpin/statics"
)

// A material is a problem as something to practise with.
type material struct {
	problem *problems.Problem
	skills  []string // that its steps and members ask for, in teaching order
	grade   int
	steps   int // and members, that are asked
	tasks   []pieceWork
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
	add := func(of task, level Level, skills []string, halves int) {
		m.tasks = append(m.tasks, pieceWork{of, level, skills, halves})
		for _, skill := range skills {
			if !slices.Contains(m.skills, skill) {
				m.skills = append(m.skills, skill)
			}
		}
	}
	for i, step := range s.Plan {
		if len(step.Gives) > 0 {
			m.steps++
			add(task{i, statics.None}, Values, stepSkills(both, step), halvesOf(step))
		}
	}
	for _, d := range s.Diagrams {
		if m.steps++; d.Withheld {
			continue
		}
		of, halves := task{statics.None, d.Member}, alongHalves*3*len(d.Stations())
		values, terms := placesAlong(both, d, Values), placesAlong(both, d, Terms)
		add(of, Values, values.skills(), halves)
		if n := len(terms) - len(values); n > 0 { // with the shapes of its stretches
			add(of, Terms, terms.skills(), halves+2*alongHalves*n)
		}
	}
	first := s.Plan[0].Sums[0]
	m.shape = fmt.Sprint(both.Bodies(), first.Moment, len(first.Body), len(s.Plan[0].Sums))
	return m, true
}

// materials are problems that were looked over, for as long as they are there: the host of a class opens the same list for everybody who comes, and
// looking over was half of what that costs. No problem is kept alive by it.
type materials struct{ all sync.Map }

// known are those of this process.
var known materials

// of looks a problem over, unless it was before.
func (ms *materials) of(p *problems.Problem) (material, bool) {
	key := weak.Make(p)
	if seen, was := ms.all.Load(key); was {
		m := seen.(material)
		m.problem = p
		return m, m.steps > 0
	}
	m, ok := materialOf(p)
	m.problem = nil
	if !ok {
		m.steps = 0
	}
	ms.all.Store(key, m)
	runtime.AddCleanup(p, func(key weak.Pointer[problems.Problem]) { ms.all.Delete(key) }, key)
	m.problem = p
	return m, ok
}

// A pieceWork is a step or a member of a problem: what it asks for, and about how many half minutes it takes.
type pieceWork struct {
	task
	level  Level // from which on it is so
	skills []string
	halves int
}

// asks reports whether it asks for a skill.
func (w pieceWork) asks(skill string) bool { return slices.Contains(w.skills, skill) }

// halvesOf is about how many half minutes a step takes.
func halvesOf(step statics.Step) int {
	halves := stepHalves
	for _, sum := range step.Sums {
		for _, t := range sum.Terms() {
			if t.Why == statics.Counts {
				halves++
			}
		}
	}
	return halves
}

// stepSkills are what a step asks for: what its sums show, and to solve it.
func stepSkills(p problems.Solved, step statics.Step) []string {
	return append(p.StepSkills(step), "solve-with-sense")
}
