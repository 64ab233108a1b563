package record

import (
	"cmp"
	"slices"
	"time"
)

// A Mistake is one that was recognised in wrong answers.
type Mistake struct {
	ID    string // of the catalogue of package slip
	Times int
	Last  time.Time
}

// Mistakes counts the mistakes that were recognised, the most frequent first, of equally frequent ones the latest; where
// several fit an answer, none is counted.
func Mistakes(all []Record) []Mistake {
	var list []Mistake
	for _, r := range all {
		if len(r.Slips) != 1 {
			continue
		}
		i := slices.IndexFunc(list, func(m Mistake) bool { return m.ID == r.Slips[0] })
		if i < 0 {
			i = len(list)
			list = append(list, Mistake{ID: r.Slips[0]})
		}
		list[i].Times++
		list[i].Last = r.At
	}
	slices.SortStableFunc(list, func(a, b Mistake) int { return cmp.Or(b.Times-a.Times, b.Last.Compare(a.Last)) })
	return list
}

// A Session is what was done on one problem at one level, on whatever numbers.
type Session struct {
	Problem, Level string
	Exam           bool
	First, Last    time.Time
	Answers        int   // that were typed
	Steps          Count // that were settled whole
}

// Sessions lists what was done, the latest first.
func Sessions(all []Record) []Session {
	var list []Session
	for _, r := range all {
		if r.Outcome == Begun || r.Outcome == Handed { // of a whole set
			continue
		}
		i := slices.IndexFunc(list, func(s Session) bool { return s.Problem == r.Problem && s.Level == r.Level && s.Exam == r.Exam })
		if i < 0 {
			i = len(list)
			list = append(list, Session{Problem: r.Problem, Level: r.Level, Exam: r.Exam, First: r.At})
		}
		s := &list[i]
		s.Last = r.At
		s.Steps.AddAll(r)
		if r.Outcome.Try() {
			s.Answers++
		}
	}
	slices.SortStableFunc(list, func(a, b Session) int { return b.Last.Compare(a.Last) })
	return list
}
