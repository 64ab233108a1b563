package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A target is a question as the catalogue of slips sees it: the right value, and those that slips lead to.
type target interface {
	Value() exact.Num
	Candidates() []slip.Candidate
}

// targets are a question with exact values, and with the student's own where they differ; none for a question that slips
// in terms are known of.
func (l *Lesson) targets(q Question) []target {
	if q.Kind != ForceValue && q.Kind != SectionPart {
		return nil
	}
	all := []target{l.target(q, l.Solution.Values)}
	if own := l.own(); !slices.EqualFunc(own, l.Solution.Values, exact.Num.Equal) {
		all = append(all, l.target(q, own))
	}
	return all
}

// target is a question with these values of the forces.
func (l *Lesson) target(q Question, values []exact.Num) target {
	if q.Kind == SectionPart {
		return l.section(q, values)
	}
	return l.slipQuestion(q, values)
}

// allCandidates lists the wrong values that slips lead to, for each target.
func (l *Lesson) allCandidates(q Question) [][]slip.Candidate {
	var lists [][]slip.Candidate
	for _, t := range l.targets(q) {
		lists = append(lists, t.Candidates())
	}
	return lists
}

// section is a question about N, V or M as the catalogue of slips sees it.
func (l *Lesson) section(q Question, values []exact.Num) slip.Section {
	return slip.Section{
		Solution:  l.Solution,
		Member:    q.Member,
		Station:   q.Station,
		Quantity:  statics.Quantity(q.Quantity),
		Values:    l.asGiven(values),
		Customary: l.Problem.Units.Customary(),
	}
}

// slipQuestion is a question about a force or a term as the catalogue of slips sees it.
func (l *Lesson) slipQuestion(q Question, values []exact.Num) slip.Question {
	step, before := l.Solution.Plan[q.Step], l.Solution.KnownBefore(q.Step)
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
		Customary: l.Problem.Units.Customary(),
		Written:   l.RungOf(q.Step) >= Terms,
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

// termSlip says which slip a wrong size, arm or sign of a term came from, asks where several make the same of it, or
// says nothing.
func (l *Lesson) termSlip(q Question, v Typed) string {
	var says []string
	slips := l.slipsOfTerm(q, v)
	for _, s := range slips {
		says = append(says, s.Asks())
		l.trace(s.ID)
	}
	if len(slips) == 1 {
		return lowerFirst(slips[0].Says)
	}
	if len(slips) == 0 {
		return ""
	}
	return "there is more than one way to this entry: " + strings.Join(says, ", and ") + "?"
}

// slipsOfTerm lists the slips that make of a term what was typed of it.
func (l *Lesson) slipsOfTerm(q Question, v Typed) []*slip.Slip {
	var all []*slip.Slip
	for _, a := range l.slipQuestion(q, l.Solution.Values).OfTerm(q.Sum, q.Term) {
		if l.typedAs(q, v, a.Term) && !slices.Contains(all, a.Slip) {
			all = append(all, a.Slip)
		}
	}
	return all
}

// typedAs reports whether v is what a question about a term asks, of the term as it is given here.
func (l *Lesson) typedAs(q Question, v Typed, term statics.Term) bool {
	switch q.Kind {
	case TermSize:
		return v.meant(term.Size)
	case TermArm:
		return v.meant(term.Arm)
	}
	return v.Value.Equal(exact.Int(int64(l.shownSign(l.Solution.Plan[q.Step].Sums[q.Sum], term))))
}

// meant reports whether a value equals a number, or that number rounded at the place it was typed to.
func (v Typed) meant(n exact.Num) bool { return v.Value.Equal(n) || v.roundedFrom(n) }
