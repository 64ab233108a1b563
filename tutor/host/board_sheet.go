package host

import (
	"fmt"
	"strings"
	"time"

	"unpin/statics/slip"
	"unpin/tutor/record"
)

// A sheet is what one learner typed in the run in hand, or else in the last one.
type sheet struct {
	of    doing
	lines []string
}

func (s *sheet) look(b *board) {
	atEnd := b.at >= s.end(b)
	s.lines = nil
	defer func() {
		if atEnd { // what is typed is followed, until one scrolls back
			b.at = s.end(b)
		}
	}()
	if d, now := b.host.activity.of(s.of.id); now {
		s.of = d
	}
	all, _, err := b.host.storeOf(s.of.id, s.of.set).Records()
	if err != nil {
		s.lines = []string{err.Error()}
		return
	}
	if s.of.run == "" && len(all) > 0 {
		last := all[len(all)-1]
		s.of.run, s.of.problem, s.of.level = last.Run, last.Problem, last.Level
	}
	for _, r := range all {
		question := r.Question
		switch {
		case r.Kind != "", s.of.set == "" && r.Run != s.of.run:
			continue
		case s.of.set != "" && question != "": // all of the paper
			question = r.Problem + " " + question
		}
		s.lines = append(s.lines, fmt.Sprintf("%s  %-28s %-16s %s", r.At.In(time.Local).Format("2 Jan 15:04:05"), question, r.Typed, outcomeText(r)))
	}
}

// end is the first row in sight where the last one is.
func (s *sheet) end(b *board) int { return max(len(s.lines)-b.room(), 0) }

func (s *sheet) chooses() bool { return false }

func (s *sheet) note(*board) string { return "" }

func (s *sheet) head(b *board) []string {
	who := strings.TrimSpace(s.of.id + " " + b.host.door.students[s.of.id].Name)
	title := who + " has done nothing yet"
	if s.of.set != "" {
		title = who + ": the exam " + s.of.set + ", as it was typed"
	} else if s.of.run != "" {
		title = who + ": " + s.of.problem + ", at the level " + s.of.level
	}
	return []string{title, ""}
}

func (s *sheet) rows(*board) []string { return s.lines }

func (s *sheet) press(b *board, key string) {
	if key == "h" {
		b.ask("a hint to "+s.of.id+" alone, enter sends it: ", b.tellOne(s.of.id))
	}
}

func (s *sheet) keys() string {
	return "up, down read  esc back  h hint to this one  w word to all  ctrl+c leave"
}

// outcomeText is what became of what was typed.
func outcomeText(r record.Record) string {
	text := string(r.Outcome)
	switch {
	case r.Outcome.Right():
		text = "right"
	case r.Outcome == record.Sense:
		text = "opposite sense"
	}
	if len(r.Slips) == 1 {
		if s := slip.ByID(r.Slips[0]); s != nil {
			text += ": " + s.Principle()
		}
	}
	return text
}
