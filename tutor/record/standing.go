package record

import (
	"iter"
	"math/bits"
	"slices"
	"time"
)

// A Standing is how far a learner is with one skill. Whether it is known is estimated by Bayesian knowledge tracing (Corbett and
// Anderson, User Modeling and User-Adapted Interaction 4, 1995): only the first try at a step counts, and help counts as wrong.
// The estimate stays inside; people are shown the counts.
type Standing struct {
	Right, Of int       // steps right at the first try and without help, of all
	Last      time.Time // of the last step

	known  int      // the estimate, in billionths
	frames []string // different ones on which a step came right
	since  int      // steps since it last stood, or from the beginning
	box    int      // how often it came right when it was due; 0 before the first time
	due    int      // the day, see day
}

// The parameters of the tracing, in billionths: known at the start, learned at a step, wrong though known, right though not known.
// A number that is typed is seldom guessed. The values are our choice within the usual limits (slip at most 0.1, guess at most 0.3).
const (
	whole    = 1_000_000_000
	atStart  = whole * 30 / 100
	learned  = whole * 15 / 100
	slipped  = whole * 10 / 100
	guessed  = whole * 5 / 100
	mastered = whole * 95 / 100   // common practice since Corbett and Anderson
	surest   = whole * 999 / 1000 // so that mistakes still count after a long row of right steps
)

// Besides the estimate a skill stands only after so many right steps on so many frames; one that does not stand after so many steps
// is stuck, and more of the same will not help (Beck and Gong, AIED 2013, take ten).
const (
	leastRight  = 3
	leastFrames = 2
	most        = 8
)

// gaps are the days after which what came right is due again; from the last on it stays at that.
var gaps = []int{1, 3, 7, 21}

// Stands reports whether the skill is mastered.
func (s Standing) Stands() bool {
	return s.known >= mastered && s.Right >= leastRight && len(s.frames) >= leastFrames
}

// Stuck reports whether a worked example would help more than another try.
func (s Standing) Stuck() bool { return !s.Stands() && s.since >= most }

// Due reports whether the skill is to be practised again now.
func (s Standing) Due(now time.Time) bool { return s.Of > 0 && day(now) >= s.due }

// Overdue is by how many days it is late; negative before it is due.
func (s Standing) Overdue(now time.Time) int { return day(now) - s.due }

// Weaker orders skills for practice: what is less likely known before what is more.
func (s Standing) Weaker(other Standing) int { return s.known - other.known }

// day numbers the days by the calendar of the place where a time was told.
func day(t time.Time) int {
	y, m, d := t.Date()
	return int(time.Date(y, m, d, 0, 0, 0, 0, time.UTC).Unix() / (24 * 60 * 60))
}

// DaysBetween counts the days from one time to another by the calendar; negative where the second is earlier.
func DaysBetween(from, to time.Time) int { return day(to) - day(from) }

// Standings traces every skill that steps asked for, in the order of the records; of each the latest steps only, see window.
func Standings(all []Record) map[string]Standing {
	left := map[string]int{} // steps of each skill that are still to come
	for _, r := range all {
		for skill := range r.tried() {
			left[skill]++
		}
	}
	standings := map[string]Standing{}
	for _, r := range all {
		for skill := range r.tried() {
			if left[skill]--; left[skill] >= window {
				continue
			}
			s, met := standings[skill]
			if !met {
				s.known = atStart
			}
			s.add(r.Outcome == StepRight, r.Frame, r.At)
			standings[skill] = s
		}
	}
	return standings
}

// tried goes over the skills that a record tells something of: in a step that went wrong only those that were wanting, where that is known.
func (r Record) tried() iter.Seq[string] {
	return func(yield func(string) bool) {
		for _, skill := range r.Skills {
			if r.Outcome != StepRight && len(r.Missed) > 0 && !slices.Contains(r.Missed, skill) {
				continue
			}
			if !yield(skill) {
				return
			}
		}
	}
}

// add traces one step.
func (s *Standing) add(right bool, frame string, at time.Time) {
	s.Of++
	if right {
		s.Right++
		if !slices.Contains(s.frames, frame) {
			s.frames = append(slices.Clip(s.frames), frame)
		}
	}
	s.space(right, at)
	s.known = after(s.known, right)
	s.since++
	if s.Stands() {
		s.since = 0
	}
	s.Last = at
}

// after is the estimate after a step, from that before it.
func after(known int, right bool) int {
	ifKnown, ifNot := slipped, whole-guessed
	if right {
		ifKnown, ifNot = whole-slipped, guessed
	}
	a, b := known*ifKnown, (whole-known)*ifNot
	high, low := bits.Mul64(uint64(a), whole)
	quotient, _ := bits.Div64(high, low, uint64(a+b))
	held := int(quotient)
	return min(held+(whole-held)*learned/whole, surest)
}

// space sets when the skill is due again. A clock that was set back does not put it off.
func (s *Standing) space(right bool, at time.Time) {
	switch today := day(at); {
	case !right:
		s.box, s.due = 1, today+gaps[0]
	case s.box == 0 || today >= s.due:
		s.box = min(s.box+1, len(gaps))
		s.due = today + gaps[s.box-1]
	case at.Before(s.Last):
		s.due = min(s.due, today+gaps[s.box-1])
	}
}
