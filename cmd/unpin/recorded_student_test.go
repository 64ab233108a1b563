package main

import (
	"bytes"
	"io"
	"regexp"
	"strings"
)

// A student stands at both ends of a lesson by line: it reads what the lesson writes and types the next line. The lesson
// reads one line at a time, after it has written all that stands before, so this needs no goroutines.
type student struct {
	answer func(asked) string

	transcript bytes.Buffer // what the lesson wrote and, after "> ", what was typed
	seen       int          // how much of it was read
	typed      []string     // all that was typed
	now        asked
	told       []told // what each question was told to be, if it was
	asked      int    // questions before the lesson was done and what was told came again; 0 before that
}

// asked is a question as the student sees it.
type asked struct {
	number     int // from 0
	name, unit string
	tries      int // lines typed to it before
}

// told is a question with what the lesson told of it.
type told struct {
	asked
	text string
}

// takeLesson runs a lesson through the command and returns the student after it.
func takeLesson(answer func(asked) string, args ...string) *student {
	s := &student{answer: answer}
	var errs bytes.Buffer // only that nothing can be kept
	if code := run(append([]string{"practise", "--plain"}, args...), s, s, &errs); code != done {
		s.transcript.WriteString(errs.String())
	}
	return s
}

func (s *student) Write(p []byte) (int, error) { return s.transcript.Write(p) }

// question is a line that asks.
var question = regexp.MustCompile(`(?m)^\? (.*?)( again)? \[(.*)\]$`)

// Read types one line, or ends the lesson where nothing is asked.
func (s *student) Read(p []byte) (int, error) {
	fresh := string(s.transcript.Bytes()[s.seen:])
	found := question.FindAllStringSubmatch(fresh, -1)
	if found == nil {
		return 0, io.EOF
	}
	s.follow(fresh)
	q := found[len(found)-1]
	s.now.name, s.now.unit = q[1], q[3]
	line := s.answer(s.now)
	s.now.tries++
	s.typed = append(s.typed, line)
	s.transcript.WriteString("> " + line + "\n")
	s.seen = s.transcript.Len()
	return copy(p, line+"\n"), nil
}

// follow finds whether the lesson has moved on from the question in hand.
func (s *student) follow(reply string) {
	text, isTold := strings.CutPrefix(reply, "told: ")
	if isTold {
		text, _, _ = strings.Cut(text, "\n")
		s.told = append(s.told, told{s.now, text})
	}
	if isTold || strings.HasPrefix(reply, "right") || strings.HasPrefix(reply, "noted") || strings.HasPrefix(reply, "told at the end") {
		s.now = asked{number: s.now.number + 1}
	}
	if s.asked == 0 && strings.Contains(reply, "\nAll done.") {
		s.asked = s.now.number
	}
}
