package marking

import (
	"math/big"
	"slices"

	"unpin/statics/exact"
)

// count counts the points of a result by the scheme: each answer its own, and all of them rounded.
func (s *Scheme) count(r *Result, points exact.Num) {
	weights := r.Marker.weights(s)
	charged := map[string]bool{}
	total := exact.Num{}
	for i := range r.Answers {
		a := &r.Answers[i]
		if !a.Asked {
			continue
		}
		if a.hollow {
			a.Of = weights[r.Marker.named(a.Item.Name)].Mul(points)
			continue
		}
		a.Of = weights[r.Marker.named(a.Item.Name)].Mul(points)
		a.Got = a.Of.Mul(s.Verdicts[a.Verdict])
		if slices.Contains(s.Once, a.Verdict) && !a.Of.IsZero() {
			if charged[a.Verdict] {
				a.Got = a.Of
				a.Remark = "charged once in this problem"
			}
			charged[a.Verdict] = true
		}
		total = total.Add(a.Got)
	}
	r.Got = s.rounded(total)
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
