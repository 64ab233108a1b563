package variant

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/slip"
)

// A Reason says by which rule a copy is no good, as a clause about copies; empty for a good one.
type Reason string

// The reasons, beside the rules for numbers (problems.Rules).
const (
	Good          Reason = ""
	OwnNumbers    Reason = "they have the numbers of the problem itself"
	Unreadable    Reason = "a load or a joint would lie where it cannot be"
	Condition     Reason = "a condition under where does not hold"
	OtherShape    Reason = "joints would lie in another order, or members that meet turn another way from each other"
	RoughLength   Reason = "the length of a member would be a root, which it is not in the problem"
	Untied        Reason = "a rope would not run to its other end or not be as tight there, or what the text calls equal or symmetrical would not be so"
	Warned        Reason = "something in them would be warned of"
	NotSolvable   Reason = "the frame would not be determinate"
	OtherPlan     Reason = "the plan would be another"
	OtherSigns    Reason = "a force would be zero, or more than one force would change its sign"
	OwnZero       Reason = "a force that is zero with the problem's own numbers would not be zero"
	OffMember     Reason = "a place that is asked about would lie off its member, or where the value jumps"
	HidesMistakes Reason = "a mistake would not show"
	Long          Reason = "a force would have more than two decimals" // good otherwise, as far as was looked: Maker.spare says

	// What a glance finds against copies that may have another reason against them too.
	rough    Reason = "a rule for forces and loads would be broken"
	overlong Reason = "a force would have more than two decimals, whatever else"
)

// ofRule is the reason of a broken rule.
func ofRule(r problems.Rule) Reason { return Reason("this would not hold: " + r.Says) }

// A screen holds copies against the problem that they are copies of.
type screen struct {
	own    problems.Solved
	rules  []problems.Rule // those that the problem itself keeps, but for Decimals
	short  []problems.Rule // Decimals, if it keeps that
	hidden []hiding        // what its own numbers hide
	ties   ties
}

// hiding is one mistake hidden for one force.
type hiding struct {
	force int
	slip  string
}

// newScreen is the screen of the copies of a problem.
func newScreen(own problems.Solved) screen {
	s := screen{own: own, hidden: hidings(own), ties: tiesOf(own.Problem)}
	for _, r := range problems.Rules() {
		switch {
		case own.Breaks(r):
		case r.Says == problems.Decimals:
			s.short = append(s.short, r)
		default:
			s.rules = append(s.rules, r)
		}
	}
	return s
}

// hidings lists what the numbers of a problem hide.
func hidings(p problems.Solved) []hiding {
	hidden, _ := p.Hidden()
	var all []hiding
	for _, h := range hidden {
		for _, s := range h.Slips {
			all = append(all, hiding{h.Force, s.ID})
		}
	}
	return all
}

// judge is the first reason against a copy, what is cheap to find out first.
func (s screen) judge(p *problems.Problem) Reason {
	copied, reason := s.solved(p)
	switch {
	case reason != Good:
		return reason
	case slices.ContainsFunc(s.short, copied.Breaks):
		return Long
	case s.hides(copied):
		return HidesMistakes
	}
	return Good
}

// glance is judge but for copies whose forces alone are against them: these are rough or overlong, and no plan is made of them. In most problems
// they are most of those that are no good.
func (s screen) glance(p *problems.Problem) Reason {
	if reason := s.form(p); reason != Good {
		return reason
	}
	solution, err := statics.SolveForces(p.Frame)
	if err != nil || solution.Values == nil {
		return NotSolvable
	}
	copied := problems.Solved{Problem: p, Solution: solution}
	switch {
	case slices.ContainsFunc(s.rules, func(r problems.Rule) bool { return !r.OfPlan && copied.Breaks(r) }):
		return rough
	case slices.ContainsFunc(s.short, copied.Breaks):
		return overlong
	}
	solution.Complete()
	if reason := s.course(copied); reason != Good {
		return reason
	}
	if s.hides(copied) {
		return HidesMistakes
	}
	return Good
}

// solved is a copy solved, and the first reason against it, but for long decimals and what it hides.
func (s screen) solved(p *problems.Problem) (problems.Solved, Reason) {
	copied := problems.Solved{Problem: p}
	if reason := s.form(p); reason != Good {
		return copied, reason
	}
	solution, err := statics.Solve(p.Frame)
	if err != nil || solution.Values == nil {
		return copied, NotSolvable
	}
	copied.Solution = solution
	return copied, s.course(copied)
}

// form is the first reason against a copy before it is solved.
func (s screen) form(p *problems.Problem) Reason {
	switch {
	case slices.ContainsFunc(p.Where, func(c problems.Condition) bool { return !c.Holds }):
		return Condition
	case !sameOrder(&s.own.Problem.Frame, &p.Frame):
		return OtherShape
	case rougher(&s.own.Problem.Frame, &p.Frame):
		return RoughLength
	case !sameAngles(&s.own.Problem.Frame, &p.Frame):
		return OtherShape
	case !s.ties.keep(&s.own.Problem.Frame, &p.Frame):
		return Untied
	case len(p.Warnings) > len(s.own.Warnings):
		return Warned
	}
	return Good
}

// course is the first reason against a copy in how it is solved.
func (s screen) course(copied problems.Solved) Reason {
	if !samePlan(s.own.Solution, copied.Solution) {
		return OtherPlan
	}
	if reason := s.signs(copied); reason != Good {
		return reason
	}
	if _, err := copied.Asked(copied.Find); err != nil {
		return OffMember
	}
	for _, r := range s.rules {
		if copied.Breaks(r) {
			return ofRule(r)
		}
	}
	return Good
}

// hides reports whether a copy hides a mistake that the problem's own numbers show.
func (s screen) hides(p problems.Solved) bool {
	return p.Hides(func(force int, of *slip.Slip) bool { return slices.Contains(s.hidden, hiding{force, of.ID}) })
}

// signs is the reason against a copy unless as many forces are zero, the same ones, and as many negative within one.
func (s screen) signs(p problems.Solved) Reason {
	more := 0
	for i, v := range p.Values {
		own := s.own.Values[i]
		switch {
		case own.IsZero() && !v.IsZero():
			return OwnZero
		case v.IsZero() && !own.IsZero():
			return OtherSigns
		}
		if v.Sign() < 0 {
			more++
		}
		if own.Sign() < 0 {
			more--
		}
	}
	if more < -1 || more > 1 {
		return OtherSigns
	}
	return Good
}

// samePlan reports whether two plans of the same bodies take the same steps: the same sums, with as many terms, for the same forces.
func samePlan(a, b *statics.Solution) bool {
	return slices.EqualFunc(a.Plan, b.Plan, func(x, y statics.Step) bool {
		return slices.Equal(x.Gives, y.Gives) && x.Why == y.Why && x.Relation == y.Relation && x.Check == y.Check &&
			slices.EqualFunc(x.Sums, y.Sums, sameSum)
	})
}

// sameSum reports whether two sums are of the same body, about the same joint or along an axis alike, and have as many terms
// that count.
func sameSum(x, y statics.Sum) bool {
	counting := func(s statics.Sum) (n int) {
		for _, t := range s.Terms() {
			if t.Why == statics.Counts {
				n++
			}
		}
		return n
	}
	return slices.Equal(x.Body, y.Body) && x.Moment == y.Moment && x.Centre == y.Centre &&
		x.Along.X.IsZero() == y.Along.X.IsZero() && x.Along.Y.IsZero() == y.Along.Y.IsZero() && counting(x) == counting(y)
}
