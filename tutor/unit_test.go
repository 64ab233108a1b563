package tutor

import (
	"strings"
	"testing"
)

// A number that is right but for its unit is told so, whatever other number it makes.
func TestNumberInOtherUnit(t *testing.T) {
	t.Parallel()
	rows := []struct {
		problem   string
		level     Level
		at, typed string
		told      bool
	}{
		{"mill-bridge", Values, "By", "-2.6 N", true},
		{"mill-bridge", Values, "By", "2600 lb down", false}, // right
		{"mill-bridge", Values, "By", "2600 N down", false},
		{"mill-bridge", Values, "V(AB, 0)", "9 kN", true},
		{"mill-bridge", Values, "V(AB, 0)", "9 kip", false},
		{"jetty-deck", Terms, "arm 2", "2.5 ft", true},
		{"jetty-deck", Terms, "arm 2", "250 cm", false},
		{"jetty-deck", Terms, "force 2", "20 N", true},
		{"jetty-deck", Terms, "force 2", "30 N", false},
	}
	for _, r := range rows {
		l := upTo(t, r.problem, r.level, false, r.at)
		reply := l.Type(r.typed)
		if told := strings.Contains(reply.Lines[0], "the number is right, but its unit is not"); told != r.told {
			t.Errorf("%s at %s: %q: %q", r.problem, r.at, r.typed, reply.Lines)
		}
	}
}
