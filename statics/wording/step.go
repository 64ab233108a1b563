package wording

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// Because says in one sentence why a step of a plan is taken: the free body, and what leaves one unknown in its sum.
// Known tells which forces are known before the step; nil stands for none.
func (w Speaker) Because(step statics.Step, known func(force int) bool) string {
	if known == nil {
		known = func(int) bool { return false }
	}
	r := reasons{w, known}
	s := step.Sums[0]
	switch step.Why {
	case statics.ClosingCheck:
		return r.check(step)
	case statics.KeptRelation:
		return fmt.Sprintf("Two unknowns are left in this sum, %s: it is kept until one of them is known.", notation.List(r.names(s.Unknowns(known))))
	case statics.RelationUsed:
		if len(step.Gives) > 1 {
			return fmt.Sprintf("The sums kept earlier hold only %s now, so they are solved together.", notation.List(r.names(step.Gives)))
		}
		return fmt.Sprintf("The sum kept earlier has only one unknown now, %s.", notation.List(r.names(step.Gives)))
	case statics.SolvedTogether:
		return r.together(step)
	}
	return Sentence(r.ofBody(s, step.Why) + r.ofSum(s, step.Gives))
}

// check says what a closing check is good for.
func (r reasons) check(step statics.Step) string {
	text := "No force came from this sum, so it checks the work: it must come to 0."
	if len(step.Catches) > 0 {
		text += " This catches a mistake in " + Steps(step.Catches) + "."
	}
	return text
}

// Steps names steps of a plan by their numbers from 1, those that follow each other together: "steps 1, 2 and 5 to 8".
func Steps(places []int) string {
	var all []string
	for n := 0; n < len(places); n++ {
		first := n
		for n+1 < len(places) && places[n+1] == places[n]+1 {
			n++
		}
		switch {
		case n > first+1:
			all = append(all, fmt.Sprintf("%d to %d", places[first]+1, places[n]+1))
		default:
			for _, place := range places[first : n+1] {
				all = append(all, strconv.Itoa(place+1))
			}
		}
	}
	return Plural(len(places), "step") + " " + notation.List(all)
}

// Unchecked says which steps of a plan no closing check catches; it is empty if there are none.
func Unchecked(s *statics.Solution) string {
	if open := s.Unchecked(); len(open) > 0 {
		return "No check catches a mistake in " + Steps(open) + "."
	}
	return ""
}

// together says why sums are solved together, and names the sums that were looked at: no more than were searched.
func (r reasons) together(step statics.Step) string {
	return fmt.Sprintf("No sum of %s has only one unknown. These %s hold only %s, so they are solved together.",
		r.searched(), Count(len(step.Sums)), notation.List(r.names(step.Gives)))
}

// searched names the free bodies of which all sums were looked at.
func (r reasons) searched() string {
	one := either(len(r.a.Pins) == 0, "a part", "a part or pin")
	switch n := r.a.EveryGroupOf(); {
	case r.a.Bodies() == 1:
		return "the frame"
	case r.a.Bodies() == 2:
		return one + " or of both together"
	case n == r.a.Bodies():
		return one + ", of several together or of the whole"
	case n == 3:
		return one + ", of the whole or of two or three parts together"
	}
	return one + ", of the whole or of two parts together"
}

// reasons finds the words for the choice of a sum.
type reasons struct {
	Speaker
	known func(int) bool
}

// left lists the unknowns that act on a free body from outside.
func (r reasons) left(b statics.FreeBody) []int {
	var left []int
	for _, i := range r.a.ForcesOn(b) {
		if sign, _ := r.a.Facing(b, i); sign != 0 && !r.known(i) {
			left = append(left, i)
		}
	}
	return left
}

// ofBody says why this free body, up to the comma, colon or semicolon before the reason for the sum.
func (r reasons) ofBody(s statics.Sum, why statics.Choice) string {
	body, left := Body(r.a, s.Body), r.left(s.Body)
	if len(left) == 1 {
		return fmt.Sprintf("only %s is left on %s", r.a.Forces[left[0]].Name, body)
	}
	has := either(strings.HasPrefix(body, "parts "), "together have", "has")
	switch why {
	case statics.StayOnBody:
		return fmt.Sprintf("still on %s: ", body)
	case statics.SplitForce:
		return fmt.Sprintf("on %s, ", body)
	case statics.WholeFrame:
		return "no single part has a sum with one unknown, but " + body + " has: "
	case statics.SeveralParts:
		return fmt.Sprintf("neither a part nor the whole has a sum with one unknown, but %s %s: ", body, has)
	}
	if r.a.Bodies() == 1 {
		return fmt.Sprintf("%s holds %s unknowns, but ", body, Count(len(left)))
	}
	return fmt.Sprintf("%s has a one-unknown equation and the fewest unknowns left (%d): ", body, len(left))
}

// ofSum says why this sum: which unknown is alone in it, and what keeps the others out.
func (r reasons) ofSum(s statics.Sum, gives []int) string {
	left := r.left(s.Body)
	if len(left) == 1 {
		return r.alone(s, left[0])
	}
	text := fmt.Sprintf("%s is the only unknown in %s", notation.List(r.names(gives)), r.sum(s))
	if s.Moment {
		text = fmt.Sprintf("%s is the only unknown with a moment about %s", notation.List(r.names(gives)), r.centrePoint(s))
	}
	absent := absentTerms(s, func(t statics.Term) bool { return t.Force != statics.None && slices.Contains(left, t.Force) })
	if why := r.absences(s, absent); len(why) > 0 {
		text += ", since " + notation.List(why)
	}
	return text
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

// alone says what is good about a sum for the last unknown of a body.
func (r reasons) alone(s statics.Sum, force int) string {
	f := r.a.Forces[force]
	switch {
	case s.Moment && f.Couple && s.Centre == f.Joint:
		return fmt.Sprintf(", and about %s the forces there have no moment", r.centrePoint(s))
	case s.Moment:
		return fmt.Sprintf(", and a sum of moments about %s gives it", r.centrePoint(s))
	}
	return ", and " + r.sum(s) + " gives it"
}
