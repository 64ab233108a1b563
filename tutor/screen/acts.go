package screen

import (
	"errors"
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics/wording"
	"unpin/tutor"
)

// enter shows a lesson.
func (m *Model) enter(l *tutor.Lesson) {
	l.Clock = m.o.Clock
	m.course = newCourse(l, m.o.ASCII)
	m.view = working
}

// keep has the progress of a lesson kept. That writes to a file while a key is worked on: what was judged is safe before
// the student sees it.
func (m *Model) keep(l *tutor.Lesson) {
	if m.o.Store != nil {
		l.Keep(m.o.Store, m.o.Clock, func(err error) { m.notice = "warning: " + err.Error() })
	}
}

// begin opens the problem in hand; one that is offered for today with numbers of its own, at the level that it is offered at.
func (m *Model) begin() tea.Cmd {
	e, _ := m.chooser.choice()
	switch {
	case e.heads():
		return enterExam(m, e.Set)
	case e.act != nil:
		return e.act(m)
	case e.task > 0:
		m.enterTask(e.task - 1)
		return nil
	}
	m.beginEntry(e)
	return nil
}

// beginEntry opens the problem of an entry.
func (m *Model) beginEntry(e Entry) {
	if m.from = ""; e.Set != nil {
		m.from = e.Name
	}
	if m.o.Exam && e.Set != nil && m.o.Sitting == nil {
		m.notice = "In an exam a set is one paper, under one clock: unpin practise with the file of the set and --exam begins it."
		return
	}
	if m.portion = nil; len(e.Portion) > 0 {
		m.beginPortion(e.Portion)
		return
	}
	if e.Offer != nil && e.Offer.Form != tutor.WholeProblem {
		m.beginPortion([]tutor.Offer{*e.Offer})
		return
	}
	p, level := e.Problem, m.chooser.levelOf(e)
	if e.Offer != nil {
		p, level = tutor.Fresh(e.Problem, m.o.Clock()), e.Offer.Level
	}
	l, err := tutor.New(p, level, m.o.Exam)
	m.start(l, err)
}

// start opens a lesson, or says why there is none.
func (m *Model) start(l *tutor.Lesson, err error) {
	if err != nil {
		m.notice = wording.Sentence(err.Error())
		return
	}
	m.notice = ""
	m.keep(l)
	m.enter(l)
	m.view, m.reader = opening, reader{}
}

// goOn leaves the opening page; where there is earlier work, to go on there or to set it aside.
func (m *Model) goOn(resume bool) {
	m.view = working
	if m.o.Sitting != nil || m.course.l.Earlier() == 0 {
		return
	}
	m.course.give(map[bool]string{true: "resume", false: "restart"}[resume], m.o.Clock())
	m.toClosing()
}

// toClosing shows what a lesson came to, once all of it is asked.
func (m *Model) toClosing() {
	if m.course.done() && !m.course.once && m.o.Sitting == nil {
		m.view, m.reader = closing, reader{under: working}
	}
}

// renew begins the same frame with other numbers.
func (m *Model) renew() {
	l, err := tutor.Renewed(m.course.l)
	m.start(l, err)
}

// answer gives what was typed to the lesson; at its end it leads on, whatever stands there that is no command. During a
// pause only commands are taken, and an answer waits in its line.
func (m *Model) answer() tea.Cmd {
	e := &m.course.answerLine
	if e.read { // it was given before
		e.take()
	}
	command := tutor.IsCommand(string(e.text))
	switch _, asking := m.course.l.Now(); {
	case !asking && !command:
		return m.leadOn()
	case asking && !command && m.course.pausing(m.o.Clock()):
		e.waits = true
		return nil
	}
	return m.typed(e.take())
}

// leadOn leads to a step that was told and comes once more, or else to the problems.
func (m *Model) leadOn() tea.Cmd {
	next := m.course.next()
	if len(next) == 0 {
		return m.onward()
	}
	m.enter(next[0])
	m.course.again, m.course.once, m.course.onward = next[1:], true, len(m.portion) > 0
	m.course.reply = tutor.Reply{Kind: tutor.Listed, Lines: []string{"This was told: here is a step of its kind once more, with other numbers."}}
	return nil
}

// typed does what a line says: a word for the screen, or what the lesson makes of it.
func (m *Model) typed(text string) tea.Cmd {
	m.notice = ""
	word := strings.ToLower(strings.TrimSpace(text))
	switch word {
	case "sheet":
		return m.open(reading)
	case "help":
		return m.open(helping)
	case "task":
		return m.open(tasking)
	case "new":
		if m.o.Sitting == nil {
			m.renew()
			return nil
		}
	}
	if name, ok := strings.CutPrefix(word, "level "); ok {
		m.toLevel(name)
		return nil
	}
	r := m.course.give(text, m.o.Clock())
	if m.o.Sitting != nil && r.Kind != tutor.Leaving {
		return m.pastAnswer(r)
	}
	m.toClosing()
	switch {
	case r.Kind == tutor.Leaving:
		return tea.Quit
	case r.Kind == tutor.Worked:
		return m.open(telling)
	case r.Pause > 0:
		return tea.Tick(r.Pause, func(time.Time) tea.Msg { return paused{} })
	}
	return nil
}

// paused is the message that a pause has ended, so that the screen says so.
type paused struct{}

// toLevel takes the same problem up at another level, where it was left there.
func (m *Model) toLevel(name string) {
	level, err := tutor.ParseLevel(name)
	if err == nil && m.o.Sitting != nil {
		err = errors.New("the level of a paper stays what it is")
	}
	if err != nil {
		m.course.take(tutor.Reply{Kind: tutor.Unread, Lines: []string{wording.Sentence(err.Error())}})
		return
	}
	m.chooser.level = level
	l, err := m.course.l.Anew(level, m.o.Exam)
	m.start(l, err)
}

// leave undoes the last thing that can be: the line, looking; else it shows the problems.
func (m *Model) leave() tea.Cmd {
	if m.course.undo() {
		return nil
	}
	return m.toChooser()
}

// toChooser shows the problems, with what was done just now counted.
func (m *Model) toChooser() tea.Cmd {
	m.portion, m.piece = nil, ""
	if m.chooser.from = m.from; m.from == "" {
		m.chooser.from = m.course.l.Display(false).Name()
	}
	m.view, m.course, m.notice = choosing, nil, ""
	return list(m.o)
}

// open shows a reader over the view in hand.
func (m *Model) open(v view) tea.Cmd {
	m.reader = reader{under: m.view}
	m.view = v
	switch v {
	case reading:
		m.reader.scroll = 1 << 20 // its end; fill brings it in
	case drawing:
		m.course.enlarge(m.course.places(m.w, m.h))
	}
	return nil
}

// close returns from a reader.
func (m *Model) close() {
	m.view = m.reader.under
	m.reader = reader{under: working}
}
