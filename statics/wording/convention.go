package wording

import "unpin/statics/notation"

// Conventions says what holds on a whole page: the axes, the turn of moments, the senses of unknowns, and where there are pins
// on which part their forces are named.
func (w Speaker) Conventions() string {
	turns := "Moments and couples are positive counter-clockwise."
	if w.st.Moments == notation.ClockwiseMoments {
		turns = "Moments in a sum are positive clockwise, the couple of a support counter-clockwise."
	}
	text := "x runs to the right and y up. Each sum is one equation of equilibrium. " + turns + " Each unknown is taken in its positive sense: a minus in the result means " +
		"that it acts the other way."
	at := "a pin"
	if w.a != nil {
		if len(w.a.Frame.Connections) == 0 {
			return text
		}
		at = APin(&w.a.Frame)
	}
	return text + " The forces at " + at + " are named as they act on one part; on the other they are reversed."
}

// Units says in what units the numbers of a problem are.
func (w Speaker) Units() string {
	if w.st.Units.Letters() {
		return "forces are multiples of P, lengths of L"
	}
	return w.st.UnitOf(notation.Force) + " and " + w.st.UnitOf(notation.Length)
}
