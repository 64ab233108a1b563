package screen

import tea "github.com/charmbracelet/bubbletea"

// inDrill is what a key does to the exercise in hand.
func inDrill(do func(*drill)) func(*Model) tea.Cmd {
	return func(m *Model) tea.Cmd { do(m.drill); return nil }
}

// offers reports whether a question asks for a sense that an arrow key says, and nothing is typed yet.
func offers(word string) func(*Model) bool {
	return func(m *Model) bool { return len(m.drill.answerLine.text) == 0 && m.drill.d.Offers(word) }
}

// answers gives a word for an answer.
func answers(word string) func(*Model) tea.Cmd {
	return func(m *Model) tea.Cmd { return m.drillTyped(word) }
}

// drillKeys are the keys of an exercise.
var drillKeys []binding

func init() {
	drillKeys = []binding{
		{keys: []string{"enter"}, shown: "enter", word: "answer", last: true, help: "gives the answer typed; where one of a few is to be chosen, its number alone does", do: (*Model).drillEnter},
		{keys: []string{"tab"}, shown: "tab", word: "figure or text", help: "changes between the figure and the text, where there is room for one", able: func(m *Model) bool { return m.drill.parted(m.w, m.h) },
			do: inDrill(func(c *drill) { c.onFigure = !c.onFigure })},
		{keys: []string{"ctrl+t"}, shown: "ctrl+t", word: "hint", help: "gives a hint", able: func(m *Model) bool { return m.drill.d.CanHint() }, do: func(m *Model) tea.Cmd { return m.drillTyped("hint") }},
		{keys: []string{"up"}, shown: "arrows", word: "which way", help: "answer where a sense is asked for", able: offers("up"), do: answers("up")},
		{keys: []string{"down"}, able: offers("down"), do: answers("down")},
		{keys: []string{"left"}, shown: "arrows", word: "which way", able: offers("left"), do: answers("left")},
		{keys: []string{"right"}, able: offers("right"), do: answers("right")},
		{keys: []string{"up"}, shown: "up, down", word: "scroll", help: "scrolls the text", able: func(m *Model) bool { return m.drill.scrolls() }, do: inDrill(func(c *drill) { c.scroll-- })},
		{keys: []string{"down"}, able: func(m *Model) bool { return m.drill.scrolls() }, do: inDrill(func(c *drill) { c.scroll++ })},
		{keys: []string{"pgup"}, do: inDrill(func(c *drill) { c.scroll -= c.rows })},
		{keys: []string{"pgdown"}, do: inDrill(func(c *drill) { c.scroll += c.rows })},
		{keys: []string{"?", "f1"}, shown: "?", word: "help", help: "shows this page", do: opens(helping)},
		{keys: []string{"esc"}, shown: "esc", word: "problems", help: "empties the line, or returns to the problems", do: (*Model).drillLeave},
	}
}
