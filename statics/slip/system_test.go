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

// Equations by hand: rows that must change places, and such that give nothing.
func TestSolveByHand(t *testing.T) {
	t.Parallel()
	row := func(numbers ...int64) []exact.Num {
		var all []exact.Num
		for _, n := range numbers {
			all = append(all, exact.Int(n))
		}
		return all
	}
	for _, r := range []struct {
		what    string
		factors [][]exact.Num
		rests   []exact.Num
		want    []string // none where the equations give nothing
	}{
		{"4x − 10 = 0", [][]exact.Num{row(4)}, row(-10), []string{"5/2"}},
		{"0x − 10 = 0", [][]exact.Num{row(0)}, row(-10), nil},
		{"y − 3 = 0, 2x + y − 7 = 0", [][]exact.Num{row(0, 1), row(2, 1)}, row(-3, -7), []string{"2", "3"}},
		{"x + y − 1 = 0, 2x + 2y − 3 = 0", [][]exact.Num{row(1, 1), row(2, 2)}, row(-1, -3), nil},
		{"y = 1, z = 2, x + y + z = 6", [][]exact.Num{row(0, 1, 0), row(0, 0, 1), row(1, 1, 1)}, row(-1, -2, -6), []string{"3", "1", "2"}},
	} {
		for asked := range r.factors {
			x, ok := solve(r.factors, r.rests, asked)
			if ok != (r.want != nil) || ok && !x.Equal(exact.MustParse(r.want[asked])) {
				t.Errorf("%s: unknown %d is %s, %v", r.what, asked, x, ok)
			}
		}
	}
}
