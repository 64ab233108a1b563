package screen

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/tutor"
)

// control is every control sequence that a view may hold.
var control = regexp.MustCompile("\x1b\\[[0-9;]*m")

// bare is a view without its control sequences.
func bare(view string) string { return control.ReplaceAllString(view, "") }

// checkView reports what is wrong with a view of a size, or nothing.
func checkView(view string, w, h int, ascii bool) string {
	lines := strings.Split(view, "\n")
	if len(lines) != h {
		return fmt.Sprintf("%d lines", len(lines))
	}
	for i, l := range lines {
		if n := lipgloss.Width(l); n > w {
			return fmt.Sprintf("line %d is %d wide: %s", i+1, n, bare(l))
		}
		for _, r := range bare(l) {
			if r < ' ' || r == 0x7f || ascii && r > 0x7e {
				return fmt.Sprintf("line %d has the rune %q", i+1, r)
			}
		}
	}
	return ""
}

// lesson begins a lesson on a problem of the library.
func lesson(t testing.TB, name string, level tutor.Level, exam bool) *tutor.Lesson {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("no problem %q in the library", name)
	}
	l, err := tutor.New(p, level, exam)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// inLesson is the program in a lesson.
func inLesson(t testing.TB, name string, level tutor.Level) *Model {
	return New(Options{Lesson: lesson(t, name, level, false), Colour: true})
}

// atChooser is the program at the list of problems.
func atChooser(o Options) *Model {
	if o.Entries == nil {
		o.Entries = Library
	}
	m := New(o)
	m.Update(m.Init()())
	return m
}

// size tells the program the size of its terminal.
func size(m *Model, w, h int) { m.Update(tea.WindowSizeMsg{Width: w, Height: h}) }

// named are the keys that tests press by name.
var named = map[string]tea.KeyMsg{
	"enter": {Type: tea.KeyEnter}, "tab": {Type: tea.KeyTab}, "esc": {Type: tea.KeyEsc}, "up": {Type: tea.KeyUp}, "down": {Type: tea.KeyDown},
	"left": {Type: tea.KeyLeft}, "right": {Type: tea.KeyRight}, "home": {Type: tea.KeyHome}, "end": {Type: tea.KeyEnd},
	"pgup": {Type: tea.KeyPgUp}, "pgdown": {Type: tea.KeyPgDown}, "backspace": {Type: tea.KeyBackspace}, "delete": {Type: tea.KeyDelete},
	"space": {Type: tea.KeySpace, Runes: []rune{' '}}, "f1": {Type: tea.KeyF1},
	"ctrl+a": {Type: tea.KeyCtrlA}, "ctrl+e": {Type: tea.KeyCtrlE}, "ctrl+b": {Type: tea.KeyCtrlB}, "ctrl+d": {Type: tea.KeyCtrlD},
	"ctrl+c": {Type: tea.KeyCtrlC}, "ctrl+f": {Type: tea.KeyCtrlF}, "ctrl+g": {Type: tea.KeyCtrlG}, "ctrl+k": {Type: tea.KeyCtrlK},
	"ctrl+l": {Type: tea.KeyCtrlL}, "ctrl+n": {Type: tea.KeyCtrlN}, "ctrl+o": {Type: tea.KeyCtrlO}, "ctrl+p": {Type: tea.KeyCtrlP}, "ctrl+r": {Type: tea.KeyCtrlR},
	"ctrl+t": {Type: tea.KeyCtrlT}, "ctrl+u": {Type: tea.KeyCtrlU}, "ctrl+w": {Type: tea.KeyCtrlW}, "ctrl+x": {Type: tea.KeyCtrlX}, "ctrl+y": {Type: tea.KeyCtrlY}, "ctrl+z": {Type: tea.KeyCtrlZ},
}

// press presses keys: those with a name, and all else as typed runes. It carries out commands that list problems.
func press(m *Model, keys ...string) tea.Cmd {
	var last tea.Cmd
	for _, k := range keys {
		msg, ok := named[k]
		if !ok {
			msg = tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(k)}
		}
		if _, last = m.Update(msg); last != nil && m.view == choosing {
			if l, ok := last().(listed); ok {
				m.Update(l)
			}
		}
	}
	return last
}

// right is the right answer to the question in hand, as the lesson would tell it.
func right(l *tutor.Lesson) string {
	q, _ := l.Now()
	if q.Kind == tutor.Reading {
		return ""
	}
	switch {
	case q.Composing():
		return "tell"
	case q.Kind == tutor.ShapeSlope:
		return map[bool]string{true: "falls", false: "rises"}[strings.HasSuffix(l.Display(false).Answer(q), "falls")]
	case q.Kind == tutor.ZeroPlace:
		return q.Station.At.Decimal(20)
	case q.Shape():
		return l.Display(false).Answer(q)[strings.LastIndexByte(l.Display(false).Answer(q), ' ')+1:]
	}
	if q.Kind == tutor.SectionPart {
		return l.Display(false).Shown(q).Decimal(20)
	}
	text := l.Display(false).Answer(q)
	if q.Kind == tutor.TermSign {
		return text[len(text)-1:]
	}
	_, text, _ = strings.Cut(text, " = ")
	value, _, _ := strings.Cut(text, " (")
	return strings.TrimPrefix(value, "~")
}

// work answers n questions rightly through keys, or all if n is negative.
func work(t testing.TB, m *Model, n int) {
	t.Helper()
	for ; n != 0; n-- {
		before, of := m.course.l.Position()
		if before == of {
			return
		}
		if _, open := tutor.AsideOf(m.course.l); open {
			press(m, "tell", "enter")
		}
		press(m, right(m.course.l), "enter")
		if at, _ := m.course.l.Position(); at != before+1 {
			t.Fatalf("question %d of %d: %q was not right: %v", before+1, of, right(m.course.l), m.course.reply.Lines)
		}
	}
}

// toDiagrams answers all questions up to the first along a member, and n more.
func toDiagrams(t testing.TB, m *Model, n int) {
	t.Helper()
	for {
		if q, asking := m.course.l.Now(); !asking || q.Member != statics.None {
			break
		}
		work(t, m, 1)
	}
	work(t, m, n)
}

// states are states that the screen can be in.
func states(t testing.TB, ascii bool) map[string]*Model {
	all := map[string]*Model{}
	add := func(name string, m *Model, keys ...string) *Model {
		m.o.ASCII, m.chooser.ascii = ascii, ascii
		if m.course != nil {
			m.course.ascii = ascii
		}
		size(m, 80, 24)
		press(m, keys...)
		all[name] = m
		return m
	}
	add("chooser", atChooser(Options{}))
	add("chooser, last", atChooser(Options{}), "up", "pgdown", "pgdown", "right")
	add("chooser, found", atChooser(Options{}), "hall")
	add("chooser, none found", atChooser(Options{}), "no such thing")
	add("chooser, task", atChooser(Options{}), "down", "down", "tab")
	add("chooser, figure of a task", atChooser(Options{}), "up", "tab", "tab", "down")
	add("opening", inLesson(t, "stable-hoist", tutor.Gradual))
	add("opening, scrolled", inLesson(t, "orchard-gate", tutor.Plan), "down", "down")
	add("task", inLesson(t, "stable-hoist", tutor.Values), "ctrl+x")
	add("chooser, help", atChooser(Options{}), "?")
	odd := atChooser(Options{Notice: "warning: progress cannot be kept: no room left on the device"})
	odd.chooser.take(listed{entries: []Entry{{Name: "bad.yaml", Fault: "bad.yaml:1:1: a very long line of what is wrong\n  a: [\n     ^"}}})
	add("chooser, bad file", odd)
	for _, name := range shelf {
		for _, level := range []tutor.Level{tutor.Read, tutor.Values, tutor.Terms, tutor.Plan, tutor.Blank} {
			m := add(name+", "+level.String(), inLesson(t, name, level))
			_, of := m.course.l.Position()
			work(t, m, of*2/3)
		}
	}
	add("long line", inLesson(t, "riding-hall", tutor.Values), strings.Repeat("0.5*6*4 + ", 18), "ctrl+a", "right")
	add("cannot be read", inLesson(t, "riding-hall", tutor.Values), "3 +* 4 parsecs", "enter")
	add("not yet", inLesson(t, "mill-bridge", tutor.Values), "77", "enter")
	add("hints", inLesson(t, "hillside-garage", tutor.Values), "ctrl+t", "ctrl+t", "ctrl+t")
	add("terms wrong", inLesson(t, "stable-hoist", tutor.Terms), "tell", "enter", "77", "enter")
	add("sheet pane", inLesson(t, "stable-hoist", tutor.Values), "tell", "enter", "tell", "enter", "tab", "up")
	add("looking back", inLesson(t, "stable-hoist", tutor.Values), "tell", "enter", "tell", "enter", "ctrl+p", "ctrl+p")
	add("frame as given", inLesson(t, "stable-hoist", tutor.Values), "ctrl+g")
	add("whole sheet", inLesson(t, "stable-hoist", tutor.Values), "tell", "enter", "tell", "enter", "ctrl+r", "up")
	add("large figure", inLesson(t, "quay-gantry", tutor.Values), "ctrl+f")
	add("large figure, parts apart", inLesson(t, "painters-trestle", tutor.Values), "tell", "enter", "ctrl+f", "left", "left", "left")
	diagram := add("diagram", inLesson(t, "hillside-garage", tutor.Terms))
	toDiagrams(t, diagram, 9)
	press(diagram, "tab")
	large := add("large diagram", inLesson(t, "riding-hall", tutor.Terms))
	toDiagrams(t, large, 12)
	press(large, "ctrl+f", "left")
	add("help", inLesson(t, "quay-gantry", tutor.Values), "?", "down")
	add("all that was said", inLesson(t, "quay-gantry", tutor.Values), "ctrl+t", "ctrl+o")
	work(t, add("done", inLesson(t, "mill-bridge", tutor.Values), "7", "enter", "ctrl+t", "tell", "enter"), -1)
	over := add("done, back in the lesson", inLesson(t, "mill-bridge", tutor.Terms))
	work(t, over, -1)
	press(over, "esc")
	exam := add("exam", New(Options{Lesson: lesson(t, "mill-bridge", tutor.Values, true)}))
	work(t, exam, 3)
	terms := add("exam of terms", New(Options{Lesson: lesson(t, "mill-bridge", tutor.Terms, true)}))
	work(t, terms, 6)
	done := add("exam done", New(Options{Lesson: lesson(t, "mill-bridge", tutor.Values, true)}))
	work(t, done, -1)
	press(add("exam's marks", done), "ctrl+o")
	return all
}

// sizes are thirty sizes from nothing to a large screen.
var sizes = [][2]int{
	{0, 0}, {1, 1}, {2, 5}, {5, 2}, {39, 12}, {40, 11}, {40, 12}, {40, 40}, {44, 13}, {50, 14},
	{60, 18}, {64, 20}, {70, 24}, {75, 22}, {76, 24}, {79, 23}, {80, 12}, {80, 24}, {80, 30}, {90, 24},
	{99, 30}, {100, 30}, {101, 18}, {110, 28}, {120, 40}, {132, 43}, {140, 45}, {160, 50}, {200, 12}, {200, 60},
}

// TestEveryStateAtThirtySizes draws every state at thirty sizes, changing the size of one program as a person would.
func TestEveryStateAtThirtySizes(t *testing.T) {
	t.Parallel()
	for _, ascii := range []bool{false, true} {
		for name, m := range states(t, ascii) {
			for _, s := range sizes {
				size(m, s[0], s[1])
				view := m.View()
				if s[0] == 0 && view == "" {
					continue
				}
				if fault := checkView(view, s[0], s[1], ascii); fault != "" {
					t.Errorf("%s at %d × %d: %s", name, s[0], s[1], fault)
				}
			}
		}
	}
}

// TestEverySize draws four states at every width from 40 to 200 and every height from 12 to 60: each width with the
// heights at which the layout changes and one more, each height with such widths. In a short run it draws each
// fifth.
func TestEverySize(t *testing.T) {
	t.Parallel()
	step := 1
	if testing.Short() {
		step = 5
	}
	four := map[string]*Model{
		"chooser":  atChooser(Options{}),
		"values":   inLesson(t, "quay-gantry", tutor.Values),
		"terms":    inLesson(t, "hillside-garage", tutor.Terms),
		"diagrams": inLesson(t, "quay-gantry", tutor.Terms),
	}
	work(t, four["values"], 5)
	work(t, four["terms"], 12)
	toDiagrams(t, four["diagrams"], 20)
	for name, m := range four {
		check := func(w, h int) {
			size(m, w, h)
			if fault := checkView(m.View(), w, h, false); fault != "" {
				t.Errorf("%s at %d × %d: %s", name, w, h, fault)
			}
		}
		for w := 40; w <= 200; w += step {
			for _, h := range []int{12, 21, 22, 29, 30, 44, 45, 12 + w%49} {
				check(w, h)
			}
		}
		for h := 12; h <= 60; h += step {
			for _, w := range []int{40, 75, 76, 99, 100, 199} {
				check(w, h)
			}
		}
	}
}

// TestWorkedToTheEnd works every problem of the library to its end by keys, at every level.
func TestWorkedToTheEnd(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		for _, level := range []tutor.Level{tutor.Read, tutor.Values, tutor.Terms, tutor.Plan, tutor.Blank, tutor.Gradual} {
			m := inLesson(t, name, level)
			size(m, 120, 40)
			work(t, m, -1)
			if text := bare(m.View()); m.view != closing || !strings.Contains(text, "All done: ") {
				t.Errorf("%s, %s does not end:\n%s", name, level, text)
			}
			for i, v := range solved(t, name).Values {
				if known, ok := m.course.l.Known(i); !ok || !known.Equal(v) {
					t.Errorf("%s, %s: force %d is not known at the end", name, level, i)
				}
			}
			press(m, "enter")
			for m.view == working { // what was told comes once more
				work(t, m, -1)
				press(m, "enter")
			}
			if m.view != choosing {
				t.Errorf("%s, %s: enter does not lead to the problems", name, level)
			}
		}
	}
}

// solved is the solution of a problem of the library.
func solved(t testing.TB, name string) *statics.Solution {
	t.Helper()
	p, _ := problems.Library(name)
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return s
}
