package screen

import (
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
	"unpin/tutor/record"
)

// At the head of the list stands what is offered for today, with its reason. Enter begins it with new numbers at its own level;
// words typed find problems among all; an exam offers nothing.
func TestTodayOnTheScreen(t *testing.T) {
	t.Parallel()
	clock := func() time.Time { return time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC) }
	begin := func(exam bool) *Model {
		m := New(Options{Entries: Library, Store: record.At(t.TempDir() + "/practice.jsonl"), Clock: clock, Level: tutor.Values, Exam: exam})
		m.Update(tea.WindowSizeMsg{Width: 100, Height: 30})
		m.Update(m.Init()())
		return m
	}
	m := begin(false)
	for _, want := range []string{"for today 1 of 3", "New: the two forces of a pinned support.", "New numbers, at the level gradual.", "today │"} {
		if !strings.Contains(m.View(), want) {
			t.Errorf("the list does not show %q:\n%s", want, m.View())
		}
	}
	m.Update(tea.KeyMsg{Type: tea.KeyEnter})
	if m.course == nil || m.course.l.Level() != tutor.Gradual {
		t.Fatal("enter does not begin what is offered, at its level")
	}
	offered := m.View()
	m = begin(false)
	for range 3 {
		m.Update(tea.KeyMsg{Type: tea.KeyDown})
	}
	m.Update(tea.KeyMsg{Type: tea.KeyEnter})
	if own := m.View(); !strings.Contains(own, "20 kN") || !strings.Contains(offered, "Jetty deck") || strings.Contains(offered, "20 kN") {
		t.Errorf("what is offered is not the same frame with other numbers:\n%s\n%s", own, offered)
	}
	m = begin(false)
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("riding")})
	if strings.Contains(m.View(), "today") {
		t.Errorf("words are sought among what is offered:\n%s", m.View())
	}
	if m = begin(true); strings.Contains(m.View(), "today") {
		t.Errorf("an exam offers practice:\n%s", m.View())
	}
}

// What is offered to who is stuck opens with a step like it, worked; any key leads to the piece.
func TestStuckOnTheScreen(t *testing.T) {
	t.Parallel()
	now := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	store := record.At(t.TempDir() + "/practice.jsonl")
	for n := range 8 {
		r := record.Record{At: now.Add(-time.Hour), Run: "r", Problem: "jetty-deck", Frame: "f", Number: n, Skills: []string{"cut-forces"}, Kind: record.Diagrams, Outcome: record.StepTold}
		if err := store.Add(r); err != nil {
			t.Fatal(err)
		}
	}
	m := New(Options{Entries: Library, Store: store, Clock: func() time.Time { return now }, Level: tutor.Gradual})
	size(m, 100, 30)
	m.Update(m.Init()())
	press(m, "enter")
	if !strings.Contains(bare(m.View()), "Worked, from another problem") {
		t.Errorf("no worked step is shown:\n%s", bare(m.View()))
	}
	press(m, "esc")
	if m.course == nil || m.view != working {
		t.Errorf("esc does not lead to the piece:\n%s", bare(m.View()))
	}
}
