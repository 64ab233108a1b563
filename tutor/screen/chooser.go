package screen

import (
	"fmt"
	"slices"
	"strconv"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/problems"
	"unpin/statics/wording"
	"unpin/tutor"
	"unpin/tutor/record"
)

// A chooser is the list of problems, what is typed to find one, and the one in hand.
type chooser struct {
	ascii   bool
	exam    bool           // for the lessons begun
	sitting *tutor.Sitting // the paper whose problems are listed, or nil
	offers  []Entry        // for today, at the head of the list until words are typed
	entries []Entry
	past    *record.Past // what was practised, or nil
	ready   bool         // the list has come
	filter  editor
	at, top int // among those found: the one in hand, and the first in sight
	level   tutor.Level
	from    string // the problem, or the entry of a set, that one comes back from, to be in hand, or empty
	gallery gallery
	figure  *picture
	done    map[progressKey]tutor.Progress
}

// A progressKey names a problem at a level.
type progressKey struct {
	problem *problems.Problem
	level   tutor.Level
}

// listed is the message that brings the problems and what was practised.
type listed struct {
	offers  []Entry
	entries []Entry
	past    *record.Past
	warning string // what of earlier work cannot be read
}

// list finds the problems and what was practised, and, of the problems that are there, what to practise today.
func list(o Options) tea.Cmd {
	return func() tea.Msg {
		var l listed
		if o.Sitting != nil {
			l.entries = paperEntries(o.Sitting)
			return l
		}
		if o.Entries != nil {
			l.entries = o.Entries()
		}
		if o.Store == nil {
			return l
		}
		past, err := o.Store.Past()
		if err != nil {
			l.warning = err.Error()
			return l
		}
		l.past, l.warning = past, past.Passed().String()
		if lately, err := past.Of(); err == nil && !o.Exam {
			if said := tutor.ClockSays(lately, o.Clock()); said != "" && l.warning == "" {
				l.warning = said
			}
			l.offers = offersOf(l.entries, lately, o.Clock())
		}
		return l
	}
}

// offersOf are the entries to practise today.
func offersOf(entries []Entry, records []record.Record, now time.Time) []Entry {
	var at []*problems.Problem
	for _, e := range entries {
		if e.Problem != nil && e.Set == nil {
			at = append(at, e.Problem)
		}
	}
	var offers []Entry
	portion, wholes := tutor.Offers(records, now, at)
	if len(portion) > 1 {
		offers = append(offers, Entry{Name: portion[0].Problem.Name, Problem: portion[0].Problem, Offer: &portion[0], Portion: portion})
	}
	for _, o := range wholes {
		offers = append(offers, Entry{Name: o.Problem.Name, Problem: o.Problem, Offer: &o})
	}
	return offers
}

// take puts a list in hand, and keeps the choice where it is still there.
func (c *chooser) take(l listed) {
	c.offers, c.entries, c.past, c.ready = l.offers, l.entries, l.past, true
	c.done = map[progressKey]tutor.Progress{}
	c.comeBack()
	c.at = min(c.at, max(len(c.found())-1, 0))
}

// comeBack puts the problem in hand that one comes back from, and shows all problems if it is not among those found.
func (c *chooser) comeBack() {
	from := func(e Entry) bool {
		return e.Problem != nil && e.Offer == nil && (e.Name == c.from || e.Set == nil && e.Problem.Name == c.from)
	}
	i := slices.IndexFunc(c.found(), from)
	if i < 0 && slices.ContainsFunc(c.entries, from) {
		c.filter.take()
		i = slices.IndexFunc(c.found(), from)
	}
	if i >= 0 {
		c.at = i
	}
	c.from = ""
}

// found lists what is offered for today and then all problems; once something is sought, the problems that fit: first those of
// whose name and title words begin as typed, then those of whose text, skills or grade, then those that hold the words anywhere,
// unless only a letter or two are typed.
func (c *chooser) found() []Entry {
	sought := c.sought()
	if !sought.Asks() {
		return slices.Concat(c.offers, c.entries)
	}
	var ranked [problems.NoFit][]Entry
	for _, e := range c.entries {
		if e.heads() {
			continue
		}
		if fit := sought.Fit(e.Name, e.Problem); fit < problems.NoFit {
			ranked[fit] = append(ranked[fit], e)
		}
	}
	return slices.Concat(ranked[:]...)
}

// sought is what is typed to find problems.
func (c *chooser) sought() problems.Search { return problems.SearchFor(string(c.filter.text)) }

// choice is the entry in hand.
func (c *chooser) choice() (Entry, bool) {
	list := c.found()
	if c.at >= len(list) {
		return Entry{}, false
	}
	return list[c.at], true
}

// progress is how far the student is with a problem at the level in hand, or at that of its set.
func (c *chooser) progress(e Entry) tutor.Progress {
	p, level := e.Problem, c.levelOf(e)
	key := progressKey{p, level}
	done, known := c.done[key]
	if !known {
		var earlier []record.Record
		if c.past != nil {
			earlier, _ = c.past.Of(record.Fingerprints(p)...) // what cannot be read is told at the lesson's opening
		}
		done = tutor.ProgressOf(p, level, earlier)
		c.done[key] = done
	}
	return done
}

// levelOf is the level at which an entry is worked: that of its set, or the one in hand.
func (c *chooser) levelOf(e Entry) tutor.Level {
	if e.Set != nil && e.Set.Level != nil {
		return *e.Set.Level
	}
	return c.level
}

// free reports whether the level of the entry in hand may be chosen.
func (c *chooser) free() bool {
	e, ok := c.choice()
	return c.sitting == nil && (!ok || e.Set == nil || e.Set.Level == nil)
}

// shortProgress is progress in the list: "9 of 14", "9 so far", or when all is done those right at the first try, "done 12/14".
func shortProgress(p tutor.Progress) string {
	switch {
	case p.Settled == 0:
		return ""
	case p.Settled == p.Of:
		return fmt.Sprintf("done %d/%d", p.First, p.Asked)
	case p.Of == 0:
		return strconv.Itoa(p.Settled) + " so far"
	}
	return fmt.Sprintf("%d of %d", p.Settled, p.Of)
}

// told is progress in a sentence, or nothing.
func (c *chooser) told(e Entry) string {
	done := c.progress(e)
	first := fmt.Sprintf("%d right at the first try and without help.", done.First)
	switch {
	case done.Settled == 0:
		return ""
	case done.Settled == done.Of:
		return fmt.Sprintf("Done: of %d answers %s", done.Asked, first)
	case done.Of == 0:
		return fmt.Sprintf("Begun: %s settled, %s", wording.Counted(done.Settled, "question"), first)
	}
	return fmt.Sprintf("Begun: %d of %d settled, %s", done.Settled, done.Of, first)
}

// usable reports whether there is a problem in hand that can be worked on.
func (c *chooser) usable() bool {
	e, ok := c.choice()
	return ok && e.Problem != nil
}

// acts reports whether enter does something with the entry in hand.
func (c *chooser) acts() bool {
	e, ok := c.choice()
	return ok && (e.Problem != nil || e.act != nil || e.heads() && e.Set.Exam != nil)
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

// clear shows all entries again, the one in hand among them.
func (c *chooser) clear() {
	e, ok := c.choice()
	if ok && e.Problem != nil {
		c.from = e.Problem.Name
	}
	c.filter.take()
	c.retyped()
	c.comeBack()
	if ok && e.act != nil {
		c.at = max(slices.IndexFunc(c.found(), func(x Entry) bool { return x.act != nil && x.Name == e.Name }), 0)
	}
}
