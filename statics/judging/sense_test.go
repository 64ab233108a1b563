package judging

import (
	"strings"
	"testing"
)

// TestWithoutName: what stands before the equals sign may be the name asked for, its first word, or nothing; the rest stays
// where it is.
func TestWithoutName(t *testing.T) {
	t.Parallel()
	const place = "x of V = 0 in CD from 0 to 3"
	for _, c := range []struct{ name, line, want string }{
		{"RB", "RB = 20.5", "20.5"}, {"RB", "= 8", "8"}, {"RB", "R_B=8", "8"}, {"RB", "20.5", "20.5"}, {"RB", "Ay = 8", "Ay = 8"}, {"Ey", "16Ey = 35", "16Ey = 35"},
		{"M(AB, 2)", "M = 8", "8"}, {"M(AB, 2)", "M(x) = 8", "8"}, {"M(AB, 2)", "M(AB, 2) = 8", "8"}, {"M(AB, 2)", "V = 8", "V = 8"},
		{place, "x = 2.5", "2.5"}, {place, place + " = 2.5", "2.5"}, {place, "2.5", "2.5"},
	} {
		got := Asked{Name: c.name}.withoutName(c.line)
		if strings.TrimSpace(got) != c.want || strings.TrimLeft(got, " ") != "" && !strings.HasSuffix(c.line, strings.TrimLeft(got, " ")) {
			t.Errorf("%s: %q is read as %q, want %q", c.name, c.line, got, c.want)
		}
		if len(got) != len(c.line) {
			t.Errorf("%s: %q changes its length: %q", c.name, c.line, got)
		}
	}
}
