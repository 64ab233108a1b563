package tutor

import (
	"crypto/rand"
	"errors"
	"time"

	"unpin/tutor/record"
)

// Keep tells a lesson of earlier work on the same problem at the same level, and keeps what is done from now on, even where what was
// done before cannot be read now. What goes wrong is told once to complain, and the lesson goes on without.
func (l *Lesson) Keep(s *record.Store, now func() time.Time, complain func(error)) {
	var earlier []record.Record
	past, err := s.Past()
	if err == nil {
		earlier, err = past.Of(record.Fingerprints(l.about.problem)...)
	}
	switch {
	case err != nil:
		complain(err)
	case past.Passed().String() != "":
		complain(errors.New(past.Passed().String()))
	}
	l.recall(earlier)
	l.keeper = newKeeper(s, now, complain)
	l.keeper.broken = err != nil
	l.Heed = l.keeper.keep(l)
}

// keepAs keeps what is done from now on as another lesson does.
func keepAs(l *Lesson, other *Lesson) {
	l.Clock = other.Clock
	if k := other.keeper; k != nil {
		l.Keep(k.store, k.now, k.complain)
	}
}

// A keeper writes down what is done in one run: in a lesson, and in those that bring back what was told in it.
type keeper struct {
	store    *record.Store
	now      func() time.Time
	complain func(error)
	run      string
	broken   bool // a fault was told
}

// newKeeper keeps a new run.
func newKeeper(s *record.Store, now func() time.Time, complain func(error)) *keeper {
	return &keeper{store: s, now: now, complain: complain, run: now().UTC().Format(time.RFC3339Nano) + " " + rand.Text()[:8]}
}

// keep is what a lesson has to tell of, to be kept.
func (k *keeper) keep(l *Lesson) func(Event) {
	base := record.Record{Run: k.run, Problem: l.about.problem.Name, Frame: record.Fingerprint(l.about.problem), Level: l.about.levels.base().code(), Exam: l.sheet.exam}
	if l.sitting != nil {
		base.Paper = l.sitting.paper.Paper
	}
	return func(e Event) { k.write(base, e) }
}

// write writes down an event of the work that base tells.
func (k *keeper) write(base record.Record, e Event) {
	r := base
	r.At, r.Number, r.Question, r.Key, r.Typed = k.now(), e.Number, e.Question, e.Key, e.Typed
	r.Outcome, r.Slips, r.Kind, r.From, r.Skills, r.Missed, r.Right, r.Along = e.Outcome, e.Slips, e.Kind, e.From, e.Skills, e.Missed, e.Right, e.Along
	if err := k.store.Add(r); err != nil && !k.broken {
		k.broken = true
		k.complain(err)
	}
}
