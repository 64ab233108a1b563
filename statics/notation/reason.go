package notation

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics"
)

// Because says in one sentence why a step of a plan is taken: the free body, and what leaves one unknown in its sum.
// Known tells which forces are known before the step; nil stands for none.
func Because(a *statics.Assembly, step statics.Step, known func(force int) bool, st Style) string {
	if known == nil {
		known = func(int) bool { return false }
	}
	r := reasons{a, st, known}
	s := step.Sums[0]
	switch step.Why {
	case statics.ClosingCheck:
		return "No force came from this sum, so it checks the work: it must come to 0."
	case statics.KeptRelation:
		left := s.Unknowns(known)
		return fmt.Sprintf("This sum still holds %s unknowns, %s: it is kept, to be used when only one is left.", Count(len(left)), List(r.names(left)))
	case statics.RelationUsed:
		return fmt.Sprintf("The sum kept earlier has only one unknown now, %s.", List(r.names(step.Gives)))
	case statics.SolvedTogether:
		return fmt.Sprintf("No sum has only one unknown; these %s hold only %s, so they are solved together.", Count(len(step.Sums)), List(r.names(step.Gives)))
	}
	return Sentence(r.ofBody(s, step.Why) + r.ofSum(s, step.Gives))
}

// Sentence begins s with a capital and ends it with a full stop.
func Sentence(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(r)) + s[size:] + "."
}

// Count is a small number as a word: "two".
func Count(n int) string {
	words := [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}
	if n >= 0 && n < len(words) {
		return words[n]
	}
	return fmt.Sprint(n)
}

// reasons finds the words for the choice of a sum.
type reasons struct {
	*statics.Assembly
	st    Style
	known func(int) bool
}

func (r reasons) names(forces []int) []string {
	var names []string
	for _, i := range forces {
		names = append(names, r.Forces[i].Name)
	}
	return names
}

// left lists the unknowns that act on a free body from outside.
func (r reasons) left(b statics.FreeBody) []int {
	var left []int
	for _, i := range r.ForcesOn(b) {
		if sign, _ := r.Facing(b, i); sign != 0 && !r.known(i) {
			left = append(left, i)
		}
	}
	return left
}

// ofBody says why this free body, up to the comma, colon or semicolon before the reason for the sum.
func (r reasons) ofBody(s statics.Sum, why statics.Choice) string {
	body, left := BodyText(r.Assembly, s.Body), r.left(s.Body)
	if len(left) == 1 {
		return fmt.Sprintf("only %s is left on %s", r.Forces[left[0]].Name, body)
	}
	has := "has"
	if strings.HasPrefix(body, "parts ") {
		has = "together have"
	}
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
	if r.Bodies() == 1 {
		return fmt.Sprintf("%s holds %s unknowns, but ", body, Count(len(left)))
	}
	return fmt.Sprintf("of the %s where a sum has one unknown, %s has the fewest left (%d): ", plural(len(r.Pins) == 0, "parts", "bodies"), body, len(left))
}

// ofSum says why this sum: which unknown is alone in it, and what keeps the others out.
func (r reasons) ofSum(s statics.Sum, gives []int) string {
	left := r.left(s.Body)
	if len(left) == 1 {
		return r.alone(s, left[0])
	}
	text := fmt.Sprintf("%s is the only unknown in %s", List(r.names(gives)), r.sum(s))
	if s.Moment {
		text = fmt.Sprintf("%s is the only unknown with a moment about %s", List(r.names(gives)), r.centre(s))
	}
	absent := absentTerms(s, func(t statics.Term) bool { return t.Force != statics.None && slices.Contains(left, t.Force) })
	if why := absences(r.Assembly, s, absent, r.st); len(why) > 0 {
		text += ", since " + List(why)
	}
	return text
}

// sum is the name of a force sum within a sentence.
func (r reasons) sum(s statics.Sum) string {
	return r.st.either("", "the ") + SumName(r.Assembly, s, r.st)
}

// centre is the centre within a sentence: a joint, or a point that is none.
func (r reasons) centre(s statics.Sum) string {
	if s.Centre == statics.None {
		return "the point " + CentreText(r.Assembly, s, r.st)
	}
	return CentreText(r.Assembly, s, r.st)
}

// alone says what is good about a sum for the last unknown of a body.
func (r reasons) alone(s statics.Sum, force int) string {
	switch {
	case s.Moment && r.Forces[force].Couple && s.Centre == r.Forces[force].Joint:
		return fmt.Sprintf(", and about %s the forces there have no moment", r.centre(s))
	case s.Moment:
		return fmt.Sprintf(", and a sum of moments about %s gives it", r.centre(s))
	}
	return ", and " + r.sum(s) + " gives it"
}

// absentTerms are the terms that do not count and that want likes, but for components of forces of which another
// component counts.
func absentTerms(s statics.Sum, want func(statics.Term) bool) []statics.Term {
	var absent []statics.Term
	for _, t := range s.Terms {
		if t.Why != statics.Counts && want(t) {
			absent = append(absent, t)
		}
	}
	return absent
}

// AbsentText says why forces and loads that act on the body have no part in the sum: "Cx, Cy and Dy pass through C.
// The pin forces at B are inside the cut." It is empty if all count.
func AbsentText(a *statics.Assembly, s statics.Sum, st Style) string {
	var sentences []string
	for _, c := range absences(a, s, absentTerms(s, func(statics.Term) bool { return true }), st) {
		sentences = append(sentences, Sentence(c))
	}
	return strings.Join(sentences, " ")
}

// absences are the reasons of absent terms as clauses, one for each kind of reason.
func absences(a *statics.Assembly, s statics.Sum, absent []statics.Term, st Style) []string {
	var clauses []string
	for _, why := range []statics.Absence{statics.ThroughCentre, statics.SquareTo, statics.NoPush, statics.InsideBody} {
		var of []statics.Term
		for _, t := range absent {
			if t.Why == why {
				of = append(of, t)
			}
		}
		if len(of) > 0 {
			clauses = append(clauses, absenceClause(a, s, of, st))
		}
	}
	return clauses
}

// absenceClause is the reason that the given terms share.
func absenceClause(a *statics.Assembly, s statics.Sum, of []statics.Term, st Style) string {
	one := len(of) == 1
	if of[0].Why == statics.InsideBody && !one {
		return insideClause(a, of)
	}
	who := List(givers(a, of, st))
	switch of[0].Why {
	case statics.InsideBody:
		return who + " is inside the cut"
	case statics.ThroughCentre:
		centre := "that point"
		if s.Centre != statics.None {
			centre = CentreText(a, s, st)
		}
		return who + plural(one, " passes", " pass") + " through " + centre
	case statics.SquareTo:
		return who + " " + squareWords(s, one)
	}
	return who + " only " + plural(one, "turns", "turn") + " the body"
}

// squareWords says of forces square to the direction of a sum how they lie.
func squareWords(s statics.Sum, one bool) string {
	switch {
	case s.Along.Y.IsZero():
		return plural(one, "is", "are") + " vertical"
	case s.Along.X.IsZero():
		return plural(one, "is", "are") + " horizontal"
	}
	return plural(one, "acts", "act") + " square to the direction of the sum"
}

func plural(one bool, singular, plural string) string {
	if one {
		return singular
	}
	return plural
}

// insideClause names the joints whose forces have both faces inside the cut.
func insideClause(a *statics.Assembly, of []statics.Term) string {
	var joints []string
	for _, t := range of {
		if name := a.Frame.Joints[a.Forces[t.Force].Joint].Name; !slices.Contains(joints, name) {
			joints = append(joints, name)
		}
	}
	return "the forces that pass at " + List(joints) + " are inside the cut"
}

// givers names what gives each term.
func givers(a *statics.Assembly, of []statics.Term, st Style) []string {
	var who []string
	for _, t := range of {
		who = append(who, GiverText(a, t, st))
	}
	return who
}

// GiverText names the force or load that gives a term, and the component that a term of two is about: "Ay", "the
// horizontal component of the 5 kN load on AB".
func GiverText(a *statics.Assembly, t statics.Term, st Style) string {
	part := ""
	if name, ok := componentNames[t.What]; ok {
		part = "the " + name + " component of "
	}
	if t.Force != statics.None {
		return part + a.Forces[t.Force].Name
	}
	return part + ActionText(a, t.Action, st)
}
