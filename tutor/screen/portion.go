package screen

import (
	"fmt"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics/wording"
	"unpin/tutor"
)

// beginPortion begins the first piece of a portion; each next one follows when the one before is done.
func (m *Model) beginPortion(offers []tutor.Offer) {
	m.portion, m.piece = offers, ""
	m.nextPiece(len(offers))
}

// nextPiece begins the piece that comes now, of so many.
func (m *Model) nextPiece(of int) {
	o := m.portion[0]
	m.portion = m.portion[1:]
	if of > 1 {
		m.piece = fmt.Sprintf("piece %d of %d", of-len(m.portion), of)
	}
	at, err := o.Begin(m.o.Clock())
	m.drill, m.course = nil, nil
	switch {
	case err != nil || at.Drill != nil:
		m.beginDrill(at.Drill, err)
	default:
		m.start(at.Lesson, nil)
		m.course.onward = len(m.portion) > 0
		m.course.once = o.Form != tutor.WholeProblem
		if m.course.once {
			m.view = working
			what := map[bool]string{true: "N, V and M along one member", false: "one step"}[o.Form == tutor.OneMember]
			head := strings.TrimPrefix(wording.Capital(m.piece)+": ", ": ") + what + ". "
			m.course.reply = tutor.Reply{Kind: tutor.Listed, Lines: []string{head + "What comes before it is worked, on the sheet."}}
			if first := tutor.WorkedOf(at.Lesson); first != nil {
				m.course.reply = tutor.Reply{Kind: tutor.Worked, Lines: append([]string{head + "First one worked to its end; enter leads to yours."}, first...)}
				m.open(telling)
			}
		}
	}
	m.total = of
}

// onward leads on from what is done: to the next piece of a portion, or to the problems.
func (m *Model) onward() tea.Cmd {
	switch {
	case len(m.portion) > 0:
		m.nextPiece(m.total)
		return nil
	case m.drill != nil:
		return m.drillOver()
	}
	return m.toChooser()
}
