package host

import (
	"cmp"
	"encoding/json"
	"maps"
	"slices"
	"sync"
	"time"

	"unpin/tutor/record"
)

// activity is what the learners of this host do now, drawn from what they add to their records.
type activity struct {
	mutex    sync.Mutex
	learners map[string]*doing
	own      map[string]time.Time // runs that began here, with when; what is read of them later was seen before
	slips    []slipped            // the latest, see lately
	tries    []stepCount
}

// A stepCount is how often a question of a problem was settled, and came right at the first try.
type stepCount struct {
	problem, question string
	record.Count
}

// doing is what one learner does.
type doing struct {
	id       string
	problem  string
	frame    string
	run      string
	set      string // that it is an exam of, or empty
	level    string
	exam     bool
	question string
	settled  bool      // that question is
	since    time.Time // when the question before was settled, or the lesson was opened
	last     time.Time // of anything
	wrong    int       // tries at the question in hand that were not right
	helped   int       // hints and answers that were asked for, in this run
	first    record.Count
	slip     string        // recognised last in this run
	lately   record.Record // what was typed last, and judged
}

// slipped is a mistake that was recognised.
type slipped struct {
	at   time.Time
	slip string
}

// lately is how long a mistake counts for the moment.
const lately = 15 * time.Minute

// saw takes what a learner has added here, in the exam over a set or, with an empty one, in practice.
func (a *activity) saw(id, set string, r record.Record) {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	if _, known := a.own[r.Run]; !known {
		a.own[r.Run] = r.At
		maps.DeleteFunc(a.own, func(_ string, at time.Time) bool { return r.At.Sub(at) > longest })
	}
	a.takes(id, set, r)
}

// heard takes what a learner has added anywhere.
func (a *activity) heard(id, set string, r record.Record) {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	if _, known := a.own[r.Run]; !known {
		a.takes(id, set, r)
	}
}

// takes takes what a learner has added; the mutex is held.
func (a *activity) takes(id, set string, r record.Record) {
	d := a.learners[id]
	if d == nil || d.run != r.Run {
		d = &doing{id: id, set: set, problem: r.Problem, frame: r.Frame, run: r.Run, level: r.Level, exam: r.Exam, since: r.At}
		a.learners[id] = d
	}
	d.last = r.At
	if r.Kind != "" {
		return
	}
	if r.Outcome.Try() || r.Outcome == record.Told {
		d.lately = r
	}
	if r.Question != d.question {
		d.question, d.wrong = r.Question, 0
	}
	settles, right := d.take(r)
	if d.settled = settles; settles && !d.exam {
		a.count(r, right)
	}
	if len(r.Slips) == 1 {
		d.slip = r.Slips[0]
		a.slips = append(a.slips, slipped{r.At, r.Slips[0]})
	}
	a.slips = slices.DeleteFunc(a.slips, func(s slipped) bool { return r.At.Sub(s.at) > lately })
}

// count counts a question that was settled.
func (a *activity) count(r record.Record, right bool) {
	i := slices.IndexFunc(a.tries, func(s stepCount) bool { return s.problem == r.Problem && s.question == r.Question })
	if i < 0 {
		i = len(a.tries)
		a.tries = append(a.tries, stepCount{problem: r.Problem, question: r.Question})
	}
	a.tries[i].Of++
	if right {
		a.tries[i].Right++
	}
}

// steps lists the questions that were settled, by problems, those of one in the order in which they were first settled.
func (a *activity) steps() []stepCount {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	list := slices.Clone(a.tries)
	slices.SortStableFunc(list, func(x, y stepCount) int { return cmp.Compare(x.problem, y.problem) })
	return list
}

// of is what a learner does now; false where that is nothing yet.
func (a *activity) of(id string) (doing, bool) {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	if d := a.learners[id]; d != nil {
		return *d, true
	}
	return doing{}, false
}

// take counts one event of the run in hand, and reports whether it settles a question, and that at the first try.
func (d *doing) take(r record.Record) (settles, right bool) {
	switch {
	case r.Outcome.Try() && !r.Outcome.Right() && r.Outcome != record.Noted:
		d.wrong++
	case r.Outcome == record.Hinted, r.Outcome == record.Told, r.Outcome == record.Example:
		d.helped++
	}
	if !r.Outcome.Settles() && !r.Outcome.Notes() {
		return false, false
	}
	d.first.Of++
	if right = r.Outcome.Right() && d.wrong == 0; right {
		d.first.Right++
	}
	d.since, d.wrong = r.At, 0
	return true, right
}

// all lists what everybody does: who is stuck first, by wrong tries, then by how long the question is in hand.
func (a *activity) all() []doing {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	var list []doing
	for _, d := range a.learners {
		list = append(list, *d)
	}
	slices.SortFunc(list, func(x, y doing) int {
		return cmp.Or(y.wrong-x.wrong, x.since.Compare(y.since), cmp.Compare(x.id, y.id))
	})
	return list
}

// frequent lists the mistakes of the moment, the most frequent first.
func (a *activity) frequent(now time.Time) []record.Mistake {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	var all []record.Record
	for _, s := range a.slips {
		if now.Sub(s.at) <= lately {
			all = append(all, record.Record{At: s.at, Slips: []string{s.slip}})
		}
	}
	return record.Mistakes(all)
}

// watched is a learner's log that tells of what is added.
type watched struct {
	record.Log
	id   string
	set  string // that it is an exam of, or empty
	told func(id, set string, r record.Record)
	took func(time.Duration)
}

// Append adds a line, then tells of it.
func (w watched) Append(line []byte) error {
	begun := time.Now()
	if err := w.Log.Append(line); err != nil {
		return err
	}
	w.took(time.Since(begun))
	var r record.Record
	if json.Unmarshal(line, &r) == nil {
		w.told(w.id, w.set, r)
	}
	return nil
}

// forget removes what is known of a learner's practice.
func (a *activity) forget(id string) {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	if d := a.learners[id]; d != nil && d.set == "" {
		delete(a.learners, id)
	}
}
