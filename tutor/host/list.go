package host

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"time"

	"unpin/statics/wording"
	"unpin/tutor/screen"
)

// entriesFor lists what there is to choose for a learner, as often as it is asked for: the sets that are open, then the problems of
// the class, then the library. The learner's copies are made once.
func (h *Host) entriesFor(id string, mine *seat) func() []screen.Entry {
	own := map[*set][]screen.Entry{}
	var mutex sync.Mutex
	return func() []screen.Entry {
		mutex.Lock()
		defer mutex.Unlock()
		var all []screen.Entry
		for _, s := range h.sets {
			all = append(all, h.entriesOf(s, id, mine, own)...)
		}
		others := h.unnamed()
		if len(all) > 0 && len(others) > 0 {
			all = append(all, heading("Other problems", "Problems to practise with, in their own numbers."))
		}
		return append(all, others...)
	}
}

// heading begins a part of the list.
func heading(title string, says ...string) screen.Entry {
	return screen.Entry{Set: &screen.SetEntry{Title: title, Says: says}}
}

// entriesOf are the heading of a set and, while it is worked as lessons, its problems.
func (h *Host) entriesOf(s *set, id string, mine *seat, made map[*set][]screen.Entry) []screen.Entry {
	now := h.o.Clock()
	about := &screen.SetEntry{Title: s.Title, Says: h.sayOf(s, id, now), Level: s.level()}
	all := []screen.Entry{{Name: s.ID, Set: about}}
	if s.exam() {
		says, exam := examsOf(h).examEntry(s, id, mine)
		if about.Exam = exam; says != "" {
			about.Says = append(about.Says, says)
		}
	}
	if s.exam() || h.hours(s).at(now) != running {
		return all
	}
	if made[s] == nil {
		copies, err := h.handed(s, h.door.students[id])
		if err != nil {
			h.o.Log.Error("copies cannot be made", "set", s.ID, "id", id, "error", err.Error())
			about.Says = append(about.Says, wording.Sentence(err.Error()))
			return all
		}
		for _, c := range copies {
			made[s] = append(made[s], screen.Entry{Name: s.ID + "/" + c.Name, Problem: c.Problem})
		}
	}
	for _, e := range made[s] {
		e.Set = about
		all = append(all, e)
	}
	return all
}

// unnamed are the problems that no set names: those of the class, then the library. What a set names is worked there, and nowhere
// before it is open.
func (h *Host) unnamed() []screen.Entry {
	var all []screen.Entry
	for _, p := range h.o.Problems {
		if !slices.ContainsFunc(h.sets, func(s *set) bool { return s.names(p.Name) }) {
			all = append(all, screen.Entry{Name: p.Name, Problem: p})
		}
	}
	return append(all, screen.Library()...)
}

// names reports whether a set names a problem of the class.
func (s *set) names(problem string) bool {
	for _, t := range s.Tasks {
		if t.Name == problem {
			return true
		}
	}
	return false
}

// hours are those of a set, as they hold now.
func (h *Host) hours(s *set) hours {
	extra := map[string]int{}
	for id, student := range h.door.students {
		extra[id] = student.Extra
	}
	return hoursOf(s.Set.Set, extra, h.orders.of(s.ID))
}

// zone is the one in which the times of a set are told: that of its file, or else the host's.
func (s *set) zone() *time.Location {
	switch {
	case !s.Opens.IsZero():
		return s.Opens.Location()
	case !s.Closes.IsZero():
		return s.Closes.Location()
	}
	return time.Local
}

// moment is a time for people, in the zone of the set.
func (s *set) moment(t time.Time) string { return moment(t.In(s.zone())) }

// moment is a time with its zone: by its name, and else by the offset from universal time.
func moment(t time.Time) string {
	name, _ := t.Zone()
	if name == "" || strings.ContainsAny(name, "+-0123456789") {
		name = "UTC" + t.Format("-07:00")
	}
	return t.Format("Monday 2 January 2006, 15:04 ") + name
}

// sayOf says what there is to know of a set: whose it is, what it is worth, and when.
func (h *Host) sayOf(s *set, id string, now time.Time) []string {
	w := h.hours(s)
	var says []string
	if s.Course != "" {
		says = append(says, s.Course)
	}
	worth := fmt.Sprintf("%s, %s points.", wording.Counted(len(s.Tasks), "problem"), s.Points())
	if s.exam() {
		minutes := time.Duration(w.minutes)*time.Minute + w.more(w.extra[id])
		worth = fmt.Sprintf("An exam: %s, %s points, %s.", wording.Counted(len(s.Tasks), "problem"), s.Points(), wording.Counted(int(minutes/time.Minute), "minute"))
	}
	says = append(says, worth)
	switch w.at(now) {
	case before:
		if !w.opens.IsZero() && !w.unopened {
			says = append(says, "It opens on "+s.moment(w.opens)+".")
		} else {
			says = append(says, "It is opened by your instructor.")
		}
	case running:
		if !w.closes.IsZero() {
			says = append(says, "It closes on "+s.moment(w.closesAt(now))+".")
		}
	case resting:
		says = append(says, "It is paused by your instructor.")
	case over:
		says = append(says, "It closed on "+s.moment(w.closesAt(now))+".")
	}
	return says
}
