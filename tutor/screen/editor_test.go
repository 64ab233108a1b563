package screen

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
)

// TestEditor types into the line of the answer; | is the cursor in what is wanted.
func TestEditor(t *testing.T) {
	for _, c := range []struct{ name, keys, want string }{
		{"runes", "1 2", "12|"},
		{"merged runes", "-12.5", "-12.5|"},
		{"a blank", "9 space kN", "9 kN|"},
		{"in the middle", "15 left .", "1.|5"},
		{"past the start", "1 left left left 2", "2|1"},
		{"past the end", "1 right right 2", "12|"},
		{"home and end", "123 home 0 end 4", "01234|"},
		{"as in a shell", "123 ctrl+a 0 ctrl+e 4 ctrl+b", "0123|4"},
		{"backspace", "123 left backspace", "1|3"},
		{"backspace at the start", "1 home backspace", "|1"},
		{"delete", "123 home delete delete", "|3"},
		{"delete at the end", "1 delete ctrl+d", "1|"},
		{"all before", "12345 left left ctrl+u", "|45"},
		{"all after", "12345 left left ctrl+k", "123|"},
		{"a word", "0.5*6 space kN space ctrl+w", "0.5*6 |"},
		{"a question mark within", "1?", "1?|"},
		{"letters of other scripts", "½−×", "½−×|"},
		{"a wide sign", "語", "語|"},
		{"keys that do other things", "1 pgup tab 2 pgdown ctrl+g", "12|"},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := inLesson(t, "jetty-deck", tutor.Values)
			size(m, 80, 24)
			press(m, strings.Fields(c.keys)...)
			e := m.course.answerLine
			if got := string(e.text[:e.at]) + "|" + string(e.text[e.at:]); got != c.want {
				t.Errorf("%q, want %q", got, c.want)
			}
		})
	}
}

// TestPaste holds that pasted text is only ever text: no key, no second line, no control character, and not without end.
func TestPaste(t *testing.T) {
	m := inLesson(t, "jetty-deck", tutor.Values)
	size(m, 80, 24)
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("?q\r\n9\t\x1b[31m\u200b\ufffe"), Paste: true})
	if got := string(m.course.answerLine.text); got != "?q  9 [31m" || m.view != working {
		t.Errorf("%q in view %d", got, m.view)
	}
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(strings.Repeat("9", 100000)), Paste: true})
	if n := len(m.course.answerLine.text); n != longestAnswer {
		t.Errorf("%d runes are kept", n)
	}
	if fault := checkView(m.View(), 80, 24, false); fault != "" {
		t.Error(fault)
	}
}

// TestFold breaks texts, words longer than the room among them.
func TestFold(t *testing.T) {
	for _, c := range []struct {
		text  string
		w, in int
		want  string
	}{
		{"", 5, 2, ""},
		{"one two", 7, 2, "one two"},
		{"one two", 6, 2, "one|  two"},
		{"one two three", 5, 2, "one|  two|  thr|  ee"},
		{"語語語", 4, 0, "語語|語"},
		{"語", 1, 0, "語"},
	} {
		if got := strings.Join(fold(c.text, c.w, c.in), "|"); got != c.want {
			t.Errorf("fold(%q, %d, %d) = %q, want %q", c.text, c.w, c.in, got, c.want)
		}
	}
}
