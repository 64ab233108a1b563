package screen

import (
	"slices"
	"strconv"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor"
	"unpin/tutor/record"
)

// A chooser is the list of problems, what is typed to find one, and the one in hand.
type chooser struct {
	ascii   bool
	exam    bool // for the lessons begun
	entries []Entry
	records []record.Record
	ready   bool // the list has come
	filter  editor
	at, top int // among those found: the one in hand, and the first in sight
	level   tutor.Level
	details bool // where there is room for one: the details, not the list
	gallery gallery
	figure  *picture
	done    map[progressKey]string
}

// A progressKey names a problem at a level.
type progressKey struct {
	problem *problems.Problem
	level   tutor.Level
}

// listed is the message that brings the problems and what was practised.
type listed struct {
	entries []Entry
	records []record.Record
	warning string // what of earlier work cannot be read
}

// list finds the problems and what was practised.
func list(entries func() []Entry, store *record.Store) tea.Cmd {
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
	key := progressKey{p, c.level}
	text, known := c.done[key]
	if !known {
		switch settled, of := tutor.Progress(p, c.level, c.records); {
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

// usable reports whether there is a problem in hand that can be worked on.
func (c *chooser) usable() bool {
	e, ok := c.choice()
	return ok && e.Problem != nil
}

// begun reports whether the problem in hand was worked on before.
func (c *chooser) begun() bool {
	e, ok := c.choice()
	return ok && e.Problem != nil && c.progress(e.Problem) != ""
}

// move moves to another problem.
func (c *chooser) move(by int) {
	c.at = min(max(c.at+by, 0), max(len(c.found())-1, 0))
}

// retyped begins at the top of what is found now.
func (c *chooser) retyped() { c.at, c.top = 0, 0 }

// changeLevel takes the level that follows, or the one before.
func (c *chooser) changeLevel(by int) {
	n := len(tutor.Levels())
	c.level = tutor.Level((int(c.level) + by + n) % n)
}

// swap changes between list and details.
func (c *chooser) swap() { c.details = !c.details }

// clear shows all problems again.
func (c *chooser) clear() {
	c.filter.take()
	c.details = false
}
