package statics

import (
	"testing"

	"pgregory.net/rapid"
	"unpin/statics/exact"
)

// TestSolveEquations draws small systems, many of them with equations that follow from others, and holds what is found
// against Cramer's rule: the determinant tells whether there is one answer, and every equation must come to zero.
func TestSolveEquations(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 4).Draw(t, "n")
		number := rapid.Map(rapid.Int64Range(-2, 2), exact.Int)
		factors, rests := make([][]exact.Num, n), rapid.SliceOfN(number, n, n).Draw(t, "rests")
		for i := range factors {
			factors[i] = rapid.SliceOfN(number, n, n).Draw(t, "factors")
		}
		x, ok := SolveEquations(factors, rests)
		if det := determinant(factors); ok == det.IsZero() {
			t.Fatalf("found %v, but the determinant is %s", ok, det)
		}
		if !ok {
			return
		}
		for i, r := range rests {
			for j, k := range factors[i] {
				r = r.Add(k.Mul(x[j]))
			}
			if !r.IsZero() {
				t.Errorf("equation %d comes to %s", i+1, r)
			}
		}
	})
}

// determinant is that of a square matrix, by expansion along its first row.
func determinant(m [][]exact.Num) exact.Num {
	if len(m) == 0 {
		return one
	}
	var det exact.Num
	for j, k := range m[0] {
		if j%2 == 1 {
			k = k.Neg()
		}
		var minor [][]exact.Num
		for _, r := range m[1:] {
			minor = append(minor, append(append([]exact.Num{}, r[:j]...), r[j+1:]...))
		}
		det = det.Add(k.Mul(determinant(minor)))
	}
	return det
}
