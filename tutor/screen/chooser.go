package screen

import (
	"slices"
	"strconv"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor"
	"unpin/tutor/record"
)

// A chooser is the list of problems, what is typed to find one, and the one in hand.
type chooser struct {
	entries []Entry
	records []record.Record
	ready   bool // the list has come
	filter  editor
	at, top int // among those found: the one in hand, and the first in sight
	rung    tutor.Rung
	details bool // where there is room for one: the details, not the list
	gallery gallery
	figure  *picture
	done    map[progressKey]string
}

// A progressKey names a problem at a rung.
type progressKey struct {
	problem *problems.Problem
	rung    tutor.Rung
}

// listed is the message that brings the problems and what was practised.
type listed struct {
	entries []Entry
	records []record.Record
	warning string // what of earlier work cannot be read
}

// list finds the problems and what was practised.
func (m *Model) list() tea.Cmd {
	entries, store := m.o.Entries, m.o.Store
	return func() tea.Msg {
		var l listed
		if entries != nil {
			l.entries = entries()
		}
		if store != nil {
			all, passed, err := store.Records()
			l.records, l.warning = all, passed.String()
			if err != nil {
				l.warning = err.Error()
			}
		}
		return l
	}
}

// take puts a list in hand, and keeps the choice where it is still there.
func (c *chooser) take(l listed) {
	c.entries, c.records, c.ready = l.entries, l.records, true
	c.done = map[progressKey]string{}
	c.at = min(c.at, max(len(c.found())-1, 0))
}

// found lists the problems whose name, title, text, skills or grade hold every word typed.
func (c *chooser) found() []Entry {
	words := strings.Fields(strings.ToLower(string(c.filter.text)))
	var list []Entry
	for _, e := range c.entries {
		text := strings.ToLower(e.Name)
		if p := e.Problem; p != nil {
			text = strings.ToLower(strings.Join([]string{e.Name, p.Title, p.Text, p.Units.Of(notation.Force), strings.Join(p.Skills, " "), "grade " + strconv.Itoa(p.Grade)}, " "))
		}
		if !slices.ContainsFunc(words, func(w string) bool { return !strings.Contains(text, w) }) {
			list = append(list, e)
		}
	}
	return list
}

// choice is the entry in hand.
func (c *chooser) choice() (Entry, bool) {
	list := c.found()
	if c.at >= len(list) {
		return Entry{}, false
	}
	return list[c.at], true
}

// progress is how far the student is with a problem: "9 of 14", "9 so far", "done", or nothing.
func (c *chooser) progress(p *problems.Problem) string {
	key := progressKey{p, c.rung}
	text, known := c.done[key]
	if !known {
		switch settled, of := tutor.Progress(p, c.rung, c.records); {
		case settled == 0:
		case settled == of:
			text = "done"
		case of == 0:
			text = strconv.Itoa(settled) + " so far"
		default:
			text = strconv.Itoa(settled) + " of " + strconv.Itoa(of)
		}
		c.done[key] = text
	}
	return text
}

func (m *Model) hasChoice() bool {
	e, ok := m.chooser.choice()
	return ok && e.Problem != nil
}

func (m *Model) hasEarlier() bool {
	e, ok := m.chooser.choice()
	return ok && e.Problem != nil && m.chooser.progress(e.Problem) != ""
}

func (m *Model) narrowChooser() bool { return !placeChooser(m.w, m.h).both }

func (m *Model) move(by int) tea.Cmd {
	m.chooser.at = min(max(m.chooser.at+by, 0), max(len(m.chooser.found())-1, 0))
	return nil
}

func (m *Model) changeRung(by int) tea.Cmd {
	n := len(tutor.Rungs())
	m.chooser.rung = tutor.Rung((int(m.chooser.rung) + by + n) % n)
	return nil
}

func (m *Model) swapChooser() tea.Cmd {
	m.chooser.details = !m.chooser.details
	return nil
}

func (m *Model) clearFilter() tea.Cmd {
	m.chooser.filter.take()
	m.chooser.details = false
	return nil
}

// begin goes on with the problem in hand where it was left.
func (m *Model) begin() tea.Cmd { return m.beginAt(true) }

// beginAnew begins the problem in hand from its first question.
func (m *Model) beginAnew() tea.Cmd { return m.beginAt(false) }

func (m *Model) beginAt(goOn bool) tea.Cmd {
	e, _ := m.chooser.choice()
	l, err := tutor.New(e.Problem, m.chooser.rung, m.o.Exam)
	m.start(l, err, goOn)
	return nil
}

// start shows a lesson, or why there is none, and goes on where it was left.
func (m *Model) start(l *tutor.Lesson, err error, goOn bool) {
	if err != nil {
		m.notice = wording.Sentence(err.Error())
		return
	}
	m.notice = ""
	m.keep(l)
	m.enter(l)
	if goOn && l.Earlier() > 0 {
		m.course.take(l.Type("resume"))
	}
}
