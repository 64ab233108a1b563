package host

import (
	"time"

	"unpin/problems"
)

// hours are the times of a set as they hold: those of its file, and what instructors ordered.
type hours struct {
	opens, closes time.Time // zero where there is none
	unopened      bool      // an exam that is opened by hand, and was not
	shut          bool      // closes was ordered, and leaves nobody more time
	minutes       int       // for each; 0 for a set that is no exam
	pauses        []pause
	extra         map[string]int // per cent more time, by learner
	given         map[string]time.Duration
}

// A pause has no end while it lasts.
type pause struct{ from, to time.Time }

// A phase is how far a set is.
type phase int

// The phases.
const (
	before phase = iota
	running
	resting // it is paused
	over
)

// hoursOf are the hours of a set; extra are those of the roster.
func hoursOf(s *problems.Set, extra map[string]int, all []order) hours {
	w := hours{opens: s.Opens, closes: s.Closes, minutes: s.Minutes, unopened: s.Minutes > 0 && s.Opens.IsZero(), extra: map[string]int{}, given: map[string]time.Duration{}}
	for id, percent := range extra {
		w.extra[id] = percent
	}
	for _, o := range all {
		w.take(o)
	}
	return w
}

// take follows one order.
func (w *hours) take(o order) {
	last := len(w.pauses) - 1
	resting := last >= 0 && w.pauses[last].to.IsZero()
	switch o.Do {
	case openSet:
		w.opens, w.closes, w.unopened, w.shut = o.At, o.Until, false, false
	case closeSet:
		w.closes, w.shut = o.At, true
	case pauseSet:
		if !resting {
			w.pauses = append(w.pauses, pause{from: o.At})
		}
	case goOn:
		if resting {
			w.pauses[last].to = o.At
		}
	case setMinutes:
		if w.minutes > 0 {
			w.minutes = o.Minutes
		}
	case setExtra:
		w.extra[o.Who] = o.Percent
	case giveBack:
		w.given[o.Who] += time.Duration(o.Minutes) * time.Minute
	}
}

// at is how far the set is at a time, for who has not begun.
func (w hours) at(now time.Time) phase {
	switch {
	case w.unopened && !w.shut, !w.opens.IsZero() && now.Before(w.opens):
		return before
	case !w.closes.IsZero() && !now.Before(w.closesAt(now)):
		return over
	case len(w.pauses) > 0 && w.pauses[len(w.pauses)-1].to.IsZero():
		return resting
	}
	return running
}

// closesAt is when it closes, with the pauses until now; for what is closed by hand, just then.
func (w hours) closesAt(now time.Time) time.Time {
	if w.shut {
		return w.closes
	}
	return w.closes.Add(w.paused(w.opens, now))
}

// paused is how long the clock stood between two times.
func (w hours) paused(from, to time.Time) (sum time.Duration) {
	for _, p := range w.pauses {
		end := p.to
		if end.IsZero() || end.After(to) {
			end = to
		}
		if p.from.After(from) {
			from = p.from
		}
		if end.After(from) {
			sum += end.Sub(from)
			from = end
		}
	}
	return sum
}

// ends is when the time of a learner ends who has begun, as it is to be seen now: min(begun + minutes, closes) + minutes · extra, with
// the pauses in between and what was given back. False where there is no end.
func (w hours) ends(id string, begun, now time.Time) (time.Time, bool) {
	var end time.Time
	if w.minutes > 0 {
		end = begun.Add(time.Duration(w.minutes)*time.Minute + w.paused(begun, now))
	}
	if closes := w.closesAt(now); !w.closes.IsZero() && !w.shut && (end.IsZero() || closes.Before(end)) {
		end = closes
	}
	if !end.IsZero() {
		end = end.Add(w.more(w.extra[id]) + w.given[""] + w.given[id])
	}
	if w.shut && (end.IsZero() || w.closes.Before(end)) {
		end = w.closes
	}
	return end, !end.IsZero()
}

// shutEarly reports whether it was closed by hand before the time of a student was over.
func (w hours) shutEarly(id string, begun, now time.Time) bool {
	end, _ := w.ends(id, begun, now)
	return w.shut && end.Equal(w.closes)
}

// more is what so many per cent of more time come to.
func (w hours) more(percent int) time.Duration {
	return time.Duration(w.minutes) * time.Minute * time.Duration(percent) / 100
}

// done reports whether the time of everybody is over, so that marks may be told.
func (w hours) done(now time.Time) bool {
	if w.closes.IsZero() {
		return false
	}
	var most time.Duration
	for id, percent := range w.extra {
		most = max(most, w.more(percent)+w.given[id])
	}
	for id, given := range w.given {
		if id != "" {
			most = max(most, given+w.more(w.extra[id]))
		}
	}
	end := w.closesAt(now).Add(most + w.given[""])
	if w.shut {
		end = w.closes
	}
	return !now.Before(end)
}
