package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// checks hold the student's values against the sums that check the work, where every force in them was answered.
func (e *exam) checks() []string {
	var lines []string
	if e.truth == nil || e.result == nil {
		return nil
	}
	own, answered := e.result.Forces()
	words := wording.New(e.truth.Assembly, e.about.style())
	for _, step := range e.truth.Plan {
		if !step.Check || slices.ContainsFunc(step.Sums[0].Terms(), func(t statics.Term) bool { return t.Force != statics.None && !answered[t.Force] }) {
			continue
		}
		var comes, largest exact.Num
		for _, t := range step.Sums[0].Terms() {
			v := t.Value()
			if t.Force != statics.None {
				v = v.Mul(own[t.Force])
			}
			comes, largest = comes.Add(v), exact.Max(largest, v.Abs())
		}
		name := words.BodyAndSum(step.Sums[0])
		if comes.Abs().Mul(exact.Int(100)).Cmp(largest) <= 0 {
			lines = append(lines, wording.Sentence("The check, "+name+", closes with your values"))
			continue
		}
		dim := notation.Force
		if step.Sums[0].Moment {
			dim = notation.Moment
		}
		lines = append(lines, wording.Sentence("The check, "+name+", comes to "+words.Value(comes, dim)+" with your values: it shows that something is wrong"))
	}
	return lines
}
