package marking

import (
	"math/big"
	"slices"

	"unpin/statics/exact"
)

// count counts the points of a result by the scheme: each answer and each part of the working its own, and all of them rounded.
func (s *Scheme) count(r *Result, points exact.Num) {
	weights := r.Marker.weights(s)
	left := s.countParts(r, points)
	charged := map[string]bool{}
	for i := range r.Answers {
		a := &r.Answers[i]
		if !a.Asked {
			continue
		}
		if a.Of = weights[r.Marker.named(a.Item.Name)].Mul(points).Mul(left); a.hollow {
			continue
		}
		a.Got = a.Of.Mul(s.Verdicts[a.Verdict])
		if slices.Contains(s.Once, a.Verdict) && !a.Of.IsZero() {
			if charged[a.Verdict] {
				a.Got = a.Of
				a.Remark = "charged once in this problem"
			}
			charged[a.Verdict] = true
		}
	}
	r.Got = s.rounded(r.points())
}

// rounded is points rounded to a multiple of the scheme's step, half up.
func (s *Scheme) rounded(points exact.Num) exact.Num {
	steps, err := points.Quo(s.Round)
	if err != nil {
		return points
	}
	return exact.FromRat(new(big.Rat).SetInt(steps.Add(half).Floor())).Mul(s.Round)
}

// earns reports whether a verdict earns anything.
func (s *Scheme) earns(verdict string) bool { return !s.Verdicts[verdict].IsZero() }

// Counting keeps, of each student's attempts at a problem, the one that counts by the scheme: the last, the first or the best,
// of equal ones the first. Results keep their order.
func (s *Scheme) Counting(results []*Result) []*Result {
	type key struct{ student, problem string }
	best := map[key]*Result{}
	for _, r := range results {
		k := key{r.Paper.Student, r.Marker.Name}
		if old := best[k]; old == nil || r.Paper.Attempt != old.Paper.Attempt && s.counts(r, old) {
			best[k] = r
		}
	}
	return slices.DeleteFunc(slices.Clone(results), func(r *Result) bool {
		old := best[key{r.Paper.Student, r.Marker.Name}]
		return r != old && r.Paper.Attempt != old.Paper.Attempt
	})
}

// counts reports whether of two attempts the first named counts, and not the other.
func (s *Scheme) counts(r, old *Result) bool {
	later := r.Paper.Attempt > old.Paper.Attempt
	switch s.Attempts {
	case "first":
		return !later
	case "best":
		c := r.Got.Cmp(old.Got)
		return c > 0 || c == 0 && !later
	}
	return later
}
