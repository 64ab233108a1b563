package host

import (
	"errors"
	"fmt"
	"slices"
	"time"

	"unpin/problems"
	"unpin/statics/wording"
	"unpin/tutor"
	"unpin/tutor/record"
	"unpin/tutor/screen"
)

// exams are those over sets at a host.
type exams struct{ *Host }

// examsOf are those at a host.
func examsOf(h *Host) exams { return exams{h} }

// papers lists the papers of a set that a learner has begun: one, or none.
func (h exams) papers(s *set, id string) ([]record.Sitting, error) {
	past, err := h.storeOf(id, s.ID).Past()
	if err != nil {
		return nil, err
	}
	all, err := past.Of(record.SetFrame(s.ID))
	return record.Sittings(all, s.ID), err
}

// A stage is how far a learner is with an exam.
type stage int

// The stages.
const (
	unbegun stage = iota
	writing
	handedIn // or its time is over
)

// stageOf is how far a learner is with an exam, and when they began.
func (h exams) stageOf(s *set, id string) (stage, time.Time, error) {
	all, err := h.papers(s, id)
	if err != nil || len(all) == 0 {
		return unbegun, time.Time{}, err
	}
	begun := all[len(all)-1].Began
	now := h.o.Clock()
	if end, limited := h.hours(s).ends(id, begun, now); !all[len(all)-1].Handed.IsZero() || limited && !now.Before(end) {
		return handedIn, begun, nil
	}
	return writing, begun, nil
}

// writes is the exam that a learner is in the middle of; nil where there is none.
func (h exams) writes(id string) (*set, error) {
	for _, s := range h.sets {
		if !s.exam() {
			continue
		}
		stage, _, err := h.stageOf(s, id)
		if err != nil || stage == writing {
			return s, err
		}
	}
	return nil, nil
}

// sit begins a learner's exam, or goes on with it; after its end it is there to look at. The times are those of the host's clock and
// the instructors' orders, as they are from moment to moment.
func (h exams) sit(s *set, id string, mine *seat, complain func(error)) (*tutor.Sitting, error) {
	at, _, err := h.stageOf(s, id)
	if err != nil {
		return nil, err
	}
	if how := h.hours(s).at(h.o.Clock()); at == unbegun && how != running {
		return nil, errors.New(map[phase]string{before: "it is not open yet", resting: "it is paused by your instructor: try again when it goes on", over: "it is closed"}[how])
	}
	copies, err := h.handed(s, h.door.students[id])
	if err != nil {
		return nil, err
	}
	rules, err := tutor.RulesOf(s.Set.Set)
	if err != nil {
		return nil, err
	}
	rules.Tasks, rules.Student, rules.Scheme, rules.Opens, rules.Closes = nil, id, (*problems.Scheme)(s.Scheme), time.Time{}, time.Time{}
	for _, c := range copies {
		rules.Tasks, rules.Codes = append(rules.Tasks, c.Task), append(rules.Codes, c.code)
	}
	rules.Watch = h.watch(s, id, mine)
	if mine != nil {
		h.seats.examines(mine, s.ID)
	}
	return tutor.Sit(rules, h.storeOf(id, s.ID), h.o.Clock, complain)
}

// watch settles the times of a learner's exam.
func (h exams) watch(s *set, id string, mine *seat) *tutor.Watch {
	w := &tutor.Watch{
		Ends: func(begun time.Time) (time.Time, bool) {
			end, limited := h.hours(s).ends(id, begun, h.o.Clock())
			return end.In(s.zone()), limited
		},
		Shut: func(begun time.Time) bool { return h.hours(s).shutEarly(id, begun, h.o.Clock()) },
		Held: func() string {
			if h.hours(s).at(h.o.Clock()) == resting {
				return "The exam is paused: nothing is taken until it goes on, and your time stands still."
			}
			return ""
		},
		Told: func() bool { return h.hours(s).done(h.o.Clock()) },
	}
	if mine != nil {
		w.Changed = mine.changed
	}
	return w
}

// examEntry is how an exam stands in the list of a learner: what is said of it, and how it is opened where it can be.
func (h exams) examEntry(s *set, id string, mine *seat) (says string, exam *screen.ExamEntry) {
	at, _, err := h.stageOf(s, id)
	if err != nil {
		return "It cannot be read now: try again in a minute.", nil
	}
	now := h.o.Clock()
	w := h.hours(s)
	exam = &screen.ExamEntry{Sit: func() (*tutor.Sitting, error) { return h.sit(s, id, mine, h.complain(id)) }}
	switch {
	case at == writing:
		exam.Says = "Enter goes on."
		return "You are in the middle of it.", exam
	case at == handedIn && w.done(now):
		exam.Says = "Enter shows your paper with its marks."
		return "You have handed it in.", exam
	case at == handedIn:
		exam.Says = "Enter shows when."
		return "You have handed it in. The marks are told once the time of everybody is over.", exam
	case w.at(now) != running:
		return "", nil
	}
	exam.Says, exam.Asks = "Enter begins it, once you have confirmed.", "begins the exam; its clock then runs until the end."
	if end, limited := w.ends(id, now, now); limited {
		exam.Asks = fmt.Sprintf("begins the exam: you have %s, until %s.", wording.Counted(int((end.Sub(now)+time.Minute-1)/time.Minute), "minute"), s.moment(end))
	}
	return "", exam
}

// complain tells what of an exam cannot be kept.
func (h exams) complain(id string) func(error) {
	return func(err error) { h.o.Log.Error("an exam cannot be kept", "id", id, "error", err.Error()) }
}

// timeWord says how much time of a learner's exam is left.
func (h exams) timeWord(id string) string {
	s, err := h.writes(id)
	if err != nil {
		return "The time cannot be read now: try again in a minute."
	}
	now := h.o.Clock()
	if s == nil {
		return "You are in no exam. It is " + moment(now.In(time.Local)) + "."
	}
	_, begun, _ := h.stageOf(s, id)
	end, limited := h.hours(s).ends(id, begun, now)
	if !limited {
		return s.Title + " has no limit of time."
	}
	says := fmt.Sprintf("%s: %s left, until %s.", s.Title, wording.Counted(int((end.Sub(now)+time.Minute-1)/time.Minute), "minute"), s.moment(end))
	if h.hours(s).at(now) == resting {
		says += " It is paused, and your time stands still."
	}
	return says
}

// examNamed is the exam of an id among those of the class, or nil.
func (h exams) examNamed(id string) *set {
	i := slices.IndexFunc(h.sets, func(s *set) bool { return s.ID == id && s.exam() })
	if i < 0 {
		return nil
	}
	return h.sets[i]
}

// heardOrder tells those who write an exam what was ordered about it, here or at another host. That it was closed is told by the paper itself.
func (h exams) heardOrder(o order) {
	says, to := "", o.Set
	switch o.Do {
	case openSet:
		if i := slices.IndexFunc(h.sets, func(s *set) bool { return s.ID == o.Set }); i >= 0 {
			says, to = h.sets[i].Title+" is open.", ""
		}
	case pauseSet:
		says = "The exam is paused by your instructor: nothing is taken until it goes on, and your time stands still."
	case goOn:
		says = "The exam goes on; you have the time of the pause back."
	case giveBack:
		says = fmt.Sprintf("Your instructor gives %s %s more.", map[bool]string{true: "everybody", false: "you"}[o.Who == ""], wording.Counted(o.Minutes, "minute"))
	case setExtra:
		says = fmt.Sprintf("Your instructor gives you %d per cent more time in all.", o.Percent)
	}
	h.seats.ordered(to, o.Who, says)
}
