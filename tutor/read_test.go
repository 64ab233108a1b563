package tutor

import (
	"strings"
	"testing"

	"unpin/statics/judging"
)

// Rows: what is typed where RB = 20.5 is asked for, and what is said; nothing where it is right.
func TestNamesInAnswers(t *testing.T) {
	t.Parallel()
	rows := [][2]string{
		{"RB = 20.5", ""},
		{"r_b=20.5 kN up", ""},
		{" RB =  41/2", ""},
		{"RB", "RB itself is asked for"},
		{"Ay", "wherever you need Ay, put its value"},
		{"164/8-Ay", "wherever you need Ay, put its value"},
		{"Ay = 20.5", "RB is asked for, as a number"},
		{"RB = ", "number"},
		{"RB = 20.5 m", "m measures a length"},
		{"MB = 20.5", "only a value is read here"},
	}
	for _, r := range rows {
		l := lesson(t, "jetty-deck", Values)
		l.Type("0")
		reply := l.Type(r[0])
		if r[1] == "" && reply.Verdict != judging.Exact || r[1] != "" && (reply.Kind != Unread || !strings.Contains(reply.Lines[0], r[1])) {
			t.Errorf("%q: %v", r[0], reply.Lines)
		}
	}
}

// A value that fits no slip is met by another sentence each time, until all has been said; so is a call for a hint.
func TestWrongAgainAndAgain(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"jetty-deck", "hillside-garage"} {
		l := lesson(t, name, Values)
		for l.sheet.at < len(l.sheet.questions) {
			said := map[string]bool{}
			for _, wrong := range []string{"71.317", "-913.77", "88.419"} {
				r := l.Type(wrong)
				if r.Verdict.Right() || said[r.Lines[0]] {
					t.Errorf("%s, %s: %s brings again %v", name, l.sheet.questions[l.sheet.at].Name, wrong, r.Lines)
				}
				said[r.Lines[0]] = true
			}
			for range 4 {
				if r := l.Type("hint"); said[r.Lines[0]] {
					t.Errorf("%s, %s: said again: %v", name, l.sheet.questions[l.sheet.at].Name, r.Lines)
				} else {
					said[r.Lines[0]] = true
				}
			}
			l.Type("tell")
		}
	}
}
