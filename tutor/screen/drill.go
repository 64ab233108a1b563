package screen

import (
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
)

// A drill is an exercise as it stands on the screen: what there is to read, the figure, the question, and what was said.
type drill struct {
	d          *tutor.Drill
	ascii      bool
	answerLine editor
	reply      tutor.Reply
	pause      time.Time // until then no answer is taken
	hintFrom   time.Time // from then on another hint may be asked for
	gallery    gallery
	figure     *picture
	onFigure   bool // where there is room for one, the figure is in sight and not the text
	scroll     int
	lines      []line // of the text
	rows       int    // of it in sight
	asked      int    // the question that the text was brought in sight for
}

func newDrill(d *tutor.Drill, ascii bool) *drill {
	if !ascii {
		d.UseSigns()
	}
	return &drill{d: d, ascii: ascii, onFigure: len(d.Page()) == 0, asked: -1}
}

// done reports whether all is asked.
func (c *drill) done() bool {
	_, _, _, asking := c.d.Now()
	return !asking
}

// give gives a line to the drill at a time. During a pause only commands are taken.
func (c *drill) give(text string, now time.Time) tutor.Reply {
	if now.Before(c.pause) && !tutor.IsCommand(text) {
		c.answerLine.insert([]rune(text))
		c.answerLine.waits = true
		return tutor.Reply{}
	}
	hint := strings.EqualFold(strings.TrimSpace(text), "hint")
	if hint && now.Before(c.hintFrom) {
		return tutor.Reply{}
	}
	r := c.d.Type(text)
	if c.hintFrom = (time.Time{}); hint {
		c.hintFrom = now.Add(hintPause)
	}
	if r.Pause > 0 {
		c.pause = now.Add(r.Pause)
	}
	if r.Kind == tutor.Unread && strings.TrimSpace(text) != "" {
		c.answerLine.insert([]rune(text))
		c.answerLine.read = true
	}
	c.reply = r
	if c.done() {
		c.onFigure, c.scroll = false, 0
		if r.Kind == tutor.Noted {
			c.reply = tutor.Reply{}
		}
	}
	return r
}

// parted reports whether text and figure have no room beside each other, and both have something to show.
func (c *drill) parted(w, h int) bool {
	return !c.places(w, h).both && (len(c.d.Page()) > 0 || c.done())
}

// scrolls reports whether there is more text than is in sight.
func (c *drill) scrolls() bool { return !c.onFigure && len(c.lines) > c.rows }

// oneKey reports whether a single key answers: where the answers are told by one digit.
func (c *drill) oneKey() bool {
	_, _, unit, asking := c.d.Now()
	return asking && len(unit) == len("1 to 9") && strings.HasPrefix(unit, "1 to ")
}

// arrange folds the text and draws the figure for the size of the screen.
func (c *drill) arrange(w, h int) {
	l := c.places(w, h)
	c.rows = l.text.h
	c.lines = c.text(l.text.w)
	if at, _ := c.d.Position(); at != c.asked {
		c.asked = at
		if c.scroll = 0; !c.done() { // at the end what came of it stands first
			c.bringIn()
		}
	}
	c.scroll = max(min(c.scroll, len(c.lines)-c.rows), 0)
	c.figure = nil
	if l.both || c.onFigure {
		c.figure = c.gallery.picture(c.d.Scene(), l.figure.w, l.figure.h, c.ascii)
	}
}

// bringIn brings what is set off in the text into sight.
func (c *drill) bringIn() {
	for i, l := range c.lines {
		if len(l) > 0 && l[0].ink == notYetInk && (i < c.scroll || i >= c.scroll+c.rows) {
			c.scroll = i - c.rows/2
			return
		}
	}
}

// beginDrill opens a drill, or says why there is none.
func (m *Model) beginDrill(d *tutor.Drill, err error) {
	if err != nil {
		m.notice = err.Error()
		return
	}
	m.notice, m.course, m.reader = "", nil, reader{}
	d.Clock = m.o.Clock
	if m.o.Store != nil {
		d.Keep(m.o.Store, m.o.Clock, func(err error) { m.notice = "warning: " + err.Error() })
	}
	m.drill = newDrill(d, m.o.ASCII)
	m.view = drilling
}

// drillEnter gives what was typed; at the end of a drill it leads on.
func (m *Model) drillEnter() tea.Cmd {
	c := m.drill
	if c.answerLine.read {
		c.answerLine.take()
	}
	if c.done() {
		return m.onward()
	}
	m.notice = ""
	return m.drillTyped(c.answerLine.take())
}

// drillTyped gives a line to the drill.
func (m *Model) drillTyped(text string) tea.Cmd {
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "help":
		return m.open(helping)
	case "sheet", "":
		return nil
	}
	r := m.drill.give(text, m.o.Clock())
	switch {
	case r.Kind == tutor.Leaving:
		return tea.Quit
	case r.Pause > 0:
		return tea.Tick(r.Pause, func(time.Time) tea.Msg { return paused{} })
	}
	return nil
}

// drillOver leaves a drill for the problems.
func (m *Model) drillOver() tea.Cmd {
	m.drill, m.notice, m.portion, m.piece = nil, "", nil, ""
	m.view = choosing
	return list(m.o)
}

// drillLeave empties the line, or leaves the drill.
func (m *Model) drillLeave() tea.Cmd {
	if len(m.drill.answerLine.text) > 0 {
		m.drill.answerLine.take()
		return nil
	}
	return m.drillOver()
}
