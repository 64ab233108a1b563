package record

import (
	"slices"
	"time"
)

// A Sitting is one paper of an exam over a set: when its clock was started, and when it was handed in.
type Sitting struct {
	Paper  string // marks the records of its answers
	Level  string
	Began  time.Time
	Handed time.Time // zero until then
}

// SetFrame stands in place of a fingerprint in the records that begin and end the papers of a set.
func SetFrame(set string) string { return "set " + set }

// Sittings lists the papers of a set in the order in which they were begun. One that was begun while another was open is that other
// one: of two programs that begin at once, the first to write has begun the paper.
func Sittings(all []Record, set string) []Sitting {
	var list []Sitting
	for _, r := range all {
		if r.Frame != SetFrame(set) {
			continue
		}
		last := len(list) - 1
		open := last >= 0 && list[last].Handed.IsZero()
		switch {
		case r.Outcome == Begun && !open:
			list = append(list, Sitting{Paper: r.Paper, Level: r.Level, Began: r.At})
		case r.Outcome == Handed && open && list[last].Paper == r.Paper:
			list[last].Handed = r.At
		}
	}
	return list
}

// WorkIn picks out of all records, in the order of the file, those of a paper on a problem with one of these fingerprints, until it
// was handed in.
func WorkIn(all []Record, frames []string, paper string) Work {
	var w Work
	for _, r := range all {
		switch {
		case r.Paper != paper:
		case r.Outcome == Handed:
			return w
		case slices.Contains(frames, r.Frame):
			w.events = append(w.events, r)
		}
	}
	return w
}

// Before are the events that came before a time; of a zero time all.
func (w Work) Before(end time.Time) Work {
	if end.IsZero() {
		return w
	}
	return Work{slices.DeleteFunc(slices.Clone(w.events), func(r Record) bool { return !r.At.Before(end) })}
}
