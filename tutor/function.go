package tutor

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/tutor/record"
)

// Where the student makes the plan, N, V or M on a stretch of a member may be typed as a function of x in place of its
// values there: it is judged by its degree and its values at both ends and in the middle, and settles what is asked of that
// quantity on the stretch.

// takesFunction reports whether a function may be typed in place of the value that a question asks for.
func takesFunction(m *matter, q Question) bool {
	return q.Kind == SectionPart && m.levels.along(q.Member) >= Plan && !m.solution.Diagrams[q.Member].Withheld
}

// stretchOf is the stretch that begins where a question asks, or the one that ends there, just before a place or at the end.
func stretchOf(m *matter, q Question) statics.Stretch {
	all := m.solution.Diagrams[q.Member].Stretches
	for _, p := range all {
		if until := q.Station.At.Cmp(p.Until); holds(p, q.Station) && (until < 0 || q.Station.Side == statics.Before) {
			return p
		}
	}
	return all[len(all)-1]
}

// functionName is a quantity named as a function, as in M(x) = 11.5x - 2x^2.
var functionName = notation.Pattern(`(?i)^\s*[NVM]\s*\(\s*x\s*\)\s*=`)

// lastX is an x that multiplies no number after it.
var lastX = notation.Pattern(`[xX]\s*([-+−)²³^*/·]|$)`)

// readsAsFunction reports whether a line is meant as a function: it is named as one, or holds an x and is no value.
func (b bench) readsAsFunction(q Question, line string) bool {
	if functionName().MatchString(line) || lastX().MatchString(line) {
		return true
	}
	_, err := b.read(q, line)
	return err != nil && strings.ContainsAny(line, "xX")
}

// takeFunction takes a line that holds a function of x; false where it does not.
func takeFunction(l *Lesson, q Question, line string) (Reply, bool) {
	if !takesFunction(l.about, q) || !l.bench().readsAsFunction(q, line) {
		return Reply{}, false
	}
	p := stretchOf(l.about, q)
	at := l.sheet.at
	n, err := l.sheet.meant(at, p, line)
	if err != nil {
		return unread(err), true
	}
	l.sheet.at = n
	r, moved := judgeFunction(l, l.sheet.questions[n], p, line)
	if n != at {
		if moved {
			l.sheet.answers[n].along = true
		}
		l.sheet.at = at
	}
	return r, true
}

// meant is which question of a stretch a function is for, from the one numbered at on: that of the quantity that it is named
// by, else that one itself.
func (sh *sheet) meant(at int, p statics.Stretch, line string) (int, error) {
	named := functionName().FindString(line)
	if named == "" {
		return at, nil
	}
	letter := strings.ToUpper(strings.TrimSpace(named)[:1])
	for n := at; n < len(sh.questions); n++ {
		if q := sh.questions[n]; q.onStretch(sh.questions[at].Member, p) && q.Quantity.Letter() == letter && !sh.answers[n].along {
			return n, nil
		}
	}
	return at, fmt.Errorf("%s is settled on this stretch; %s is asked for", letter, sh.questions[at].Name)
}

// onStretch reports whether a question asks for N, V or M on a stretch of a member.
func (q Question) onStretch(member int, p statics.Stretch) bool {
	return q.Kind == SectionPart && q.Member == member && holds(p, q.Station)
}

// judgeFunction judges a function for the question in hand and what else is asked of its quantity on the stretch, and reports
// whether they are settled.
func judgeFunction(l *Lesson, q Question, p statics.Stretch, line string) (Reply, bool) {
	b := l.bench()
	f, err := b.judge().ReadFunction(b.asked(q), line)
	if err != nil {
		return unread(err), false
	}
	found := b.judge().Along(q.Member, p, q.Quantity).Find(f)
	r := ruling{verdict: found.Verdict, says: found.Says, slips: found.Slips}
	l.sheet.inHand().tries++
	if !found.Verdict.Right() && !l.sheet.exam {
		return l.settle(line, r), false
	}
	if found.Verdict.Right() {
		r.says = "its degree is, and so are its values at both ends and in the middle."
	}
	settleAlong(l, q, p, line, r, f)
	return l.settle(line, r.at(b, q, f)), true
}

// settleAlong settles what else is asked of a quantity on a stretch, after the question in hand.
func settleAlong(l *Lesson, q Question, p statics.Stretch, line string, r ruling, f exact.Poly) {
	at := l.sheet.at
	for n := len(l.sheet.questions) - 1; n > at; n-- {
		o := l.sheet.questions[n]
		if !o.onStretch(q.Member, p) || o.Quantity != q.Quantity {
			continue
		}
		l.sheet.at = n
		l.sheet.inHand().tries++
		l.sheet.enter(line, r.at(l.bench(), o, f))
		l.sheet.inHand().along = true
		l.heed(o, line, outcomeOf(r, l.sheet.exam))
	}
	l.sheet.at = at
}

// at is the ruling on a function as one on its value where a question asks; of a wrong one, noted in an exam, that value may
// be right.
func (r ruling) at(b bench, q Question, f exact.Poly) ruling {
	r.value = f.At(q.Station.At)
	if !r.verdict.Right() {
		r.verdict = b.caseOf(q).Verdict(judging.Typed{Value: r.value, Written: r.value, Unit: exact.Int(1)})
	}
	return r
}

// outcomeOf is how a ruling is kept.
func outcomeOf(r ruling, exam bool) record.Outcome {
	if exam {
		return record.Noted
	}
	return record.Outcome(r.verdict.Code())
}

// holds reports whether a place lies on a stretch: before a jump at its end, and after one at its start.
func holds(p statics.Stretch, at statics.Station) bool {
	from, until := at.At.Cmp(p.From), at.At.Cmp(p.Until)
	return from > 0 && until < 0 || from == 0 && at.Side != statics.Before || until == 0 && at.Side != statics.After
}

// stretchLines say what may be typed where a stretch begins.
func stretchLines(m *matter, q Question) []string {
	if !takesFunction(m, q) {
		return nil
	}
	return []string{"On " + problems.StretchName(m.solution, q.Member, stretchOf(m, q)) + ": type values, or " + functionForm(m, q) + "."}
}

// functionForm is how a function is typed.
func functionForm(m *matter, q Question) string {
	return "N(x), V(x) or M(x) as functions of the distance x from " + m.startOf(q) + ", as in M(x) = 5x - 2x^2"
}
