package screen

import (
	"fmt"
	"slices"
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/statics"
	"unpin/statics/wording"
	"unpin/tutor"
)

// A course is a lesson as it stands on the screen.
type course struct {
	l          *tutor.Lesson
	ascii      bool
	answerLine editor
	reply      tutor.Reply
	greeting   bool            // the reply is that before the first question
	last       string          // what was typed last, where it was not right
	pane       pane            // what is shown where there is room for one
	reading    bool            // a worked step is read, for which the sheet is shown
	given      bool            // the figure is the frame as given
	cramped    bool            // the pane has no room for all parts apart
	large      scene           // the figure on the whole screen
	looked     int             // the step that is looked back at, or statics.None
	up         int             // lines that the sheet is scrolled up from its end
	changes    int             // counts what may change the figure or the sheet
	pause      time.Time       // until then no answer is taken
	again      []*tutor.Lesson // what was told before and comes once more
	ended      bool            // all is asked, and what was told here is among those

	sheet           sheet // as last arranged
	binder          binder
	gallery         gallery
	figure, diagram *picture
	arranged        arrangement // for which figure and diagram were drawn
}

func newCourse(l *tutor.Lesson, ascii bool) *course {
	if !ascii {
		l.UseSigns()
	}
	c := &course{l: l, ascii: ascii, looked: statics.None, changes: 1}
	c.turnPane()
	return c
}

// greet says what stands before the first question of a run.
func (c *course) greet() {
	c.reply = tutor.Reply{Kind: tutor.Listed, Lines: []string{wording.Caution}}
	c.greeting = true
	if c.l.Rung() == tutor.Fading {
		c.reply.Lines = []string{tutor.FadingRule, wording.Caution}
	}
	if n := c.l.Earlier(); n > 0 {
		c.reply.Lines = []string{fmt.Sprintf("%d of %d settled earlier; type resume to go on there.", n, len(c.l.Asked())), wording.Caution}
	}
}

// take shows what a line brought.
func (c *course) take(r tutor.Reply) {
	if !c.asBefore(r) {
		c.changes++
	}
	c.reply, c.last, c.greeting = r, "", false
	c.looked, c.given, c.up = statics.None, false, 0
	c.turnPane()
}

// asBefore reports whether figure and sheet are sure to stay as they are after a reply.
func (c *course) asBefore(r tutor.Reply) bool {
	q, asking := c.l.Now()
	wrong := r.Kind == tutor.Judged && !r.Verdict.Right() && asking && !q.Composing()
	return c.looked == statics.None && !c.given && (wrong || r.Kind == tutor.Unread || r.Kind == tutor.Hinted || r.Kind == tutor.Worked)
}

// step is the step of the plan that is worked on: at N, V and M and at the end, all of them are done.
func (c *course) step() int {
	if q, asking := c.l.Now(); asking && q.Step != statics.None {
		return q.Step
	}
	return c.l.View().Steps()
}

// sum is the sum that a question belongs to. Of sums that are solved together each unknown shows another, so that all
// of their free bodies are seen.
func (c *course) sum(q tutor.Question) statics.Sum {
	step := c.l.View().Step(q.Step)
	if at := slices.Index(step.Gives, q.Force); q.Kind == tutor.ForceValue && at >= 0 {
		return step.Sums[min(at, len(step.Sums)-1)]
	}
	return step.Sums[q.Sum]
}

// answer gives what was typed to the lesson.
func (m *Model) answer() tea.Cmd {
	c := m.course
	if _, asking := c.l.Now(); !asking && len(c.answerLine.text) == 0 {
		if next := c.next(); len(next) > 0 {
			m.enter(next[0])
			m.course.again = next[1:]
			m.course.reply = tutor.Reply{Kind: tutor.Listed, Lines: []string{"This was told: here is a step of its kind once more, with other numbers."}}
			return nil
		}
		return m.toChooser()
	}
	if m.o.Clock().Before(c.pause) {
		return nil
	}
	return m.typed(c.answerLine.take())
}

// typed gives a line to the lesson and shows what it brings.
func (m *Model) typed(text string) tea.Cmd {
	c := m.course
	m.notice = ""
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "sheet":
		return m.open(reading)
	case "help":
		return m.open(helping)
	}
	if word, ok := strings.CutPrefix(strings.ToLower(strings.TrimSpace(text)), "level "); ok {
		return m.toRung(word)
	}
	r := c.l.Type(text)
	if r.Kind == tutor.Leaving {
		return tea.Quit
	}
	if r.Pause > 0 {
		c.pause = m.o.Clock().Add(r.Pause)
	}
	c.take(r)
	if r.Kind == tutor.Worked {
		return m.open(telling)
	}
	if r.Kind == tutor.Judged && !r.Verdict.Right() {
		c.last = strings.TrimSpace(text)
	}
	if r.Kind == tutor.Unread && r.Lines != nil {
		c.answerLine.insert([]rune(text)) // to be mended
		c.toFault(text)
	}
	if _, asking := c.l.Now(); !asking && c.l.Exam() {
		c.reply.Lines = c.l.Marks()
	}
	return nil
}

// next lists the lessons of one step that follow when this one is done.
func (c *course) next() []*tutor.Lesson {
	if _, asking := c.l.Now(); !asking && !c.ended {
		c.again, c.ended = append(c.again, c.l.Again()...), true
	}
	return c.again
}

// toFault puts the cursor on the place of the fault in what was typed, which then need not be shown twice.
func (c *course) toFault(text string) {
	lines := c.reply.Lines
	if len(lines) != 3 || lines[1] != "  "+text {
		return
	}
	before, _, found := strings.Cut(strings.TrimPrefix(lines[2], "  "), "^")
	if at := len([]rune(before)); found && at <= len(c.answerLine.text) {
		c.answerLine.at = at
		c.reply.Lines = lines[:1]
	}
}

// toRung takes the same problem up at another rung, where it was left there.
func (m *Model) toRung(name string) tea.Cmd {
	rung, err := tutor.ParseRung(name)
	if err != nil {
		m.course.take(tutor.Reply{Kind: tutor.Unread, Lines: []string{wording.Sentence(err.Error())}})
		return nil
	}
	m.chooser.rung = rung
	l, err := m.course.l.Anew(rung, m.o.Exam)
	m.start(l, err, true)
	return nil
}

// enterWord is what enter does now.
func (m *Model) enterWord() string {
	q, asking := m.course.l.Now()
	switch {
	case !asking && len(m.course.next()) > 0:
		return "a step again"
	case !asking:
		return "to the problems"
	case q.Kind == tutor.Reading:
		return "read on"
	case m.o.Clock().Before(m.course.pause):
		return "answer, once this is read"
	}
	return "answer"
}

func (m *Model) canHint() bool {
	q, asking := m.course.l.Now()
	return asking && q.Kind != tutor.Reading && !m.course.l.Exam()
}

func (m *Model) toggleGiven() tea.Cmd {
	m.course.given = !m.course.given
	m.course.changes++
	return nil
}

// look looks at the step before or after the one looked at; past the last worked it is the question in hand again.
func (m *Model) look(by int) tea.Cmd {
	c := m.course
	last := min(c.step(), c.l.View().Steps()-1)
	at := c.looked
	if at == statics.None {
		at = c.step()
	}
	c.looked = max(at+by, 0)
	if c.looked > last || c.looked == c.step() {
		c.looked = statics.None
	}
	c.given, c.up = false, 0
	c.changes++
	return nil
}

// leaveLesson undoes the last thing that can be: the line, looking, the reply; else it shows the problems.
func (m *Model) leaveLesson() tea.Cmd {
	c := m.course
	switch {
	case len(c.answerLine.text) > 0:
		c.answerLine.take()
	case c.looked != statics.None || c.given || c.up > 0:
		c.looked, c.given, c.up = statics.None, false, 0
		c.changes++
	default:
		return m.toChooser()
	}
	return nil
}

// toChooser shows the problems, with what was done just now counted.
func (m *Model) toChooser() tea.Cmd {
	m.view, m.course, m.notice = choosing, nil, ""
	return m.list()
}

// scrollPane scrolls the sheet beside the figure.
func (m *Model) scrollPane(by int) tea.Cmd {
	m.course.up = max(m.course.up+3*by, 0)
	return nil
}
