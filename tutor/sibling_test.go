package tutor

import (
	"bytes"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/judging"
	"unpin/tutor/record"
)

// A sibling of every problem has the same plan, and no value of a force but nought is as it was.
func TestSiblings(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		s, err := statics.Solve(sibling(l.about.problem, 0).Frame)
		if err != nil || !l.about.planOn(s, false) {
			t.Errorf("%s: the sibling needs another plan (%v)", name, err)
		}
	}
}

// What was told comes back once for each kind of step, with another value, and can be worked; with nothing told nothing
// does.
func TestToldComesAgain(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		for _, level := range []Level{Gradual, Values, Terms, Plan, Blank} {
			l := lesson(t, name, level)
			kinds := toldThrough(l)
			all := l.Again()
			if len(all) != len(kinds) {
				t.Errorf("%s, %s: %d steps come again for %d kinds", name, level, len(all), len(kinds))
			}
			for _, again := range all {
				q, _ := again.Now()
				if l.sheet.givesAway(q) {
					t.Errorf("%s, %s: %s comes again with the same value", name, level, q.Name)
				}
				play(t, again, func(q Question) string { return answerExactly(again, q) }, judging.Verdict.Exactly)
				if len(again.Again()) > 0 {
					t.Errorf("%s, %s: %s comes again for ever", name, level, q.Name)
				}
			}
		}
	}
}

// toldThrough has all of a lesson told, and gives the kinds of its steps.
func toldThrough(l *Lesson) map[record.Kind]bool {
	kinds := map[record.Kind]bool{}
	for {
		q, asking := l.Now()
		if !asking {
			return kinds
		}
		if t, ok := q.task(); ok && q.Kind != Reading {
			kinds[l.about.kind(t)] = true
		}
		if l.Type("tell").Kind == Unread {
			l.Type("")
		}
	}
}

// Where all is answered as the solution has it, each answer is right, and nothing comes after the last question.
func TestNothingToldNothingAgain(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Values)
		var typed strings.Builder
		for _, q := range l.sheet.questions {
			typed.WriteString(q.truth.Decimal(30) + "\n")
		}
		var out bytes.Buffer
		if err := Plain(l, strings.NewReader(typed.String()+"extra\n"), &out); err != nil {
			t.Fatal(err)
		}
		if n := strings.Count("\n"+out.String(), "\nright: "); n != len(l.sheet.questions) {
			t.Errorf("%s: %d of %d answers are right", name, n, len(l.sheet.questions))
		}
		if _, end, done := strings.Cut(out.String(), "\nAll done."); !done || strings.Contains(end, "? ") || strings.Contains(end, "Mistake") {
			t.Errorf("%s ends with %s", name, end)
		}
	}
}
