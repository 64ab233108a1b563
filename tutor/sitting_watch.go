package tutor

import (
	"slices"
	"strings"
	"time"
)

// A Watch goes on settling the times of an exam while it is sat, for whoever holds it for a class.
type Watch struct {
	Ends    func(begun time.Time) (end time.Time, limited bool) // in place of the times of the rules
	Shut    func(begun time.Time) bool                          // an instructor ended it before its time
	Held    func() string                                       // why nothing is taken now, a sentence; empty where all is well
	Told    func() bool                                         // the marks are told to who has handed in
	Changed <-chan struct{}                                     // is sent to when something of this may be otherwise
}

// marksTold reports whether the marks are told by now.
func (s *Sitting) marksTold() bool {
	if s.Watch != nil {
		return s.Watch.Told()
	}
	return !s.clock().Before(s.Marks)
}

// changed is where it is told that the times may be otherwise.
func (s *Sitting) changed() <-chan struct{} {
	if s.Watch == nil {
		return nil
	}
	return s.Watch.Changed
}

// Held is why nothing is taken now; empty where all is well.
func (s *Sitting) Held() string {
	if s.Watch == nil || s.Over() {
		return ""
	}
	return s.Watch.Held()
}

// readOnly are the words that are heard while nothing is taken.
var readOnly = []string{"time", "sheet", "help", "problems", "quit"}

// held refuses a line while nothing is taken, and reports whether it did.
func held(l *Lesson, line string) (Reply, bool) {
	if l.sitting == nil || l.replaying || slices.Contains(readOnly, strings.ToLower(strings.TrimSpace(line))) {
		return Reply{}, false
	}
	why := l.sitting.Held()
	return Reply{Kind: Unread, Lines: []string{why}}, why != ""
}

// heads are the lines that say whose paper of problem i it is, for who marks a class.
func (s *Sitting) heads(i int) string {
	text := ""
	if s.Student != "" {
		text += "student: " + s.Student + "\n"
	}
	if i < len(s.Codes) && s.Codes[i] != "" {
		text += "code: " + s.Codes[i] + "\n"
	}
	return text
}
