package tutor

import (
	"strings"
	"testing"
	"time"
)

// Rows: the seconds between one wrong value and the next, and which of them bring the hint that points.
func TestGuessingInHaste(t *testing.T) {
	t.Parallel()
	rows := []struct{ gaps, hints []int }{
		{[]int{0, 2, 2}, []int{2}},
		{[]int{0, 2, 2, 2, 2, 2}, []int{2, 5}},
		{[]int{0, 6, 6, 6}, nil},
		{[]int{0, 20, 1, 1}, []int{3}},
		{[]int{0, 5, 5}, []int{2}},
		{[]int{0, 5, 6}, nil},
	}
	for _, r := range rows {
		l := lesson(t, "jetty-deck", Values)
		now := time.Date(2026, 1, 2, 3, 4, 5, 0, time.UTC)
		l.Clock = func() time.Time { return now }
		for n, gap := range r.gaps {
			now = now.Add(time.Duration(gap) * time.Second)
			reply := l.Type("12.3")
			hinted := len(r.hints) > 0 && r.hints[0] == n
			if hinted {
				r.hints = r.hints[1:]
			}
			if got := reply.Pause > 0 && strings.HasPrefix(reply.Lines[len(reply.Lines)-1], "hint: "); got != hinted || !strings.HasPrefix(reply.Lines[0], "not yet: ") {
				t.Errorf("after %v, number %d: %v, pause %v", r.gaps, n, reply.Lines, reply.Pause)
			}
		}
		if len(r.hints) > 0 {
			t.Errorf("%v: no hint at %v", r.gaps, r.hints)
		}
	}
}

// Without a clock nothing is held to be haste, and a right value never is.
func TestNoHaste(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Values)
	for range 5 {
		if r := l.Type("12.3"); len(r.Lines) != 1 || r.Pause > 0 {
			t.Errorf("without a clock: %v", r.Lines)
		}
	}
	l.Clock = func() time.Time { return time.Time{} }
	l.Type("1")
	l.Type("2")
	if r := l.Type("0"); len(r.Lines) != 1 || r.Pause > 0 {
		t.Errorf("a right value after two wrong ones: %v", r.Lines)
	}
}

// A hint that is the reply itself is not said twice; the pause stays.
func TestHasteSaysNothingTwice(t *testing.T) {
	t.Parallel()
	l := lesson(t, "jetty-deck", Terms)
	for q, asking := l.Now(); asking && q.Kind != ShapeDegree; q, asking = l.Now() {
		l.Type("tell")
	}
	l.Clock = func() time.Time { return time.Time{} }
	var r Reply
	for range 6 {
		r = l.Type("3")
	}
	if len(r.Lines) != 1 || r.Pause == 0 {
		t.Errorf("the sixth wrong degree brings %q, pause %v", r.Lines, r.Pause)
	}
}
