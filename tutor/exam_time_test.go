package tutor

import (
	"strings"
	"testing"
	"time"
)

// An exam of ten minutes takes a line in the tenth and none after it; the paper is then marked with what was answered, whatever
// the level, and also where a student had gone back.
func TestExamEndsWithItsTime(t *testing.T) {
	t.Parallel()
	for _, level := range []Level{Values, Terms, Plan, Blank} {
		l, err := lesson(t, "jetty-deck", Values).Anew(level, true)
		if err != nil {
			t.Fatal(err)
		}
		now := time.Date(2026, 11, 28, 9, 0, 0, 0, time.UTC)
		Limit(l, 10*time.Minute, func() time.Time { return now })
		for q, asking := l.Now(); asking && q.Kind == Reading; q, asking = l.Now() {
			l.Type("")
		}
		first, _ := l.Now()
		answer := "3"
		switch {
		case first.Composing():
			answer = "whole x"
		case first.Kind == TermSign:
			answer = "-"
		}
		now = now.Add(9*time.Minute + 30*time.Second)
		if r := l.Type("time"); r.Lines[0] != "1 minute left." {
			t.Errorf("%v: with half a minute to go %q", level, r.Lines)
		}
		if r := l.Type(answer); r.Kind != Noted {
			t.Errorf("%v: in time %+v", level, r)
		}
		l.Type("back")
		now = now.Add(time.Minute)
		if r := l.Type("4"); !strings.Contains(strings.Join(r.Lines, " "), "too late") {
			t.Errorf("%v: after the time %q", level, r.Lines)
		}
		if _, asking := l.Now(); asking {
			t.Errorf("%v: asks on after the end", level)
		}
		marks := strings.Join(l.Marks(), "\n")
		if !strings.Contains(marks, "left open") || strings.Contains(marks, "typed 4:") {
			t.Errorf("%v: the marks are\n%s", level, marks)
		}
		if !first.Composing() && !strings.Contains(marks, first.Name+" typed "+answer+":") {
			t.Errorf("%v: the answer given in time is lost:\n%s", level, marks)
		}
	}
}
