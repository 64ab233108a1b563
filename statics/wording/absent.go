package wording

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// Absent says why forces and loads that act on the body have no part in the sum: "Cx, Cy and Dy pass through C. The pin
// forces at B are inside the cut." It is empty if all count.
func (w sums) Absent(s statics.Sum) string {
	var sentences []string
	for _, c := range w.absences(s, absentTerms(s, func(statics.Term) bool { return true })) {
		sentences = append(sentences, Sentence(c))
	}
	return strings.Join(sentences, " ")
}

// absentTerms are the terms that do not count and that want likes.
func absentTerms(s statics.Sum, want func(statics.Term) bool) []statics.Term {
	var absent []statics.Term
	for _, t := range s.Terms() {
		if t.Why != statics.Counts && want(t) {
			absent = append(absent, t)
		}
	}
	return absent
}

// absences are the reasons of absent terms as clauses, one for each kind of reason.
func (w sums) absences(s statics.Sum, absent []statics.Term) []string {
	var clauses []string
	for _, why := range []statics.Absence{statics.ThroughCentre, statics.SquareTo, statics.NoPush, statics.InsideBody} {
		var of []statics.Term
		for _, t := range absent {
			if t.Why == why {
				of = append(of, t)
			}
		}
		if len(of) > 0 {
			clauses = append(clauses, w.absence(s, of))
		}
	}
	return clauses
}

// absence is the reason that the given terms have in common.
func (w sums) absence(s statics.Sum, of []statics.Term) string {
	one := len(of) == 1
	if of[0].Why == statics.InsideBody && !one {
		return w.insideClause(of)
	}
	var all []string
	for _, t := range of {
		all = append(all, w.Component(t))
	}
	who := notation.List(all)
	switch of[0].Why {
	case statics.InsideBody:
		return who + " is inside the cut"
	case statics.ThroughCentre:
		centre := "that point"
		if s.Centre != statics.None {
			centre = w.centre(s)
		}
		return who + either(one, " passes", " pass") + " through " + centre
	case statics.SquareTo:
		return who + " " + perpendicularWords(s, one)
	}
	return who + " only " + either(one, "turns", "turn") + " the body"
}

// perpendicularWords says of forces perpendicular to the direction of a sum how they lie.
func perpendicularWords(s statics.Sum, one bool) string {
	switch {
	case s.Along.Y.IsZero():
		return either(one, "is", "are") + " vertical"
	case s.Along.X.IsZero():
		return either(one, "is", "are") + " horizontal"
	}
	return either(one, "acts", "act") + " perpendicular to the direction of the sum"
}

// insideClause names the joints whose forces have both faces inside the cut.
func (w sums) insideClause(of []statics.Term) string {
	var joints []string
	for _, t := range of {
		if name := w.joint(w.a.Forces[t.Force].Joint); !slices.Contains(joints, name) {
			joints = append(joints, name)
		}
	}
	return "the forces that pass at " + notation.List(joints) + " are inside the cut"
}
