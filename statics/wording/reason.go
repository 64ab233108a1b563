package wording

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// Because says why a step of a plan is taken, as one who knows the trade would: what is special about the free body, and
// what keeps all other unknowns out of its sum. Known tells which forces are known before the step; nil stands for none.
//
// All that is said is read off the assembly and the sum when it is said, so that it holds whatever is known; only of sums
// solved together it says what the plan searched before it took them (statics, S10).
func (w Speaker) Because(step statics.Step, known func(force int) bool) string {
	if known == nil {
		known = func(int) bool { return false }
	}
	r := reasons{w, known}
	switch {
	case step.Why == statics.ClosingCheck:
		return r.check(step)
	case step.Why == statics.KeptRelation:
		return r.kept(step.Sums[0])
	case step.Why == statics.RelationUsed:
		return r.relation(step)
	case step.Why == statics.SolvedTogether:
		return fmt.Sprintf("No sum of %s has only one unknown. %s", r.searched(), r.together(step))
	case len(step.Sums) > 1:
		return r.together(step)
	}
	return r.single(step)
}

// reasons finds the words for the choice of a sum.
type reasons struct {
	Speaker
	known func(int) bool
}

// single is why a sum with one unknown is taken.
func (r reasons) single(step statics.Step) string {
	s := step.Sums[0]
	if left := r.left(s.Body); len(left) == 1 {
		return r.last(s, left[0])
	}
	var opening []string
	switch step.Why {
	case statics.FewestUnknowns:
		opening = r.turnTo(s.Body[0])
	case statics.WholeFrame:
		opening = r.takeWhole(s.Body)
	case statics.SeveralParts:
		opening = r.takeSeveral(s.Body)
	}
	return strings.Join(append(opening, r.ofSum(s, step.Gives)), " ")
}

// kept says what a sum that leaves two unknowns is good for.
func (r reasons) kept(s statics.Sum) string {
	return fmt.Sprintf("Only %s are left in %s, so that one will give the other: the sum is kept until one of them is known.",
		notation.List(r.names(s.Unknowns(r.known))), r.sumOrMoments(s))
}

// relation says what made kept sums useful.
func (r reasons) relation(step statics.Step) string {
	if len(step.Gives) > 1 {
		return fmt.Sprintf("The sums kept earlier hold only %s now, so they are solved together.", notation.List(r.names(step.Gives)))
	}
	gives := notation.List(r.names(step.Gives))
	if known := r.knownIn(step.Sums[0]); len(known) > 0 {
		return fmt.Sprintf("With %s known, the sum kept earlier gives %s.", notation.List(r.names(known)), gives)
	}
	return fmt.Sprintf("The sum kept earlier gives %s.", gives)
}

// knownIn lists the known forces that count in a sum.
func (r reasons) knownIn(s statics.Sum) []int {
	var known []int
	for _, i := range s.Unknowns(func(int) bool { return false }) {
		if r.known(i) {
			known = append(known, i)
		}
	}
	return known
}

// together says what sums hold that are solved together, and which of their free bodies are two-force members.
func (r reasons) together(step statics.Step) string {
	said := []string{r.holdOnly(step)}
	for i, s := range step.Sums {
		b := s.Body
		again := slices.ContainsFunc(step.Sums[:i], func(t statics.Sum) bool { return slices.Equal(t.Body, b) })
		if bar := r.bar(b[0]); len(b) == 1 && bar != nil && !again && len(r.knownOn(b)) == 0 {
			said = append(said, r.twoForce(b[0], bar))
		}
	}
	return strings.Join(said, " ")
}

// holdOnly says which unknowns sums hold that are solved together.
func (r reasons) holdOnly(step statics.Step) string {
	var all []int
	for _, s := range step.Sums {
		all = append(all, s.Unknowns(r.known)...)
	}
	slices.Sort(all)
	all = slices.Compact(all)
	each := !slices.ContainsFunc(step.Sums, func(s statics.Sum) bool { return len(s.Unknowns(r.known)) < len(all) })
	n, names := len(step.Sums), notation.List(r.names(all))
	switch {
	case each && n == 2:
		return fmt.Sprintf("Both of these hold only %s, so they are solved together.", names)
	case each:
		return fmt.Sprintf("Each of these %s holds only %s, so they are solved together.", Count(n), names)
	}
	return fmt.Sprintf("These %s hold only %s, so they are solved together.", Count(n), names)
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
