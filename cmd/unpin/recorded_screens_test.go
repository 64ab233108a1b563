package main

import (
	"fmt"
	"regexp"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
	"unpin/tutor/screen"
)

// recordedSizes are the sizes of terminals at which screens are recorded; keys are pressed at the last.
var recordedSizes = [][2]int{{140, 45}, {100, 30}, {80, 24}}

// screenJobs record the screens of lessons, as keys lead through them, and of the chooser.
func screenJobs(t *testing.T) []func(*recorder) {
	tell := func(n int) string { return strings.TrimSpace(strings.Repeat("tell enter ", n)) }
	lesson := []string{"", "7.77 enter", "ctrl+t", "ctrl+t ctrl+t", "ctrl+o", "esc tell enter", tell(2), "tab", "tab", "ctrl+g", "esc ctrl+f",
		"left", "esc ctrl+r", "esc ?", "esc banana enter", "ctrl+u " + tell(8), "ctrl+p ctrl+p", "ctrl+n ctrl+n tab up", "tab " + tell(8), "ctrl+f left",
		"esc " + tell(12), tell(25), "tab", "tab ctrl+f left left", "esc " + tell(200), "ctrl+u sheet enter", "enter"}
	jobs := []func(*recorder){func(r *recorder) {
		m := screen.New(screen.Options{Entries: screen.Library, Level: tutor.Values})
		m.Update(m.Init()())
		recordScreens(r, "chooser", m, []string{"", "down down tab", "tab right", "down down", "? ", "esc hall", "esc"})
	}}
	for _, name := range []string{"jetty-deck", "mill-bridge", "quay-gantry", "riding-hall", "painters-trestle", "hillside-garage", "stable-hoist"} {
		for _, rung := range []tutor.Level{tutor.Read, tutor.Values, tutor.Terms, tutor.Plan, tutor.Blank} {
			keys := lesson
			if rung == tutor.Read {
				keys = []string{"", "enter", "enter enter", "ctrl+f", "esc enter enter enter enter"}
			}
			m := lessonScreen(t, name, rung)
			jobs = append(jobs, func(r *recorder) { recordScreens(r, name+"-"+rung.String(), m, keys) })
		}
	}
	return jobs
}

// lessonScreen is the program in a lesson. Its clock goes on by a minute whenever it is looked at, so that no answer is
// taken for hasty.
func lessonScreen(t *testing.T, name string, rung tutor.Level) *screen.Model {
	p, err := find(name, nil)
	if err != nil {
		t.Fatal(err)
	}
	l, err := tutor.New(p, rung, false)
	if err != nil {
		t.Fatal(err)
	}
	now := time.Date(2026, 11, 28, 9, 0, 0, 0, time.UTC)
	return screen.New(screen.Options{Lesson: l, Entries: screen.Library, Level: rung, Colour: true, Clock: func() time.Time {
		now = now.Add(time.Minute)
		return now
	}})
}

// recordScreens records, in one output for each size, the screens that a program shows after each row of keys.
func recordScreens(r *recorder, name string, m *screen.Model, rows []string) {
	views := make([]strings.Builder, len(recordedSizes))
	for n, row := range rows {
		m.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
		for _, key := range strings.Fields(row) {
			m.Update(keyNamed(key))
		}
		for i, size := range recordedSizes {
			m.Update(tea.WindowSizeMsg{Width: size[0], Height: size[1]})
			fmt.Fprintf(&views[i], "== %d. %.40s\n%s\n", n, row, withoutColour(m.View()))
		}
	}
	for i, size := range recordedSizes {
		r.add(fmt.Sprintf("screens/%s-%dx%d.txt", name, size[0], size[1]), []byte(views[i].String()))
	}
}

// keys are those that are pressed by name.
var keys = map[string]tea.KeyType{
	"enter": tea.KeyEnter, "tab": tea.KeyTab, "esc": tea.KeyEsc, "up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight,
	"ctrl+f": tea.KeyCtrlF, "ctrl+g": tea.KeyCtrlG, "ctrl+n": tea.KeyCtrlN, "ctrl+o": tea.KeyCtrlO, "ctrl+p": tea.KeyCtrlP, "ctrl+r": tea.KeyCtrlR,
	"ctrl+t": tea.KeyCtrlT, "ctrl+u": tea.KeyCtrlU,
}

// keyNamed is a key by its name, or runes as they are typed.
func keyNamed(name string) tea.KeyMsg {
	if key, ok := keys[name]; ok {
		return tea.KeyMsg{Type: key}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(name)}
}

// colour is a control sequence of a view, with the blanks at the end of a line.
var colour = regexp.MustCompile("\x1b\\[[0-9;]*m")

// withoutColour is a view without its colours and without the blanks at the ends of its lines.
func withoutColour(view string) string {
	var lines []string
	for line := range strings.Lines(colour.ReplaceAllString(view, "")) {
		lines = append(lines, strings.TrimRight(line, " \n"))
	}
	return strings.Join(lines, "\n")
}
