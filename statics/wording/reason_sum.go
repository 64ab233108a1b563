package wording

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
)

// ofSum says why this sum: what keeps the other unknowns out of it.
func (r reasons) ofSum(s statics.Sum, gives []int) string {
	others := slices.DeleteFunc(r.left(s.Body), func(i int) bool { return slices.Contains(gives, i) })
	why := r.out(s, others)
	if s.Moment {
		why = r.through(s, others)
	}
	return Sentence(fmt.Sprintf("%s: %s only %s", why, r.leaves(s), notation.List(r.names(gives))))
}

// leaves is the beginning of what a sum leaves: "moments about C leave", "ΣFx leaves".
func (r reasons) leaves(s statics.Sum) string {
	return r.sumOrMoments(s) + either(s.Moment, " leave", " leaves")
}

// sumOrMoments names a sum within a sentence: "moments about C", "ΣFx".
func (r reasons) sumOrMoments(s statics.Sum) string {
	if s.Moment {
		return "moments about " + r.centrePoint(s)
	}
	return r.sum(s)
}

// through says how forces pass through the centre of a sum of moments: those that act there, and those whose lines pass.
func (r reasons) through(s statics.Sum, forces []int) string {
	var here, lines []string
	for _, i := range forces {
		if r.actsAt(s, i) {
			here = append(here, r.a.Forces[i].Name)
		} else {
			lines = append(lines, r.a.Forces[i].Name)
		}
	}
	centre := r.centrePoint(s)
	acting := notation.List(here) + either(len(here) == 1, " acts", " act") + " at " + centre
	line := "the " + Plural(len(lines), "line") + " of " + notation.List(lines) + either(len(lines) == 1, " passes", " pass") + " through "
	switch {
	case len(lines) == 0:
		return acting
	case len(here) == 0 && len(lines) == 2 && s.Centre == statics.None:
		return "the lines of " + notation.List(lines) + " cross at " + centre
	case len(here) == 0:
		return line + centre
	}
	return acting + ", and " + line + "it"
}

// actsAt reports whether a force that has no moment acts at the centre itself.
func (r reasons) actsAt(s statics.Sum, force int) bool {
	return slices.ContainsFunc(s.Terms(), func(t statics.Term) bool { return t.Force == force && t.At.Equal(s.About) })
}

// out says why forces have no part in a sum of forces.
func (r reasons) out(s statics.Sum, forces []int) string {
	var square, couples []string
	for _, i := range forces {
		if f := r.a.Forces[i]; f.Couple {
			couples = append(couples, f.Name)
		} else {
			square = append(square, f.Name)
		}
	}
	var why []string
	if len(square) > 0 {
		why = append(why, notation.List(square)+" "+perpendicularWords(s, len(square) == 1))
	}
	if len(couples) > 0 {
		why = append(why, notation.List(couples)+either(len(couples) == 1, " is a couple", " are couples"))
	}
	return notation.List(why)
}

// sum is the name of a force sum within a sentence.
func (r reasons) sum(s statics.Sum) string { return r.either("", "the ") + r.SumName(s) }

// centrePoint is the centre within a sentence: a joint, or a point that is none.
func (r reasons) centrePoint(s statics.Sum) string {
	if s.Centre == statics.None {
		return "the point " + r.centre(s)
	}
	return r.centre(s)
}

// last is the reason for a sum for the last unknown of a body.
func (r reasons) last(s statics.Sum, force int) string {
	f := r.a.Forces[force]
	text := fmt.Sprintf("only %s is left on %s", f.Name, Body(r.a, s.Body))
	switch {
	case s.Moment && f.Couple && s.Centre == f.Joint:
		return Sentence(fmt.Sprintf("%s, and about %s the forces there have no moment", text, r.centrePoint(s)))
	case s.Moment:
		return Sentence(fmt.Sprintf("%s, and %s give it", text, r.sumOrMoments(s)))
	}
	return Sentence(fmt.Sprintf("%s, and %s gives it", text, r.sum(s)))
}
