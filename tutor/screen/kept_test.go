package screen

import (
	"strings"
	"testing"

	"unpin/tutor"
)

// A sum that was kept until its turn is taken up by itself, and the reply says so: who looks only at the question would answer
// another.
func TestKeptSumsAreAnnounced(t *testing.T) {
	t.Parallel()
	m := New(Options{Lesson: lesson(t, "kiosk-canopy", tutor.Plan, false)})
	size(m, 80, 24)
	press(m, "enter")
	const announced = "the sum kept earlier gives Bx"
	for _, line := range []string{"whole M A", "MA - 18*4*2 - 120*6.5 + 40*2 = 0", "844", "whole x", "Ax = 40", "40",
		"AEB M A", "AEB M B", "Ax*9 + MA + Ex*3 - 40*7 = 0"} {
		press(m, line, "enter")
		if text := bare(m.View()); strings.Contains(text, announced) {
			t.Fatalf("after %s already:\n%s", line, text)
		}
	}
	press(m, "-308", "enter")
	if text := strings.Join(strings.Fields(bare(m.View())), " "); !strings.Contains(text, announced) {
		t.Errorf("the kept sum comes without a word:\n%s", bare(m.View()))
	}
	press(m, "+", "enter")
	if text := bare(m.View()); strings.Contains(text, announced) {
		t.Errorf("and is announced once more:\n%s", text)
	}
}
