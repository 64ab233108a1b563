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
