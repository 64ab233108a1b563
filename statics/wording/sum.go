package wording

import (
	"unpin/statics"
	"unpin/statics/notation"
)

// SumTitle names a sum and its positive sense: "ΣM about C (counter-clockwise +)", "ΣFx (right +)".
func (w sums) SumTitle(s statics.Sum) string {
	sense := w.positiveSense(s)
	return w.SumName(s) + w.either(" ("+sense+" +)", ", "+sense+" positive")
}

// SumName names a sum: "ΣM about C", "ΣFx", "ΣF perpendicular to RD"; in ASCII "sum of moments about C".
func (w sums) SumName(s statics.Sum) string {
	if s.Moment {
		return w.either("ΣM", "sum of moments") + " about " + w.centre(s)
	}
	switch {
	case s.Along.Y.IsZero():
		return w.either("ΣFx", "sum of horizontal forces")
	case s.Along.X.IsZero():
		return w.either("ΣFy", "sum of vertical forces")
	}
	name := w.either("ΣF", "sum of forces")
	for _, t := range s.Terms() {
		if t.Force != statics.None && t.Why == statics.SquareTo {
			return name + " perpendicular to " + w.a.Forces[t.Force].Name
		}
	}
	return name + " along " + w.st.Pair(s.Along.X, s.Along.Y, notation.Pure)
}

// BodyAndSum is the free body of a sum and the sum: "part CD, ΣM about C (counter-clockwise +)".
func (w sums) BodyAndSum(s statics.Sum) string { return Body(w.a, s.Body) + ", " + w.SumTitle(s) }

// centre is the centre of a moment sum: the name of its joint, or its place, "(8, 19.67)".
func (w sums) centre(s statics.Sum) string {
	if s.Centre != statics.None {
		return w.joint(s.Centre)
	}
	return w.st.Pair(s.About.X, s.About.Y, notation.Length)
}

// positiveSense is the sense that counts as positive in a sum.
func (w sums) positiveSense(s statics.Sum) string {
	if s.Moment {
		return w.st.Moments.Positive().String()
	}
	return notation.DirectionWord(s.Along)
}

// Turn is the sense of a turn of that sign, counter-clockwise positive.
func Turn(sign int) string {
	if sign < 0 {
		return notation.Clockwise.String()
	}
	return notation.CounterClockwise.String()
}
