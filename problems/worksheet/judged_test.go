package worksheet

import (
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// TestJudged has every item of the library judged against its own value.
func TestJudged(t *testing.T) {
	t.Parallel()
	all := 0
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		solved := problems.Solved{Problem: p, Solution: s}
		for _, item := range solved.Items() {
			all++
			c := Judged(solved, item)
			low, high := c.Range()
			if !c.Truth.Equal(item.Value) || low.Cmp(item.Value) > 0 || high.Cmp(item.Value) < 0 {
				t.Errorf("%s, %s: held against %s, from %s to %s", name, item.Name, c.Truth.Figures(5), low.Figures(5), high.Figures(5))
			}
		}
	}
	if all < 600 {
		t.Errorf("only %d items", all)
	}
}
