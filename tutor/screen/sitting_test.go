package screen

import (
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/problems"
	"unpin/tutor"
)

// A paper on the screen: its problems in any order, the minutes that are left, and its end, by a word or by the clock; before the end
// nothing is shown that is right, after it the whole paper. Without a limit nothing wakes it.
func TestPaperOnTheScreen(t *testing.T) {
	now := time.Date(2026, 12, 4, 9, 0, 0, 0, time.UTC)
	clock := func() time.Time { return now }
	begin := func(lasts time.Duration) (*Model, *tutor.Sitting) {
		rules := tutor.Rules{ID: "w5", Title: "Week 5", Level: tutor.Values, Lasts: lasts}
		for _, name := range []string{"jetty-deck", "gravel-platform"} {
			p, _ := problems.Library(name)
			task, err := problems.Alone(p.Asking([]string{"reactions"}))
			if err != nil {
				t.Fatal(err)
			}
			rules.Tasks = append(rules.Tasks, task)
		}
		s, err := tutor.Sit(rules, nil, clock, func(err error) { t.Error(err) })
		if err != nil {
			t.Fatal(err)
		}
		m := New(Options{Sitting: s, Clock: clock})
		size(m, 110, 30)
		m.Update(list(m.o)())
		return m, s
	}
	shows := func(m *Model, what string, want ...string) {
		t.Helper()
		for _, w := range want {
			if text := bare(m.View()); !strings.Contains(text, w) {
				t.Errorf("%s: no %q in\n%s", what, w, text)
			}
		}
	}
	m, s := begin(10 * time.Minute)
	shows(m, "the list", "Week 5", "exam, values, 10 minutes left", "Hand in the paper")
	press(m, "enter", "enter", "0", "enter")
	shows(m, "a problem", "exam, 10 minutes left", "question 2 of 3", "noted")
	press(m, "problems", "enter")
	m.Update(list(m.o)())
	shows(m, "the list again", "1 of 3")
	press(m, "enter", "3", "enter", "4", "enter") // at its last answer back to the list
	m.Update(list(m.o)())
	shows(m, "all answered", "all answered", "leads back to an answer")
	if strings.Contains(bare(m.View()), "20.5") {
		t.Errorf("a right value is told:\n%s", bare(m.View()))
	}
	press(m, "enter")
	shows(m, "the last answer once more", "question 3 of 3")
	press(m, "level blank", "enter", "new", "enter")
	if got := m.course.l.Level(); got != tutor.Values || s.Lesson(0) != m.course.l {
		t.Errorf("a paper goes on at the level %v", got)
	}
	now = now.Add(9 * time.Minute)
	if cmd := m.tick(); cmd == nil {
		t.Error("the clock stands still")
	}
	shows(m, "the last minute", "1 minute left")
	now = now.Add(time.Minute)
	m.Update(minuteGone{m.minutes})
	m.Update(list(m.o)())
	shows(m, "the end", "The time is over", "jetty-deck:", "In all ")
	if cmd := m.minute(); cmd != nil {
		t.Error("the clock goes on after the end")
	}
	press(m, "esc")
	shows(m, "the list at the end", "handed in", "of 10", "The marks")
	press(m, "enter")
	shows(m, "a whole paper", "RB typed 3:", "RB = 20.5 kN")
	press(m, "7", "enter")
	if strings.Contains(strings.Join(s.Whole(0), " "), "typed 7") {
		t.Error("something is taken after the end")
	}
	paperWithoutLimit(t, begin, shows)
}

// paperWithoutLimit is handed in from the list, and stands on every size of screen.
func paperWithoutLimit(t *testing.T, begin func(time.Duration) (*Model, *tutor.Sitting), shows func(*Model, string, ...string)) {
	t.Helper()
	m, s := begin(0)
	if m.minute() != nil {
		t.Error("a paper without a limit wakes the screen")
	}
	press(m, "down", "down", "enter")
	shows(m, "handing in", "Not all is answered: jetty-deck, gravel-platform.")
	press(m, "enter")
	if shows(m, "handed in", "In all 0 of 20 points."); !s.Over() {
		t.Error("the paper is not handed in")
	}
	for _, at := range [][2]int{{40, 12}, {60, 18}, {200, 60}} {
		m.Update(tea.WindowSizeMsg{Width: at[0], Height: at[1]})
		if lines := strings.Split(bare(m.View()), "\n"); len(lines) != at[1] {
			t.Errorf("%d lines on a screen of %d", len(lines), at[1])
		}
	}
}

// In an exam a problem of a set is not worked by itself, without the clock of its paper.
func TestSetInExamIsOnePaper(t *testing.T) {
	p, _ := problems.Library("jetty-deck")
	about := &SetEntry{Title: "Week 5"}
	entries := func() []Entry {
		return []Entry{{Name: "w5", Set: about}, {Name: "w5/jetty-deck", Problem: p, Set: about}}
	}
	m := New(Options{Entries: entries, Exam: true, Level: tutor.Values})
	size(m, 100, 30)
	m.Update(list(m.o)())
	press(m, "down", "enter")
	if m.course != nil || !strings.Contains(m.notice, "one paper") {
		t.Errorf("a problem of a set is begun by itself: %q", m.notice)
	}
}

// The words hand in are found as they are typed into the list of a paper: said twice, or once and then enter, they hand it in.
func TestHandInFromTheList(t *testing.T) {
	t.Parallel()
	for _, second := range [][]string{{"hand in", "enter"}, {"enter"}} {
		p, _ := problems.Library("jetty-deck")
		task, err := problems.Alone(p.Asking([]string{"reactions"}))
		if err != nil {
			t.Fatal(err)
		}
		s, err := tutor.Sit(tutor.Rules{ID: "w5", Title: "Week 5", Level: tutor.Values, Tasks: []problems.Task{task}}, nil, time.Now, func(err error) { t.Error(err) })
		if err != nil {
			t.Fatal(err)
		}
		m := New(Options{Sitting: s, Clock: time.Now})
		size(m, 80, 24)
		m.Update(list(m.o)())
		press(m, "hand in", "enter")
		text := bare(m.View())
		if s.Over() || !strings.Contains(strings.Join(strings.Fields(text), " "), "Not all is answered: jetty-deck. Enter once more hands the paper in") {
			t.Errorf("the first time:\n%s", text)
		}
		if press(m, second...); !s.Over() {
			t.Errorf("after %q the paper is not handed in:\n%s", second, bare(m.View()))
		}
	}
}
