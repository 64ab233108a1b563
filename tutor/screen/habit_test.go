package screen

import (
	"slices"
	"testing"
	"time"

	"unpin/tutor"
)

// A digit answers by itself. Enter that follows at once, by habit, leaves what was said of it to be read; seconds later it is an
// answer of its own.
func TestEnterAfterADigit(t *testing.T) {
	t.Parallel()
	now := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	m := New(Options{Lesson: lesson(t, "smokehouse-rail", tutor.Gradual, false), Clock: func() time.Time { return now }})
	size(m, 100, 30)
	press(m, "enter", "enter", "9", "enter")
	if _, open := tutor.AsideOf(m.course.l); !open {
		t.Fatalf("no reason is asked for:\n%s", bare(m.View()))
	}
	now = now.Add(20 * time.Second)
	press(m, "1")
	said := slices.Clone(m.course.reply.Lines)
	now = now.Add(300 * time.Millisecond)
	press(m, "enter")
	if at := m.course.reply.Lines; len(said) == 0 || !slices.Equal(at, said) {
		t.Errorf("enter after the digit puts %q in place of %q", at, said)
	}
	now = now.Add(2 * time.Second)
	press(m, "enter")
	if at := m.course.reply.Lines; slices.Equal(at, said) {
		t.Errorf("enter seconds after the digit does nothing: %q", at)
	}
}
