package statics

import "testing"

// TestTriples: how many groups of three there are at most, in a chain, a star and a ring.
func TestTriples(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name string
		near [][]int
		want int
	}{
		{"two bodies", [][]int{{1}, {0}}, 0},
		{"a chain of four", [][]int{{1}, {0, 2}, {1, 3}, {2}}, 2},
		{"a star of five", [][]int{{1, 2, 3, 4}, {0}, {0}, {0}, {0}}, 6},
		{"a ring of four", [][]int{{1, 3}, {0, 2}, {1, 3}, {0, 2}}, 4},
	} {
		if got := triples(c.near); got != c.want {
			t.Errorf("%s: %d, want %d", c.name, got, c.want)
		}
	}
}
