package statics

import (
	"fmt"
	"testing"

	"unpin/statics/exact"
)

// TestSplits checks every way round two sums solved together: the two forces have the resultant of those they stand for,
// every sum comes to nought, and each holds only one unknown when its turn comes.
func TestSplits(t *testing.T) {
	splits, pairs := 0, 0
	check := func(f Frame) error {
		s, err := Solve(f)
		if err != nil {
			return err
		}
		known := map[int]bool{}
		for _, step := range s.Plan {
			if len(step.Sums) == 2 {
				pairs++
			}
			if step.Split != nil {
				splits++
				if err := splitFits(s, step, known); err != nil {
					return fmt.Errorf("%w\n%s", err, report(s))
				}
			}
			for _, i := range step.Gives {
				known[i] = true
			}
		}
		return nil
	}
	overSeeds(t, 1000, 300, check)
	for seed := range uint64(400) {
		if err := check(awkward(seeded(seed))); err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
	}
	t.Logf("%d of %d pairs of sums have a way round", splits, pairs)
	if splits < 20 {
		t.Errorf("only %d ways round", splits)
	}
}

func splitFits(s *Solution, step Step, known map[int]bool) error {
	w := step.Split
	if a, b := resultantOf(s.Assembly, step.Gives, s.Values), resultantOf(w.Assembly, step.Gives, w.Values); !a.Plus(b.Neg()).IsZero() {
		return fmt.Errorf("the force split is (%s, %s), not (%s, %s)", b.X, b.Y, a.X, a.Y)
	}
	if len(w.Steps) != 2 || w.Steps[0].Gives[0] != w.Upward || w.Steps[1].Gives[0] != w.Along {
		return fmt.Errorf("steps %+v", w.Steps)
	}
	now := map[int]bool{}
	for i := range known {
		now[i] = true
	}
	for _, step := range w.Steps {
		sum := step.Sums[0]
		left := sum.Unknowns(func(i int) bool { return now[i] })
		if r := sum.Residual(w.Values); !r.IsZero() || len(left) != 1 || left[0] != step.Gives[0] {
			return fmt.Errorf("%s comes to %s and holds the unknowns %v", sumName(w.Assembly, sum), r, left)
		}
		now[step.Gives[0]] = true
	}
	return nil
}

// resultantOf is the resultant of forces, by components.
func resultantOf(a *Assembly, forces []int, values []exact.Num) Vector {
	var all Vector
	for _, i := range forces {
		d := a.Forces[i].Along
		all = all.Plus(d.Times(over(values[i], root(d.X.Square().Add(d.Y.Square())))))
	}
	return all
}
