package problems

import (
	"fmt"
	"strconv"
	"time"

	"unpin/statics/notation"
)

// The ways in which a moment may be written, the first of which is told, and the same without the offset.
var (
	momentForms = []string{"2006-01-02T15:04Z07:00", "2006-01-02T15:04:05Z07:00", "2006-01-02 15:04Z07:00", "2006-01-02 15:04 Z07:00"}
	localForms  = []string{"2006-01-02T15:04", "2006-01-02T15:04:05", "2006-01-02 15:04", "2006-01-02"}
)

// maxMinutes is the longest time for a paper: a week.
const maxMinutes = 7 * 24 * 60

// times reads when the set is worked, and how long what was done is kept.
func (r *setReader) times(values map[string]*node) {
	if n := values["opens"]; n != nil {
		r.set.Opens = r.moment(n, "opens")
	}
	if n := values["closes"]; n != nil {
		r.set.Closes = r.moment(n, "closes")
		if !r.set.Opens.IsZero() && !r.set.Closes.IsZero() && !r.set.Closes.After(r.set.Opens) {
			r.fault(n.at, "the set closes before it opens", "closes is later than opens; see whether the offsets are those you mean.")
		}
	}
	if n := values["minutes"]; n != nil {
		r.set.Minutes = r.minutes(n)
	}
	if n := values["keep"]; n != nil {
		day, err := time.Parse(time.DateOnly, n.text)
		switch {
		case err != nil:
			r.fault(n.at, "keep is a day, not "+quoted(n.text), "Write year, month and day: keep: 2027-06-30")
		case !r.set.Closes.IsZero() && day.Before(r.set.Closes.Truncate(24*time.Hour)):
			r.fault(n.at, "keep is a day before the set closes", "Write a later day.")
		}
		r.set.Keep = day
	}
}

var hourForm = notation.Pattern(`^([0-9]{1,3})\s*(?:h|hr|hrs|hours?|:)\s*([0-5]?[0-9])?\s*(?:m|min|minutes?)?$`)

// minutes reads how long a student has. Hours are told in minutes.
func (r *setReader) minutes(n *node) int {
	if found := hourForm().FindStringSubmatch(n.text); found != nil {
		hours, _ := strconv.Atoi(found[1])
		more, _ := strconv.Atoi(found[2])
		r.fault(n.at, "minutes is a whole number of minutes, not "+quoted(n.text), fmt.Sprintf("Write minutes: %d", 60*hours+more))
		return 0
	}
	return r.whole(n, "minutes", 1, maxMinutes)
}

// ReadMoment reads a day and a time, as a set has them; where no offset stands, it is that of the place.
func ReadMoment(text string, place *time.Location) (time.Time, bool) {
	for _, form := range momentForms {
		if t, err := time.Parse(form, text); err == nil {
			return t, true
		}
	}
	for _, form := range localForms {
		if t, err := time.ParseInLocation(form, text, place); err == nil {
			return t, true
		}
	}
	return time.Time{}, false
}

// moment reads a day and a time with the offset from universal time.
func (r *setReader) moment(n *node, what string) time.Time {
	for _, form := range momentForms {
		if t, err := time.Parse(form, n.text); err == nil {
			return t
		}
	}
	for _, form := range localForms {
		if t, err := time.Parse(form, n.text); err == nil {
			r.fault(n.at, what+" has no offset from universal time", fmt.Sprintf("Where the clocks are an hour ahead of it, write %s: %s+01:00", what, t.Format("2006-01-02T15:04")))
			return time.Time{}
		}
	}
	r.fault(n.at, fmt.Sprintf("%s is a day and a time, not %s", what, quoted(n.text)), fmt.Sprintf("Write year, month, day, T, the time and the offset from universal time: %s: 2026-12-04T10:00+01:00", what))
	return time.Time{}
}
