package tutor

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/tutor/marking"
)

// An exam that is over is written as a paper: its values as anybody writes them, and before them the working, line by line, from
// which the whole exam can be worked again where the paper is marked.

// paper is what was answered, as a paper that is marked elsewhere.
func (e *exam) paper() *marking.Paper {
	p := &marking.Paper{Problem: e.about.problem.Name, Attempt: 1}
	for n, q := range e.sheet.questions {
		if a := e.sheet.answers[n]; a.tries > 0 && (q.Kind == ForceValue || q.Kind == SectionPart || q.Kind == ZeroPlace) {
			p.Entries = append(p.Entries, marking.Entry{Line: n + 1, Quantity: q.Name, Value: e.valueText(q, a)})
		}
	}
	return p
}

// PaperOf is an exam that is over as a paper that unpin mark reads, sealed, with the conventions by which it was written: these are the
// student's own, or those of the line mode. Before the end it is none.
func PaperOf(l *Lesson) (text string, over bool) {
	if !examOver(l) || !l.sheet.exam {
		return "", false
	}
	heads, rest, _ := strings.Cut(written(l), "\n")
	return marking.Seal("# An exam on one problem. unpin mark PROBLEM FILE marks it, with its working.\n" +
		heads + "\nconventions: " + l.about.problem.Conventions.String() + "\n" + rest), true
}

// PaperOfSitting is the whole paper of a sitting that is over, sealed. Before the end it is none.
func PaperOfSitting(s *Sitting) (text string, over bool) {
	if !s.Over() {
		return "", false
	}
	var b strings.Builder
	fmt.Fprintf(&b, "# An exam over the set %s, begun %s, handed in %s. unpin mark SET FILE marks it, with its working.\n",
		s.ID, moment(s.paper.Began), moment(s.paper.Handed))
	for i, l := range s.lessons {
		b.WriteString(s.heads(i))
		b.WriteString(written(l))
	}
	return marking.Seal(b.String()), true
}

// written is the exam as a block of a paper.
func written(l *Lesson) string {
	var b strings.Builder
	fmt.Fprintf(&b, "problem: %s\nlevel: %s\n", l.about.problem.Name, l.Level())
	for _, line := range workingOf(l) {
		fmt.Fprintf(&b, "work: %s\n", line)
	}
	for _, entry := range (&exam{Lesson: l}).paper().Entries {
		fmt.Fprintf(&b, "%s = %s\n", entry.Quantity, entry.Value)
	}
	return b.String()
}

// workingOf lists the lines that, typed one after the other into the same exam, bring it to where this one is.
func workingOf(l *Lesson) []string {
	var lines []string
	lets := l.lets
	for n, q := range l.sheet.questions {
		for len(lets) > 0 && lets[0].at <= n {
			lines, lets = append(lines, lets[0].line), lets[1:]
		}
		switch a := l.sheet.answers[n]; {
		case q.Kind == Reading, a.along:
		case a.tries == 0:
			lines = append(lines, "tell")
		case q.Kind == ChooseSum:
			lines = append(lines, chosenBy(a.typed))
		default:
			lines = append(lines, notation.Visible(a.typed))
		}
	}
	return lines
}

// replay works an exam again by the lines of its working. What is asked for is what a set says, or nil.
func replay(p *problems.Problem, level string, lines []string, asked []problems.Item) (*Lesson, error) {
	at, err := ParseLevel(level)
	if err != nil {
		return nil, err
	}
	l, err := newAsking(p, at, true, asked)
	if err != nil {
		return nil, err
	}
	l.UseSigns() // marks are told in the signs of the trade, wherever the exam was taken
	for _, line := range lines {
		for q, asking := l.Now(); asking && q.Kind == Reading; q, asking = l.Now() {
			l.Type("")
		}
		if r := l.Type(line); r.Kind == Leaving {
			break
		}
	}
	handIn(l)
	return l, nil
}

// MarkPaper marks a paper, of so many points. Where its working stands on it, that is marked as at the end of the exam it was written
// in: a value is carried that follows from the student's own sum. ofSet says that what is asked for is what the problem's find says.
func MarkPaper(m *marking.Marker, p *marking.Paper, s *marking.Scheme, points exact.Num, ofSet bool) *marking.Result {
	m = m.By(p)
	r := m.Mark(p, s, points)
	if len(p.Work) == 0 {
		return r
	}
	var asked []problems.Item
	if ofSet {
		for i, item := range m.Items {
			if m.Asked[i] {
				asked = append(asked, item)
			}
		}
	}
	l, err := replay(m.Problem, p.Level, p.Work, asked)
	if err != nil { // a level that there is not
		return r
	}
	e := examBy(l, m.Solution, r, (*problems.Scheme)(s))
	e.lines()
	r.Working = e.sums
	return r
}

// valueText is a value as it is written on a paper: as it was typed, but for what stands there by other senses or as a function.
func (e *exam) valueText(q Question, a answer) string {
	switch {
	case q.Kind == ForceValue && e.about.solution.Forces[q.Force].Turned:
		return a.value.Neg().String()
	case q.Kind == SectionPart && (a.along || strings.ContainsAny(a.typed, "xX")):
		if isShear(q) {
			return e.about.style().Shear.Value(a.value).String()
		}
		return a.value.String()
	}
	return a.typed
}
