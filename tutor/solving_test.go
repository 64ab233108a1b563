package tutor

import (
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics/notation"
)

// The last hint for a value says what to write, and never the value itself: where the sum holds one number beside the unknown it is
// the sum that is said. It is the same in the signs of the trade and in ASCII.
func TestLastHintIsNoAnswer(t *testing.T) {
	t.Parallel()
	alone := 0
	for _, name := range librarytest.Names() {
		signs, ascii := lesson(t, name, Values), lesson(t, name, Values)
		signs.UseSigns()
		for q, asking := signs.Now(); asking; q, asking = signs.Now() {
			if q.Kind == ForceValue {
				own, plain := signs.coach().hints(q)[2], ascii.coach().hints(q)[2]
				if notation.ASCII(own) != plain {
					t.Errorf("%s, %s: %q, and in ASCII %q", name, q.Name, own, plain)
				}
				if _, value, writes := strings.Cut(plain, "write "+q.Name+" = "); writes && !strings.ContainsAny(strings.TrimSuffix(value, "; then solve it, or type tell."), " */") {
					t.Errorf("%s, %s: %q is the value", name, q.Name, plain)
				}
				if strings.Contains(plain, "its two terms") {
					alone++
				}
			}
			signs.Type("tell")
			ascii.Type("tell")
		}
	}
	if alone < 5 {
		t.Errorf("only %d sums of one number", alone)
	}
}
