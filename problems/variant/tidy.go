package variant

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// A Step is one number of a problem made another.
type Step struct {
	Name string // the number that changes: "h", "the distance 3"
	To   string // what it becomes

	change Change
	choice int
	far    exact.Num // relative to its own value
}

// mostTidied is how many sets of numbers are tried at most to make a problem tidy: half a second at most where frames are small.
const mostTidied = 150

// tidiedBy is how many steps a number is moved at most to make a problem tidy.
const tidiedBy = 6

// Tidy is the smallest change of one number or of two with which a problem breaks no rule for numbers, and hides no mistake
// that it does not hide now; empty where none is found, or none is needed. What may change is what copies may change.
func Tidy(own problems.Solved) []Step {
	if !Sought(own) || len(own.Shortcomings()) == 0 {
		return nil
	}
	hidden := hidings(own)
	for _, steps := range tidySteps(changesOf(own.Problem)) {
		if tidied(own, steps, hidden) {
			return steps
		}
	}
	return nil
}

// tidySteps lists what may be tried, single steps first, and near ones first.
func tidySteps(changes []Change) [][]Step {
	var single, pairs [][]Step
	for _, c := range changes {
		if c.own == stepless || len(c.numbers) == 0 {
			continue
		}
		for choice := max(0, c.own-tidiedBy); choice < min(len(c.Choices), c.own+tidiedBy+1); choice++ {
			if choice != c.own {
				single = append(single, []Step{{c.Name, c.Choices[choice], c, choice, c.far(choice)}})
			}
		}
	}
	for i, a := range single {
		for _, b := range single[:i] {
			if !slices.Equal(a[0].change.numbers, b[0].change.numbers) {
				pairs = append(pairs, []Step{b[0], a[0]})
			}
		}
	}
	byFar := func(a, b []Step) int { return farAll(a).Cmp(farAll(b)) }
	slices.SortStableFunc(single, byFar)
	slices.SortStableFunc(pairs, byFar)
	all := append(single, pairs...)
	return all[:min(len(all), mostTidied)]
}

// farAll is how far steps go together.
func farAll(steps []Step) (far exact.Num) {
	for _, s := range steps {
		far = far.Add(s.far)
	}
	return far
}

// tidied reports whether a problem with these steps is tidy and hides nothing new.
func tidied(own problems.Solved, steps []Step, hidden []hiding) bool {
	texts := map[int]string{}
	for _, s := range steps {
		s.change.combine(texts, s.choice)
	}
	p, err := own.Problem.Trial(texts)
	if err != nil || !sameForm(own.Problem, p) || slices.ContainsFunc(p.Where, func(c problems.Condition) bool { return !c.Holds }) {
		return false
	}
	solution, err := statics.Solve(p.Frame)
	if err != nil || solution.Count.Determinacy() != statics.Determinate {
		return false
	}
	tried := problems.Solved{Problem: p, Solution: solution}
	return len(tried.Shortcomings()) == 0 &&
		!slices.ContainsFunc(hidings(tried), func(h hiding) bool { return !slices.Contains(hidden, h) })
}
