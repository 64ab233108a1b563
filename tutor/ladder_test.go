package tutor

import (
	"path/filepath"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/tutor/record"
)

// Rows: how many came right, and what each of five steps of a kind then is, from the first to the last.
func TestFaded(t *testing.T) {
	t.Parallel()
	for right, want := range []string{
		"read read read read values", "read read read values values", "read read values values values", "values values values values terms",
		"values values values terms terms", "values values terms terms terms", "terms terms terms terms terms", "terms terms terms terms terms",
	} {
		var got []string
		for following := range 5 {
			got = append([]string{faded(right, following).String()}, got...)
		}
		if text := strings.Join(got, " "); text != want {
			t.Errorf("after %d: %s, want %s", right, text, want)
		}
	}
}

// Each kind of step has its own level: what comes right on one frame is asked more of on the next, and what is told less.
func TestFadingByKind(t *testing.T) {
	t.Parallel()
	s, now := record.At(filepath.Join(t.TempDir(), "practice.jsonl")), clock()
	begin := func(name string) *Lesson {
		l := lesson(t, name, Gradual)
		l.Keep(s, now, noComplaint(t))
		return l
	}
	asked := func(l *Lesson) map[record.Kind]int {
		n := map[record.Kind]int{}
		for _, q := range l.sheet.questions {
			if of, ok := q.task(); ok && q.Kind != Reading {
				n[l.about.kind(of)]++
			}
		}
		return n
	}
	first := begin("quay-gantry")
	if n := asked(first); n[record.Forces] != 1 || n[record.Moments] != 1 {
		t.Errorf("at first %v is asked", n)
	}
	for {
		q, asking := first.Now()
		if !asking {
			break
		}
		line := answerExactly(first, q)
		if of, _ := q.task(); q.Kind == Reading {
			line = ""
		} else if first.about.kind(of) == record.Forces {
			line = "tell"
		}
		first.Type(line)
	}
	if n := asked(begin("quay-gantry")); n[record.Moments] != 1 {
		t.Errorf("the same frame again asks %v", n)
	}
	if n := asked(begin("sawmill-portal")); n[record.Forces] != 1 || n[record.Moments] != 2 {
		t.Errorf("the next frame asks %v", n)
	}
}

// A gradual lesson is taken up where it was left, over worked steps and asked ones.
func TestFadingResumed(t *testing.T) {
	t.Parallel()
	s, now := record.At(filepath.Join(t.TempDir(), "practice.jsonl")), clock()
	for _, name := range librarytest.Names() {
		l := lesson(t, name, Gradual)
		l.Keep(s, now, noComplaint(t))
		for n := 0; n < 2; {
			q, _ := l.Now()
			if q.Kind == Reading {
				l.Type("")
				continue
			}
			l.Type(answerExactly(l, q))
			n++
		}
		at, _ := l.Position()
		again := lesson(t, name, Gradual)
		again.Keep(s, now, noComplaint(t))
		again.Type("") // a worked step may be read before
		again.Type("resume")
		if got, _ := again.Position(); got != at || again.Earlier() != at {
			t.Errorf("%s is taken up at %d, left at %d", name, got, at)
		}
	}
}

// Back passes over worked steps.
func TestBackOverWorkedSteps(t *testing.T) {
	t.Parallel()
	l := lesson(t, "quay-gantry", Gradual)
	for q, _ := l.Now(); q.Kind == Reading; q, _ = l.Now() {
		l.Type("")
	}
	if r := l.Type("back"); r.Kind != Unread {
		t.Errorf("back from the first question: %v", r.Lines)
	}
	first, _ := l.Now()
	l.Type("tell")
	for q, _ := l.Now(); q.Kind == Reading; q, _ = l.Now() {
		l.Type("")
	}
	l.Type("back")
	if q, _ := l.Now(); q.Name != first.Name {
		t.Errorf("back leads to %s", q.Name)
	}
}

// When steps of all kinds have come right often enough, the level gradual hands over the plan, and then the blank page; what
// was told takes it back. That work is kept as work of that level.
func TestGradualRisesToBlank(t *testing.T) {
	t.Parallel()
	for _, r := range []struct {
		forces, moments, told int
		want                  Level
	}{
		{9, 9, 0, Plan}, {9, 8, 0, Gradual}, {8, 20, 0, Gradual}, {20, 11, 0, Plan}, {12, 12, 0, Blank}, {12, 12, 1, Plan}, {9, 9, 1, Gradual},
	} {
		s := store(t)
		for kind, n := range map[record.Kind]int{record.Forces: r.forces, record.Moments: r.moments} {
			for i := range n + r.told {
				outcome := record.StepRight
				if i >= n {
					outcome = record.StepTold
				}
				if err := s.Add(record.Record{Run: "before", Frame: "another", Kind: kind, Outcome: outcome}); err != nil {
					t.Fatal(err)
				}
			}
		}
		l := kept(t, s, "quay-gantry", Gradual, clock())
		q, _ := l.Now()
		if got := l.about.levels.base(); got != r.want || l.Open() != (r.want != Gradual) || l.Open() != q.Composing() || l.Level() != Gradual {
			t.Errorf("after %d and %d right and %d told it is %s with %v in hand, want %s", r.forces, r.moments, r.told, got, q.Name, r.want)
		}
		if !l.Open() {
			continue
		}
		typeAll(l, "tell", "tell", "hint")
		if again := kept(t, s, "quay-gantry", r.want, clock()); again.Earlier() == 0 {
			t.Errorf("work at the level gradual is not found again at %s", r.want)
		}
		l.Type("restart")
		if q, _ := l.Now(); !q.Composing() || !l.Open() {
			t.Errorf("after a restart %s is asked", q.Name)
		}
	}
}
