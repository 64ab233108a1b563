package wording

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// BodyName names one body: "part CD", "pin C".
func (w forces) BodyName(b int) string { return Body(w.a, statics.FreeBody{b}) }

// Acts says how force i really acts if it has that value: "up on part CD, down on part BC", "tension"; empty for zero.
func (w forces) Acts(i int, v exact.Num) string {
	f := w.a.Forces[i]
	switch {
	case v.IsZero():
		return ""
	case f.Kind == statics.MemberPull:
		return notation.SenseOf(f, v)
	}
	text := notation.SenseOf(f, v) + " on " + w.BodyName(f.On)
	if f.By != statics.None {
		text += ", " + notation.SenseOf(f, v.Neg()) + " on " + w.BodyName(f.By)
	}
	return text
}

// Found is force i with the value that has come out, the exact value where that was rounded, and what it means: "Dy =
// 15.3 kN (exactly 46/3): up on part CD".
func (w forces) Found(i int, v exact.Num) string {
	f := w.a.Forces[i]
	dim := notation.ForceDimension(f)
	text := f.Name + w.equals() + w.Value(v, dim)
	if exactly := w.Exactly(v, dim); exactly != "" {
		text += " (exactly " + exactly + ")"
	}
	if acts := w.Acts(i, v); acts != "" {
		text += ": " + acts
	}
	if w.PullsAway(i, v) {
		text += " (the roller pulls)"
	}
	return text
}

// PullsAway reports whether force i, of that value, is that of a roller that holds the frame back.
func (w forces) PullsAway(i int, v exact.Num) bool {
	f := w.a.Forces[i]
	if f.Kind != statics.Reaction || f.Couple || v.Sign() >= 0 {
		return false
	}
	for _, s := range w.a.Frame.Supports {
		if s.Joint == f.Joint && s.Kind == statics.Roller {
			return true
		}
	}
	return false
}

// Unknown says what force i is and which way counts as positive: "Cy acts on part CD, positive up, and the opposite on
// part BC". Of the force of a slot or a sleeve it says why it has its direction.
func (w forces) Unknown(i int) string {
	f := w.a.Forces[i]
	text := fmt.Sprintf("%s%s acts on %s, positive %s", f.Name, w.sliding(f), w.a.BodyName(f.On), notation.SenseOf(f, one))
	if f.By != statics.None {
		text += ", and the opposite on " + w.a.BodyName(f.By)
	}
	return text
}

// sliding says of the force of a slot or a sleeve why it has the direction it has.
func (w forces) sliding(f statics.Force) string {
	if f.Kind != statics.PinForce || f.Couple {
		return ""
	}
	for _, c := range w.a.Frame.Connections {
		if c.Joint == f.Joint && c.Kind != statics.Pin {
			return ", the force perpendicular to the line of sliding at " + w.joint(f.Joint) + ","
		}
	}
	return ""
}

// Meetings says what acts on a body at its joints and what exerts it, one text for each: the joint, and "Bx right, By up:
// from part AB, reversed".
func (w forces) Meetings(b int) [][2]string {
	var all [][2]string
	for _, group := range w.meetings(b) {
		all = append(all, [2]string{w.joint(w.a.Forces[group[0]].Joint), w.meeting(b, group)})
	}
	return all
}

// meetings groups the unknowns on a body by where they act and what exerts them.
func (w forces) meetings(b int) [][]int {
	var groups [][]int
	for _, i := range w.a.ForcesOn(statics.FreeBody{b}) {
		if last := len(groups) - 1; last >= 0 {
			f, g := w.a.Forces[i], w.a.Forces[groups[last][0]]
			if f.Joint == g.Joint && exerts(b, f) == exerts(b, g) {
				groups[last] = append(groups[last], i)
				continue
			}
		}
		groups = append(groups, []int{i})
	}
	return groups
}

// exerts is the body that exerts force f on body b, or None: the ground.
func exerts(b int, f statics.Force) int {
	if f.On == b {
		return f.By
	}
	return f.On
}

// meeting lists unknowns that one body exerts at one joint: "Bx right, By up: from part AB".
func (w forces) meeting(b int, group []int) string {
	var all []string
	for _, i := range group {
		all = append(all, w.a.Forces[i].Name+" "+w.senseOn(b, w.a.Forces[i]))
	}
	text := strings.Join(all, ", ")
	f := w.a.Forces[group[0]]
	other := exerts(b, f)
	switch {
	case other == statics.None:
		return text + ": from the support"
	case f.On != b:
		return text + ": from " + w.BodyName(other) + ", reversed"
	}
	return text + ": from " + w.BodyName(other)
}

// senseOn is the sense in which force f, positive, acts on body b; an inclined force with its direction.
func (w forces) senseOn(b int, f statics.Force) string {
	switch {
	case f.Couple && f.On != b:
		return Turn(-1)
	case f.Couple:
		return Turn(1)
	case f.On != b:
		return w.Direction(f.Along.Neg())
	}
	return w.Direction(f.Along)
}

// OnBody tells how force i acts on a free body, reversed if sign is negative, and on what exerts it; value nil is an
// unknown.
func (w forces) OnBody(body statics.FreeBody, i, sign int, value *exact.Num) string {
	f := w.a.Forces[i]
	name := f.Name + " at " + w.joint(f.Joint)
	v := one
	switch {
	case value == nil:
		name += " is unknown, taken to act "
	case value.IsZero():
		return name + " is 0"
	default:
		v = *value
		name += " is " + w.st.Result(v.Abs(), notation.ForceDimension(f)) + " and acts "
	}
	here := notation.Acting(f, v)
	if sign < 0 && f.Kind != statics.MemberPull {
		here = here.Opposite()
	}
	name += here.String()
	if f.By == statics.None || f.Kind == statics.MemberPull {
		return name
	}
	other := f.By
	if body.Has(f.By) {
		other = f.On
	}
	return name + "; on " + w.a.BodyName(other) + " it acts " + here.Opposite().String()
}
