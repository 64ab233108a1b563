package problems

import (
	"strings"
	"testing"

	"unpin/statics"
)

// Rows: what is asked of jetty-deck, and the items that this chooses, or what is said against it. By hand: RB*8 = 20*2.5 + 4*3*9.5,
// Ay = 32 - RB; M is 11.5 x up to the cart, and -4(3 - x)(3 - x)/2 on the overhang.
func TestAsked(t *testing.T) {
	t.Parallel()
	rows := []struct{ find, items string }{
		{`reactions`, `Ax = 0; RB = 41/2; Ay = 23/2`},
		{`pins`, ``},
		{`diagrams`, `N(AB, 0) = 0; V(AB, 0) = 23/2; M(AB, 0) = 0; M(AB, 2.5) = 115/4; V(AB, 2.5 after) = -17/2; M(AB, 8) = -18; N(BC, 0) = 0; V(BC, 0) = 12; M(BC, 0) = -18; V(BC, 3) = 0; M(BC, 3) = 0`},
		{`V`, `V(AB, 0) = 23/2; V(AB, 2.5 after) = -17/2; V(BC, 0) = 12; V(BC, 3) = 0`},
		{`M(AB, 2.4)`, `M(AB, 2.4) = 138/5`},
		{`M( AB,2.4 ); RB; R_B; N(AB, 0)`, `RB = 41/2; N(AB, 0) = 0; M(AB, 2.4) = 138/5`},
		{`V(AB, 2.5)`, `"V(AB, 2.5)" jumps there: write V(AB, 2.5 before) or after`},
		{`V(AB, 2.5 before)`, `V(AB, 2.5 before) = 23/2`},
		{`V(AB, 8)`, `V(AB, 8) = -17/2`},
		{`V(AB, 8 after)`, `"V(AB, 8 after)" lies off AB, which is 8 long`},
		{`M(BC, 1)`, `M(BC, 1) = -8`},
		{`M(AB, 30)`, `"M(AB, 30)" lies off AB, which is 8 long`},
		{`Bz`, `"Bz" is no answer of this problem: write reactions, pins, N, V, M, diagrams, a force (Ax, RB and Ay), or a place along a member (M(AB, 0))`},
		{`V(AB, 1/0)`, `"V(AB, 1/0)": "1/0" is not a number such as 12.5 or 20/3: cannot divide by zero`},
	}
	p, ok := Library("jetty-deck")
	if !ok {
		t.Fatal("there is no jetty-deck")
	}
	solution, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	solved := Solved{p, solution}
	for _, r := range rows {
		items, err := solved.Asked(strings.Split(r.find, "; "))
		var got []string
		for _, item := range items {
			got = append(got, item.Name+" = "+item.Value.String())
		}
		if err != nil {
			got = []string{err.Error()}
		}
		if joined := strings.Join(got, "; "); joined != r.items {
			t.Errorf("find %s:\n got %s\nwant %s", r.find, joined, r.items)
		}
	}
}
