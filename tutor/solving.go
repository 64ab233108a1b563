package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// What is said of a value where its sums stand on the page, printed or written and found right: how they are solved.

// open lists the sums of a step in which a force is asked for, and its unknowns that the student has not found.
func (c coach) open(q Question) (sums []statics.Sum, unknowns []int) {
	step := c.about.solution.Plan[q.Step]
	for _, f := range step.Gives {
		if f == q.Force || !c.sheet.knownForce(f) {
			unknowns = append(unknowns, f)
		}
	}
	if len(unknowns) == 1 {
		for _, s := range step.Sums {
			if !s.Factor(q.Force).IsZero() {
				return []statics.Sum{s}, unknowns // the other unknown is found, so one sum gives this one
			}
		}
	}
	return step.Sums, unknowns
}

// solvingHints are the hints for a value: which term holds the unknown, how the sum is solved, and the sum with all that
// is known on the right.
func (c coach) solvingHints(q Question) [3]string {
	sums, unknowns := c.open(q)
	if len(sums) > 1 {
		return c.togetherHints(q, sums, unknowns)
	}
	s := sums[0]
	say := wording.New(c.about.solution.Assembly, c.about.style())
	if !c.about.hasKnown(s, q.Force) {
		rule := "nothing else on this body counts in the sum, so nothing can balance " + q.Name + "."
		if !s.Factor(q.Force).Abs().Equal(exact.Int(1)) {
			rule = "a product is zero only if one of its factors is."
		}
		return [3]string{
			"the sum holds " + q.Name + " and nothing else: what must it be for the sum to be zero?", rule,
			"the sum is " + say.Symbols(s) + ": there is nothing to take to the other side; give the one value that makes it true, or type tell.",
		}
	}
	write := "write " + say.Moved(s, unknowns, c.sheet.known) + "; then solve it, or type tell."
	if oneNumber(say, s, q.Force) { // taken to the other side it is the value
		write = "the sum is " + say.Numbers(s, c.sheet.known) + ": its two terms have the same size and opposite signs; or type tell."
	}
	return [3]string{
		"the only unknown in the sum is " + q.Name + ": which terms are known, and what does each of them come to?",
		c.about.solvingRule(s, q) + ".",
		write,
	}
}

// oneNumber reports whether a sum holds a force by itself and besides one number.
func oneNumber(say wording.Speaker, s statics.Sum, force int) bool {
	numbers := 0
	for _, t := range s.Terms() {
		switch {
		case t.Why != statics.Counts:
		case say.Factors(s, t) > 1:
			return false
		case t.Force != force:
			numbers++
		}
	}
	return numbers == 1
}

// togetherHints are the hints for two sums that give their unknowns together.
func (c coach) togetherHints(q Question, sums []statics.Sum, unknowns []int) [3]string {
	say := wording.New(c.about.solution.Assembly, c.about.style())
	names := c.about.forceNames(unknowns)
	other := names[0]
	if other == q.Name {
		other = names[len(names)-1]
	}
	var lines []string
	for _, s := range sums {
		lines = append(lines, say.Moved(s, unknowns, c.sheet.known))
	}
	teach := "express " + other + " by " + q.Name + " in one sum, put that into the other, and solve it for " + q.Name + "."
	if round := c.about.wayRound(q.Step); round != "" {
		teach = strings.TrimSuffix(teach, ".") + "; or " + round + "."
	}
	return [3]string{
		"each of the two sums holds " + strings.Join(names, " and ") + ": from which of them is " + other + " more easily expressed?",
		teach,
		"write " + strings.Join(lines, " and ") + "; then solve them together, or type tell.",
	}
}

// wayRound is how an expert avoids solving two sums together, or nothing where there is no such way.
func (m *matter) wayRound(step int) string {
	before := m.solution.KnownBefore(step)
	known := make([]bool, len(m.solution.Forces))
	for i := range known {
		_, known[i] = before(i)
	}
	split := m.solution.Split(&m.solution.Plan[step], known)
	if split == nil {
		return ""
	}
	say := wording.New(split.Assembly, m.style())
	joint := m.solution.Frame.Joints[split.Forces[split.Along].Joint].Name
	return "split the force at " + joint + " into one part along the line to " + say.Place(split.Toward) +
		" and one vertical, since the first has no moment there"
}

// hasKnown reports whether a sum has a term other than those of one force.
func (m *matter) hasKnown(s statics.Sum, force int) bool {
	for _, t := range s.Terms() {
		if t.Why == statics.Counts && t.Force != force {
			return true
		}
	}
	return false
}

// solvingRule is how a sum with one unknown is solved.
func (m *matter) solvingRule(s statics.Sum, q Question) string {
	rule := "take the known terms to the other side, each with its sign changed"
	if !s.Factor(q.Force).Abs().Equal(exact.Int(1)) {
		rule += ", then divide by what multiplies " + q.Name
	}
	return rule
}

// careful is the order in which the arithmetic of a sum is best done: no product and no division where it has none.
func (fb *feedback) careful(s statics.Sum, q Question) string {
	one := exact.Int(1)
	divides := !s.Factor(q.Force).Abs().Equal(one)
	multiplies := slices.ContainsFunc(s.Terms(), func(t statics.Term) bool {
		spread := t.Action != statics.None && fb.about.solution.Actions[t.Action].Shape.Spread()
		return t.Why == statics.Counts && t.Force != q.Force && (spread || !t.Arm.Equal(one) || t.Force != statics.None && !t.Size.Equal(one))
	})
	switch {
	case multiplies && divides:
		return "take each product by itself, then add them with their signs, and divide last."
	case multiplies:
		return "take each product by itself, then add them with their signs: which " + q.Name + " brings that to zero?"
	case divides:
		return "add the known terms with their signs, take the result to the other side, and divide last."
	}
	return "add the known terms with their signs: which " + q.Name + " brings that to zero?"
}

// unsolved is said of a value that does not follow from its sums, where no slip leads to it; more is said at each try.
func (fb *feedback) unsolved(q Question) string {
	step := fb.about.solution.Plan[q.Step]
	s, tries := step.Sums[0], fb.sheet.inHand().tries
	switch {
	case tries > 3:
		return helpOffered
	case len(step.Sums) > 1 && tries > 2:
		return "the terms are right: write what one sum gives for one unknown, put it into the other, gather its terms, and divide last."
	case len(step.Sums) > 1 && tries > 1:
		return "both values must satisfy both sums: put them back into each, and which of the two does not come to zero?"
	case len(step.Sums) > 1:
		return "the two sums stand as they should and are solved together: what does one of them give for one unknown, put into the other?"
	case !fb.about.hasKnown(s, q.Force) && tries > 2:
		return "nothing on this body pulls or pushes against " + q.Name + " here: what is left for it?"
	case !fb.about.hasKnown(s, q.Force) && tries > 1:
		return "the only term of the sum must be zero: which value of " + q.Name + " makes it so?"
	case !fb.about.hasKnown(s, q.Force):
		return "a sum of one term is zero only if that term is: what must " + q.Name + " be?"
	case tries > 2:
		return "the terms are right: " + fb.careful(s, q)
	case tries > 1:
		return "with all values put in, the terms of the sum add up to zero: what do they add up to with this value of " + q.Name + "?"
	}
	return "the sum stands as it should, so what is left is to solve it: " + fb.about.solvingRule(s, q) + "."
}
