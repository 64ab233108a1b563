package worksheet

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/judging"
)

// Judged is what an answer to an item is held against where no sum stands on the page, as on a sheet, with exact values:
// of a force, the sum that gives it in the plan; of N, V and M, the sums of the kept pieces. All slips of the catalogue are
// looked for. Its method LikelyWrong lists the likeliest wrong values, with what is said of each; its method Range tells
// from where to where an answer is taken as right.
func Judged(p problems.Solved, item problems.Item) *judging.Case {
	j := judging.Judge{Solution: p.Solution, Style: p.Problem.Style(false)}
	switch {
	case item.Place:
		return j.Place(item.Member, item.Station, item.Stretch)
	case item.Force == statics.None:
		return j.Section(item.Member, item.Station, item.Quantity)
	}
	for i, step := range p.Plan {
		for _, f := range step.Gives {
			if f == item.Force {
				before := p.KnownBefore(i)
				known := func(f int) bool {
					_, is := before(f)
					return is
				}
				return j.Force(judging.Step{Sums: step.Sums, Gives: step.Gives, Known: known}, f)
			}
		}
	}
	return j.Plain(item.Value) // every force of a solution is given by a step
}
