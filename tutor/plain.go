package tutor

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Plain runs a lesson by line: one fact a line, one answer a line, ASCII only, nothing redrawn. It ends at quit or at
// the end of input. An error is one of reading or writing.
func Plain(l *Lesson, in io.Reader, out io.Writer) error {
	p := plainOn(in, out)
	on, err := p.work(l, p.opening, p.closing)
	for p.renewed != nil {
		l, p.renewed = p.renewed, nil
		on, err = p.work(l, p.opening, p.closing)
	}
	for _, again := range l.Again() {
		if !on || err != nil {
			break
		}
		on, err = p.work(again, p.reopening, func() { p.say("Done again.") })
	}
	return errors.Join(err, p.out.Flush())
}

// plainOn is a line mode that reads and writes there.
func plainOn(in io.Reader, out io.Writer) *plain {
	lines := bufio.NewReader(in)
	return &plain{out: bufio.NewWriter(out), next: func() (string, error) { return readLine(lines) }}
}

// line is the next line that is typed, once all that was said is out.
func (p *plain) line() (string, error) {
	if err := p.out.Flush(); err != nil {
		return "", err
	}
	return p.next()
}

// work asks all questions of a lesson, and reports whether the student is still there.
func (p *plain) work(l *Lesson, opening, closing func()) (on bool, err error) {
	p.l, p.step, p.member, p.stretch, p.shownHow, p.left, p.made, p.sum = l, statics.None, statics.None, "", false, 0, 0, [2]int{statics.None}
	opening()
	for {
		q, asking := l.Now()
		if !asking {
			closing()
			return true, nil
		}
		aside := p.asks(q)
		if q.Kind == Reading && !aside {
			l.Type("")
			continue
		}
		r, on, err := p.takes(l.Type)
		if err != nil || !on {
			return false, err
		}
		switch r.Kind {
		case ToList:
			return true, nil
		case Renewing:
			return true, p.renew()
		}
	}
}

// takes has a line typed at the question that was asked, and says what is replied. The student is still there unless the input
// has ended, or the line was one to leave with.
func (p *plain) takes(typed func(line string) Reply) (r Reply, on bool, err error) {
	line, err := p.line()
	switch {
	case errors.Is(err, io.EOF):
		return r, false, nil
	case err != nil && !errors.Is(err, errTime):
		return r, false, err
	}
	r = typed(line)
	p.lines(r.Lines)
	return r, r.Kind != Leaving, nil
}

// asks says what stands before a question and asks it, or what is asked beside; it reports which. Nothing is asked of what is only read.
func (p *plain) asks(q Question) (aside bool) {
	why, aside := AsideOf(p.l)
	switch {
	case aside && !p.why:
		p.lines(why.Says)
	case !aside:
		p.introduce(q)
		p.gathered(q)
	}
	p.why = aside
	switch {
	case aside:
		p.say("? reason [%s]", why.Unit)
	case q.Kind != Reading:
		p.say("? %s%s [%s]", q.Name, map[bool]string{true: " again"}[p.l.again], p.unit(q))
	}
	return aside
}

// renew has the lesson go on as one on the same frame with other numbers.
func (p *plain) renew() error {
	renewed, err := Renewed(p.l)
	if err != nil {
		return err
	}
	keepAs(renewed, p.l)
	p.renewed = renewed
	return nil
}

// longestLine bounds what is kept of one line of input.
const longestLine = 4096

// readLine reads one line, without its end; of a longer one the rest is dropped. io.EOF comes only if nothing was read.
func readLine(r *bufio.Reader) (string, error) {
	var line []byte
	for read := false; ; read = true {
		b, err := r.ReadByte()
		switch {
		case err != nil && (!read || !errors.Is(err, io.EOF)):
			return "", err
		case err != nil || b == '\n':
			return string(line), nil
		case len(line) < longestLine:
			line = append(line, b)
		}
	}
}

// plain is the line mode of one lesson.
type plain struct {
	l            *Lesson
	next         func() (string, error) // the next line typed; errTime where an exam's time is over before one comes
	out          *bufio.Writer
	step, member int     // introduced last
	shownHow     bool    // how a sum is chosen
	left         int     // unknowns told of as left
	made         int     // the question before which the sum of its terms was written
	renewed      *Lesson // begun next, in place of this one
	stretch      string  // introduced last
	why          bool    // the reasons to choose from were said
	sum          [2]int  // step and sum whose terms were introduced last, where a step has more than one
}

// say writes one line. What goes wrong in writing is found when the line is flushed.
func (p *plain) say(format string, args ...any) {
	fmt.Fprintln(p.out, notation.VisibleLines(fmt.Sprintf(format, args...)))
}

// unit is what stands in the brackets of a question.
func (p *plain) unit(q Question) string {
	switch q.Kind {
	case TermSign:
		return "+ or -"
	case ShapeDegree:
		return "0, 1, 2 or 3"
	case ShapeSlope:
		return "rises or falls"
	case ChooseSum:
		return "free body and sum"
	case CheckSum:
		return "free body, sum = what it comes to"
	case TypeSum:
		return "all terms, =, and the other side"
	}
	return p.l.about.problem.Units.ASCII(q.Dim)
}

func (p *plain) opening() {
	l := p.l
	p.say("%s", notation.ASCII(l.about.problem.Title))
	if l.about.problem.Text != "" {
		p.say("%s", notation.ASCII(l.about.problem.Text))
	}
	p.lines(l.teller().frameLines())
	if l.sitting == nil {
		p.say("%s", wording.Caution)
	}
	p.lines(l.notes)
	if l.about.levels.level == Gradual {
		p.say(GradualRule)
		if l.Open() {
			p.say("You have earned the level %s here: choose each free body and its sum yourself.", l.about.levels.base())
		}
	}
	p.say("Type help to see what can be typed.")
	if n := l.Earlier(); n > 0 && l.sitting == nil {
		of := fmt.Sprintf("%d of %d questions", n, len(l.sheet.questions))
		if l.Open() {
			of = wording.Counted(n, "question")
		}
		if n == len(l.sheet.questions) && !l.Open() {
			p.say("You have worked this problem to its end; type resume to look at that work again.")
			return
		}
		p.say("Earlier work on this problem has %s settled; type resume to take it up.", of)
	}
}

// reopening says what stands before a step that comes again: the frame with its numbers, and what is known by then.
func (p *plain) reopening() {
	q, _ := p.l.Now()
	p.say("You were shown %s; try one like it with new numbers.", q.Name)
	p.lines(figure.Describe(p.l.about.solution.Assembly, figure.Options{Style: p.l.about.style()}))
	p.lines(p.l.teller().knownLines(q, p.l.sheet.knownForce))
	if q.Step != statics.None {
		p.step = q.Step - 1
	} else {
		p.step = len(p.l.about.solution.Plan)
	}
}

// introduce says what stands before a question: its step where that is new, and its term.
func (p *plain) introduce(q Question) {
	if q.Step != statics.None && q.Step != p.step {
		for i := p.step + 1; i <= q.Step; i++ {
			p.lines(p.l.teller().stepLines(i))
		}
		p.step = q.Step
	}
	if unknowns, along := p.l.Left(); q.Kind == ChooseSum && unknowns != p.left {
		p.left = unknowns
		p.say("Left to find: %s%s.", wording.Counted(unknowns, "unknown"), map[bool]string{true: ", then " + wording.Counted(along, "answer") + " along the members"}[along > 0])
	}
	if q.Kind == CheckSum {
		p.say("%s", checkForm(p.l.about))
	}
	if q.Kind == ChooseSum && !p.shownHow {
		p.say("Choose a free body and a sum of it, as in: %s x; whole y; %s M A; whole M (2, 3); whole F along [4, 3].", p.l.about.bodyNames()[0], p.l.about.bodyNames()[0])
		p.shownHow = true
	}
	if q.Member != statics.None && q.Member != p.member {
		p.lines(p.l.teller().memberLines(q.Member))
		p.member = q.Member
	}
	if lines := stretchLines(p.l.about, q); len(lines) > 0 && lines[0] != p.stretch {
		p.stretch = lines[0]
		p.lines(lines)
	}
	if q.Kind == TermSize || q.Kind == TermArm || q.Kind == TermSign {
		sums := p.l.about.solution.Plan[q.Step].Sums
		s := sums[q.Sum]
		if at := [2]int{q.Step, q.Sum}; len(sums) > 1 && at != p.sum {
			p.sum = at
			p.say("Terms of sum %d of %d: %s.", q.Sum+1, len(sums), p.l.about.words().BodyAndSum(s))
		}
		p.say("Term: %s.", notation.ASCII(p.l.about.words().Component(s.Terms()[q.Term])))
	}
}

// gathered writes the sum that the terms asked for make, before the first value that follows from it.
func (p *plain) gathered(q Question) {
	at, _ := p.l.Position()
	if q.Kind != ForceValue || at == 0 || at == p.made || !p.l.sheet.questions[at-1].ofTerm() {
		return
	}
	p.made = at
	if sums := p.l.Display(true).Equations(); len(sums) > 0 {
		said := map[bool]string{true: "You set down", false: "The terms make"}[p.l.sheet.exam]
		p.say("%s: %s.", said, strings.Join(sums, "; "))
	}
}

// lines writes lines in ASCII; what stands in from the margin stays there.
func (p *plain) lines(lines []string) {
	for _, line := range lines {
		text := strings.TrimLeft(line, " ")
		p.say("%s%s", line[:len(line)-len(text)], notation.ASCII(text))
	}
}

// closing ends the lesson: in an exam with the verdicts, else with the count of first tries.
func (p *plain) closing() {
	for i := p.step + 1; i < len(p.l.about.solution.Plan); i++ {
		p.lines(p.l.teller().stepLines(i))
	}
	if p.l.sheet.exam {
		p.lines(p.l.Marks())
	}
	p.say("All done.%s", p.score())
	if help := p.l.sheet.helped(); len(help) > 0 {
		p.say("Help: %s.", strings.Join(help, ", "))
	}
	for _, said := range SummaryOf(p.l).Passages() {
		if said.Label == "Check" || said.Label == "Answer" { // told before
			continue
		}
		for _, line := range said.Lines {
			p.say("%s: %s", said.Label, notation.ASCII(line))
		}
	}
}

// score is the count of first tries, where anything was asked.
func (p *plain) score() string {
	first, of := p.l.sheet.score()
	if of == 0 {
		return ""
	}
	return fmt.Sprintf(" First try and without help: %d of %d.", first, of)
}
