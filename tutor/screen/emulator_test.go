package screen

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/hinshun/vt10x"

	"unpin/tutor"
)

// onScreen is what an emulated terminal shows, each row without the blanks at its end.
func onScreen(term vt10x.Terminal) string {
	w, h := term.Size()
	var b strings.Builder
	for y := range h {
		var row strings.Builder
		for x := range w {
			r := term.Cell(x, y).Char
			if r == 0 {
				r = ' '
			}
			row.WriteRune(r)
		}
		b.WriteString(strings.TrimRight(row.String(), " ") + "\n")
	}
	return b.String()
}

// trimmed is a view as onScreen would give it.
func trimmed(view string) string {
	var b strings.Builder
	for _, l := range strings.Split(bare(view), "\n") {
		b.WriteString(strings.TrimRight(l, " ") + "\n")
	}
	return b.String()
}

// TestViewsOnATerminal writes the view of every state to an emulated terminal of its size: all of it must stand there,
// row by row, nothing wrapped or scrolled.
func TestViewsOnATerminal(t *testing.T) {
	for name, m := range states(t, false) {
		for _, s := range [][2]int{{40, 12}, {60, 18}, {80, 24}, {120, 40}} {
			size(m, s[0], s[1])
			view := m.View()
			term := vt10x.New(vt10x.WithSize(s[0], s[1]))
			if _, err := term.Write([]byte(strings.ReplaceAll(view, "\n", "\r\n"))); err != nil {
				t.Fatal(err)
			}
			if got, want := onScreen(term), trimmed(view); got != want {
				t.Errorf("%s at %d × %d shows\n%s\nin place of\n%s", name, s[0], s[1], got, want)
			}
		}
	}
}

// TestProgramOnATerminal runs the whole program against an emulated terminal: keys, a change of size, what is pasted,
// merged keys and keys that are unknown.
func TestProgramOnATerminal(t *testing.T) {
	term := vt10x.New(vt10x.WithSize(100, 30))
	m := inLesson(t, "quay-gantry", tutor.Values)
	p := tea.NewProgram(m, tea.WithInput(nil), tea.WithOutput(term), tea.WithoutSignals())
	go func() {
		for _, msg := range []tea.Msg{
			tea.WindowSizeMsg{Width: 80, Height: 24},
			tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("6 kN\r\nright"), Paste: true},
			tea.KeyMsg{Type: tea.KeyEnter},
			tea.KeyMsg{Type: tea.KeyF12},
			tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("x"), Alt: true},
			tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("-1?2")},
			tea.MouseMsg{},
			tea.WindowSizeMsg{Width: 100, Height: 30},
		} {
			p.Send(msg)
		}
		p.Quit()
	}()
	if _, err := p.Run(); err != nil {
		t.Fatal(err)
	}
	got := onScreen(term)
	for _, want := range []string{"right: ", "question 2 of 28", "Cx [kN] = -1?2", "Dx = 6 kN: right on CD"} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not on the screen:\n%s", want, got)
		}
	}
}
