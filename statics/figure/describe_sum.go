package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// DescribeSum says in sentences what the figure of a sum shows, as OfSum draws it: the free body and the sum, what counts in
// it, with its arm and turn about the centre, and what does not and why.
func DescribeSum(a *statics.Assembly, s statics.Sum, known map[int]exact.Num, o Options) []string {
	o.Style.ASCII = true // signs are spelt out
	w := wording.New(a, o.Style).Spoken()
	value := func(force int) (exact.Num, bool) { v, ok := known[force]; return v, ok }
	lines := []string{w.BodyAndSum(s)}
	for _, t := range s.Terms() {
		if t.Why == statics.Counts {
			lines = append(lines, w.TermActs(s, t, value))
		}
	}
	lines = sentences(lines)
	if absent := w.Absent(s); absent != "" {
		lines = append(lines, absent)
	}
	return lines
}
