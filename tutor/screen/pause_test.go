package screen

import (
	"strings"
	"testing"
	"time"

	"unpin/tutor"
)

// After three wrong values in a few seconds the hint is shown, and no answer is taken until it can have been read.
func TestPauseAfterGuesses(t *testing.T) {
	now := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC)
	m := New(Options{Lesson: lesson(t, "jetty-deck", tutor.Values, false), Clock: func() time.Time { return now }})
	size(m, 100, 30)
	press(m, "1", "enter", "2", "enter", "3", "enter", "0", "enter")
	if text := bare(m.View()); !strings.Contains(text, "hint: ") || !strings.Contains(text, "enter once this is read") {
		t.Fatalf("guessing brings\n%s", text)
	}
	if at, _ := m.course.l.Position(); at != 0 || string(m.course.answerLine.text) != "0" {
		t.Error("an answer is taken during the pause, or lost")
	}
	press(m, "5", "enter", "hint", "enter", "0", "enter") // each takes the place of what waits
	if text := string(m.course.answerLine.text); text != "0" {
		t.Errorf("%q stands in the line", text)
	}
	now = now.Add(10 * time.Second)
	press(m, "enter")
	if at, _ := m.course.l.Position(); at != 1 {
		t.Errorf("no answer is taken after the pause:\n%s", bare(m.View()))
	}
}

// What was told comes once more after the last question, and then the way leads to the problems.
func TestToldStepsAgain(t *testing.T) {
	m := New(Options{Lesson: lesson(t, "jetty-deck", tutor.Values, false), Entries: fromShelf})
	size(m, 100, 30)
	press(m, "tell", "enter")
	work(t, m, 100)
	if text := bare(m.View()); !strings.Contains(text, "enter a step again") {
		t.Fatalf("what was told is left:\n%s", text)
	}
	press(m, "enter")
	if text := bare(m.View()); !strings.Contains(text, "with other numbers") || !strings.Contains(text, "Ax [kN]") {
		t.Fatalf("the step again shows\n%s", text)
	}
	press(m, "0", "enter", "enter")
	if m.view != choosing {
		t.Errorf("after all the screen shows\n%s", bare(m.View()))
	}
}
