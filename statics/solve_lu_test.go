package statics

import (
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// dense is the matrix of all sums of an assembly in float64, and its right side.
func dense(a *Assembly) (*mat.Dense, *mat.VecDense) {
	rows, _ := a.rows()
	m, right := mat.NewDense(len(rows), len(a.Forces), nil), mat.NewVecDense(len(rows), nil)
	for i, r := range rows {
		for _, e := range r.entries {
			m.Set(i, e.col, e.k.Float())
		}
		right.SetVec(i, r.rhs.Float())
	}
	return m, right
}

func luSolve(m *mat.Dense, right *mat.VecDense) (*mat.VecDense, error) {
	var lu mat.LU
	lu.Factorize(m)
	var x mat.VecDense
	err := lu.SolveVecTo(&x, false, right)
	return &x, err
}

// nearLU compares the forces with those that gonum's LU finds in float64.
func nearLU(s *Solution) error {
	x, err := luSolve(dense(s.Assembly))
	if err != nil {
		return err
	}
	largest := 1.0
	for _, v := range s.Values {
		largest = max(largest, math.Abs(v.Float()))
	}
	for i, f := range s.Forces {
		got := x.AtVec(i)
		if !f.Couple {
			got *= f.Along.Length().Float()
		}
		if want := s.Values[i].Float(); math.Abs(got-want) > 1e-7*largest {
			return fmt.Errorf("%s = %g, LU finds %g", f.Name, want, got)
		}
	}
	return nil
}

// TestAgainstLU compares the forces of random frames with those of gonum's LU.
func TestAgainstLU(t *testing.T) {
	t.Parallel()
	overSeeds(t, 1000, 200, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil || conditionOf(s.Assembly) > 1e7 {
			return err
		}
		return nearLU(s)
	})
}

// conditionOf is how much elimination in float64 can multiply an error.
func conditionOf(a *Assembly) float64 {
	m, _ := dense(a)
	var lu mat.LU
	lu.Factorize(m)
	return lu.Cond()
}
