package statics

import (
	"fmt"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestChecks makes a mistake in every step of plans of random frames, carries it on, and sees in which closing checks it
// shows: in those that say so and in no other. Where no check catches a step, no unused sum of the family does (S17).
func TestChecks(t *testing.T) {
	t.Parallel()
	seen := map[string]int{}
	overSeeds(t, 1500, 200, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		if short := s.WithPulls(); short != nil {
			if err := ChecksCatch(short, seen); err != nil {
				return fmt.Errorf("with two-force members used at once: %w\n%s", err, report(short))
			}
		}
		if err := ChecksCatch(s, seen); err != nil {
			return fmt.Errorf("%w\n%s", err, report(s))
		}
		return nil
	})
	t.Log(seen)
	for _, what := range []string{"shows", "does not show", "of several sums", "caught by none", "two checks"} {
		if seen[what] < 3 {
			t.Errorf("%s: %d", what, seen[what])
		}
	}
}

// ChecksCatch holds what the closing checks of a plan say they catch against mistakes made in each step; seen counts them.
func ChecksCatch(s *Solution, seen map[string]int) error {
	checks := 0
	caught := map[int]bool{}
	for _, step := range s.Plan {
		if step.Check {
			checks++
			for _, n := range step.Catches {
				caught[n] = true
			}
		}
	}
	seen[fmt.Sprint("checks: ", min(checks, 5))]++
	if checks > 1 {
		seen["two checks"]++
	}
	for n, step := range s.Plan {
		if step.Relation || step.Check {
			continue
		}
		if err := mistakesShow(s, n, seen); err != nil {
			return fmt.Errorf("step %d: %w", n+1, err)
		}
		if slices.Contains(s.Unchecked(), n) == (caught[n] || zeros(s, step)) {
			return fmt.Errorf("step %d: caught: %v, all zeros: %v, said to be unchecked: %v", n+1, caught[n], zeros(s, step), s.Unchecked())
		}
	}
	return nil
}

func zeros(s *Solution, step Step) bool {
	for _, sum := range step.Sums {
		for _, term := range sum.Terms() {
			if !term.Amount(s.Values).IsZero() {
				return false
			}
		}
	}
	return true
}

// mistakesShow makes a mistake in each sum of step n in turn.
func mistakesShow(s *Solution, n int, seen map[string]int) error {
	sums := len(s.Plan[n].Sums)
	shows := make([]int, len(s.Plan)) // by check, in how many of the sums of step n a mistake shows
	for k := range sums {
		values, ok := withMistake(s, n, k)
		if !ok {
			return fmt.Errorf("no mistake can be made")
		}
		open := !slices.ContainsFunc(s.Plan, func(step Step) bool { return step.Check && slices.Contains(step.Catches, n) })
		if open && sums == 1 && s.Bodies() <= 6 && !zeros(s, s.Plan[n]) {
			seen["caught by none"]++
			if err := noneShows(s, values); err != nil {
				return err
			}
		}
		for c, check := range s.Plan {
			if check.Check && !check.Sums[0].Residual(values).IsZero() {
				shows[c]++
			}
		}
	}
	if sums > 1 {
		seen["of several sums"]++
	}
	for c, check := range s.Plan {
		if !check.Check {
			continue
		}
		said := slices.Contains(check.Catches, n)
		seen[map[bool]string{true: "shows", false: "does not show"}[said]]++
		if said != (shows[c] == sums) {
			return fmt.Errorf("a mistake in %d of %d sums shows in check %d, which says it catches it: %v", shows[c], sums, c+1, said)
		}
	}
	return nil
}

// withMistake is what the forces come to when sum k of step n is written with its first term that is not zero turned
// round, or with a stray 1 if all are, and all else is right.
func withMistake(s *Solution, n, k int) ([]exact.Num, bool) {
	values := make([]exact.Num, len(s.Values))
	for m, step := range s.Plan {
		if step.Relation || step.Check {
			continue
		}
		factors, rests := make([][]exact.Num, len(step.Sums)), make([]exact.Num, len(step.Sums))
		for j, sum := range step.Sums {
			rests[j] = sum.Residual(values) // the forces to come stand in values with zero
			for _, i := range step.Gives {
				factors[j] = append(factors[j], sum.Factor(i))
			}
		}
		if m == n {
			mistake := exact.Int(1)
			for _, term := range step.Sums[k].Terms() {
				if v := term.Amount(values); !v.IsZero() {
					mistake = v.Mul(exact.Int(-2))
					break
				}
			}
			rests[k] = rests[k].Add(mistake)
		}
		found, ok := SolveEquations(factors, rests)
		if !ok {
			return nil, false
		}
		for g, i := range step.Gives {
			values[i] = found[g]
		}
	}
	return values, true
}

// noneShows sees to it that with these values every sum of the family that was not used adds up to zero.
func noneShows(s *Solution, values []exact.Num) error {
	used := func(o Sum) bool {
		return slices.ContainsFunc(s.Plan, func(step Step) bool {
			return !step.Check && slices.ContainsFunc(step.Sums, func(u Sum) bool { return s.multiple(u, o) })
		})
	}
	for _, body := range newBruteFamily(s.Assembly).bodies {
		sums := []Sum{s.ForceSum(body, Vector{exact.Int(1), exact.Int(0)}), s.ForceSum(body, Vector{exact.Int(0), exact.Int(1)})}
		for _, j := range s.Frame.Joints {
			if len(body) > 1 || !s.IsPin(body[0]) {
				sums = append(sums, s.MomentSum(body, j.At))
			}
		}
		for _, sum := range sums {
			if !sum.Residual(values).IsZero() && !used(sum) {
				return fmt.Errorf("no check catches it, but %s of %s would", sumName(s.Assembly, sum), bodyNames(s.Assembly, body))
			}
		}
	}
	return nil
}

// multiple reports whether one sum is the other times a number.
func (s *Solution) multiple(u, o Sum) bool {
	for i := range s.Forces {
		for j := range s.Forces[:i] {
			if !u.Factor(i).Mul(o.Factor(j)).Equal(u.Factor(j).Mul(o.Factor(i))) {
				return false
			}
		}
	}
	return true
}
