package tutor

import (
	"errors"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Where the student makes the plan, an exam asks for one check of the work: a sum that was not used, and what it comes to with the
// student's own values. It has a mark of its own, which a check that shows a fault earns as well.

// checkName is what the question is called.
const checkName = "check"

// askCheck asks for a check, in an exam in which all forces were to be found.
func askCheck(l *Lesson) {
	if l.sheet.exam {
		l.sheet.ask(Question{Kind: CheckSum, Name: checkName, Step: statics.None, Member: statics.None})
	}
}

// checkForm says how a check is written.
func checkForm(m *matter) string {
	return "Check your work: type a sum that you have not used, and what it comes to with your values, as in: whole M " + m.solution.Frame.Joints[0].Name + " = 0."
}

// readCheck reads a check: a free body and a sum of it, =, and a value.
func (b bench) readCheck(line string) (statics.Sum, exact.Num, error) {
	at := strings.LastIndex(line, "=")
	if at < 0 {
		return statics.Sum{}, exact.Num{}, errors.New("write the sum, =, and what it comes to with your values, as in: whole M " + b.about.solution.Frame.Joints[0].Name + " = 0")
	}
	s, err := b.about.readChoice(line[:at])
	if err != nil {
		return s, exact.Num{}, err
	}
	dim := notation.Force
	if s.Moment {
		dim = notation.Moment
	}
	value, err := notation.ReadNumber(strings.TrimSpace(line[at+1:]), nil, b.about.problem.Units, dim)
	return s, value, err
}

// noteCheck takes a check down.
func noteCheck(l *Lesson, line string) Reply {
	_, value, err := l.bench().readCheck(line)
	if err != nil {
		return unreadLine(line, err, true)
	}
	l.sheet.inHand().tries++
	r := ruling{value: value}
	if ok, says := checkFault(l, line); !ok {
		r.verdict, r.says = judging.Wrong, says
	}
	return l.settle(line, r)
}

// checkFault judges a check by the values that the student has by now; what is wrong with it is said as a sentence.
func checkFault(l *Lesson, line string) (ok bool, says string) {
	s, value, err := l.bench().readCheck(line)
	if err != nil {
		return false, "it cannot be read."
	}
	for _, step := range l.about.solution.Plan {
		if slices.ContainsFunc(step.Sums, func(used statics.Sum) bool { return sameSum(used, s) }) {
			return false, "this sum gave one of your values, so it closes whatever they are: which other sum holds them?"
		}
	}
	e := &exam{Lesson: l}
	var comes, largest exact.Num
	holds, given := false, true
	for _, t := range s.Terms() {
		v := t.Value()
		if t.Force != statics.None {
			v, holds = v.Mul(e.own(t.Force)), holds || t.Why == statics.Counts
			given = given && (t.Why != statics.Counts || slices.ContainsFunc(l.sheet.answersFor(t.Force), func(a answer) bool { return a.tries > 0 }))
		}
		comes, largest = comes.Add(v), exact.Max(largest, v.Abs())
	}
	off := comes.Sub(value).Abs().Mul(exact.Int(100)).Cmp(largest) <= 0
	turned := comes.Add(value).Abs().Mul(exact.Int(100)).Cmp(largest) <= 0
	switch {
	case !holds:
		return false, "this sum holds none of your values: which sum does?"
	case !given:
		return false, "this sum holds a force that you left open."
	case off || turned: // of the sense that counts as positive nothing was agreed
		return true, ""
	}
	dim := notation.Force
	if s.Moment {
		dim = notation.Moment
	}
	return false, "with your values the sum comes to " + wording.New(l.about.solution.Assembly, l.about.style()).Value(comes, dim) + "."
}

// sameSum reports whether two sums are of the same free body, about the same point or along the same line.
func sameSum(a, b statics.Sum) bool {
	if a.Moment != b.Moment || !slices.Equal(a.Body, b.Body) {
		return false
	}
	if a.Moment {
		return a.About.X.Equal(b.About.X) && a.About.Y.Equal(b.About.Y)
	}
	return a.Along.Cross(b.Along).IsZero()
}

// check is what a check earns.
func (e *exam) check(a answer) string {
	ok, says := checkFault(e.Lesson, a.typed)
	e.give(checkMark, one(ok), exact.Int(1))
	if ok {
		return "right."
	}
	return "no check; " + says
}
