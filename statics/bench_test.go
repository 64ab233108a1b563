package statics

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/mat"
	"unpin/statics/exact"
)

// compoundBeam is a beam of n parts with pins between them, the first fixed, each further one on a roller at its middle.
func compoundBeam(n int) string {
	var b strings.Builder
	b.WriteString("joint P0 0 0\n")
	for i := range n {
		fmt.Fprintf(&b, "joint R%d %d 0\njoint P%d %d 0\n", i, 4*i+2, i+1, 4*i+4)
		fmt.Fprintf(&b, "member a%d P%d R%d\nmember b%d R%d P%d\n", i, i, i, i, i, i+1)
	}
	b.WriteString("support P0 fixed\n")
	for i := 1; i < n; i++ {
		fmt.Fprintf(&b, "pin P%d\nsupport R%d roller 0 1\n", i, i)
	}
	for i := range n {
		fmt.Fprintf(&b, "point 6 0 -1 on a%d 1\nspread 2 2 0 -1 on b%d 0 2\n", i, i)
	}
	return b.String()
}

// bays is a row of three-pinned gables with sloped rafters, each joined to the next by a beam that rests on it in a
// slot: three parts a bay. For other numbers a beam from a wall begins the row. Where the feet of a gable
// are not level, two sums must be solved together in each.
func bays(n int, level bool) string {
	var b strings.Builder
	for k := range n / 3 {
		x, foot := 12*k, 0
		if !level {
			foot = 1
		}
		fmt.Fprintf(&b, "joint A%d %d 0\njoint B%d %d 4\njoint C%d %d 6\njoint D%d %d 4\njoint E%d %d %d\n", k, x, k, x, k, x+4, k, x+8, k, x+8, foot)
		fmt.Fprintf(&b, "joint L%d %d 4\n", k, x+12)
	}
	var loads strings.Builder
	last := n/3 - 1
	for k := range n / 3 {
		end := fmt.Sprintf("L%d", k)
		if k < last {
			end = fmt.Sprintf("B%d", k+1)
		}
		fmt.Fprintf(&b, "member a%d A%d B%d\nmember b%d B%d C%d\nmember c%d C%d D%d\nmember d%d D%d E%d\nmember l%d D%d %s\n",
			k, k, k, k, k, k, k, k, k, k, k, k, k, k, end)
		fmt.Fprintf(&loads, "pin C%d\npin D%d l%d\nsupport A%d pinned\nsupport E%d pinned\n", k, k, k, k, k)
		if k > 0 {
			fmt.Fprintf(&loads, "slot B%d l%d 1 0\n", k, k-1)
		}
		fmt.Fprintf(&loads, "spread 3 3 0 -1 on b%d 0 1L run\npoint 5 0 -1 on l%d 1\nspread 2 0 1 0 on a%d 0 4\n", k, k, k)
	}
	fmt.Fprintf(&loads, "support L%d roller 0 1\n", last)
	if n%3 == 1 {
		b.WriteString("joint Q -6 4\nmember q Q B0\n")
		loads.WriteString("support Q pinned\npoint 2 0 -1 on q 3\nslot B0 q 1 0\n")
	}
	return b.String() + loads.String()
}

// benchmarked are the frames of the benchmarks.
func benchmarked(t testing.TB, parts int) map[string]Frame {
	return map[string]Frame{
		"beam":   build(t, compoundBeam(parts)),
		"bays":   build(t, bays(parts, true)),
		"uneven": build(t, bays(parts, false)),
	}
}

// BenchmarkSolve is the whole way from a frame to its forces, plan and internal forces.
func BenchmarkSolve(b *testing.B) {
	for _, parts := range []int{3, 10, 30, 100} {
		for _, name := range []string{"beam", "bays", "uneven"} {
			f := benchmarked(b, parts)[name]
			b.Run(fmt.Sprintf("%s/%d", name, parts), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if s, err := Solve(f); err != nil || s.Values == nil {
						b.Fatal("not solved", err)
					}
				}
			})
		}
	}
}

// BenchmarkLU is what dense elimination in float64 takes for the same sums: factors and solution only.
func BenchmarkLU(b *testing.B) {
	for _, parts := range []int{3, 10, 30, 100} {
		for _, name := range []string{"beam", "bays"} {
			a, err := Cut(benchmarked(b, parts)[name])
			if err != nil {
				b.Fatal(err)
			}
			matrix, right := dense(a)
			b.Run(fmt.Sprintf("%s/%d", name, parts), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if _, err := luSolve(matrix, right); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}

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

// TestBenchmarkedFrames sees to it that the frames of the benchmarks are what they are said to be: of so many parts,
// determinate, with answers of bounded length that agree with float64 elimination.
func TestBenchmarkedFrames(t *testing.T) {
	for _, parts := range []int{3, 10, 30, 100} {
		for name, f := range benchmarked(t, parts) {
			s, err := Solve(f)
			if err != nil || s.Values == nil || len(s.Parts) != parts {
				t.Fatalf("%s of %d parts: %d parts, %v, %v", name, parts, len(s.Parts), s.Count, err)
			}
			if err := nearLU(s); err != nil {
				t.Errorf("%s of %d parts: %v", name, parts, err)
			}
			for i, v := range s.Values {
				if len(v.String()) > 30 {
					t.Errorf("%s of %d parts: %s = %s", name, parts, s.Forces[i].Name, v)
				}
			}
		}
	}
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

// BenchmarkNotDeterminate is what a refusal takes, with its motions and what stays open.
func BenchmarkNotDeterminate(b *testing.B) {
	f := build(b, compoundBeam(30))
	f.Supports = append(f.Supports[:20:20], f.Supports[21:]...)
	f.Supports = append(f.Supports, Support{Joint: f.Connections[3].Joint, Kind: Roller, Along: Vector{exact.Int(0), exact.Int(1)}, On: None})
	for b.Loop() {
		s, err := Solve(f)
		if err != nil || s.Count.Verdict() != IndeterminateUnstable {
			b.Fatal(s.Count, err)
		}
		s.Motions()
		s.Undetermined()
	}
}
