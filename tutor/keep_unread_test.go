package tutor

import (
	"errors"
	"io"
	"iter"
	"testing"
	"time"

	"unpin/problems"
	"unpin/tutor/record"
)

// closedLog is a log that takes lines and gives none.
type closedLog struct {
	record.Log
	lines int
}

func (u *closedLog) Append([]byte) error         { u.lines++; return nil }
func (u *closedLog) Note(string) ([]byte, error) { return nil, nil }
func (u *closedLog) Lines(int64) iter.Seq2[record.Line, error] {
	return func(yield func(record.Line, error) bool) { yield(record.Line{}, io.ErrUnexpectedEOF) }
}

// What is done is kept also where what was done before cannot be read, which is told once.
func TestKeptUnread(t *testing.T) {
	t.Parallel()
	p, _ := problems.Library("jetty-deck")
	l, err := NewPlain(p, Values, false)
	if err != nil {
		t.Fatal(err)
	}
	log, told := &closedLog{}, 0
	l.Keep(record.On(log), time.Now, func(err error) {
		if told++; !errors.Is(err, io.ErrUnexpectedEOF) {
			t.Error(err)
		}
	})
	l.Type("123456")
	l.Type("tell")
	if log.lines < 2 || told != 1 {
		t.Errorf("%d lines are kept, and %d faults told", log.lines, told)
	}
}
