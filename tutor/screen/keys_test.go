package screen

import (
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics"
	"unpin/tutor"
	"unpin/tutor/record"
)

// TestHelpTellsAllKeys holds the help page to the tables: each view's keys stand there, and none is bound twice.
func TestHelpTellsAllKeys(t *testing.T) {
	for _, v := range []view{choosing, working, drawing, tasking, opening, closing, reading} {
		bound := map[string]bool{}
		for _, b := range append(slices.Clone(bindings(v)), anywhere...) {
			for _, k := range b.keys {
				if bound[k] {
					t.Errorf("view %d: %s is bound twice", v, k)
				}
				bound[k] = true
			}
		}
	}
	for name, m := range map[string]*Model{"chooser": atChooser(Options{}), "lesson": inLesson(t, "jetty-deck", tutor.Values)} {
		size(m, 80, 60)
		if m.view == opening {
			press(m, "enter")
		}
		view := m.view
		list := bindings(view)
		press(m, "?")
		text := bare(m.View())
		for _, b := range list {
			if b.help != "" && !strings.Contains(text, " "+b.shown+" ") {
				t.Errorf("%s: help does not tell %s:\n%s", name, b.shown, text)
			}
		}
		if press(m, "esc"); m.view != view {
			t.Errorf("%s: help is not left", name)
		}
	}
}

// TestKeysOfTheLesson presses each key of the lesson and looks at what it leads to.
func TestKeysOfTheLesson(t *testing.T) {
	m := inLesson(t, "stable-hoist", tutor.Values)
	size(m, 80, 24)
	press(m, "tell", "enter", "tell", "enter")
	for _, c := range []struct {
		keys string
		want func() bool
	}{
		{"tab", func() bool { return m.course.pane == sheetPane }},
		{"tab", func() bool { return m.course.pane == figurePane }},
		{"ctrl+g", func() bool { return m.course.other == tutor.AsGiven }},
		{"esc", func() bool { return m.course.other == tutor.Fitting }},
		{"ctrl+p", func() bool { return m.course.looked == 1 }},
		{"ctrl+p ctrl+p ctrl+p ctrl+p", func() bool { return m.course.looked == 0 }},
		{"ctrl+n", func() bool { return m.course.looked == 1 }},
		{"ctrl+n", func() bool { return m.course.looked == statics.None }},
		{"ctrl+r", func() bool { return m.view == reading }},
		{"esc", func() bool { return m.view == working }},
		{"ctrl+f right", func() bool { return m.view == drawing && m.course.large == tutor.AsGiven }},
		{"q", func() bool { return m.view == working }},
		{"ctrl+t", func() bool { return m.course.reply.Kind == tutor.Hinted }},
		{"ctrl+o", func() bool { return m.view == telling }},
		{"esc sheet enter", func() bool { return m.view == reading }},
		{"esc help enter", func() bool { return m.view == helping }},
		{"esc 1 2 esc", func() bool { return len(m.course.answerLine.text) == 0 && m.view == working }},
		{"12+*3 enter", func() bool { return m.course.answerLine.at == 3 && len(m.course.reply.Lines) == 1 }},
		{"ctrl+e ctrl+u 77 enter", func() bool { return m.course.last == "77" && m.course.reply.Kind == tutor.Judged }},
		{"ctrl+l 1 enter", func() bool { return m.course.last == "771" }},
		{"5 ctrl+l esc", func() bool { return len(m.course.answerLine.text) == 0 }},
		{"level space terms enter", func() bool { return m.course.l.Level() == tutor.Terms && m.chooser.level == tutor.Terms }},
		{"level space steep enter", func() bool { return m.course.reply.Kind == tutor.Unread }},
		{"esc", func() bool { return m.view == choosing && m.course == nil }},
	} {
		press(m, strings.Fields(c.keys)...)
		if !c.want() {
			t.Fatalf("%s leads to\n%s", c.keys, bare(m.View()))
		}
	}
	if cmd := press(m, "ctrl+c"); cmd == nil || cmd() != tea.Quit() {
		t.Error("ctrl+c does not leave")
	}
	m = inLesson(t, "stable-hoist", tutor.Values)
	if cmd := press(m, "ctrl+z"); cmd == nil || cmd() != tea.Suspend() {
		t.Error("ctrl+z does not put aside")
	}
	if cmd := press(m, "quit", "enter"); cmd == nil || cmd() != tea.Quit() {
		t.Error("quit does not leave")
	}
}

// TestProgress works a little, goes back to the problems, and goes on or starts over.
func TestProgress(t *testing.T) {
	m := atChooser(Options{Store: record.At(t.TempDir() + "/practice.jsonl"), Level: tutor.Values})
	size(m, 80, 24)
	press(m, "mill", "enter")
	work(t, m, 3)
	press(m, "esc")
	if text := bare(m.View()); !strings.Contains(text, "3 of") {
		t.Errorf("the problems do not tell what is done:\n%s", text)
	}
	press(m, "enter")
	if text := bare(m.View()); !strings.Contains(text, "Earlier work: 3 of") || !strings.Contains(text, "start over") {
		t.Errorf("earlier work is not offered:\n%s", text)
	}
	press(m, "enter")
	if at, _ := m.course.l.Position(); at != 3 {
		t.Errorf("at question %d after going on", at+1)
	}
	press(m, "esc", "right")
	if text := bare(m.View()); strings.Contains(text, "3 of") {
		t.Errorf("what is done at one level counts at another:\n%s", text)
	}
	press(m, "right", "right", "enter", "tell", "enter", "tell", "enter", "esc") // now at the last level
	if text := bare(m.View()); !strings.Contains(text, "2 so far") {
		t.Errorf("what is done where the student chooses is not told:\n%s", text)
	}
	press(m, "left", "left", "left", "enter", "ctrl+n")
	if at, _ := m.course.l.Position(); at != 0 {
		t.Errorf("at question %d after starting over", at+1)
	}
}
