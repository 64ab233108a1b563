package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// DescribeSum says in sentences what the figure of a sum shows, as OfSum draws it: the free body and the sum, what counts in
// it, with its arm and turn about the centre, and what does not and why.
func DescribeSum(a *statics.Assembly, s statics.Sum, known map[int]exact.Num, o Options) []string {
	o.Style.ASCII = true // signs are spelt out
	w := words{a, &a.Frame, o}
	lines := []string{wording.Body(a, s.Body) + ", " + wording.New(a, o.Style).SumTitle(s)}
	for _, t := range s.Terms {
		if t.Why == statics.Counts {
			lines = append(lines, w.term(s, t, known))
		}
	}
	lines = sentences(lines)
	if absent := wording.New(a, o.Style).Absent(s); absent != "" {
		lines = append(lines, absent)
	}
	return lines
}

// term tells how one term acts in a sum.
func (w words) term(s statics.Sum, t statics.Term, known map[int]exact.Num) string {
	text := wording.New(w.a, w.o.Style).Component(t)
	sign := t.Sign
	if t.Force != statics.None {
		value, ok := known[t.Force]
		if ok && value.IsZero() {
			return text + " is 0"
		}
		if ok {
			text += ", " + w.o.result(value.Abs(), notation.ForceDimension(w.a.Forces[t.Force])) + ","
			sign *= value.Sign()
		}
	}
	if !s.Moment {
		along := s.Along
		if sign < 0 {
			along = along.Neg()
		}
		return text + " acts " + notation.DirectionWord(along)
	}
	arm := ""
	if t.What != statics.TurnOnly {
		arm = " has an arm of " + w.o.given(t.Arm, notation.Length) + " and"
	}
	turn := "counter-clockwise" // whatever turn the sum counts as positive
	if sign < 0 {
		turn = "clockwise"
	}
	return text + arm + " turns " + turn
}
