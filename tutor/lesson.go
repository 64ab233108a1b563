package tutor

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/tutor/record"
)

// A Lesson carries a student through one problem. It is not safe for use by several goroutines at once.
type Lesson struct {
	Problem   *problems.Problem
	Solution  *statics.Solution
	Rung      Rung
	Exam      bool // no verdict and no help until the end
	Questions []Question
	// Heed, if set, is told of everything the student does; a store keeps it.
	Heed func(Event)
	// Clock, if set, tells the time at which a line was typed, so that guessing in haste is noticed.
	Clock func() time.Time

	route   *route  // at the rungs order and blank
	rungs   ladder  // where each step and each member has its own rung
	again   bool    // it brings back something that was told in another lesson
	keeper  *keeper // how what is done is kept, or nil
	past    past    // what was done in earlier work
	done    map[task]bool
	at      int
	answers []answer // of each question
	notes   []string // said at the start
	signs   bool     // sums are written with the signs of the trade, not in ASCII
	traced  []string // the slips that lead to the line in hand
}

// An answer is how far a student is with one question.
type answer struct {
	typed    string    // as accepted, or in an exam as last typed
	value    exact.Num // accepted
	accepted bool
	told     bool
	verdict  judging.Verdict // of the value that stands
	tries    int             // values judged
	hints    int             // hints seen
	examples int             // examples seen
	first    bool            // right at the first try, without help
	slips    []string        // that led to the wrong values here, by ID
	wrong    []time.Time     // when wrong values were typed just now, as far as a clock tells
}

// unaided reports whether no help was asked for.
func (a answer) unaided() bool { return a.hints == 0 && a.examples == 0 && !a.told }

// An Event is one thing a student did at a question.
type Event struct {
	Number   int    // of the question, from nought
	Question string // its name
	Key      string // its name where that stands for itself in the lesson, else with the step and sum before it
	Typed    string // what was typed: a value or a command
	Outcome  record.Outcome
	Slips    []string    // that lead to what was typed, by ID; more than one where they cannot be told apart
	Kind     record.Kind // of a step that is settled whole; such an event is of no question
	From     string      // where earlier work was taken up, the run it was done in
}

// New begins a lesson. The error says why a frame is not fit for one: it is not determinate.
func New(p *problems.Problem, rung Rung, exam bool) (*Lesson, error) {
	s, err := statics.Solve(p.Frame)
	if err != nil {
		return nil, err
	}
	if v := s.Count.Determinacy(); v != statics.Determinate {
		return nil, fmt.Errorf("%s is %s, so its forces cannot all be found from equilibrium", p.Title, v)
	}
	l := &Lesson{Problem: p, Solution: s, Rung: rung, Exam: exam, done: map[task]bool{}}
	switch {
	case exam && rung >= Order:
		return nil, fmt.Errorf("an exam is taken at the rung values or terms")
	case rung == Fading:
		l.fade(nil)
	case rung >= Order:
		l.ownRoute()
		return l, nil
	}
	l.ask(l.script()...)
	return l, nil
}

// Now is the question in hand; false at the end of the lesson.
func (l *Lesson) Now() (Question, bool) {
	if l.at >= len(l.Questions) {
		return Question{}, false
	}
	return l.Questions[l.at], true
}

// Position is the number of the question in hand, from nought, and how many there are.
func (l *Lesson) Position() (at, of int) { return l.at, len(l.Questions) }

// A ReplyKind says what became of a line.
type ReplyKind int

// The kinds of reply.
const (
	Judged   ReplyKind = iota // a value was judged; Verdict tells how
	Noted                     // a value was taken down without a verdict, as in an exam
	Unread                    // the line could not be read as an answer; it does not count as a try
	Hinted                    // a hint
	Told                      // the value was told, and the lesson moved on
	WentBack                  // the question before is in hand again
	Listed                    // the sheet, or help
	Worked                    // an example, worked whole
	ReadOn                    // a worked step was read
	Resumed                   // earlier work was taken up
	Leaving                   // the student wants to stop
)

// A Reply is what a line brings: lines of text for the student, the first of them the verdict if there is one.
type Reply struct {
	Kind    ReplyKind
	Verdict judging.Verdict // of a Judged reply
	Slips   []string        // that lead to what was typed, by ID; two that only together do, as "one+other"
	Lines   []string
	Pause   time.Duration // how long a screen takes no answer, so that the reply is read
}

// Type takes one line: a command or an answer to the question in hand.
func (l *Lesson) Type(line string) Reply {
	l.traced = nil
	r := l.take(line)
	r.Slips = l.traced
	l.slowDown(&r)
	l.extend()
	return r
}

// take is Type without what may have to be asked next.
func (l *Lesson) take(line string) Reply {
	q, asking := l.Now()
	word := strings.ToLower(strings.TrimSpace(line))
	for _, c := range commands {
		if c.word == word {
			if c.outcome != "" {
				l.heed(q, word, c.outcome)
			}
			return c.do(l, q, asking)
		}
	}
	if words := strings.Fields(line); len(words) > 0 && strings.EqualFold(words[0], "let") {
		r := l.assume(words[1:])
		if r.Kind == Listed {
			l.heed(q, line, record.Let)
		}
		return r
	}
	switch {
	case !asking:
		return Reply{Kind: Unread, Lines: []string{"All is done; type sheet to see the values, or quit."}}
	case q.Kind == Reading:
		l.at++
		return Reply{Kind: ReadOn}
	case q.Kind == ChooseSum && word != "":
		return l.choose(line)
	case q.Kind == TypeSum && word != "":
		return l.write(line)
	case word == "":
		return Reply{Kind: Unread, Lines: []string{"Type a value for " + q.Name + ", or help."}}
	}
	return l.value(q, line)
}

// value reads and judges a value for the question in hand, and moves on if it is right.
func (l *Lesson) value(q Question, line string) Reply {
	v, err := l.read(q, line)
	if err != nil {
		return unread(err)
	}
	c := l.caseOf(q)
	verdict := c.Verdict(v)
	a := &l.answers[l.at]
	a.tries++
	if verdict.Right() || l.Exam {
		a.typed, a.value, a.verdict = strings.TrimSpace(line), v.Value, verdict
		a.accepted = verdict.Right()
		a.first = a.tries == 1 && a.unaided()
	}
	if l.Exam {
		l.heed(q, line, record.Noted)
		l.at++
		return Reply{Kind: Noted, Lines: []string{"noted"}}
	}
	r := Reply{Kind: Judged, Verdict: verdict, Lines: []string{verdict.String() + ": " + l.feedback(q, c, verdict, v)}}
	a.slips = append(a.slips, l.traced...)
	l.heed(q, line, record.Outcome(verdict.Code()))
	if verdict.Right() {
		l.at++
		l.finish(q)
	}
	return r
}

// heed tells of what was done at a question.
func (l *Lesson) heed(q Question, typed string, outcome record.Outcome) {
	if l.Heed == nil {
		return
	}
	e := Event{Number: l.at, Question: q.Name, Key: q.key(), Typed: strings.TrimSpace(typed), Outcome: outcome, Slips: l.traced}
	if outcome == record.Resumed {
		e.From = l.past.latest()
	}
	l.Heed(e)
}

// Known is the value of force i on the student's sheet: the exact one, once the student has found it or been told. The
// sums of a worked step to read are all known.
func (l *Lesson) Known(i int) (exact.Num, bool) {
	for n, q := range l.Questions {
		switch a := l.answers[n]; {
		case q.Kind == ForceValue && q.Force == i && !l.Exam && (a.accepted || a.told):
			return l.Solution.Values[i], true
		case q.Kind == Reading && n < l.at && q.Step != statics.None && slices.Contains(l.Solution.Plan[q.Step].Gives, i):
			return l.Solution.Values[i], true
		}
	}
	return exact.Num{}, false
}

// Standing is how question n stands: what was typed for it, whether it is settled, and how.
func (l *Lesson) Standing(n int) (typed string, settled bool, told bool, v judging.Verdict) {
	a := l.answers[n]
	return a.typed, a.accepted || a.told || l.Exam && a.tries > 0, a.told, a.verdict
}

// Score is how many questions were right at the first try without help, of those that ask for a value.
func (l *Lesson) Score() (first, of int) {
	for i, q := range l.Questions {
		if q.Kind != Reading {
			of++
		}
		if a := l.answers[i]; a.first && a.accepted && !a.told {
			first++
		}
	}
	return first, of
}

// style is how the problem wants its sums and numbers written.
func (l *Lesson) style() notation.Style {
	st := l.Problem.Style(!l.signs)
	st.Figures++
	return st
}

func (l *Lesson) clockwise() bool { return l.Problem.Conventions.Moments == notation.ClockwiseMoments }
