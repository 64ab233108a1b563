package wording

import (
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
)

// rope is a rope over a pulley up to the name of the pulley's joint, and which way it pulls: "rope with a tension of 12 kN
// over a pulley of radius 0.3 m at", ", pulling down and left".
func (w givens) rope(l statics.Load) (what, where string) {
	return "rope with a tension of " + w.st.WithUnit(l.Size, notation.Force) + " over " + w.pulley(l) + " at", w.pulling(l)
}

// pulley names the pulley of a rope, with its radius if that is given.
func (w givens) pulley(l statics.Load) string {
	if l.Radius.IsZero() {
		return "a pulley"
	}
	return "a pulley of radius " + w.st.WithUnit(l.Radius, notation.Length)
}

// pulling says which way the two ends of a rope pull.
func (w givens) pulling(l statics.Load) string {
	if l.Along.Cross(l.Second).IsZero() {
		return ", pulling " + w.clause(l.Along) + " with both ends"
	}
	return ", pulling " + w.clause(l.Along) + " and " + w.Direction(l.Second)
}

// spokenRope tells what a rope over a pulley does and where.
func (w givens) spokenRope(l statics.Load) string {
	return "a rope with a tension of " + w.st.WithUnit(l.Size, notation.Force) + " runs over " + w.pulley(l) + w.spokenPlace(l) + w.pulling(l)
}

// isPull reports whether an action is one of the two pulls of a rope.
func isPull(a *statics.Assembly, x statics.Action) bool {
	return a.Frame.Loads[x.Load].Kind == statics.RopeLoad
}

// pull names one of the two pulls of a rope: "the rope's 12 kN pull down at D".
func (w actions) pull(x statics.Action) string {
	return "the rope's " + w.st.WithUnit(x.Size, notation.Force) + " pull " + notation.DirectionWord(x.Along) + " " + w.loadPlace(x.Load)
}

// pulls names both pulls of a rope as one: "the two 12 kN pulls of the rope at D".
func (w actions) pulls(x statics.Action) string {
	return "the two " + w.st.WithUnit(x.Size, notation.Force) + " pulls of the rope " + w.loadPlace(x.Load)
}

// whichPull tells pulls apart that would bear the same name: by their slopes, or by the sides of the pulley.
func (w actions) whichPull(i int) string {
	x := w.a.Actions[i]
	l := w.a.Frame.Loads[x.Load]
	if !l.Along.Cross(l.Second).IsZero() {
		return "along " + w.st.Pair(x.Along.X, x.Along.Y, notation.Pure)
	}
	first := i+1 < len(w.a.Actions) && w.a.Actions[i+1].Load == x.Load
	if l.Radius.IsZero() {
		return either(first, "its first end", "its second end")
	}
	out := w.a.Frame.Joints[l.Joint].At.To(x.At)
	return either(out.X.IsZero(), "from "+either(out.Y.Sign() > 0, "above", "below"), "on the "+either(out.X.Sign() < 0, "left", "right"))
}

// atRim is a pull of a rope with the place on the pulley where it acts.
func (w actions) atRim(i int) string {
	x := w.a.Actions[i]
	if w.a.Frame.Loads[x.Load].Radius.IsZero() {
		return w.Action(i)
	}
	return w.Action(i) + ", tangent to the pulley at " + w.Point(x.At)
}

// KeptPulleys says of a free body what the pulleys on it mean for its sums; it is empty where there is none, or where their
// radius is not given.
func (w Speaker) KeptPulleys(body statics.FreeBody) string {
	var at []string
	for _, i := range w.a.ActionsOn(body) {
		x := w.a.Actions[i]
		if l := w.a.Frame.Loads[x.Load]; isPull(w.a, x) && !l.Radius.IsZero() && !slices.Contains(at, w.joint(l.Joint)) {
			at = append(at, w.joint(l.Joint))
		}
	}
	switch len(at) {
	case 0:
		return ""
	case 1:
		return "The pulley at " + at[0] + " is kept on, so the rope pulls at its rim. With the pulley taken off, both pulls act at " + at[0] +
			", and every sum comes to the same: their moments about " + at[0] + " cancel."
	}
	return "The pulleys at " + notation.List(at) + " are kept on, so the ropes pull at their rims. With a pulley taken off, both pulls act at its joint, " +
		"and every sum comes to the same: their moments about that joint cancel."
}
