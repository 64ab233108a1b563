package wording

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Member is a member as its N, V and M are asked or given: "Member AB, 8 m, measured from A".
func (w Speaker) Member(m int) string {
	return "Member " + w.member(m) + ", " + w.st.WithUnit(w.a.Frame.Length(m), notation.Length) + ", measured from " + w.start(m)
}

// start is the joint that distances along a member are measured from.
func (w Speaker) start(m int) string { return w.joint(w.a.Frame.Members[m].From) }

// SectionSigns says when N, V and M of a member are positive: for N, for V by the forces on the side of its start, for M by
// the side that it stretches.
func (w Speaker) SectionSigns(m int) string {
	return "N: tension positive. V: positive when the forces on " + w.start(m) + "'s side push " + w.ShearSense(m) +
		". M: positive when the " + w.MomentSide(m) + " is stretched."
}

// ShearSense is the sense, across member m, in which the forces on the side of its start act where V is positive.
func (w Speaker) ShearSense(m int) string {
	across := w.a.Frame.Span(m).Left()
	if w.st.Shear == notation.CounterClockwiseShear {
		across = across.Neg()
	}
	return notation.DirectionWord(across)
}

// MomentSide is the side of member m that a positive M stretches: "bottom", "left side", "lower right side".
func (w Speaker) MomentSide(m int) string {
	side := w.TensionSide(m, one)
	if side == "top" || side == "bottom" {
		return side
	}
	return side + " side"
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
