package variant

import (
	"strings"
	"testing"
)

const easel = `title: Easel
units: N m
given: {P: 60, Q: 15, R: 12}
joints: {A: [0, 0], S: [0.25, 0.6], T: [0.1, 0.6], B: [0.5, 1.2], C: [0.75, 1.8], D: [1.2, 1.2], E: [2.1, 0]}
members: [AS, SB, BC, CD, DE, BD, ST]
pins: [C, {B: [BD], D: [BD]}]
supports: {A: pin, E: {roller: up}}
loads: [{point: P, to: down, joint: T}, {point: Q, to: normal, on: BC, at: 0.25}, {point: R, to: down, on: DE, at: 0.5}]
`

// Rows: an easel with other numbers, and what is said of decimals that do not end: worked by hand from the slope 5 to 12 in 13, the span of
// 2.1 m, and the slope 1 to 2 with the root of 5.
func TestEndless(t *testing.T) {
	t.Parallel()
	shorter := "C: [1.2, 1.6], D: [1.5, 1], E: [2, 0]"
	for _, r := range []struct{ was, old, new, want string }{
		{"slope", "", "", "in the denominators is the factor 13, as in the slope of AS"},
		{"span", "Q: 15", "Q: 13", "in the denominators is the factor 3, as in the 2.1 m across from A to E; and 7, as in the 2.1 m across from A to E"},
		{"root", "C: [0.75, 1.8], D: [1.2, 1.2], E: [2.1, 0]", shorter, "there is a root in the slope of BC, on which a load stands; a slope such as 3 to 4 or 5 to 12 has none"},
	} {
		if got := Endless(solvedText(t, strings.Replace(easel, r.old, r.new, 1))); got != r.want {
			t.Errorf("%s: %q, want %q", r.was, got, r.want)
		}
	}
	if got := Endless(solvedText(t, ropeStore)); strings.Contains(got, "root") {
		t.Errorf("rope store: %q", got)
	}
}
