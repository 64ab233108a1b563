package tutor

import (
	"cmp"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/marking"
)

// An exam is marked after its end: a mark for each body that was chosen, for the method of each sum and for its accuracy, and for
// each value. What the level prints earns nothing. The usual marks of examiners: method, accuracy, and accuracy that follows
// through from the student's own values (public mark schemes; common practice).
type exam struct {
	*Lesson
	result *marking.Result            // of the values
	scheme *problems.Scheme           // by which it was made
	of     map[string]*marking.Answer // by the question's name
	truth  *statics.Solution          // with the plan of the program, for the checks
	earned map[mark]tally
	said   []string // the whole paper, as lines
	sums   []string // of these what tells of the working: sums, terms, marks and checks
}

// examOf marks an exam that is over. Where the values cannot be marked, they stand as they were judged.
func examOf(l *Lesson) *exam {
	e := examBy(l, nil, nil, nil)
	s, err := solved(l.about.problem)
	if err != nil {
		return e
	}
	e.truth = s
	points := exact.Int(1)
	scheme := (*problems.Scheme)(marking.DefaultScheme())
	if l.sitting != nil {
		points = l.sitting.Tasks[l.task].Points
		scheme = cmp.Or(l.sitting.Scheme, scheme)
	}
	m, err := marking.New(problems.Solved{Problem: l.about.problem, Solution: s}, l.about.problem.Find)
	if err != nil {
		return e
	}
	return examBy(l, s, m.Mark(e.paper(), (*marking.Scheme)(scheme), points), scheme)
}

// examBy is an exam of which the values are marked.
func examBy(l *Lesson, truth *statics.Solution, result *marking.Result, by *problems.Scheme) *exam {
	e := &exam{Lesson: l, truth: truth, result: result, scheme: by, of: map[string]*marking.Answer{}, earned: map[mark]tally{}}
	if result == nil {
		return e
	}
	for i, a := range result.Answers {
		e.of[a.Item.Name] = &result.Answers[i]
	}
	return e
}

// Marks is, after an exam, the whole paper: each answer with its marks, then what was earned and where the trouble began.
func (l *Lesson) Marks() []string {
	if l.sitting != nil && !examOver(l) {
		return nil
	}
	return examined(l).said
}

// examined is the exam with its marks; before its end, as if it were handed in now.
func examined(l *Lesson) *exam {
	if l.marked != nil {
		return l.marked
	}
	e := examOf(l)
	e.said = e.lines()
	if examOver(l) {
		l.marked = e
	}
	return e
}

// lines are the whole paper, a line an answer with the reason of each mark lost; then the marks, where the trouble began, and the
// checks.
func (e *exam) lines() []string {
	var lines []string
	for n, q := range e.sheet.questions {
		if q.Kind == Reading {
			continue
		}
		line := e.line(n, q, e.sheet.answers[n])
		if q.ofTerm() && (n == 0 || !q.sameSum(e.sheet.questions[n-1])) { // the terms of each sum are numbered from 1
			s := e.about.solution.Plan[q.Step].Sums[q.Sum]
			lines = append(lines, wording.Capital(e.about.words().BodyAndSum(s))+":")
		}
		lines = append(lines, line)
		if q.Composing() || q.Kind == CheckSum || q.ofTerm() { // where the paper is marked elsewhere the truth is told by another word
			e.sums = append(e.sums, strings.Replace(line, e.truthOf(q), "", 1))
		}
	}
	total, checks := e.total(), e.checks()
	lines = append(lines, total)
	e.sums = append(append(e.sums, total), checks...)
	if e.result != nil {
		e.result.ShowWorking(e.parts(), (*marking.Scheme)(e.scheme))
		lines = append(lines, e.result.Story()...)
	}
	return append(lines, checks...)
}

// line is one answer with its marks.
func (e *exam) line(n int, q Question, a answer) string {
	if a.tries == 0 {
		e.give(e.markOf(q), exact.Num{}, exact.Int(1))
		if q.Kind == TypeSum {
			e.give(accuracyMark, exact.Num{}, exact.Int(1))
		}
		return q.Name + " left open" + e.truthOf(q) + "."
	}
	said := q.Name + " typed " + a.typed + ": "
	switch q.Kind {
	case ChooseSum:
		return said + e.judged(bodyMark, a)
	case CheckSum:
		return said + e.check(a)
	case TypeSum:
		return said + e.equation(n, a)
	case ForceValue, SectionPart, ZeroPlace:
		verdict, says := e.value(n, q, a)
		return said + verdict + e.truthOf(q) + "." + says
	}
	e.give(e.markOf(q), one(a.verdict.Right()), exact.Int(1))
	if q.ofTerm() && a.verdict == judging.Exact { // it is what was typed
		return said + a.verdict.String() + "."
	}
	return said + a.verdict.String() + e.truthOf(q) + "."
}

// truthOf tells what is true of a question; nothing where much would be.
func (e *exam) truthOf(q Question) string {
	if q.Composing() || q.Kind == CheckSum {
		return ""
	}
	return "; " + e.about.truthText(q)
}

// value is what a value earns: all where it is right or follows from the student's own sums and values, and what the scheme gives
// for the rest. Beside the verdict it gives what is to be said of a mistake, as a sentence after a space.
func (e *exam) value(n int, q Question, a answer) (verdict, says string) {
	v := e.of[q.Name]
	switch {
	case v == nil:
		e.give(accuracyMark, one(a.verdict.Right()), exact.Int(1))
		return a.verdict.String(), ""
	case v.Verdict != marking.Right && v.Verdict != marking.Rounded && e.follows(n, q, a):
		e.give(followMark, exact.Int(1), exact.Int(1))
		e.result.Carry(q.Name, (*marking.Scheme)(e.scheme))
		return "carried: right by your own sum", ""
	case v.Verdict == marking.Carried:
		e.give(followMark, exact.Int(1), exact.Int(1))
		return "carried: right by your own " + notation.List(v.From), ""
	}
	e.give(accuracyMark, e.scheme.Verdicts[v.Verdict], exact.Int(1))
	if v.Says != "" {
		if says = " " + wording.Capital(v.Says); !strings.HasSuffix(says, "?") {
			says += "."
		}
	}
	return marking.Words(v.Verdict), says
}
