package tutor

import (
	"crypto/rand"
	"errors"
	"fmt"
	"slices"
	"time"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/tutor/record"
)

// Rules say how one student sits an exam over a set.
type Rules struct {
	ID, Title string
	Tasks     []problems.Task  // of the paper, in the student's own numbers where there are copies
	Level     Level            // values, terms, plan or blank
	Scheme    *problems.Scheme // nil for the usual one
	Opens     time.Time        // zero where it is always open, like Closes
	Closes    time.Time
	Lasts     time.Duration // from the start of each student; zero for no bound
	Extra     int           // per cent more time for this student
	Marks     time.Time     // until then a paper that was handed in shows no marks; zero for at once
	Student   string        // on the paper, where a class is marked; or empty
	Codes     []string      // of the student's copies, by tasks, where there are any
	Watch     *Watch        // settles the times while the exam is sat; nil where the rules do
	Practice  bool          // on the student's own computer: open after its end too, and again after it was handed in
}

// RulesOf are the rules that a set gives, for a student without extra time. The level is that of the set, or plan.
func RulesOf(set *problems.Set) (Rules, error) {
	r := Rules{ID: set.ID, Title: set.Title, Tasks: set.Tasks, Level: Plan, Opens: set.Opens, Closes: set.Closes, Lasts: time.Duration(set.Minutes) * time.Minute}
	if set.Level == "" || set.Level == Gradual.String() {
		return r, nil
	}
	var err error
	r.Level, err = ParseLevel(set.Level)
	return r, err
}

// A Sitting is one student's exam over a set: one paper, its problems in any order, one clock. What is typed, the start of the clock
// and the end are kept, so that who leaves and comes back goes on with the same paper and the same clock. It is not safe for use by
// several goroutines at once.
type Sitting struct {
	Rules

	lessons  []*Lesson
	store    *record.Store
	clock    func() time.Time
	complain func(error)
	keeper   *keeper
	paper    record.Sitting
	papers   int  // begun by now, this one included
	sure     bool // to hand in was asked for just now
}

// Sit begins the exam of a student, whose store that is, or takes up the one that was left; one whose time is over, or that was
// handed in, is over: see Over. A store of nil keeps nothing. The error says why it cannot be begun now.
func Sit(r Rules, store *record.Store, clock func() time.Time, complain func(error)) (*Sitting, error) {
	if r.Level < Values || r.Level > Blank {
		return nil, errors.New("an exam is taken at the level values, terms, plan or blank")
	}
	s := &Sitting{Rules: r, store: store, clock: clock, complain: complain}
	all, err := s.sittings()
	if err != nil {
		return nil, err
	}
	if s.papers = len(all); s.papers == 0 {
		return s, s.begin()
	}
	s.paper = all[s.papers-1]
	return s, s.open()
}

// sittings lists the papers of this set that were begun.
func (s *Sitting) sittings() ([]record.Sitting, error) {
	all, err := s.records()
	return record.Sittings(all, s.ID), err
}

// records are what is kept of the set, and of frames with these fingerprints.
func (s *Sitting) records(frames ...string) ([]record.Record, error) {
	if s.store == nil {
		return nil, nil
	}
	past, err := s.store.Past()
	if err != nil {
		return nil, err
	}
	return past.Of(append(frames, record.SetFrame(s.ID))...)
}

// begin begins a paper. Where another program has just begun one, it is that.
func (s *Sitting) begin() error {
	now := s.clock()
	switch {
	case now.Before(s.Opens):
		return fmt.Errorf("%s opens at %s", s.ID, moment(s.Opens))
	case !s.Closes.IsZero() && !now.Before(s.Closes) && !s.Practice:
		return fmt.Errorf("%s closed at %s", s.ID, moment(s.Closes))
	}
	s.paper = record.Sitting{Paper: now.UTC().Format(time.RFC3339Nano) + " " + rand.Text()[:8], Level: s.Level.code(), Began: now}
	s.papers++
	s.note(record.Begun, now)
	if all, err := s.sittings(); err == nil && len(all) > 0 && all[len(all)-1].Handed.IsZero() {
		s.paper, s.papers = all[len(all)-1], len(all)
	}
	return s.open()
}

// note keeps that a paper was begun or handed in.
func (s *Sitting) note(what record.Outcome, at time.Time) {
	if s.store == nil {
		return
	}
	r := record.Record{At: at, Run: s.paper.Paper, Paper: s.paper.Paper, Problem: s.ID, Frame: record.SetFrame(s.ID), Level: s.paper.Level, Exam: true, Outcome: what}
	if err := s.store.Add(r); err != nil {
		s.complain(err)
	}
}

// open makes the lessons of the paper, with what was answered in it.
func (s *Sitting) open() error {
	if level, err := ParseLevel(s.paper.Level); err == nil {
		s.Level = level
	}
	s.keeper, s.lessons = nil, nil
	if s.store != nil {
		s.keeper = newKeeper(s.store, s.clock, s.complain)
	}
	for i, t := range s.Tasks {
		l, err := s.lesson(i, t)
		if err != nil {
			return err
		}
		s.lessons = append(s.lessons, l)
	}
	switch {
	case s.Over():
		s.close()
	case s.timeOver():
		s.HandIn()
	}
	return nil
}

// lesson is the lesson of a problem. Two-force members are parts like all others, as they are where papers are marked.
func (s *Sitting) lesson(i int, t problems.Task) (*Lesson, error) {
	c := t.Conventions
	c.TwoForce = notation.TwoForcePlain
	asked, err := t.Solved.Asked(t.Problem.Find)
	if err != nil {
		return nil, err
	}
	l, err := newAsking(t.Problem.In(c), s.Level, true, asked)
	if err != nil {
		return nil, err
	}
	l.sitting, l.task, l.Clock = s, i, s.clock
	l.notes = append(l.notes, findText(t.Problem))
	return l, s.recallIn(l)
}

// recallIn takes up what was answered in a lesson of the paper, and keeps what is done from now on.
func (s *Sitting) recallIn(l *Lesson) error {
	frames := record.Fingerprints(l.about.problem)
	all, err := s.records(frames...)
	if err != nil || s.store == nil {
		return err
	}
	end, _ := s.End()
	work := record.WorkIn(all, frames, s.paper.Paper).Before(end)
	l.before = record.Skills(all, frames)
	l.past = past{events: work.Together(), open: l.Open(), exam: true}
	if l.past.open {
		l.past.events = standingChoices(work.Latest())
	}
	l.keeper = s.keeper
	l.Heed = l.keeper.keep(l)
	if q, asking := l.Now(); asking && l.Earlier() > 0 {
		if !s.Over() && !s.timeOver() {
			l.heed(q, "resume", record.Resumed)
		}
		l.Resume()
	}
	return nil
}

// standingChoices are events without choices of a sum that were taken back.
func standingChoices(events []record.Record) []record.Record {
	var all []record.Record
	for _, r := range events {
		if r.Outcome == record.Back && r.Question == equationName {
			all = slices.DeleteFunc(all, func(choice record.Record) bool { return choice.Number == r.Number-1 })
		}
		all = append(all, r)
	}
	return all
}

// Lesson is the lesson of problem i of the paper. Its word hand in hands in the whole paper, and problems leads back to the list.
func (s *Sitting) Lesson(i int) *Lesson { return s.lessons[i] }

// End is when the time of this student is over: min(start + Lasts, Closes), and Extra per cent of Lasts more; false where there is no end.
func (s *Sitting) End() (time.Time, bool) {
	if s.Watch != nil {
		return s.Watch.Ends(s.paper.Began)
	}
	var end time.Time
	if s.Lasts > 0 {
		end = s.paper.Began.Add(s.Lasts)
	}
	if !s.Closes.IsZero() && s.paper.Began.Before(s.Closes) && (end.IsZero() || s.Closes.Before(end)) {
		end = s.Closes
	}
	return end.Add(s.Lasts * time.Duration(s.Extra) / 100), !end.IsZero()
}

// Left is how much time is left; false where there is no end, or the paper was handed in.
func (s *Sitting) Left() (time.Duration, bool) {
	end, limited := s.End()
	return end.Sub(s.clock()), limited && !s.Over()
}

// timeOver reports whether the time of the paper is over.
func (s *Sitting) timeOver() bool {
	end, limited := s.End()
	return limited && !s.clock().Before(end)
}

// Over reports whether the paper was handed in.
func (s *Sitting) Over() bool { return !s.paper.Handed.IsZero() }

// Anew begins another paper, as practice, after the last one was handed in.
func (s *Sitting) Anew() error {
	if !s.Practice || !s.Over() {
		return errors.New("the paper can be sat once")
	}
	return s.begin()
}

// moment is a time for people, with its zone.
func moment(t time.Time) string { return t.Format("2006-01-02 15:04 -07:00") }
