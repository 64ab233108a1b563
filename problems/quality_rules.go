package problems

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Solved is a problem whose frame is determinate, with its solution.
type Solved struct {
	*Problem
	*statics.Solution
}

// A Rule is something that the numbers of a problem keep to, so that it is worked by hand without trouble and a wrong method
// gives a wrong number.
type Rule struct {
	Name   string // for programs: one word or two
	Says   string // a clause
	Why    string // what it is good for
	OfPlan bool   // it looks at the steps of the plan; the others need no more than the forces
	faults func(Solved) []string
}

// rules are all of them. They are common practice of those who set problems; no source states them together.
var rules = []Rule{
	{"terminating", "all forces are terminating decimals", "hand work", false, endless},
	{"figures", "no force has more than five figures", "hand work", false, manyFigures},
	{"decimals", Decimals, "hand work", false, longDecimals},
	{"unit arm", "no arm is 1", "a force whose arm was forgotten gives the same number", true, unitArms},
	{"mid-span", "no point load stands at mid-span", "its arm is the same from either end", false, midSpans},
	{"equal loads", "no two loads are equal", "one mistaken for the other gives the same number", false, equalLoads},
	{"equal resultants", "no two resultants are equal", "one left out cannot be told from the other", false, equalResultants},
	{"short stretch", "no distributed load is 1 or 2 long", "its intensity is then its resultant, or the half of it", false, shortStretches},
	{"couple", "a couple is not as large as its distance, nor at the distance 1", "a couple times a distance then hides", false, couplesAsDistances},
	{"small force", "no force but zero is below 5 % of the largest load", "rounding swamps it", false, smallForces},
	{"swamped force", "no force but zero is below 5 % of the largest term of its sum", "rounding swamps it", true, swampedForces},
}

// Decimals says the strictest of the rules for answers. Copies keep to it as their problem does, as long as there are enough.
const Decimals = "no force has more than two decimals, but for eighths"

// Rules lists the rules for the numbers of a problem.
func Rules() []Rule { return slices.Clone(rules) }

// A Shortcoming is a place where a problem breaks a rule.
type Shortcoming struct {
	Rule   Rule
	Detail string // a clause: "an arm in step 3 is 1"
}

// Shortcomings lists where a problem breaks the rules, in the order of the rules.
func (p Solved) Shortcomings() []Shortcoming {
	var all []Shortcoming
	for _, r := range rules {
		for _, detail := range r.faults(p) {
			all = append(all, Shortcoming{r, detail})
		}
	}
	return all
}

// Breaks reports whether a problem breaks a rule.
func (p Solved) Breaks(r Rule) bool { return len(r.faults(p)) > 0 }

// longDecimals lists forces that end, within the figures that manyFigures allows, but later than hand work likes.
func longDecimals(p Solved) (faults []string) {
	for i, v := range p.Values {
		if v.Terminates() && !v.Inexact() && !tooLong(v) && !v.Mul(exact.Int(100)).IsInt() && !v.Mul(exact.Int(8)).IsInt() {
			faults = append(faults, fmt.Sprintf("%s is %s", p.Forces[i].Name, notation.Pretty(v.Decimal(40))))
		}
	}
	return faults
}

// endless lists forces whose decimals do not end, or are those of an angle without exact ones. In letters fractions of P are as good.
func endless(p Solved) (faults []string) {
	if p.Units.Letters() {
		return nil
	}
	for i, v := range p.Values {
		switch {
		case v.Inexact():
			faults = append(faults, fmt.Sprintf("%s is about %s", p.Forces[i].Name, notation.Pretty(notation.Number(v, shownFigures))))
		case !v.Terminates():
			faults = append(faults, fmt.Sprintf("%s is %s", p.Forces[i].Name, notation.Pretty(v.String())))
		}
	}
	return faults
}

// shownFigures are those of a value that has no exact one.
const shownFigures = 4

// mostFigures is how many figures a tidy force has at most.
const mostFigures = 5

// tooLong reports whether a value that ends has more figures than a tidy one.
func tooLong(v exact.Num) bool {
	return len(strings.TrimLeft(strings.Replace(v.Abs().Decimal(40), ".", "", 1), "0")) > mostFigures
}

// manyFigures lists forces whose decimals end, but not within five figures; others are no matter of figures.
func manyFigures(p Solved) (faults []string) {
	for i, v := range p.Values {
		if v.Terminates() && !v.Inexact() && tooLong(v) {
			faults = append(faults, fmt.Sprintf("%s is %s", p.Forces[i].Name, notation.Pretty(v.Decimal(40))))
		}
	}
	return faults
}

// unitArms lists steps in which an arm is 1, so that who forgets it loses nothing. In letters it is L, which shows.
func unitArms(p Solved) (faults []string) {
	if p.Units.Letters() {
		return nil
	}
	for n, step := range p.Plan {
		for _, sum := range step.Sums {
			for _, term := range sum.Terms() {
				if sum.Moment && term.Sign != 0 && term.What != statics.TurnOnly && term.Arm.Equal(exact.Int(1)) {
					faults = append(faults, fmt.Sprintf("an arm in step %d is 1", n+1))
				}
			}
		}
	}
	return faults
}

func midSpans(p Solved) (faults []string) {
	for _, l := range p.Problem.Frame.Loads {
		if l.Kind == statics.PointLoad && l.Joint == statics.None && l.At.Add(l.At).Equal(p.Problem.Frame.Length(l.Member)) {
			faults = append(faults, "a load stands at the middle of "+p.Problem.Frame.Members[l.Member].Name)
		}
	}
	return faults
}

func equalLoads(p Solved) (faults []string) {
	printed, seen := map[string]bool{}, map[int]bool{}
	for _, l := range p.Problem.Frame.Loads {
		if seen[l.Entry] {
			continue
		}
		seen[l.Entry] = true
		if l.Kind != statics.CoupleLoad && p.taut(l.Size) {
			continue
		}
		sizes := []exact.Num{l.Size}
		if l.Kind == statics.SpreadLoad {
			sizes = []exact.Num{l.First}
			if !l.First.Equal(l.Last) {
				sizes = append(sizes, l.Last)
			}
		}
		for _, size := range sizes {
			key := size.Abs().String()
			if printed[key] && !size.IsZero() {
				faults = append(faults, "two loads are "+key)
			}
			printed[key] = true
		}
	}
	return faults
}

// taut reports whether a force is as large as the tension of a rope over a pulley: what is tied to the rope, or another
// pulley that it runs over, cannot be of another size.
func (p Solved) taut(force exact.Num) bool {
	return !force.IsZero() && slices.ContainsFunc(p.Problem.Frame.Loads, func(l statics.Load) bool { return l.Kind == statics.RopeLoad && l.Size.Equal(force.Abs()) })
}

func equalResultants(p Solved) (faults []string) {
	sizes := map[string]bool{}
	for _, a := range p.Assembly.Actions {
		key := a.Size.Abs().String()
		if a.Shape == statics.AtPoint && p.taut(a.Size) {
			continue
		}
		if a.Shape != statics.Turning && sizes[key] {
			faults = append(faults, "two resultants are "+key)
		}
		sizes[key] = sizes[key] || a.Shape != statics.Turning
	}
	return faults
}

func shortStretches(p Solved) (faults []string) {
	for _, a := range p.Assembly.Actions {
		length := a.End.Sub(a.Start)
		if length.Equal(exact.Int(1)) || length.Equal(exact.Int(2)) {
			faults = append(faults, fmt.Sprintf("a distributed load is %s long", length))
		}
	}
	return faults
}

func couplesAsDistances(p Solved) (faults []string) {
	for _, l := range p.Problem.Frame.Loads {
		if l.Kind == statics.CoupleLoad && l.Joint == statics.None && (l.At.Equal(exact.Int(1)) || l.At.Equal(l.Size.Abs())) {
			faults = append(faults, fmt.Sprintf("a couple of %s stands at %s", l.Size.Abs(), l.At))
		}
	}
	return faults
}

// swamped reports whether a value is not zero and below 5 % of another.
func swamped(value, by exact.Num) bool {
	return !value.IsZero() && value.Abs().Mul(exact.Int(20)).Cmp(by) < 0
}

func smallForces(p Solved) (faults []string) {
	var largest exact.Num
	for _, a := range p.Assembly.Actions {
		if a.Shape != statics.Turning {
			largest = exact.Max(largest, a.Size.Abs())
		}
	}
	for i, f := range p.Forces {
		if !f.Couple && swamped(p.Values[i], largest) {
			faults = append(faults, fmt.Sprintf("%s is %s beside a load of %s", f.Name, p.Values[i], largest))
		}
	}
	return faults
}

func swampedForces(p Solved) (faults []string) {
	for n, step := range p.Plan {
		if len(step.Sums) != 1 || len(step.Gives) != 1 {
			continue
		}
		var largest exact.Num
		for _, term := range step.Sums[0].Terms() {
			largest = exact.Max(largest, term.Amount(p.Values).Abs())
		}
		force := step.Gives[0]
		if swamped(p.Values[force].Mul(step.Sums[0].Factor(force)), largest) {
			faults = append(faults, fmt.Sprintf("%s is swamped in step %d", p.Forces[force].Name, n+1))
		}
	}
	return faults
}
