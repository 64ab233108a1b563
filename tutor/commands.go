package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// A command is a word that works at every question.
type command struct {
	word, help string
	outcome    record.Outcome // how it is kept; empty where it keeps that itself
	do         func(l *Lesson, q Question, asking bool) Reply
	aids       bool // it helps, which an exam does not
}

var commands []command

func init() { // here, since help lists the table itself
	commands = []command{
		{"hint", "points, then teaches, then says what to write", record.Hinted, (*Lesson).hint, true},
		{"example", "shows a step of the same kind from another problem, worked whole", record.Example, (*Lesson).example, true},
		{"tell", "tells the value and goes on", record.Told, (*Lesson).tell, false},
		{"back", "returns to the question before", record.Back, (*Lesson).back, false},
		{"resume", "takes up earlier work on this problem, before anything is answered", "", (*Lesson).resume, false},
		{"restart", "sets aside what was done here, now and earlier, and begins anew", "", restart, false},
		{"new", "begins the same frame with new numbers; what was done is kept", "", renew, false},
		{handInCommand, "hands in the paper as it stands, when it is said twice", "", handInWord, false},
		{"problems", "returns to the list of problems of the paper", "", toProblems, false},
		{"sheet", "lists what is known", record.Listed, (*Lesson).showSheet, false},
		{"time", "says how much time is left", record.Listed, tellTime, false},
		{"help", "lists what can be typed", record.Listed, help, false},
		{"quit", "stops; what is done is kept", record.Left, quit, false},
	}
}

// IsCommand reports whether a line is a command, which works at every question, and no answer.
func IsCommand(line string) bool {
	words := strings.Fields(strings.ToLower(line))
	if len(words) == 0 {
		return false
	}
	named := func(c command) bool { return c.word == words[0] }
	return words[0] == "let" || strings.Join(words, " ") == handInCommand || words[0] == "level" || len(words) == 1 && slices.ContainsFunc(commands, named)
}

func help(l *Lesson, q Question, asking bool) Reply {
	var lines []string
	if asking && q.Kind != Reading {
		lines = answerHelp(l, q)
	}
	for _, c := range commands {
		switch {
		case l.sheet.exam && (c.aids || c.word == "new"), c.word == "time" && TimeLeft(l) == "":
		case c.word == handInCommand && !l.sheet.exam, c.word == "problems" && l.sitting == nil:
		case l.sitting != nil && (c.word == "restart" || c.word == "resume"):
		case l.sheet.exam && c.outcome == record.Told:
			lines = append(lines, c.word+": leaves the question open and goes on.")
		default:
			lines = append(lines, c.word+": "+c.help+".")
		}
	}
	if l.Open() {
		lines = append(lines, "let "+l.about.solution.Forces[0].Name+" "+notation.SenseOf(l.about.solution.Forces[0], exact.Int(-1))+
			": takes an unknown in that sense from now on; sums and values are then read by it.")
	}
	return Reply{Kind: Listed, Lines: lines}
}

// answerHelp says what can be typed in answer to a question.
func answerHelp(l *Lesson, q Question) []string {
	number := "Type a number, a fraction or an expression, with a unit"
	switch first := l.about.bodyNames()[0]; {
	case q.Kind == CheckSum:
		return []string{checkForm(l.about)}
	case q.Kind == ChooseSum:
		return []string{"Type a free body and a sum of it, as in: " + first + " x; whole y; " + first + " M A; whole M (2, 3); whole F along [4, 3]."}
	case q.Kind == TypeSum:
		return []string{"Type the sum as an equation: forces by name or, once known, by value; all terms, in any order and on either side of =. Another sum named here is taken in place of this one."}
	case q.Kind == TermSign:
		return []string{"Type + or -."}
	case q.Kind == ShapeDegree:
		return []string{"Type a degree: 0 level, 1 straight, 2 or 3 for a curve."}
	case q.Kind == ShapeSlope:
		return []string{"Type rises or falls."}
	case q.ofTerm() && l.sheet.exam:
		return []string{number + "."}
	case q.ofTerm():
		return []string{number + "; or the whole term with its sign, as a product; or the whole sum in one line, with = 0."}
	case takesFunction(l.about, q):
		return []string{
			number + " and a sense if you like.",
			"For the whole stretch " + problems.StretchName(l.about.solution, q.Member, stretchOf(l.about, q)) + " you may type " + functionForm(l.about, q) + ".",
		}
	}
	return []string{number + " and a sense if you like: 9.5, 45/8, 0.5*6*4, 12000 N, 15 down."}
}

func quit(*Lesson, Question, bool) Reply { return Reply{Kind: Leaving} }

// resume takes up earlier work.
func (l *Lesson) resume(q Question, _ bool) Reply {
	if l.sheet.begun() || l.Earlier() == 0 {
		return Reply{Kind: Unread, Lines: []string{"There is no earlier work to take up here."}}
	}
	l.heed(q, "resume", record.Resumed)
	l.Resume()
	return Reply{Kind: Resumed, Lines: []string{"Taken up: " + wording.Counted(l.sheet.at, "question") + " settled."}}
}

// restart begins anew. What was done on the problem at this level, in this run or before, is set aside in the record for
// good; only for what was learned of kinds of steps does it count.
func restart(l *Lesson, q Question, _ bool) Reply {
	if l.sitting != nil {
		return Reply{Kind: Unread, Lines: []string{"A paper is not begun anew: back leads to an answer, to change it."}}
	}
	if l.again || !l.sheet.begun() && l.Earlier() == 0 {
		return Reply{Kind: Unread, Lines: []string{"There is nothing to set aside here: this is the beginning."}}
	}
	l.heed(q, "restart", record.Restarted)
	fresh, err := l.Anew(l.Level(), l.sheet.exam)
	if err != nil {
		return unread(err)
	}
	fresh.about.signs, fresh.about.levels = l.about.signs, l.about.levels
	if l.Level() == Gradual {
		fresh.askGradually()
	}
	l.about, l.sheet, l.route, l.past, l.done, l.lets = fresh.about, fresh.sheet, fresh.route, past{}, fresh.done, nil
	return Reply{Kind: Restarted, Lines: []string{"Begun anew; what was done before is set aside."}}
}

// back returns to the question before; what was accepted there stands until another value is.
func (l *Lesson) back(q Question, _ bool) Reply {
	if l.sheet.exam && examOver(l) {
		return Reply{Kind: Unread, Lines: []string{"The paper is handed in: nothing more can be typed."}}
	}
	at := l.sheet.at - 1
	for at >= 0 && l.sheet.questions[at].Kind == Reading && l.about.levels.level != Read {
		at--
	}
	switch {
	case at < 0:
		return Reply{Kind: Unread, Lines: []string{"This is the first question."}}
	case q.Kind == TypeSum:
		return l.chooseAgain()
	case l.sheet.questions[at].Kind == ChooseSum && q.Kind == ChooseSum:
		return Reply{Kind: Unread, Lines: []string{"That sum is kept, and does no harm: choose another."}}
	case l.sheet.questions[at].Kind == ChooseSum:
		return Reply{Kind: Unread, Lines: []string{"That sum is chosen: go on with it from here."}}
	case l.sheet.questions[at].Composing():
		return Reply{Kind: Unread, Lines: []string{"That equation is finished; carry on from here."}}
	}
	l.sheet.at = at
	return Reply{Kind: WentBack, Lines: []string{"Back to " + l.sheet.questions[l.sheet.at].Name + "."}}
}

// tell gives the value away and goes on. In an exam it only leaves the question open.
func (l *Lesson) tell(q Question, asking bool) Reply {
	if !asking || q.Kind == Reading {
		return Reply{Kind: Unread, Lines: []string{"There is nothing to tell here."}}
	}
	switch {
	case q.Composing() && l.sheet.exam:
		return leaveOpen(l, q)
	case q.Kind == ChooseSum:
		return Reply{Kind: Told, Lines: []string{"told: " + l.tellSum()}}
	case q.Kind == TypeSum:
		return Reply{Kind: Told, Lines: []string{"told: " + l.tellEquation()}}
	}
	l.giveUp()
	if l.sheet.exam {
		return Reply{Kind: Told, Lines: []string{"told at the end: this question is left open."}}
	}
	return Reply{Kind: Told, Lines: []string{"told: " + l.about.truthText(q) + "."}}
}

// giveUp marks the question in hand as told and goes on.
func (l *Lesson) giveUp() {
	a := l.sheet.inHand()
	a.told, a.accepted, a.first = true, false, false
	if l.sheet.exam { // what was typed before is taken back
		a.tries, a.typed, a.value, a.says = 0, "", exact.Num{}, ""
	}
	q := l.sheet.questions[l.sheet.at]
	l.sheet.goOn()
	l.finish(q)
	if l.about.withholds(q.Step) {
		l.about.aside.state = asideDone
	}
}

// truthText is the value of what q asks, with its unit and sense.
func (m *matter) truthText(q Question) string {
	switch q.Kind {
	case ShapeDegree:
		return q.Name + " is " + q.truth.String()
	case ShapeSlope:
		return q.Name + " " + map[bool]string{true: "rises", false: "falls"}[q.truth.Sign() > 0]
	case TermSign:
		return q.Name + " is " + map[bool]string{true: "+", false: "-"}[q.truth.Sign() > 0]
	}
	text := q.Name + " = " + m.style().WithUnit(m.asShown(q, q.truth), q.Dim)
	if q.Kind == ForceValue && !q.truth.IsZero() {
		f := m.solution.Forces[q.Force]
		text += fmt.Sprintf(" (%s on %s)", notation.SenseOf(f, q.truth), m.solution.BodyName(f.On))
	}
	return text
}

// showSheet lists the values found and told, exact ones carried on, with what was typed where that differs.
func (l *Lesson) showSheet(Question, bool) Reply {
	var lines []string
	for n, q := range l.sheet.questions {
		a := l.sheet.answers[n]
		switch {
		case q.Kind == Reading && q.Step != statics.None && n < l.sheet.at:
			for _, f := range l.about.solution.Plan[q.Step].Gives {
				lines = append(lines, l.about.forceText(f)+", worked.")
			}
		case l.sheet.exam && a.tries > 0:
			lines = append(lines, q.Name+": you typed "+a.typed+".")
		case l.sheet.exam || q.Kind != ForceValue && q.Kind != SectionPart:
		case a.told:
			lines = append(lines, l.about.truthText(q)+", told.")
		case a.accepted:
			lines = append(lines, l.about.truthText(q)+", you typed "+a.typed+".")
		}
	}
	lines = append(lines, l.about.assumedLines()...)
	if l.route != nil {
		lines = append(lines, l.route.keptLines()...)
	}
	if len(lines) == 0 {
		lines = []string{"Nothing is known yet."}
	}
	return Reply{Kind: Listed, Lines: lines}
}
