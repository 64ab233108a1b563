package screen

import (
	"slices"
	"testing"
	"time"

	"unpin/problems"
	"unpin/tutor"
)

// A hint is to be read before the next comes: asked for at once, there is none; some seconds later there is; and another answer lets the
// next hint come at once.
func TestHintsAreRead(t *testing.T) {
	t.Parallel()
	now := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	clock := func() time.Time { return now }
	p, _ := problems.Library("quay-gantry")
	d, err := tutor.FindTheMistake(p, "pin-pair", 1)
	if err != nil {
		t.Fatal(err)
	}
	for name, m := range map[string]*Model{
		"lesson": New(Options{Lesson: lesson(t, "quay-gantry", tutor.Values, false), Clock: clock}),
		"drill":  New(Options{Drill: d, Clock: clock}),
	} {
		size(m, 100, 30)
		press(m, "enter")
		said := func() []string {
			if m.drill != nil {
				return m.drill.reply.Lines
			}
			return m.course.reply.Lines
		}
		press(m, "ctrl+t")
		first := said()
		press(m, "ctrl+t")
		if len(first) == 0 || !slices.Equal(said(), first) {
			t.Errorf("%s: the second hint came at once: %v", name, said())
		}
		now = now.Add(5 * time.Second)
		press(m, "ctrl+t")
		second := said()
		if slices.Equal(second, first) {
			t.Errorf("%s: no second hint after five seconds", name)
		}
	}
}
