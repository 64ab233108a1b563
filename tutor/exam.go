package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/slip"
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
}

// A mark is what a student can earn.
type mark string

// The marks, in the order in which they are told.
const (
	bodyMark     mark = "body"
	methodMark   mark = "method"
	accuracyMark mark = "accuracy"
	followMark   mark = "follow-through"
)

// A tally is what was earned of a mark.
type tally struct{ got, of exact.Num }

// examOf marks an exam that is over. Where the values cannot be marked, they stand as they were judged.
func examOf(l *Lesson) *exam {
	e := &exam{Lesson: l, of: map[string]*marking.Answer{}, earned: map[mark]tally{}}
	s, err := solved(l.about.problem)
	if err != nil {
		return e
	}
	e.truth = s
	m, err := marking.New(problems.Solved{Problem: l.about.problem, Solution: s}, nil)
	if err != nil {
		return e
	}
	scheme, err := problems.ReadScheme("the usual scheme", nil)
	if err != nil {
		return e
	}
	e.scheme = scheme
	e.result = m.Mark(e.paper(), (*marking.Scheme)(scheme), exact.Int(1))
	for i, a := range e.result.Answers {
		e.of[a.Item.Name] = &e.result.Answers[i]
	}
	return e
}

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

// PaperOf is an exam that is over as a paper that unpin mark reads, sealed; the sums stand there as comments. Before the end it is none.
func PaperOf(l *Lesson) (text string, over bool) {
	if _, asking := l.Now(); asking || !l.sheet.exam {
		return "", false
	}
	e := &exam{Lesson: l}
	var b strings.Builder
	fmt.Fprintf(&b, "# An exam at the level %s. unpin mark PROBLEM FILE marks its values.\nproblem: %s\n", l.Level(), l.about.problem.Name)
	for n, q := range l.sheet.questions {
		if a := l.sheet.answers[n]; a.tries > 0 && q.Kind != Reading && q.Kind != ForceValue && q.Kind != SectionPart && q.Kind != ZeroPlace {
			fmt.Fprintf(&b, "# %s: %s\n", q.Name, a.typed)
		}
	}
	for _, entry := range e.paper().Entries {
		fmt.Fprintf(&b, "%s = %s\n", entry.Quantity, entry.Value)
	}
	return marking.Seal(b.String()), true
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

// Marks is, after an exam, the whole paper: each answer with its marks, then what was earned and where the trouble began.
func (l *Lesson) Marks() []string {
	if _, asking := l.Now(); asking {
		return examOf(l).lines()
	}
	if l.marked == nil {
		l.marked = examOf(l).lines()
	}
	return l.marked
}

// lines are the whole paper, a line an answer with the reason of each mark lost; then the marks, where the trouble began, and the
// checks.
func (e *exam) lines() []string {
	var lines []string
	for n, q := range e.sheet.questions {
		if q.Kind != Reading {
			lines = append(lines, e.line(n, q, e.sheet.answers[n]))
		}
	}
	lines = append(lines, e.total())
	if e.result != nil {
		lines = append(lines, e.result.Story()...)
	}
	return append(lines, e.checks()...)
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
	case TypeSum:
		return said + e.equation(n, a)
	case ForceValue, SectionPart, ZeroPlace:
		verdict, says := e.value(n, q, a)
		return said + verdict + e.truthOf(q) + "." + says
	}
	e.give(e.markOf(q), one(a.verdict.Right()), exact.Int(1))
	return said + a.verdict.String() + e.truthOf(q) + "."
}

// truthOf tells what is true of a question; nothing where much would be.
func (e *exam) truthOf(q Question) string {
	if q.Composing() {
		return ""
	}
	return "; " + e.about.truthText(q)
}

// markOf is the mark that a question is asked for.
func (e *exam) markOf(q Question) mark {
	switch q.Kind {
	case ChooseSum:
		return bodyMark
	case TypeSum:
		return methodMark
	}
	return accuracyMark
}

// give adds to a mark.
func (e *exam) give(m mark, got, of exact.Num) {
	t := e.earned[m]
	e.earned[m] = tally{t.got.Add(got), t.of.Add(of)}
}

// one is a whole mark, or none.
func one(earned bool) exact.Num {
	if earned {
		return exact.Int(1)
	}
	return exact.Num{}
}

// judged is a verdict with what it says.
func (e *exam) judged(m mark, a answer) string {
	e.give(m, one(a.verdict.Right()), exact.Int(1))
	if a.verdict.Right() || a.says == "" {
		return a.verdict.String() + "."
	}
	return a.verdict.String() + "; " + a.says
}

// equation is what an equation earns: the method if it has every term that it needs and none besides, the accuracy if all are right.
func (e *exam) equation(n int, a answer) string {
	right := a.verdict.Right()
	method := right || e.complete(n, a) || len(a.slips) > 0 && !slices.ContainsFunc(a.slips, wrongTerms)
	e.give(methodMark, one(method), exact.Int(1))
	e.give(accuracyMark, one(right), exact.Int(1))
	switch {
	case right:
		return a.verdict.String() + "."
	case method:
		return "the method is right, a term is not; " + a.says
	}
	return "not yet; " + a.says
}

// complete reports whether an equation has as many terms as the sum that was chosen before it, and no force that is not in that.
func (e *exam) complete(n int, a answer) bool {
	name, _, _ := strings.Cut(e.sheet.answers[n-1].typed, ":")
	sum, err := e.about.readChoice(name)
	if err != nil {
		return false
	}
	typed, err := notation.ReadSum(e.bench().judge().Decimals(a.typed), e.about.problem.Units, e.about.namesForce)
	if err != nil {
		return false
	}
	wanted := 0
	for _, t := range sum.Terms {
		if t.Why == statics.Counts {
			wanted++
		}
	}
	terms := slices.Concat(typed.Left, typed.Right)
	for _, t := range terms {
		if f, _ := judging.ForceMeant(e.about.solution.Assembly, t.Force); t.Force != "" && (f == statics.None || sum.Factor(f).IsZero()) {
			return false
		}
	}
	return len(terms) == wanted
}

// wrongTerms reports whether a mistake leaves out a term or brings one in that does not belong there.
func wrongTerms(id string) bool {
	s := slip.ByID(id)
	return s == nil || s.Group == slip.Body || s.Group == slip.Connection || s.Group == slip.PinPair
}

// value is what a value earns: all where it is right or follows from the student's own sums and values, and what the scheme gives
// for the rest. Beside the verdict it gives what is to be said of a mistake, as a sentence after a space.
func (e *exam) value(n int, q Question, a answer) (verdict, says string) {
	v := e.of[q.Name]
	switch {
	case v == nil:
		e.give(accuracyMark, one(a.verdict.Right()), exact.Int(1))
		return a.verdict.String(), ""
	case v.Verdict != marking.Right && v.Verdict != marking.Rounded && v.Verdict != marking.Carried && e.follows(n, q, a):
		e.give(followMark, exact.Int(1), exact.Int(1))
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

// follows reports whether a value is what the student's own sums give: an equation that was typed before it, or the terms of its
// step.
func (e *exam) follows(n int, q Question, a answer) bool {
	if q.Kind != ForceValue {
		return false
	}
	for k, other := range e.sheet.questions[:n] {
		if other.Kind == TypeSum && e.sheet.answers[k].tries > 0 && e.closes(e.sheet.answers[k].typed, q, a) {
			return true
		}
	}
	return e.closesTerms(n, q, a)
}

// closes reports whether a value closes an equation as it was typed, with the student's own values in it.
func (e *exam) closes(text string, q Question, a answer) bool {
	typed, err := notation.ReadSum(e.bench().judge().Decimals(text), e.about.problem.Units, e.about.namesForce)
	if err != nil {
		return false
	}
	var rest, factor exact.Num
	side := func(terms []notation.TypedTerm, sign int64) {
		for _, t := range terms {
			value := t.Value.Mul(exact.Int(sign))
			f, turn := judging.ForceMeant(e.about.solution.Assembly, t.Force)
			switch {
			case t.Force == "":
				rest = rest.Add(value)
			case f == q.Force:
				factor = factor.Add(value.Mul(exact.Int(int64(turn))))
			case f != statics.None:
				rest = rest.Add(value.Mul(exact.Int(int64(turn))).Mul(e.own(f)))
			}
		}
	}
	side(typed.Left, 1)
	side(typed.Right, -1)
	return gives(rest, factor, a.value)
}

// closesTerms reports whether a value closes the one sum of its step, in the terms as they were typed.
func (e *exam) closesTerms(n int, q Question, a answer) bool {
	step := e.about.solution.Plan[q.Step]
	if len(step.Sums) != 1 {
		return false
	}
	sum := step.Sums[0]
	terms, asked := slices.Clone(sum.Terms), false
	for k, other := range e.sheet.questions[:n] {
		v := e.sheet.answers[k]
		if other.Step != q.Step || !other.ofTerm() || v.tries == 0 {
			continue
		}
		asked = true
		t := &terms[other.Term]
		switch other.Kind {
		case TermSize:
			t.Size = v.value
		case TermArm:
			t.Arm = v.value
		case TermSign:
			if v.value.Sign() != 0 && (v.value.Sign() > 0) != (e.about.shownSign(sum, *t) > 0) {
				t.Sign = -t.Sign
			}
		}
	}
	var rest, factor exact.Num
	for _, t := range terms {
		switch {
		case t.Force == q.Force:
			factor = factor.Add(t.Value())
		case t.Force != statics.None:
			rest = rest.Add(t.Value().Mul(e.own(t.Force)))
		default:
			rest = rest.Add(t.Value())
		}
	}
	return asked && gives(rest, factor, a.value)
}

// own is the value of a force as the student has it.
func (e *exam) own(f int) exact.Num {
	for _, values := range e.sheet.putIn()[1:] {
		if v, settled := values(f); settled {
			return v
		}
	}
	return e.about.solution.Values[f]
}

// gives reports whether rest + factor × value = 0, but for a half per cent of the value: half a unit in the third figure.
func gives(rest, factor, value exact.Num) bool {
	v, err := rest.Neg().Quo(factor)
	return err == nil && !v.IsZero() && v.Sub(value).Abs().Mul(exact.Int(200)).Cmp(v.Abs()) <= 0
}

// total is what was earned, by marks and in all.
func (e *exam) total() string {
	var parts []string
	var all tally
	for _, m := range []mark{bodyMark, methodMark, accuracyMark, followMark} {
		t := e.earned[m]
		if t.of.IsZero() {
			continue
		}
		all = tally{all.got.Add(t.got), all.of.Add(t.of)}
		parts = append(parts, fmt.Sprintf("%s %s of %s", m, marking.Points(t.got), marking.Points(t.of)))
	}
	return fmt.Sprintf("Marks: %s; in all %s of %s. What the level prints earns none.", strings.Join(parts, ", "), marking.Points(all.got), marking.Points(all.of))
}

// checks hold the student's values against the sums that check the work, where every force in them was answered.
func (e *exam) checks() []string {
	var lines []string
	if e.truth == nil || e.result == nil {
		return nil
	}
	own, answered := e.result.Forces()
	words := wording.New(e.truth.Assembly, e.about.style())
	for _, step := range e.truth.Plan {
		if !step.Check || slices.ContainsFunc(step.Sums[0].Terms, func(t statics.Term) bool { return t.Force != statics.None && !answered[t.Force] }) {
			continue
		}
		var comes, largest exact.Num
		for _, t := range step.Sums[0].Terms {
			v := t.Value()
			if t.Force != statics.None {
				v = v.Mul(own[t.Force])
			}
			comes, largest = comes.Add(v), exact.Max(largest, v.Abs())
		}
		name := words.BodyAndSum(step.Sums[0])
		if comes.Abs().Mul(exact.Int(100)).Cmp(largest) <= 0 {
			lines = append(lines, wording.Sentence("The check, "+name+", closes with your values"))
			continue
		}
		dim := notation.Force
		if step.Sums[0].Moment {
			dim = notation.Moment
		}
		lines = append(lines, wording.Sentence("The check, "+name+", comes to "+words.Value(comes, dim)+" with your values: it shows that something is wrong"))
	}
	return lines
}
