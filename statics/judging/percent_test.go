package judging

import "testing"

// A step's sum allows 1 % of its largest term, and no more: 8·RB = 20·2.5 + 4·3·9.5 gives 20.5, and 1 % of 114 is 0.1425 of
// RB; 12·RC = 0.8·12·6 + 14.4 + 4·15 gives 11, and 1 % of 60 is 0.05 of RC. Worked by hand.
func TestOnePercentOfTheLargestTerm(t *testing.T) {
	t.Parallel()
	for _, row := range []struct {
		problem, name, typed string
		right                bool
	}{
		{"jetty-deck", "RB", "20.64", true},
		{"jetty-deck", "RB", "20.65", false},
		{"jetty-deck", "RB", "20.36", true},
		{"jetty-deck", "RB", "20.35", false},
		{"mill-bridge", "RC", "11.049", true},
		{"mill-bridge", "RC", "11.051", false},
		{"mill-bridge", "RC", "10.951", true},
		{"mill-bridge", "RC", "10.949", false},
	} {
		asked := false
		l := newSheet(t, libraryProblem(t, row.problem))
		for _, q := range l.questions {
			if q.Name != row.name {
				continue
			}
			asked = true
			if got := l.caseOf(q).Verdict(l.read(t, q, row.typed)); got.Right() != row.right {
				t.Errorf("%s: %s = %s is %v, want right: %t", row.problem, row.name, row.typed, got, row.right)
			}
		}
		if !asked {
			t.Errorf("%s does not ask for %s", row.problem, row.name)
		}
	}
}
