package problems

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A demand is a rule that the numbers of a problem keep, so that it is worked by hand without trouble and a wrong method
// gives a wrong number.
type demand struct {
	rule, why string
	faults    func(solved) []string
}

// demands are all of them. The rules are common practice of those who set problems; no source states them together.
var demands = []demand{
	{"all forces have the denominator 1, 2, 4, 5 or 8", "hand work", longFractions},
	{"no arm is 1", "a force whose arm was forgotten gives the same number", unitArms},
	{"no point load stands at mid-span", "its arm is the same from either end", midSpans},
	{"no two loads are equal", "one mistaken for the other gives the same number", equalLoads},
	{"no two resultants are equal", "one left out cannot be told from the other", equalResultants},
	{"no spread load is 1 or 2 long", "its intensity is then its resultant, or the half of it", shortStretches},
	{"a couple is not as large as its distance, nor at the distance 1", "a couple times a distance then hides", couplesAsDistances},
	{"no force but nought is below 5 % of the largest load", "rounding swamps it", smallForces},
	{"no force but nought is below 5 % of the largest term of its sum", "rounding swamps it", swampedForces},
}

func longFractions(p solved) (faults []string) {
	for i, v := range p.Values {
		r, rational := v.Rat()
		if !rational || !slices.Contains([]string{"1", "2", "4", "5", "8"}, r.Denom().String()) {
			faults = append(faults, fmt.Sprintf("%s is %s", p.Forces[i].Name, v))
		}
	}
	return faults
}

func unitArms(p solved) (faults []string) {
	for n, step := range p.Plan {
		for _, sum := range step.Sums {
			for _, term := range sum.Terms {
				if sum.Moment && term.Sign != 0 && term.What != statics.TurnOnly && term.Arm.Equal(exact.Int(1)) {
					faults = append(faults, fmt.Sprintf("an arm in step %d is 1", n+1))
				}
			}
		}
	}
	return faults
}

func midSpans(p solved) (faults []string) {
	for _, l := range p.Problem.Frame.Loads {
		if l.Kind == statics.PointLoad && l.Joint == statics.None && l.At.Add(l.At).Equal(p.Problem.Frame.Length(l.Member)) {
			faults = append(faults, "a load stands at the middle of "+p.Problem.Frame.Members[l.Member].Name)
		}
	}
	return faults
}

func equalLoads(p solved) (faults []string) {
	printed, seen := map[string]bool{}, map[int]bool{}
	for _, l := range p.Problem.Frame.Loads {
		if seen[l.Entry] {
			continue
		}
		seen[l.Entry] = true
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

func equalResultants(p solved) (faults []string) {
	sizes := map[string]bool{}
	for _, a := range p.Assembly.Actions {
		key := a.Size.Abs().String()
		if a.Shape != statics.Turning && sizes[key] {
			faults = append(faults, "two resultants are "+key)
		}
		sizes[key] = sizes[key] || a.Shape != statics.Turning
	}
	return faults
}

func shortStretches(p solved) (faults []string) {
	for _, a := range p.Assembly.Actions {
		length := a.End.Sub(a.Start)
		if length.Equal(exact.Int(1)) || length.Equal(exact.Int(2)) {
			faults = append(faults, fmt.Sprintf("a spread load is %s long", length))
		}
	}
	return faults
}

func couplesAsDistances(p solved) (faults []string) {
	for _, l := range p.Problem.Frame.Loads {
		if l.Kind == statics.CoupleLoad && l.Joint == statics.None && (l.At.Equal(exact.Int(1)) || l.At.Equal(l.Size.Abs())) {
			faults = append(faults, fmt.Sprintf("a couple of %s stands at %s", l.Size.Abs(), l.At))
		}
	}
	return faults
}

// swamped reports whether a value is not nought and below 5 % of another.
func swamped(value, by exact.Num) bool {
	return !value.IsZero() && value.Abs().Mul(exact.Int(20)).Cmp(by) < 0
}

func smallForces(p solved) (faults []string) {
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

func swampedForces(p solved) (faults []string) {
	for n, step := range p.Plan {
		if len(step.Sums) != 1 || len(step.Gives) != 1 {
			continue
		}
		var largest exact.Num
		for _, term := range step.Sums[0].Terms {
			largest = exact.Max(largest, term.Amount(p.Values).Abs())
		}
		force := step.Gives[0]
		if swamped(p.Values[force].Mul(step.Sums[0].Factor(force)), largest) {
			faults = append(faults, fmt.Sprintf("%s is swamped in step %d", p.Forces[force].Name, n+1))
		}
	}
	return faults
}
