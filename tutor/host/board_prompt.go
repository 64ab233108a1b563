package host

import (
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A prompt is something that is being typed on a board.
type prompt struct {
	label string
	text  []rune
	do    func(text string) (said string)
}

// longestWord bounds what is typed, in runes.
const longestWord = 300

// ask has something typed; what it comes to is said.
func (b *board) ask(label string, do func(text string) string) {
	b.typed, b.said = &prompt{label: label, do: do}, ""
}

// write types at the prompt.
func (b *board) write(k tea.KeyMsg) tea.Cmd {
	p := b.typed
	switch k.Type {
	case tea.KeyRunes, tea.KeySpace:
		p.text = append(p.text, k.Runes...)
		p.text = p.text[:min(len(p.text), longestWord)]
	case tea.KeyBackspace:
		p.text = p.text[:max(len(p.text)-1, 0)]
	case tea.KeyEsc:
		b.typed = nil
	case tea.KeyEnter:
		b.typed = nil
		b.said = p.do(strings.TrimSpace(notation.Visible(string(p.text))))
		b.leaf.look(b)
	case tea.KeyCtrlC:
		return tea.Quit
	}
	return nil
}

// tell says a word to all who are there.
func (b *board) tell(word string) string {
	if word == "" {
		return ""
	}
	return "Told to " + wording.Counted(b.host.tellAll(word), "session") + ": " + word
}

// tellOne says a word to one.
func (b *board) tellOne(id string) func(word string) string {
	return func(word string) string {
		switch {
		case word == "":
			return ""
		case !b.host.tellOne(id, word):
			return id + " is not here, and has not heard it."
		}
		return "Told to " + id + ": " + word
	}
}
