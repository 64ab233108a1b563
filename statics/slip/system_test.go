package slip

import (
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/exact"
)

// Every unknown that elimination gives, put back into the equations, satisfies them.
func TestSolveSatisfies(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 4).Draw(t, "n")
		number := func() exact.Num { return exact.Int(int64(rapid.IntRange(-6, 6).Draw(t, "k"))) }
		factors, rests := make([][]exact.Num, n), make([]exact.Num, n)
		for i := range factors {
			rests[i] = number()
			for range n {
				factors[i] = append(factors[i], number())
			}
		}
		x := make([]exact.Num, n)
		for i := range x {
			var ok bool
			if x[i], ok = solve(factors, rests, i); !ok {
				t.Skip("singular")
			}
		}
		for i, row := range factors {
			sum := rests[i]
			for j, k := range row {
				sum = sum.Add(k.Mul(x[j]))
			}
			if !sum.IsZero() {
				t.Fatalf("equation %d leaves %s", i, sum)
			}
		}
	})
}
