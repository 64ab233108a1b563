package tutor

import (
	"slices"
	"strings"
	"time"
)

// Three wrong values in the time that one takes to work out are guesses: what helps then is to be pointed to the step,
// and on a screen a pause long enough to read that. How many and how fast is from memory of common practice, no source.
const (
	guesses = 3
	haste   = 10 * time.Second
	breath  = 4 * time.Second
)

// slowDown adds a hint to a reply that ends a burst of guesses: the one that points, and later the one that teaches.
func (l *Lesson) slowDown(r *Reply) {
	q, asking := l.Now()
	if l.Clock == nil || !asking || r.Kind != Judged || r.Verdict.Right() {
		return
	}
	a := l.sheet.inHand()
	if !tooFast(&a.wrong, l.Clock()) {
		return
	}
	r.Pause = breath
	n := min(a.hints, 1) // who has been pointed to the step is taught the rule
	a.hints = max(a.hints, n+1)
	if says := l.coach().hints(q)[n]; !slices.ContainsFunc(r.Lines, func(said string) bool { return strings.HasSuffix(said, says) }) {
		r.Lines = append(r.Lines, "hint: "+says)
	}
}

// tooFast adds one more wrong answer to those typed just now, and reports whether they are guesses; then it begins to count anew.
func tooFast(wrong *[]time.Time, now time.Time) bool {
	all := append(*wrong, now)
	all = slices.DeleteFunc(all, func(t time.Time) bool { return now.Sub(t) > haste })
	if len(all) < guesses {
		*wrong = all
		return false
	}
	*wrong = nil
	return true
}
