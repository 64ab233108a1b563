package wording

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Member is a member as its N, V and M are asked or given: "Member AB, distances from A, length 8 m".
func (w Speaker) Member(m int) string {
	return "Member " + w.member(m) + ", distances from " + w.start(m) + ", length " + w.st.WithUnit(w.a.Frame.Length(m), notation.Length)
}

// start is the joint that distances along a member are measured from.
func (w Speaker) start(m int) string { return w.joint(w.a.Frame.Members[m].From) }

// SectionSigns says when N, V and M of a member are positive: for N, for V by the forces on the side of its start, for M by
// the side that it stretches.
func (w Speaker) SectionSigns(m int) string {
	return "N is positive in tension; V where the forces on the side of " + w.start(m) + " act " + w.ShearSense(m) +
		" across the member; M where it stretches the " + w.MomentSide(m) + "."
}

// ShearSense is the sense, across member m, in which the forces on the side of its start act where V is positive.
func (w Speaker) ShearSense(m int) string {
	across := w.a.Frame.Span(m).Left()
	if w.st.Shear == notation.CounterClockwiseShear {
		across = across.Neg()
	}
	return notation.DirectionWord(across)
}

// MomentSide is the side of member m that a positive M stretches: "lower side", "side that faces down to the right".
func (w Speaker) MomentSide(m int) string {
	word := notation.DirectionWord(w.a.Frame.Span(m).Left().Neg())
	if side, ok := map[string]string{"up": "upper side", "down": "lower side", "left": "left side", "right": "right side"}[word]; ok {
		return side
	}
	return "side that faces " + word
}

// TensionSide is the side of member m that a moment stretches, the right-hand side on the way along it if it is positive:
// "bottom", "lower left"; empty for zero.
func (w Speaker) TensionSide(m int, moment exact.Num) string {
	side := w.a.Frame.Span(m).Left()
	switch moment.Sign() {
	case 0:
		return ""
	case 1:
		side = side.Neg()
	}
	return sideWord(side)
}

// sideWord is the side of a member that a direction points to.
func sideWord(v statics.Vector) string {
	across := [...]string{"left", "", "right"}[v.X.Sign()+1]
	height := [...]string{"bottom", "", "top"}[v.Y.Sign()+1]
	switch {
	case across == "":
		return height
	case height == "":
		return across
	}
	return map[string]string{"bottom": "lower ", "top": "upper "}[height] + across
}
