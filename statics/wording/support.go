package wording

import (
	"strings"

	"unpin/statics"
)

// Support says what a support is and what it exerts: "D: pinned (Dx, Dy)", "E: roller, its force up (RE)"; spoken, what it
// does: "E stands on a roller that pushes up".
func (w givens) Support(s statics.Support) string {
	name := w.joint(s.Joint)
	if w.spoken {
		text := name + " " + w.holds(s)
		if s.On != statics.None {
			text += ", which holds " + w.member(s.On)
		}
		return text
	}
	text := name + ": " + w.supportKind(s)
	if s.On != statics.None {
		text += ", holding " + w.member(s.On)
	}
	return text + " (" + strings.Join(w.reactionsAt(s.Joint), ", ") + ")"
}

// supportKind is the kind of a support, with the direction of its force where it has but one.
func (w givens) supportKind(s statics.Support) string {
	switch s.Kind {
	case statics.Fixed:
		return "fixed"
	case statics.Pinned:
		return "pinned"
	case statics.Roller:
		return "roller, its force " + w.Direction(s.Along)
	}
	return "guide, its force " + w.Direction(s.Along)
}

// holds says what a support does to its joint.
func (w givens) holds(s statics.Support) string {
	switch s.Kind {
	case statics.Fixed:
		return "is fixed"
	case statics.Pinned:
		return "stands on a pinned support"
	case statics.Roller:
		return "stands on a roller that pushes " + w.Direction(s.Along)
	}
	return "is held by a guide that pushes " + w.Direction(s.Along) + " and keeps it from turning"
}

// reactionsAt are the names of the reactions at a joint.
func (w givens) reactionsAt(joint int) []string {
	var names []string
	for _, f := range w.a.Forces {
		if f.Kind == statics.Reaction && f.Joint == joint {
			names = append(names, f.Name)
		}
	}
	return names
}
