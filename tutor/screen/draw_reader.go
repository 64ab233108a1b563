package screen

import (
	"fmt"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics/wording"
	"unpin/tutor"
)

// page is how many lines of a reader are in sight.
func (m *Model) page() int { return placeReader(m.w, m.h).body.h }

// scrolls reports whether a reader has more than is in sight.
func (m *Model) scrolls() bool { return m.view != drawing && len(m.readerLines()) > m.page() }

func (m *Model) scrollBy(by int) tea.Cmd {
	m.scroll = max(m.scroll, 0) + by
	return nil
}

// readerLines are the lines of the reader in hand.
func (m *Model) readerLines() []line {
	switch m.view {
	case reading:
		return m.course.sheet.lines
	case telling:
		return m.saidLines(m.w - 2)
	case helping:
		return m.helpPage(m.w - 2)
	}
	return nil
}

// drawReader draws a text or a figure on the whole screen.
func (m *Model) drawReader(p *page) {
	l := placeReader(m.w, m.h)
	p.line(l.head, 0, say(short(m.readerTitle(), l.head.w), titleInk))
	if m.view == drawing {
		m.drawScenes(p, l.head)
		m.course.figure.put(p, l.body)
	} else {
		lines := m.readerLines()
		from := min(m.scroll, len(lines))
		p.lines(l.body, lines[from:min(from+l.body.h, len(lines))])
		if len(lines) > l.body.h {
			where := fmt.Sprintf(" lines %d to %d of %d", from+1, min(from+l.body.h, len(lines)), len(lines))
			p.put(m.w-columns(where)-1, 0, m.w, where, faintInk)
		}
	}
	p.line(l.help, 0, m.helpLine(l.help.w))
}

// drawScenes draws the figures that there are at the right of the head, the one in sight in brackets, if there is room.
func (m *Model) drawScenes(p *page, in rect) {
	var all line
	n := 0
	for _, s := range m.course.available() {
		text, k := "  "+s.word()+" ", faintInk
		if s == m.course.large {
			text, k = " ["+s.word()+"]", strongInk
		}
		all = append(all, span{text, k})
		n += columns(text)
	}
	if columns(m.readerTitle())+2+n <= in.w {
		p.line(rect{in.x + in.w - n, in.y, n, 1}, 0, all)
	}
}

func (m *Model) readerTitle() string {
	switch m.view {
	case reading:
		return "Sheet: " + m.course.l.View().Title()
	case drawing:
		return m.course.title(m.course.large, true)
	case helping:
		return "Help"
	}
	return "What was said"
}

// helpPage says what the keys do in the view that help was asked in, and what can be typed.
func (m *Model) helpPage(w int) []line {
	var all []line
	put := func(key, text string) {
		rows := fold(text, max(w-18, 20), 0)
		for i, row := range rows {
			if i > 0 {
				key = ""
			}
			all = append(all, line{{fmt.Sprintf("%-16s  ", key), strongInk}, {row, plainInk}})
		}
	}
	for _, list := range [][]binding{bindings(m.under), anywhere} {
		for _, b := range list {
			if b.help != "" {
				put(b.shown, b.help)
			}
		}
	}
	all = append(all, nil)
	if m.under == choosing {
		all = append(all, folded("Type a part of a title, a skill or a grade, to find problems.", w, 0, plainInk)...)
		all = append(all, nil)
		put("level read", "every step is worked, to read")
		put("level values", "free body and sum are shown, the value is asked")
		put("level terms", "each force, arm and sign of a sum is asked, then the value")
		put("level plan", "free body and sum are chosen as well")
		put("level blank", "any true sum is chosen and written out, in any order")
		put("level gradual", "worked at first, and more is asked as it comes right")
		return append(append(all, nil), folded(wording.Caution, w, 0, plainInk)...)
	}
	all = append(all, folded("An answer is a number, a fraction or an expression, with a unit and a sense if you like: 9.5, 45/8, 0.5*6*4, 12000 N, 15 down.", w, 0, plainInk)...)
	all = append(all, nil)
	put("hint", "typed, gives a hint")
	put("example", "typed, shows a step of the same kind from another problem")
	put("tell", "typed, tells the value and goes on")
	put("back", "typed, returns to the question before")
	put("resume", "typed at the first question, takes up earlier work")
	put("level values", "typed, takes the problem up at that level: "+strings.Join(tutor.Rungs(), ", "))
	put("let Cx left", "typed at the levels plan and blank, takes an unknown in that sense")
	put("sheet, help, quit", "typed, do what they say")
	all = append(all, nil)
	all = append(all, folded("In the figure a dashed arrow is a force with an assumed sense; once its value is known the arrow is drawn whole and turns if the value is negative. What the other part receives stands in brackets. A ring marks the centre of a sum; what adds nothing to the sum is faint, and what is asked is set off. N, V and M are drawn as far as they are settled.", w, 0, plainInk)...)
	return append(append(all, nil), folded(wording.Caution, w, 0, plainInk)...)
}
