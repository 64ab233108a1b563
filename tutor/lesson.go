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
	// Heed, if set, is told of everything the student does; a store keeps it.
	Heed func(Event)
	// Clock, if set, tells the time at which a line was typed, so that guessing in haste is noticed.
	Clock func() time.Time

	about  *matter
	sheet  *sheet
	route  *route  // at the levels plan and blank, else nil
	again  bool    // it brings back something that was told in another lesson
	keeper *keeper // how what is done is kept, or nil
	past   past    // what was done in earlier work
	done   map[task]bool
	before map[record.Kind]record.Count // how steps on other frames came out in earlier work
	notes  []string                     // said at the start
	marked *exam                        // of an exam that is over
	lets   []let                        // senses that were assumed
	sure   bool                         // to hand in an exam was asked for just now
	traced []string                     // the slips that lead to the line in hand

	sitting *Sitting // whose paper it is part of, or nil
	task    int      // its place there

	replaying bool     // earlier work is taken up
	excerpt   bool     // it asks for one step or one member of a problem
	worked    *example // it begins with; nil for most
}

// An answer is how far a student is with one question.
type answer struct {
	typed    string    // as accepted, or in an exam as last typed
	value    exact.Num // accepted
	accepted bool
	told     bool
	along    bool            // settled by a function typed for the stretch before
	verdict  judging.Verdict // of the value that stands
	tries    int             // values judged
	hints    int             // hints seen
	examples int             // examples seen
	first    bool            // right at the first try, without help
	slips    []string        // that led to the wrong values here, by ID
	missed   []wrongLine     // what was judged and not right
	says     string          // in an exam what there is to say at its end of a sum or its equation
	wrong    []time.Time     // when wrong values were typed just now, as far as a clock tells
}

// mended reports whether it was right at once, or after one mistake that is known, and without help: then all else was right already.
func (a answer) mended() bool {
	return a.unaided() && (a.first || a.tries == 2 && len(a.slips) > 0)
}

// lastMissed is the line that was judged last and not right.
func (a answer) lastMissed() string {
	if len(a.missed) == 0 {
		return ""
	}
	return a.missed[len(a.missed)-1].line
}

// A wrongLine is a line that was not right, with the slips that lead to it, by ID.
type wrongLine struct {
	line  string
	slips []string
}

// unaided reports whether no help was asked for.
func (a answer) unaided() bool { return a.hints == 0 && a.examples == 0 && !a.told }

// An Event is one thing a student did at a question.
type Event struct {
	Number   int    // of the question, from zero
	Question string // its name
	Key      string // its name where that stands for itself in the lesson, else with the step and sum before it
	Typed    string // what was typed: a value or a command
	Outcome  record.Outcome
	Slips    []string    // that lead to what was typed, by ID; more than one where they cannot be told apart
	Kind     record.Kind // of a step that is settled whole; such an event is of no question
	From     string      // where earlier work was taken up, the run it was done in
	Skills   []string    // of a step that is settled whole: what it asks for
	Missed   []string    // of these, what its mistakes show to be wanting; none where they do not tell

	Right []string       // of these, what was right though the step was not
	Along []record.Place // of a member: the places at which something was asked
}

// New begins a lesson. The error says why a frame is not fit for one: it is not determinate.
func New(p *problems.Problem, level Level, exam bool) (*Lesson, error) {
	return newAsking(p, level, exam, nil)
}

// newAsking is New of a lesson that asks for some answers only, and for what leads to them; none stand for all. In an exam two-force
// members are parts like all others, as they are where papers are marked.
func newAsking(p *problems.Problem, level Level, exam bool, asked []problems.Item) (*Lesson, error) {
	c, notes := p.Conventions, []string(nil)
	if exam && c.TwoForce != notation.TwoForcePlain {
		c.TwoForce = notation.TwoForcePlain
		p, notes = p.In(c), []string{"Two-force members are parts like all others in an exam, though the problem or you ask to use them at once."}
	}
	s, err := solved(p)
	if err != nil {
		return nil, err
	}
	if v := s.Count.Determinacy(); v != statics.Determinate {
		return nil, fmt.Errorf("%s is %s, so its forces cannot all be found from equilibrium", p.Title, v)
	}
	l := newLesson(&matter{problem: p, solution: s, levels: ladder{level: level}, asked: asked}, exam)
	l.notes = notes
	switch {
	case exam && level == Gradual:
		return nil, fmt.Errorf("an exam is taken at the level values, terms, plan or blank")
	case level == Gradual:
		l.about.fade(nil)
	case level >= Plan:
		l.ownRoute()
		return l, nil
	}
	l.sheet.ask(l.about.script().all()...)
	return l, nil
}

// newLesson is a lesson that asks nothing yet.
func newLesson(about *matter, exam bool) *Lesson {
	return &Lesson{about: about, sheet: &sheet{about: about, exam: exam}, done: map[task]bool{}}
}

// What the lesson's concepts need of it, each for itself.
func (l *Lesson) coach() coach { return coach{l.about, l.sheet, l.route} }
func (l *Lesson) bench() bench { return bench{l.about, l.sheet} }
func (l *Lesson) teller() teller {
	return teller{about: l.about, again: l.again, open: l.Open(), exam: l.sheet.exam}
}

// Now is the question in hand; false at the end of the lesson.
func (l *Lesson) Now() (Question, bool) {
	if l.sheet.at >= len(l.sheet.questions) {
		return Question{}, false
	}
	return l.sheet.questions[l.sheet.at], true
}

// Position is the number of the question in hand, from zero, and how many there are.
func (l *Lesson) Position() (at, of int) {
	at, of = l.sheet.at, len(l.sheet.questions)
	if l.excerpt || l.again {
		for _, q := range l.sheet.questions {
			if q.Kind == Reading {
				at, of = at-1, of-1
			}
		}
	}
	return at, of
}

// A ReplyKind says what became of a line.
type ReplyKind int

// The kinds of reply.
const (
	Judged    ReplyKind = iota // a value was judged; Verdict tells how
	Noted                      // a value was taken down without a verdict, as in an exam
	Unread                     // the line could not be read as an answer; it does not count as a try
	Hinted                     // a hint
	Told                       // the value was told, and the lesson moved on
	WentBack                   // the question before is in hand again
	Listed                     // the sheet, or help
	Worked                     // an example, worked whole
	ReadOn                     // a worked step was read
	Resumed                    // earlier work was taken up
	Leaving                    // the student wants to stop
	Restarted                  // the lesson begins anew
	Renewing                   // the same frame is wanted with other numbers
	HandedIn                   // an exam is handed in
	ToList                     // the student wants the list of problems of the paper
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
	for _, refuses := range []func(*Lesson, string) (Reply, bool){late, held} {
		if r, refused := refuses(l, line); refused {
			return r
		}
	}
	if strings.ToLower(strings.TrimSpace(line)) != handInCommand {
		unsure(l)
	}
	r := l.take(line)
	r.Slips = l.traced
	l.slowDown(&r)
	l.extend()
	return r
}

// take is Type without what may have to be asked next.
func (l *Lesson) take(line string) Reply {
	if r, taken := l.about.aside.take(l, line); taken {
		return r
	}
	q, asking := l.Now()
	word := strings.ToLower(strings.TrimSpace(line))
	if slices.Contains([]string{"?", "? help", "help me", "help?"}, word) {
		word = "help"
	}
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
			l.lets = append(l.lets, let{l.sheet.at, strings.TrimSpace(line)})
			l.heed(q, line, record.Let)
		}
		return r
	}
	switch {
	case !asking:
		return Reply{Kind: Unread, Lines: []string{"All is done; type sheet to see the values, or quit."}}
	case q.Kind == Reading:
		l.sheet.at++
		return Reply{Kind: ReadOn}
	case q.Kind == CheckSum && word != "":
		return noteCheck(l, line)
	case q.Composing() && word != "":
		return l.compose(q, line)
	case q.Composing():
		return Reply{Kind: Unread, Lines: []string{"Type " + map[Kind]string{ChooseSum: "a free body and a sum of it", TypeSum: "the equation"}[q.Kind] + ", or help."}}
	case word == "" && l.sheet.exam && l.sheet.inHand().tries > 0:
		said := "stands: " + l.sheet.inHand().typed
		l.sheet.goOn()
		return Reply{Kind: Noted, Lines: []string{said}}
	case word == "" && q.Kind == CheckSum:
		return Reply{Kind: Unread, Lines: []string{checkForm(l.about)}}
	case word == "" && (q.Shape() || q.Kind == TermSign):
		return Reply{Kind: Unread, Lines: []string{"Type an answer, or help."}}
	case word == "":
		return Reply{Kind: Unread, Lines: []string{"Type a value for " + q.Name + ", or help."}}
	}
	for _, more := range []func(*Lesson, Question, string) (Reply, bool){takeWhole, takeFunction} {
		if r, taken := more(l, q, line); taken {
			return r
		}
	}
	return l.value(q, line)
}

// losses are what people type who do not know how to go on.
var losses = []string{"n't know", "dont know", "not know", "not sure", "no idea", "idk", "no clue", "stuck", "how do i", "?"}

// atALoss reports whether a line that is no answer says that its writer does not know how to go on.
func atALoss(line string) bool {
	line = strings.ToLower(line)
	return slices.ContainsFunc(losses, func(s string) bool { return strings.Contains(line, s) })
}

// unreadLine is unread of a line whose writer may not know how to go on.
func unreadLine(line string, err error, exam bool) Reply {
	switch {
	case !atALoss(line):
		return unread(err)
	case exam:
		return Reply{Kind: Unread, Lines: []string{"Type help to see what can be typed, or tell to leave this open and go on."}}
	}
	return Reply{Kind: Unread, Lines: []string{"Type hint for a hint, or tell to be shown what is asked for."}}
}

// value reads and judges a value for the question in hand.
func (l *Lesson) value(q Question, line string) Reply {
	v, err := l.bench().read(q, line)
	if err != nil {
		return unreadLine(line, err, l.sheet.exam)
	}
	l.sheet.inHand().tries++
	c := l.bench().caseOf(q)
	r := ruling{verdict: c.Verdict(v), value: v.Value}
	if !l.sheet.exam {
		fb := feedback{about: l.about, sheet: l.sheet}
		r.says = fb.says(q, c, r.verdict, v)
		r.slips = fb.slips
	}
	return l.settle(line, r)
}

// A ruling is what a typed answer comes to.
type ruling struct {
	verdict judging.Verdict
	says    string
	slips   []string  // that lead to it, by ID
	value   exact.Num // where it is one
}

// settle enters a ruling on the sheet, tells of it, and goes on where the answer stands; in an exam it is only noted.
func (l *Lesson) settle(line string, r ruling) Reply {
	q, _ := l.Now()
	l.sheet.enter(line, r)
	l.traced = r.slips
	outcome, reply := outcomeOf(r, l.sheet.exam), Reply{Kind: Judged, Verdict: r.verdict, Lines: []string{r.verdict.String() + ": " + r.says}}
	if l.sheet.exam {
		reply = Reply{Kind: Noted, Lines: []string{"noted"}}
	}
	l.heed(q, line, outcome)
	if r.verdict.Right() || l.sheet.exam {
		l.sheet.goOn()
		l.finish(q)
		if l.about.aside.turn(l, q) && r.verdict.Exactly() { // what is said of a right value is the reason
			reply.Lines = []string{r.verdict.String() + ": one more question before you go on."}
		}
	}
	return reply
}

// heed tells of what was done at a question.
func (l *Lesson) heed(q Question, typed string, outcome record.Outcome) {
	if l.Heed == nil {
		return
	}
	e := Event{Number: l.sheet.at, Question: q.Name, Key: q.key(), Typed: strings.TrimSpace(typed), Outcome: outcome, Slips: l.traced}
	if l.sheet.exam { // what is kept tells nothing before the end
		e.Slips = nil
	}
	if outcome == record.Resumed {
		e.From = l.past.latest()
	}
	l.Heed(e)
}
