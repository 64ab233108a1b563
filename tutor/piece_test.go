package tutor

import (
	"strings"
	"testing"
)

// Rows: what is typed at a question of ferry-ramp's first sum, of moments about A, and what is said. RB acts at B, 6 m from A, 3 across for
// 4 up, so the line of the whole force is 4.8 m from A; the load on AB, 8 kN/m to 1 kN/m, is 6 kN and 21 kN.
func TestBeside(t *testing.T) {
	t.Parallel()
	rows := []struct{ at, typed, says string }{
		{"arm 1", "4.8", "not yet: that is the arm of the whole force: "},
		{"arm 1", "4.80 m", "not yet: that is the arm of the whole force: "},
		{"arm 1", "5", "not yet: the line of a vertical component is vertical, so its arm is the horizontal distance"},
		{"arm 1", "6", "right: "},
		{"force 2", "27", "not yet: that is the resultant of the whole load, "},
		{"force 2", "21", "not yet: that is the resultant of the triangular part "},
		{"force 2", "48", "not yet: a distributed load counts as its resultant"},
		{"force 3", "6", "not yet: that is the resultant of the uniform part "},
		{"force 3", "27", "not yet: that is the resultant of the whole load, "},
		{"force 3", "21", "right: "},
		{"force 4", "21", "not yet: a force goes in with"},
	}
	inclined := lesson(t, "cider-press", Terms) // SD about C: 32 in across, 24 in down, and perpendicular to the line to it
	for typed, says := range map[string]string{"32": "only the horizontal distance", "24": "only the vertical distance", "56": "the arm is the shortest", "40": "right: "} {
		if reply := inclined.Type(typed); !strings.Contains(reply.Lines[0], says) {
			t.Errorf("%s as the arm of SD: %v; want %q", typed, reply.Lines, says)
		}
		inclined.Type("back")
	}
	for _, r := range rows {
		l := lesson(t, "ferry-ramp", Terms)
		for q, asking := l.Now(); asking && q.Name != r.at; q, asking = l.Now() {
			l.Type("tell")
		}
		if reply := l.Type(r.typed); !strings.HasPrefix(reply.Lines[0], r.says) {
			t.Errorf("%s at %s: %v; want %q", r.typed, r.at, reply.Lines, r.says)
		}
	}
}
