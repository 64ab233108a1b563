package screen

import (
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
	"unpin/tutor/record"
)

// TestOpening holds that a lesson opens with its task, and that the first key goes on and is not lost.
func TestOpening(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		keys  string
		view  view
		typed string
	}{
		{"", opening, ""}, {"enter", working, ""}, {"space", working, ""}, {"9", working, "9"}, {"-8.5", working, "-8.5"},
		{"ctrl+g", working, ""}, {"ctrl+f", drawing, ""}, {"?", helping, ""}, {"? esc", opening, ""}, {"down", opening, ""}, {"esc", choosing, ""},
	} {
		m := New(Options{Lesson: lesson(t, "riding-hall", tutor.Values, false), Entries: fromShelf})
		size(m, 80, 24)
		if text := bare(m.View()); c.keys == "" && (!strings.Contains(text, "The task") || !strings.Contains(text, "pinned feet")) {
			t.Errorf("a lesson opens with\n%s", text)
		}
		press(m, strings.Fields(c.keys)...)
		typed := ""
		if m.course != nil {
			typed = string(m.course.answerLine.text)
		}
		if m.view != c.view || typed != c.typed {
			t.Errorf("%q leads to view %d with %q, want %d with %q", c.keys, m.view, typed, c.view, c.typed)
		}
	}
}

// TestEarlierWorkIsOffered holds that by name and from the list earlier work is offered alike: a key goes on there, another
// sets it aside.
func TestEarlierWorkIsOffered(t *testing.T) {
	t.Parallel()
	store := record.At(t.TempDir() + "/practice.jsonl")
	begin := func(byName bool) *Model {
		o := Options{Entries: fromShelf, Store: store, Level: tutor.Values}
		if byName {
			o.Lesson = lesson(t, "mill-bridge", tutor.Values, false)
			m := New(o)
			size(m, 80, 24)
			return m
		}
		m := atChooser(o)
		size(m, 80, 24)
		press(m, "mill", "enter")
		return m
	}
	m := begin(true)
	work(t, m, 2)
	for _, byName := range []bool{true, false} {
		m = begin(byName)
		if text := bare(m.View()); !strings.Contains(text, "Earlier work: 2 of") {
			t.Errorf("by name %v: earlier work is not offered:\n%s", byName, text)
		}
		press(m, "enter")
		if at, _ := m.course.l.Position(); at != 2 {
			t.Errorf("by name %v: at question %d", byName, at+1)
		}
	}
	m = begin(true)
	press(m, "ctrl+n")
	if at, _ := m.course.l.Position(); at != 0 {
		t.Errorf("started over at question %d", at+1)
	}
}

// TestClosing works a lesson with a mistake to its end, and goes on from its page by every key.
func TestClosing(t *testing.T) {
	t.Parallel()
	end := func() *Model {
		m := New(Options{Lesson: lesson(t, "jetty-deck", tutor.Values, false), Entries: fromShelf})
		size(m, 120, 45)
		press(m, "77", "enter", "ctrl+t")
		work(t, m, -1)
		return m
	}
	m := end()
	text := bare(m.View())
	for _, want := range []string{"All done: Jetty deck", "Results", "RB = 20.5 kN", "Mistakes", "Ax (step 1", "1 hint", "13 of 14", "Skills", "What to do next"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not told at the end:\n%s", want, text)
		}
	}
	for _, c := range []struct {
		keys string
		view view
	}{
		{"enter", choosing}, {"esc", working}, {"esc sheet enter", reading}, {"n", opening}, {"ctrl+x", tasking}, {"ctrl+x esc", closing},
		{"ctrl+f", drawing}, {"ctrl+r", reading}, {"?", helping}, {"esc stray enter", choosing},
	} {
		m := end()
		press(m, strings.Fields(c.keys)...)
		if m.view != c.view {
			t.Errorf("%s leads to view %d, want %d:\n%s", c.keys, m.view, c.view, bare(m.View()))
		}
	}
	press(m, "n")
	if text := bare(m.View()); !strings.Contains(text, "with other numbers") {
		t.Errorf("new numbers show\n%s", text)
	}
}

// TestNewNumbers begins the same frame with other numbers in the middle of a lesson, by a key and by its word; in an exam
// it cannot be done by a key.
func TestNewNumbers(t *testing.T) {
	t.Parallel()
	for _, keys := range []string{"ctrl+y", "new enter"} {
		m := inLesson(t, "jetty-deck", tutor.Values)
		size(m, 80, 24)
		work(t, m, 2)
		press(m, strings.Fields(keys)...)
		if at, _ := m.course.l.Position(); at != 0 || m.view != opening || !strings.Contains(bare(m.View()), "40 kN") && !strings.Contains(bare(m.View()), "30 kN") {
			t.Errorf("%s at question %d:\n%s", keys, at+1, bare(m.View()))
		}
	}
	m := New(Options{Lesson: lesson(t, "jetty-deck", tutor.Values, true)})
	size(m, 80, 24)
	work(t, m, 2)
	press(m, "ctrl+y")
	if at, _ := m.course.l.Position(); at != 2 {
		t.Errorf("an exam is lost at question %d", at+1)
	}
}

// TestBackToTheProblem holds that one comes back to the list at the problem one comes from, whatever was typed to find it.
func TestBackToTheProblem(t *testing.T) {
	t.Parallel()
	m := New(Options{Lesson: lesson(t, "stable-hoist", tutor.Values, false), Entries: fromShelf})
	size(m, 80, 24)
	press(m, "esc")
	if e, ok := m.chooser.choice(); !ok || e.Name != "stable-hoist" {
		t.Errorf("back at %q", e.Name)
	}
	press(m, "mill", "enter", "enter", "esc")
	if e, _ := m.chooser.choice(); e.Name != "mill-bridge" || string(m.chooser.filter.text) != "mill" {
		t.Errorf("back at %q, found by %q", e.Name, string(m.chooser.filter.text))
	}
	press(m, "esc")
	if e, _ := m.chooser.choice(); e.Name != "mill-bridge" || len(m.chooser.found()) != len(shelf) {
		t.Errorf("all shown again, at %q", e.Name)
	}
}

// TestUnreadLine holds what the keys do to a line that could not be read: the first that types takes its place.
func TestUnreadLine(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ keys, want string }{
		{"", "I know"}, {"0", "0"}, {"hint", "hint"}, {"space", " "}, {"ctrl+u", ""}, {"esc", ""},
		{"enter", ""}, {"enter 9", "9"}, {"left 0", "0I know"}, {"end 0", "I know0"}, {"end backspace", "I kno"}, {"ctrl+t", "I know"}, {"ctrl+t 9", "9"},
	} {
		m := inLesson(t, "jetty-deck", tutor.Values)
		size(m, 80, 24)
		press(m, "I", "space", "know", "enter")
		press(m, strings.Fields(c.keys)...)
		if got := string(m.course.answerLine.text); got != c.want {
			t.Errorf("%q leaves %q, want %q", c.keys, got, c.want)
		}
	}
}

// TestRefusedCommand holds that a command that is refused does not stay in the line: at a worked step enter reads on.
func TestRefusedCommand(t *testing.T) {
	t.Parallel()
	m := inLesson(t, "jetty-deck", tutor.Read)
	size(m, 80, 24)
	press(m, "tell", "enter")
	if len(m.course.answerLine.text) > 0 {
		t.Errorf("%q stays", string(m.course.answerLine.text))
	}
	press(m, "enter")
	if at, _ := m.course.l.Position(); at != 1 {
		t.Errorf("at question %d", at+1)
	}
}

// TestPauseLetsCommandsThrough holds that a pause keeps answers, not commands, back, and ends by itself.
func TestPauseLetsCommandsThrough(t *testing.T) {
	t.Parallel()
	now := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC)
	m := New(Options{Lesson: lesson(t, "jetty-deck", tutor.Values, false), Clock: func() time.Time { return now }})
	size(m, 80, 24)
	press(m, "1", "enter", "2", "enter")
	if cmd := press(m, "3", "enter"); cmd == nil {
		t.Error("nothing wakes the screen at the end of the pause")
	}
	press(m, "hint", "enter")
	if m.course.reply.Kind != tutor.Hinted {
		t.Errorf("a command is held back: %v", m.course.reply)
	}
	press(m, "0", "enter")
	if string(m.course.answerLine.text) != "0" {
		t.Error("what was typed is lost")
	}
	now = now.Add(10 * time.Second)
	if _, cmd := m.Update(paused{}); cmd != nil {
		t.Error("the screen wakes again")
	}
	if text := bare(m.View()); strings.Contains(text, "once this is read") {
		t.Errorf("the pause does not end:\n%s", text)
	}
}

// TestPartsOneByOne holds that where all parts have no room together they come one by one, in the lesson and large.
func TestPartsOneByOne(t *testing.T) {
	t.Parallel()
	m := inLesson(t, "step-ladders", tutor.Plan)
	size(m, 60, 18)
	press(m, "enter")
	if !m.course.cramped || m.course.shown() != tutor.AsGiven || !strings.Contains(bare(m.View()), "part by part: ctrl+g") {
		t.Fatalf("the parts do not come one by one:\n%s", bare(m.View()))
	}
	seen := map[tutor.Figure]bool{}
	for range m.course.shows().Bodies() {
		press(m, "ctrl+g")
		seen[m.course.shown()] = true
		if !strings.Contains(bare(m.View()), "Free body: ") {
			t.Errorf("a part shows\n%s", bare(m.View()))
		}
	}
	if len(seen) != m.course.shows().Bodies() {
		t.Errorf("%d parts are shown", len(seen))
	}
	if press(m, "ctrl+g"); m.course.shown() != tutor.AsGiven {
		t.Error("after the last part the frame does not come back")
	}
}

// TestCrowdedFrame holds that a frame whose support would stand on its load gives way to its parts, one by one, and comes back
// where it has room.
func TestCrowdedFrame(t *testing.T) {
	t.Parallel()
	for _, level := range []tutor.Level{tutor.Plan, tutor.Blank} {
		m := inLesson(t, "stable-hoist", level)
		size(m, 80, 24)
		press(m, "enter")
		seen := map[string]bool{}
		for range m.course.shows().Bodies() {
			text := bare(m.View())
			if !strings.Contains(text, "Free body: ") || !strings.Contains(text, "part by part: ctrl+g") {
				t.Errorf("%s: in place of the frame stands\n%s", level, text)
			}
			seen[m.course.figures().Title(m.course.shown(), false)] = true
			press(m, "ctrl+g")
		}
		if len(seen) != m.course.shows().Bodies() || m.course.other != tutor.Fitting {
			t.Errorf("%s: only %v are shown", level, seen)
		}
		if size(m, 100, 40); m.View() == "" || m.course.shown() == tutor.OnePart {
			t.Errorf("%s: the frame does not come back:\n%s", level, bare(m.View()))
		}
	}
}

// TestInks holds that no text is faint, and that what is asked and hints keep their lines with colours.
func TestInks(t *testing.T) {
	t.Parallel()
	for _, colour := range []bool{false, true} {
		theme := themeFor(colour)
		for k := range inks {
			if code := theme.code(k); code == "2" && k != fadedInk {
				t.Errorf("ink %d is faint", k)
			}
		}
		for _, k := range []ink{askedInk, hintInk} {
			if !strings.Contains(theme.code(k), "4") {
				t.Errorf("ink %d has no line: %q", k, theme.code(k))
			}
		}
	}
}

// TestPasteAtTheOpening holds that what is pasted there is only ever text.
func TestPasteAtTheOpening(t *testing.T) {
	t.Parallel()
	m := New(Options{Lesson: lesson(t, "jetty-deck", tutor.Values, false)})
	size(m, 80, 24)
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("?9"), Paste: true})
	if got := string(m.course.answerLine.text); got != "?9" || m.view != working {
		t.Errorf("%q in view %d", got, m.view)
	}
}
