package record

import (
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
	since  int      // steps since the estimate was last as high as that of what is mastered, or from the beginning
	box    int      // how often it came right when it was due; 0 before the first time
	due    int      // the day, see day
	days   days
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

// Besides the estimate a skill stands only after so many right steps, on so many frames, and on so many days, see days. Rawson and Dunlosky, Journal of
// Experimental Psychology: General 140, 2011 (from memory), want three right at first and each right again on three later days; the numbers here
// are our choice, tuned on simulated learners. One that so many steps in a row have brought no nearer is stuck, and more of the same will not help
// (Beck and Gong, AIED 2013, take ten): in all of them the estimate was never that of what is mastered. Who came so far and wants another day
// or frame only is not stuck.
const (
	LeastRight  = 5
	LeastFrames = 3
	LeastDays   = 3
	MostSteps   = 8
)

// gaps are the days after which what came right is due again; from the last on it stays at that.
var gaps = []int{1, 3, 7, 21}

// Stands reports whether the skill is mastered: it is likely to come right, and was shown to last.
func (s Standing) Stands() bool {
	return s.Likely() && s.Right >= LeastRight && s.Frames() >= LeastFrames && s.DaysHeld() >= LeastDays
}

// Likely reports whether what asks for the skill alone is likely to come right now.
func (s Standing) Likely() bool { return s.known >= mastered }

// Frames is on how many different frames a step came right.
func (s Standing) Frames() int { return len(s.frames) }

// DaysHeld is on how many days the first step came right, less those on which it showed the skill to be wanting; of the latest, and no more than five.
func (s Standing) DaysHeld() int { return s.days.held }

// Stuck reports whether a worked example would help more than another try.
func (s Standing) Stuck() bool { return s.since >= MostSteps }

// Due reports whether the skill is to be practised again now.
func (s Standing) Due(now time.Time) bool { return s.Of > 0 && s.Overdue(now) >= 0 }

// Overdue is by how many days it is late; negative before it is due. What was last done at a time that is still to come is due today, or else a
// clock that ran ahead would put it off for as long as that; and of what was done on a clock that ran behind, no more is late than a full round.
func (s Standing) Overdue(now time.Time) int {
	if s.Ahead(now) {
		return 0
	}
	return min(day(now)-s.due, gaps[len(gaps)-1])
}

// Ahead reports whether the last step is of a time that is still to come: a clock was or is wrong. What a clock may well be off by is let pass.
func (s Standing) Ahead(now time.Time) bool { return s.Last.After(now.Add(time.Hour)) }

// Weaker orders skills for practice: what is less likely known before what is more.
func (s Standing) Weaker(other Standing) int { return s.known - other.known }

// day numbers the days by the calendar of the place where a time was told.
func day(t time.Time) int {
	y, m, d := t.Date()
	return int(time.Date(y, m, d, 0, 0, 0, 0, time.UTC).Unix() / (24 * 60 * 60))
}

// DaysBetween counts the days from one time to another by the calendar; negative where the second is earlier.
func DaysBetween(from, to time.Time) int { return day(to) - day(from) }

// Standings traces every skill that steps asked for, in the order of the records; of each the latest steps only, see window, and the latest days.
func Standings(all []Record) map[string]Standing {
	steps, ofDays := map[string]int{}, map[string]int{} // of each skill, that are still to come
	begun := calendar{}
	for _, r := range all {
		for skill := range r.tried() {
			if steps[skill]++; begun.begins(skill, day(r.At)) {
				ofDays[skill]++
			}
		}
	}
	begun = calendar{}
	standings := map[string]Standing{}
	for _, r := range all {
		again := map[string]bool{} // skills that this record has told something of
		for _, st := range r.steps() {
			for _, c := range st.traced(standings) {
				s := standingIn(standings, c.skill)
				if begun.begins(c.skill, day(st.at)) {
					ofDays[c.skill]--
				}
				if ofDays[c.skill] < daysCount {
					s.days.add(day(st.at), st.right, st.wanting())
				}
				if steps[c.skill]--; steps[c.skill] < window {
					s.add(st, c.others, again[c.skill])
					again[c.skill] = true
				}
				standings[c.skill] = s
			}
		}
	}
	return standings
}

// standingIn is how far a learner is with a skill, which may not have been met.
func standingIn(standings map[string]Standing, skill string) Standing {
	s, met := standings[skill]
	if !met {
		s.known = atStart
	}
	return s
}

// A trace is a skill that a record tells something of, and how likely all else that its step asked for comes right, in billionths.
type trace struct {
	skill  string
	others int
}

// traced lists what a step tells something of. One that went wrong, and tells nothing of what was wanting, says the less of a skill the more
// likely it was another that went wrong.
func (st step) traced(standings map[string]Standing) []trace {
	skills := slices.Collect(st.tried())
	sure := st.right || len(st.missed) > 0
	var all []trace
	for _, skill := range skills {
		t := trace{skill, whole}
		for _, other := range skills {
			if !sure && other != skill {
				t.others = times(t.others, comesRight(standingIn(standings, other).known))
			}
		}
		all = append(all, t)
	}
	return all
}

// times is the product of two chances.
func times(a, b int) int { return a * b / whole }

// comesRight is how likely what asks for a skill alone comes right.
func comesRight(known int) int { return times(known, whole-slipped) + times(whole-known, guessed) }

// add traces one step, of which all else that it asked for comes right so likely. What is asked again and again along one member counts once
// for who is stuck: that is one frame.
func (s *Standing) add(st step, others int, again bool) {
	s.Of++
	if st.right {
		s.Right++
		if !slices.Contains(s.frames, st.frame) {
			s.frames = append(slices.Clip(s.frames), st.frame)
		}
	}
	s.known = after(s.known, st.right, others)
	if st.right || others == whole || s.known < mastered { // else it was likely another skill that was wanting
		s.space(st.right, st.at)
	}
	if !again {
		s.since++
	}
	if s.known >= mastered {
		s.since = 0
	}
	s.Last = st.at
}

// after is the estimate after a step, from that before it, where all else that it asked for comes right so likely.
func after(known int, right bool, others int) int {
	ifKnown, ifNot := whole-times(whole-slipped, others), whole-times(guessed, others)
	if right { // all else came right too
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
