package screen

import (
	"slices"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
)

// key takes one key message, which may hold several runes that were typed fast or pasted.
func (m *Model) key(k tea.KeyMsg) tea.Cmd {
	if k.Type != tea.KeyRunes || k.Alt {
		if k.Type == tea.KeyEnter && m.byHabit() {
			return nil
		}
		if cmd, bound := m.press(k.String()); bound {
			return cmd
		}
		if m.view == opening { // any key goes on
			m.goOn(true)
			return m.key(k)
		}
		if k.Type == tea.KeySpace {
			m.write(k.Runes, false)
			return nil
		}
		if e := m.line(); e != nil && !k.Alt {
			before := string(e.text)
			if e.key(k); string(e.text) != before { // a key that changes nothing leaves the problem in hand
				m.retyped()
			}
		}
		return nil
	}
	if m.view == opening && (k.Paste || !slices.Contains([]string{" ", "?"}, string(k.Runes))) {
		m.goOn(true) // and what is typed begins the answer
	}
	return m.write(k.Runes, k.Paste)
}

// write takes runes. A rune that is bound to something does it where it cannot be part of what is typed: in a reader,
// and on an empty line.
func (m *Model) write(runes []rune, pasted bool) tea.Cmd {
	var cmds []tea.Cmd
	for _, r := range runes {
		e := m.line()
		if !pasted && (e == nil || e.open()) {
			if cmd, bound := m.press(string(r)); bound {
				cmds = append(cmds, cmd)
				continue
			}
		}
		if e != nil {
			e.insert([]rune{r})
			m.retyped()
		}
		if e != nil && !pasted && len(e.text) == 1 && r >= '1' && r <= '9' {
			cmds = append(cmds, m.chosen())
		}
	}
	return tea.Batch(cmds...)
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

// line is the line that is typed into, or nil.
func (m *Model) line() *editor {
	switch m.view {
	case choosing:
		return &m.chooser.filter
	case working:
		return &m.course.answerLine
	case drilling:
		return &m.drill.answerLine
	}
	return nil
}

// retyped follows a change of the line.
func (m *Model) retyped() {
	if m.view == choosing {
		m.chooser.retyped()
	}
}

// chosen gives a digit for an answer where one of a few is to be chosen.
func (m *Model) chosen() tea.Cmd {
	if m.view == drilling && m.drill.oneKey() {
		m.digit = m.o.Clock()
		return m.drillEnter()
	}
	if m.view == working {
		if _, open := tutor.AsideOf(m.course.l); open {
			m.digit = m.o.Clock()
			return m.answer()
		}
	}
	return nil
}

// habit is how soon enter follows a digit from who ends every answer with it; common practice, no source.
const habit = time.Second

// byHabit reports whether enter belongs to a digit that answered by itself, so that what was said of it stays to be read.
func (m *Model) byHabit() bool {
	e := m.line()
	return !m.digit.IsZero() && m.o.Clock().Sub(m.digit) < habit && (e == nil || len(e.text) == 0)
}
