package screen

import (
	"strings"
	"time"

	"unpin/statics"
	"unpin/tutor"
)

// A course is a lesson as it stands on the screen: what is typed and said, and the panes above.
type course struct {
	panes
	answerLine editor
	reply      tutor.Reply
	last       string          // what was typed last, where it was not right
	pause      time.Time       // until then no answer is taken
	hintFrom   time.Time       // from then on another hint may be asked for
	again      []*tutor.Lesson // what was told before and comes once more
	ended      bool            // all is asked, and what was told here is among those
	once       bool            // it is one step that was told in another lesson
	summary    tutor.Summary   // what it came to, once all is asked
	onward     bool            // another piece of a portion follows
}

func newCourse(l *tutor.Lesson, ascii bool) *course {
	if !ascii {
		l.UseSigns()
	}
	c := &course{panes: panes{current: current{l: l, ascii: ascii, looked: statics.None}, changes: 1}}
	c.turn()
	return c
}

// give gives a line to the lesson at a time and shows what it brings.
func (c *course) give(text string, now time.Time) tutor.Reply {
	hint := strings.EqualFold(strings.TrimSpace(text), "hint")
	if hint && now.Before(c.hintFrom) {
		return tutor.Reply{}
	}
	r := c.l.Type(text)
	if says := c.l.Display(c.ascii).TurnCome(); says != "" && r.Kind == tutor.Judged && r.Verdict.Right() {
		r.Lines = append(r.Lines, says)
	}
	if c.hintFrom = (time.Time{}); hint {
		c.hintFrom = now.Add(hintPause)
	}
	if r.Kind == tutor.Leaving {
		return r
	}
	if r.Pause > 0 {
		c.pause = now.Add(r.Pause)
	}
	c.take(r)
	switch {
	case r.Kind == tutor.Judged && !r.Verdict.Right():
		c.last = strings.TrimSpace(text)
	case r.Kind == tutor.Unread && r.Lines != nil && !tutor.IsCommand(text):
		c.answerLine.insert([]rune(text)) // to be mended, or to be typed over
		c.answerLine.read = true
		c.toFault(text)
	}
	if r.Kind == tutor.Restarted {
		c.again, c.ended = nil, false
	}
	if c.done() {
		c.summary = tutor.SummaryOf(c.l)
	}
	return r
}

// mendable reports whether a line that was not right can be brought back.
func (c *course) mendable() bool { return c.last != "" && len(c.answerLine.text) == 0 }

// mend brings back the line that was not right.
func (c *course) mend() { c.answerLine.insert([]rune(c.last)) }

// hintPause is how long a hint is to be read before the next may be asked for, so that nobody clicks through to the last.
const hintPause = 4 * time.Second

// done reports whether all is asked.
func (c *course) done() bool {
	_, asking := c.l.Now()
	return !asking
}

// take shows what a line brought.
func (c *course) take(r tutor.Reply) {
	if !c.asBefore(r) {
		c.changes++
	}
	c.reply, c.last = r, ""
	aside, _ := tutor.AsideOf(c.l)
	c.looked, c.other, c.up = aside.Step, tutor.Fitting, 0
	c.turn()
}

// asBefore reports whether figure and sheet are sure to stay as they are after a reply.
func (c *course) asBefore(r tutor.Reply) bool {
	q, asking := c.l.Now()
	wrong := r.Kind == tutor.Judged && !r.Verdict.Right() && asking && !q.Composing()
	return c.looked == statics.None && c.other == tutor.Fitting && (wrong || r.Kind == tutor.Unread || r.Kind == tutor.Hinted || r.Kind == tutor.Worked)
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

// next lists the lessons of one step that follow when this one is done.
func (c *course) next() []*tutor.Lesson {
	if _, asking := c.l.Now(); !asking && !c.ended {
		c.again, c.ended = append(c.again, c.l.Again()...), true
	}
	return c.again
}

// undo undoes the last thing that can be, the line or looking, and reports whether there was one.
func (c *course) undo() bool {
	switch {
	case len(c.answerLine.text) > 0:
		c.answerLine.take()
	case c.looked != statics.None || c.other != tutor.Fitting || c.up > 0:
		c.looked, c.other, c.up = statics.None, tutor.Fitting, 0
		c.changes++
	default:
		return false
	}
	return true
}

// enterWord is what enter does at a time.
func (c *course) enterWord(now time.Time) string {
	q, asking := c.l.Now()
	switch {
	case !asking && len(c.next()) > 0:
		return "a step again"
	case !asking && c.onward:
		return "the next piece"
	case !asking:
		return "to the problems"
	case q.Kind == tutor.Reading:
		return "read on"
	case c.pausing(now):
		return "once this is read"
	}
	return "answer"
}

// pausing reports whether no answer is taken yet, so that what was said is read.
func (c *course) pausing(now time.Time) bool { return now.Before(c.pause) }

// canHint reports whether there are hints to ask for.
func (c *course) canHint() bool {
	q, asking := c.l.Now()
	return asking && q.Kind != tutor.Reading && !c.l.Exam()
}

// right is how many answers are right.
func (c *course) right() int {
	n := 0
	for i := range c.l.Asked() {
		if typed, settled, told, v := c.l.Standing(i); settled && !told && typed != "" && v.Right() {
			n++
		}
	}
	return n
}
