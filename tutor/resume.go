package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/tutor/record"
)

// A past is what was done earlier on the problem of a lesson, in the order of the file.
type past struct {
	events []record.Record
	open   bool // the questions follow from what was chosen, so that only their numbers tell them apart
	exam   bool // answers were noted, and the last one stands
}

// recall finds what was done earlier on the problem at the same level, in an exam or not: of exams only one that was left
// before its end.
func (l *Lesson) recall(all []record.Record) {
	frames := record.Fingerprints(l.about.problem)
	l.before = record.Skills(all, frames)
	if l.about.levels.level == Gradual {
		l.about.fade(record.Earned(all, frames))
		l.askGradually()
	}
	work := record.WorkOn(all, frames, l.about.levels.base().code(), l.sheet.exam)
	l.past = past{open: l.Open(), exam: l.sheet.exam}
	switch {
	case l.past.exam:
		l.past.events = work.Unfinished(func(events []record.Record) bool { return examEnds(l, events) })
	case l.past.open:
		l.past.events = work.Furthest()
	default:
		l.past.events = work.Together()
	}
}

// examEnds reports whether some events are of an exam worked to its end: all its questions are answered or left open; where
// these follow from what was chosen, the last along the members, or else the value of each force and the check.
func examEnds(l *Lesson, events []record.Record) bool {
	if !l.past.open {
		return record.Answered(events) >= len(l.sheet.questions)
	}
	noted := func(name string) bool {
		return slices.ContainsFunc(events, func(r record.Record) bool { return r.Question == name && r.Outcome.Notes() })
	}
	if along := l.about.script().sections(); len(along) > 0 {
		return noted(along[len(along)-1].Name)
	}
	return noted(checkName) && !slices.ContainsFunc(l.about.solution.Forces, func(f statics.Force) bool { return !noted(f.Name) })
}

// askGradually asks, at the level gradual, for what is earned by now. Where that is the plan itself, the work is kept as
// that of the level plan or blank, which it is.
func (l *Lesson) askGradually() {
	l.sheet.questions, l.sheet.answers = nil, nil
	if l.about.levels.earned != Read {
		l.ownRoute()
		return
	}
	l.sheet.ask(l.about.script().all()...)
}

// of lists what was done at question n.
func (p past) of(n int, q Question) []record.Record {
	var all []record.Record
	for _, r := range p.events {
		switch {
		case r.Kind != "": // of a step
		case !p.open && r.Key == q.key(), (p.open || r.Key == "") && r.Number == n && r.Question == q.Name:
			all = append(all, r)
		}
	}
	return all
}

// settling is the event that settles a question, or -1. The first does, since what comes after it was typed once more; but
// a choice that was taken back is not what the lesson went on from, and in an exam the last answer stands.
func (p past) settling(events []record.Record) int {
	found := -1
	for i, r := range events {
		if r.Outcome.Settles() && (found < 0 || p.open) || p.exam && r.Outcome.Notes() {
			found = i
		}
	}
	return found
}

// latest is the run in which something was done last.
func (p past) latest() string {
	if len(p.events) == 0 {
		return ""
	}
	return p.events[len(p.events)-1].Run
}

// Earlier is how many questions from the first on were settled in earlier work that can be taken up again.
func (l *Lesson) Earlier() int {
	if l.past.open {
		return l.past.numbered()
	}
	settled := 0
	for n, q := range l.sheet.questions {
		switch {
		case l.past.settling(l.past.of(n, q)) >= 0:
			settled = n + 1
		case q.Kind != Reading:
			return settled
		}
	}
	return settled
}

// numbered is how many questions from the first on are settled, by their numbers.
func (p past) numbered() int {
	settled := map[int]bool{}
	for _, r := range p.events {
		settled[r.Number] = settled[r.Number] || r.Outcome.Settles() || p.exam && r.Outcome.Notes()
	}
	n := 0
	for settled[n] {
		n++
	}
	return n
}

// Resume takes up earlier work: what was settled then is answered again, through the same judging, so that it never shows
// a value as right that is not; what was tried and asked for at each question counts as it did. It does nothing once
// something was answered.
func (l *Lesson) Resume() {
	if l.sheet.begun() {
		return
	}
	heed, clock := l.Heed, l.Clock
	l.Heed, l.Clock, l.replaying = nil, nil, true // it is kept already
	for n := l.Earlier(); ; {
		q, asking := l.Now()
		switch {
		case asking && q.Kind == Reading && l.sheet.at < n:
			l.Type("")
			continue
		case asking && l.restore(q, l.past.of(l.sheet.at, q)):
			continue
		}
		break
	}
	l.Heed, l.Clock, l.replaying = heed, clock, false
}

// restore does at the question in hand what was done there in earlier work, and reports whether that settles it.
func (l *Lesson) restore(q Question, events []record.Record) bool {
	settles := l.past.settling(events)
	for i, r := range events {
		a := l.sheet.inHand()
		switch {
		case i == settles:
			before := l.sheet.at
			l.Type(retyped(q, r))
			return l.sheet.at > before // or what was right then is not now
		case r.Outcome.Try():
			a.tries++
			a.slips = append(a.slips, r.Slips...)
			if !r.Outcome.Right() {
				a.missed = append(a.missed, wrongLine{r.Typed, r.Slips})
			}
		case r.Outcome == record.Hinted:
			a.hints++
		case r.Outcome == record.Example:
			a.examples++
		case r.Outcome == record.Let:
			l.Type(r.Typed)
		}
	}
	return false
}

// retyped is what is typed to settle a question as it was. The equation that followed a choice in one line is kept at the
// question after it.
func retyped(q Question, r record.Record) string {
	if r.Outcome == record.Told {
		return "tell"
	}
	if q.Kind == ChooseSum && strings.Contains(r.Typed, "=") {
		return chosenBy(r.Typed)
	}
	return r.Typed
}
