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
func (w Speaker) MomentSide(m int) string { return w.Stretched(m, one) }

// Stretched is the side of member m that a moment other than zero stretches, as MomentSide says it.
func (w Speaker) Stretched(m int, moment exact.Num) string {
	side := w.TensionSide(m, moment)
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

// KeptPiece names the piece of a part that is kept where a member is cut: "the piece of part ABC on the side of B, cut just
// after B on BC", "the stretch of BC between two cuts".
func (w Speaker) KeptPiece(k statics.Kept) string {
	m := w.a.Frame.Members[k.Member]
	start, side := "the piece of "+Body(w.a, statics.FreeBody{w.a.PartOf(k.Member)}), m.From
	switch k.Side {
	case statics.Between:
		return "the stretch of " + m.Name + " from the cut " + w.cutPlace(k.Member, k.Other) + " to the cut " + w.cutPlace(k.Member, k.At)
	case statics.ToEnd:
		side = m.To
	}
	return start + " on the side of " + w.joint(side) + ", cut " + w.cutPlace(k.Member, k.At) + " on " + m.Name
}

// KeptTitle names that piece shortly, where the part and where distances begin are told elsewhere: "BC cut just after 2.4 m: the
// piece on the side of B".
func (w Speaker) KeptTitle(k statics.Kept) string {
	m := w.a.Frame.Members[k.Member]
	switch k.Side {
	case statics.Between:
		return w.KeptPiece(k)
	case statics.ToEnd:
		return m.Name + " cut " + w.cutAt(k.Member, k.At, w.distance) + ": the piece on the side of " + w.joint(m.To)
	}
	return m.Name + " cut " + w.cutAt(k.Member, k.At, w.distance) + ": the piece on the side of " + w.joint(m.From)
}

// KeptSum names the sum of that piece that gives N, V or M: "the piece of part ABC on the side of B, cut just after B on BC, ΣM about
// the cut".
func (w Speaker) KeptSum(k statics.Kept, q statics.Quantity) string {
	sum := w.either("ΣF", "sum of forces") + " along " + w.member(k.Member)
	switch q {
	case statics.ShearForce:
		sum = w.either("ΣF", "sum of forces") + " across " + w.member(k.Member)
	case statics.BendingMoment:
		sum = w.either("ΣM", "sum of moments") + " about the cut"
	}
	return w.KeptPiece(k) + ", " + sum
}

// distance is a distance along a member without from where.
func (w Speaker) distance(_ int, x exact.Num) string { return w.st.WithUnit(x, notation.Length) }

// cutPlace is where along a member a cut lies: "at 2.4 m from B", "just after 2.4 m from B", "just before C".
func (w Speaker) cutPlace(m int, at statics.Station) string { return w.cutAt(m, at, w.Along) }

// cutAt is where along a member a cut lies, its distance in the words of a function.
func (w Speaker) cutAt(m int, at statics.Station, along func(m int, x exact.Num) string) string {
	side := map[statics.Side]string{statics.Before: "just before ", statics.After: "just after ", statics.Both: "at "}[at.Side]
	switch {
	case at.At.IsZero():
		return side + w.start(m)
	case at.At.Equal(w.a.Frame.Length(m)):
		return side + w.joint(w.a.Frame.Members[m].To)
	}
	return side + along(m, at.At)
}

// AtCut says how N, V or M acts on the piece that is kept: in its positive sense, or with its value, in the signs of
// package statics, as it really acts.
func (w Speaker) AtCut(k statics.Kept, q statics.Quantity, value *exact.Num) string {
	sign, text := 1, q.Letter()+" at the cut is unknown, positive if it acts "
	if q == statics.ShearForce && w.st.Shear == notation.CounterClockwiseShear {
		sign = -1
	}
	if value != nil {
		if value.IsZero() {
			return q.Letter() + " at the cut is 0"
		}
		d := notation.Force
		if q == statics.BendingMoment {
			d = notation.Moment
		}
		sign, text = value.Sign(), q.Letter()+" at the cut is "+w.st.Result(value.Abs(), d)+" and acts "
	}
	out := w.a.Frame.Span(k.Member)
	if k.Facing() < 0 {
		out = out.Neg()
	}
	v := out
	switch q {
	case statics.BendingMoment:
		return text + Turn(sign*k.Facing())
	case statics.ShearForce:
		v = out.Left().Neg()
	}
	if sign < 0 {
		v = v.Neg()
	}
	return text + notation.DirectionWord(v)
}
