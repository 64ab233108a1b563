package variant

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// An Improvement is a change of one number with which mistakes show that the problem's own numbers hide.
type Improvement struct {
	Name     string // the number that changes: "the distance 3"
	To       string // what it becomes
	Shown    int    // how many mistakes show with it that are hidden now
	Remain   int    // how many are hidden then
	relative exact.Num
}

// MostForces is the most unknowns of a problem for which an improvement is looked for: a few seconds at worst.
const MostForces = 40

// Sought reports whether improvements of a problem are looked for.
func Sought(p problems.Solved) bool { return len(p.Forces) <= MostForces }

// nearby is how many steps a number is moved at most.
const nearby = 2

// Show is the smallest change of one number, as found for a problem that does not say what may vary, with which the most hidden
// mistakes show and none new is hidden; ok is false where there is none, or nothing is hidden.
func Show(own problems.Solved) (best Improvement, ok bool) {
	if !Sought(own) {
		return best, false
	}
	hidden := hidings(own)
	if len(hidden) == 0 {
		return best, false
	}
	for _, c := range found(own.Problem) {
		if c.own == stepless || len(c.numbers) == 0 {
			continue
		}
		for choice := max(0, c.own-nearby); choice < min(len(c.Choices), c.own+nearby+1); choice++ {
			better, holds := improvement(own, c, choice, hidden)
			if holds && (!ok || better.Remain < best.Remain || better.Remain == best.Remain && better.relative.Cmp(best.relative) < 0) {
				best, ok = better, true
			}
		}
	}
	return best, ok
}

// improvement is what comes of a choice, and whether it is better than the problem's own numbers.
func improvement(own problems.Solved, c Change, choice int, hidden []hiding) (Improvement, bool) {
	texts := map[int]string{}
	c.combine(texts, choice)
	p, err := own.Problem.Trial(texts)
	if choice == c.own || err != nil || !sameForm(own.Problem, p) {
		return Improvement{}, false
	}
	s, err := statics.Solve(p.Frame)
	if err != nil || s.Count.Determinacy() != statics.Determinate || !samePlan(own.Solution, s) {
		return Improvement{}, false
	}
	tried := problems.Solved{Problem: p, Solution: s}
	for _, r := range problems.Rules() {
		if tried.Breaks(r) && !own.Breaks(r) {
			return Improvement{}, false
		}
	}
	left := hidings(tried)
	if len(left) >= len(hidden) || slices.ContainsFunc(left, func(h hiding) bool { return !slices.Contains(hidden, h) }) {
		return Improvement{}, false
	}
	return Improvement{Name: c.Name, To: c.Choices[choice], Shown: len(hidden) - len(left), Remain: len(left), relative: c.far(choice)}, true
}

// far is how far a choice lies from the problem's own value, relative to it.
func (c Change) far(choice int) exact.Num {
	own, _ := leading(c.texts[c.own][0])
	other, _ := leading(c.texts[choice][0])
	far, err := other.value.Sub(own.value).Quo(own.value)
	if err != nil {
		return exact.Int(1)
	}
	return far.Abs()
}
