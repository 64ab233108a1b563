package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
)

// A ShownTerm is a term of which force, arm and sign are asked, as far as it is settled.
type ShownTerm struct {
	source          string // what gives it
	size, arm, sign string // settled, or a question mark, or empty where it is not asked
	Settled         bool   // all that is asked of it
	InHand          bool   // something of it is asked now
	asksArm         bool
	ascii           bool
}

// Text is the term as it stands on the sheet.
func (t ShownTerm) Text() string {
	text := t.sign + " "
	if t.size != "" {
		text += t.size
	} else {
		text += t.source
	}
	if t.arm != "" {
		text += " × " + t.arm
	}
	if t.size != "" {
		text += ", " + t.source
	}
	if t.ascii {
		return notation.ASCII(text)
	}
	return text
}

// TermsAsked lists the terms of sum n of step i of which something is asked, as they stand.
func (d Display) TermsAsked(i, n int) []ShownTerm {
	var all []ShownTerm
	term := statics.None
	st := d.View.Style(false)
	at, _ := d.lesson.Position()
	for k, q := range d.lesson.Asked() {
		if q.Step != i || q.Sum != n || q.Kind != TermSize && q.Kind != TermArm && q.Kind != TermSign {
			continue
		}
		t := d.step(i).Sums[n].Terms()[q.Term]
		if q.Term != term {
			term = q.Term
			all = append(all, ShownTerm{source: d.Words(st).Source(t), Settled: true, ascii: d.ascii})
		}
		s := &all[len(all)-1]
		_, settled, _, _ := d.lesson.Standing(k)
		s.Settled = s.Settled && settled
		s.InHand = s.InHand || k == at
		s.asksArm = s.asksArm || q.Kind == TermArm
		field := map[Kind]*string{TermSize: &s.size, TermArm: &s.arm, TermSign: &s.sign}[q.Kind]
		*field = d.askedText(k, t, st)
	}
	return all
}

// askedText is what stands for question k about a term: what is right once it is settled, in an exam what was typed, and
// after it both where they differ.
func (d Display) askedText(k int, t statics.Term, st notation.Style) string {
	q := d.lesson.Asked()[k]
	typed, settled, _, v := d.lesson.Standing(k)
	text := ""
	switch q.Kind {
	case TermSize:
		text = st.WithUnit(t.Size, q.Dim)
	case TermArm:
		text = st.WithUnit(t.Arm, q.Dim)
	default:
		text = signText(t.Sign, d.step(q.Step).Sums[q.Sum].Moment && st.Moments == notation.ClockwiseMoments)
	}
	over := d.lesson.Exam() && !d.Hiding()
	switch {
	case d.Hiding() && settled:
		return typed
	case over && typed == "":
		return text + " (left open)"
	case over && !v.Right():
		return text + " (not " + typed + ")"
	case !settled:
		return map[Kind]string{TermSize: "force?", TermArm: "arm?", TermSign: "sign?"}[q.Kind]
	}
	return text
}

// settledArm reports whether the arm of the term in hand is on the sheet.
func (d Display) settledArm(q Question) bool {
	n := slices.IndexFunc(d.lesson.Asked(), func(k Question) bool {
		return k.Kind == TermArm && k.Step == q.Step && k.Sum == q.Sum && k.Term == q.Term
	})
	if n < 0 {
		return false
	}
	_, settled, _, _ := d.lesson.Standing(n)
	return settled
}

// signText is a sign, turned where the sum counts the other way.
func signText(sign int, turned bool) string {
	if sign > 0 != turned {
		return "+"
	}
	return "−"
}
