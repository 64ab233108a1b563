package tutor

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// diagnose finds the slips that a typed value agrees with, made with exact values or with the student's own.
func (l *Lesson) diagnose(q Question, v Typed) slip.Diagnosis {
	if q.Kind != ForceValue {
		return slip.Diagnosis{}
	}
	return slip.Diagnose(v.places(), l.candidates(q, l.Solution.Values), l.candidates(q, l.own()))
}

// candidates lists the wrong values of a force that slips lead to, with these values of the forces known before.
func (l *Lesson) candidates(q Question, values []exact.Num) []slip.Candidate {
	return l.slipQuestion(q, values).Candidates()
}

// slipQuestion is a question about a force or a term as the catalogue of slips sees it.
func (l *Lesson) slipQuestion(q Question, values []exact.Num) slip.Question {
	step, before := l.Solution.Plan[q.Step], l.knownBefore(q.Step)
	length := l.Problem.Units.Of(notation.Length)
	return slip.Question{
		Assembly: l.Solution.Assembly,
		Sums:     step.Sums,
		Gives:    step.Gives,
		Force:    q.Force,
		Values:   values,
		Known: func(f int) bool {
			_, known := before(f)
			return known
		},
		Customary: length == "ft" || length == "in",
		Written:   l.Rung == Terms,
	}
}

// places is the value as it may be meant: one reading for each place that leaves three figures, the finest first; with
// fewer figures the number as it stands.
func (v Typed) places() []slip.Typed {
	if len(v.Places) == 0 || v.Written.IsZero() {
		return []slip.Typed{{Value: v.Value, Figures: slip.AllFigures}}
	}
	var all []slip.Typed
	first := leading(v.Written)
	for _, p := range v.Places {
		t := slip.Typed{Value: v.Value, Figures: first - p + 1}
		if t.Figures >= 3 {
			t.Within = powerOfTen(p).Mul(exact.MustParse("0.5")).Mul(v.Unit)
		}
		if t.Figures >= 3 || len(all) == 0 {
			all = append(all, t)
		}
	}
	return all
}

// slipText is what a diagnosis says to the student: the one slip, a question that tells several apart, or, where the
// value fits none, nothing.
func (l *Lesson) slipText(q Question, d slip.Diagnosis) string {
	if s := d.Named(); s != nil {
		return lowerFirst(s.Says)
	}
	if len(d.Matches) == 0 {
		return ""
	}
	var asks []string
	for _, m := range d.Matches {
		if ask := l.askOf(q, m); !contains(asks, ask) {
			asks = append(asks, ask)
		}
	}
	if len(asks) > 3 {
		return "a value like this can come about in several ways: written out, which terms are in the sum, and with which arms and senses?"
	}
	return "a value like this can come about in more than one way: " + strings.Join(asks, ", and ") + "?"
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// askOf asks for what a slip is about.
func (l *Lesson) askOf(q Question, c slip.Candidate) string {
	who := l.slipGiver(c.Giver)
	switch {
	case c.Slip.About == slip.Answer:
		return "how does " + q.Name + " follow from the other terms"
	case who == "":
		return "from which centre and which body are the known terms taken"
	case c.Slip.About == slip.Size:
		return "which force is taken for " + who
	case c.Slip.About == slip.Arm:
		return "which arm is taken for " + who
	case c.Slip.About == slip.Sense:
		return "which sense has " + who
	}
	return "does " + who + " belong in this sum"
}

// slipGiver names what a changed term comes from, or nothing.
func (l *Lesson) slipGiver(g slip.Giver) string {
	switch {
	case g.Force != statics.None:
		return l.Solution.Forces[g.Force].Name
	case g.Load != statics.None:
		for i, x := range l.Solution.Loads {
			if x.Load == g.Load {
				return notation.ActionText(l.Solution.Assembly, i, l.style())
			}
		}
	}
	return ""
}

// lowerFirst begins a sentence in the small, as it stands after a verdict.
func lowerFirst(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	return string(unicode.ToLower(r)) + s[size:]
}

// slipOfTerm is what slip gives a wrong size, arm or sign of a term, or nil.
func (l *Lesson) slipOfTerm(q Question, v Typed) *slip.Slip {
	s := l.Solution.Plan[q.Step].Sums[q.Sum]
	for _, a := range l.slipQuestion(q, l.Solution.Values).OfTerm(q.Sum, q.Term) {
		switch q.Kind {
		case TermSize:
			if v.meant(a.Term.Size) {
				return a.Slip
			}
		case TermArm:
			if v.meant(a.Term.Arm) {
				return a.Slip
			}
		case TermSign:
			if v.Value.Equal(exact.Int(int64(l.shownSign(s, a.Term)))) {
				return a.Slip
			}
		}
	}
	return nil
}

// meant reports whether a value equals a number, or that number rounded at the place it was typed to.
func (v Typed) meant(n exact.Num) bool { return v.Value.Equal(n) || v.roundedFrom(n) }
