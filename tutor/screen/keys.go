package screen

import (
	"slices"

	tea "github.com/charmbracelet/bubbletea"
)

// A binding is what some keys do in a view. The help line and the help page are written from the bindings, so that a key
// that does nothing now is not in the line.
type binding struct {
	keys  []string // as bubbletea spells them
	shown string   // as people read them
	word  string   // for the help line; empty where it stands on the help page only
	help  string   // for the help page
	able  func(*Model) bool
	do    func(*Model) tea.Cmd
}

// off reports whether the binding does nothing now.
func (b binding) off(m *Model) bool { return b.able != nil && !b.able(m) }

// bindings are the bindings of a view.
func bindings(v view) []binding {
	switch v {
	case choosing:
		return chooserKeys
	case working:
		return lessonKeys
	case drawing:
		return figureKeys
	}
	return readerKeys
}

// anywhere are the bindings that hold in every view.
var anywhere = []binding{
	{keys: []string{"ctrl+c"}, shown: "ctrl+c", word: "leave", help: "leaves; what was done is kept", do: func(*Model) tea.Cmd { return tea.Quit }},
	{keys: []string{"ctrl+z"}, shown: "ctrl+z", help: "puts the program aside; fg brings it back", do: func(*Model) tea.Cmd { return tea.Suspend }},
}

var chooserKeys, lessonKeys, figureKeys, readerKeys []binding

func init() { // here, since what keys do leads back to the tables
	chooserKeys = []binding{
		{keys: []string{"enter"}, shown: "enter", word: "work on it", help: "begins the problem, or goes on where you left it", able: (*Model).hasChoice, do: (*Model).begin},
		{keys: []string{"ctrl+n"}, shown: "ctrl+n", word: "start over", help: "begins the problem anew", able: (*Model).hasEarlier, do: (*Model).beginAnew},
		{keys: []string{"up", "ctrl+p"}, shown: "up, down", word: "choose", help: "moves to another problem", do: func(m *Model) tea.Cmd { return m.move(-1) }},
		{keys: []string{"down"}, do: func(m *Model) tea.Cmd { return m.move(1) }},
		{keys: []string{"pgup"}, do: func(m *Model) tea.Cmd { return m.move(-8) }},
		{keys: []string{"pgdown"}, do: func(m *Model) tea.Cmd { return m.move(8) }},
		{keys: []string{"right"}, shown: "left, right", word: "level", help: "changes how much of each step is left to you", do: func(m *Model) tea.Cmd { return m.changeRung(1) }},
		{keys: []string{"left"}, do: func(m *Model) tea.Cmd { return m.changeRung(-1) }},
		{keys: []string{"tab"}, shown: "tab", word: "list or details", help: "changes between the list and the details, where there is room for one", able: (*Model).narrowChooser, do: (*Model).swapChooser},
		{keys: []string{"esc"}, shown: "esc", help: "shows all problems again", do: (*Model).clearFilter},
		{keys: []string{"?", "f1"}, shown: "?", word: "help", help: "shows this page", do: func(m *Model) tea.Cmd { return m.open(helping) }},
	}
	lessonKeys = []binding{
		{keys: []string{"enter"}, shown: "enter", word: "answer", help: "gives the answer typed; at a worked step, reads on", do: (*Model).answer},
		{keys: []string{"tab"}, shown: "tab", word: "figure or sheet", help: "changes between the figure, the diagram and the sheet, where there is room for one", able: (*Model).hasPanes, do: (*Model).swapPane},
		{keys: []string{"ctrl+t"}, shown: "ctrl+t", word: "hint", help: "gives a hint: points, then teaches, then says what to write", able: (*Model).canHint, do: func(m *Model) tea.Cmd { return m.typed("hint") }},
		{keys: []string{"?", "f1"}, shown: "?", word: "help", help: "shows this page", do: func(m *Model) tea.Cmd { return m.open(helping) }},
		{keys: []string{"ctrl+r"}, shown: "ctrl+r", word: "whole sheet", help: "shows the sheet on the whole screen, to reread", do: func(m *Model) tea.Cmd { return m.open(reading) }},
		{keys: []string{"ctrl+f"}, shown: "ctrl+f", word: "large figure", help: "shows the figure on the whole screen; left and right go through the frame as given, all parts apart, the whole, the free body and the sum in hand, and N, V and M so far", do: (*Model).openFigure},
		{keys: []string{"ctrl+g"}, shown: "ctrl+g", word: "frame", help: "changes between the free body and the frame as given", do: (*Model).toggleGiven},
		{keys: []string{"ctrl+p"}, shown: "ctrl+p, ctrl+n", word: "look back", help: "looks at the step before, and after; the question stays", do: func(m *Model) tea.Cmd { return m.look(-1) }},
		{keys: []string{"ctrl+n"}, do: func(m *Model) tea.Cmd { return m.look(1) }},
		{keys: []string{"ctrl+o"}, shown: "ctrl+o", help: "shows all that was said last", do: func(m *Model) tea.Cmd { return m.open(telling) }},
		{keys: []string{"pgup", "up"}, shown: "up, down", help: "scrolls the sheet", do: func(m *Model) tea.Cmd { return m.scrollPane(1) }},
		{keys: []string{"pgdown", "down"}, do: func(m *Model) tea.Cmd { return m.scrollPane(-1) }},
		{keys: []string{"esc"}, shown: "esc", word: "problems", help: "empties the line, comes back from looking, or returns to the problems", do: (*Model).leaveLesson},
	}
	figureKeys = []binding{
		{keys: []string{"esc", "enter", "q", "ctrl+f"}, shown: "esc", word: "back to the question", do: (*Model).close},
		{keys: []string{"right", "tab", "down", " ", "l", "j"}, shown: "left, right", word: "other figures", do: func(m *Model) tea.Cmd { return m.changeScene(1) }},
		{keys: []string{"left", "shift+tab", "up", "h", "k"}, do: func(m *Model) tea.Cmd { return m.changeScene(-1) }},
	}
	readerKeys = []binding{
		{keys: []string{"esc", "enter", "q", "ctrl+r", "ctrl+o", "?", "f1"}, shown: "esc", word: "back", do: (*Model).close},
		{keys: []string{"up", "k"}, shown: "up, down", word: "scroll", able: (*Model).scrolls, do: func(m *Model) tea.Cmd { return m.scrollBy(-1) }},
		{keys: []string{"down", "j"}, do: func(m *Model) tea.Cmd { return m.scrollBy(1) }},
		{keys: []string{"pgup", "b"}, shown: "pgup, pgdn", word: "by pages", able: (*Model).scrolls, do: func(m *Model) tea.Cmd { return m.scrollBy(-m.page()) }},
		{keys: []string{"pgdown", " "}, do: func(m *Model) tea.Cmd { return m.scrollBy(m.page()) }},
		{keys: []string{"home", "g"}, do: func(m *Model) tea.Cmd { return m.scrollBy(-1 << 20) }},
		{keys: []string{"end", "G"}, do: func(m *Model) tea.Cmd { return m.scrollBy(1 << 20) }},
	}
}

// press does what a key is bound to, and reports whether it is bound to anything.
func (m *Model) press(name string) (tea.Cmd, bool) {
	for _, list := range [][]binding{bindings(m.view), anywhere} {
		for _, b := range list {
			if slices.Contains(b.keys, name) && !b.off(m) {
				return b.do(m), true
			}
		}
	}
	return nil, false
}

// wordNow is the word of a binding of the lesson, which for some depends on what is in hand.
func (m *Model) wordNow(b binding) string {
	switch b.shown {
	case "enter":
		return m.enterWord()
	case "tab":
		return m.paneWord()
	}
	return b.word
}

// helpLine is what the keys do now, as much of it as fits in w cells.
func (m *Model) helpLine(w int) line {
	var l line
	used := 0
	for _, b := range append(slices.Clone(bindings(m.view)), anywhere...) {
		if b.word == "" || b.off(m) {
			continue
		}
		word := b.word
		if m.view == working {
			word = m.wordNow(b)
		}
		n := columns(b.shown) + 1 + columns(word)
		if used > 0 {
			n += 3
		}
		if used+n > w {
			continue
		}
		if used > 0 {
			l = append(l, span{"   ", plainInk})
		}
		l = append(l, span{b.shown, strongInk}, span{" " + word, faintInk})
		used += n
	}
	return l
}
