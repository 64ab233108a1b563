package tutor

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A ShownStep is a step of the plan as it stands on the sheet.
type ShownStep struct {
	Title   string
	Because string // why this sum; empty where the student chose it
	Sums    []ShownSum
	Forces  []int // what it gives
}

// A ShownSum is a sum as it stands on the sheet.
type ShownSum struct {
	Title   string // only of sums that are solved together
	Terms   []ShownTerm
	Symbols string // empty as long as it must not be shown
	Asked   string // the force in it that is asked for, or nothing
	Numbers string // with values put in; empty where it says no more, or must not be shown
	Holds   bool   // a check, which comes to zero
}

// Step is step i of the plan as it stands on the sheet: free body and sum, the reason, the terms.
func (d Display) Step(i int) ShownStep {
	step := d.step(i)
	before := d.about.solution.KnownBefore(i)
	s := ShownStep{Title: d.StepTitle(i), Forces: step.Gives}
	if !d.own(i) && !d.about.withholds(i) {
		s.Because = d.Words(d.Style()).Because(step, func(f int) bool { _, ok := before(f); return ok })
	}
	for n, sum := range step.Sums {
		shown := ShownSum{Terms: d.TermsAsked(i, n)}
		if len(step.Sums) > 1 {
			shown.Title = fmt.Sprintf("(%d) %s", n+1, wording.Capital(d.bodyAndSum(sum)))
		}
		if !d.HidesTerms(i) && allSettled(shown.Terms) {
			shown.Symbols = d.Words(d.Style()).Symbols(sum)
			numbers := d.Words(d.Style()).Numbers(sum, before)
			if numbers != shown.Symbols && !d.Hiding() && (i < d.StepInHand() || d.LevelOf(i) == Read) {
				shown.Numbers = numbers
			}
			shown.Holds = step.Check && !d.Hiding()
			if q, asking := d.lesson.Now(); asking && q.Kind == ForceValue && q.Step == i {
				shown.Asked = q.Name
			}
		}
		s.Sums = append(s.Sums, shown)
	}
	return s
}

// allSettled reports whether there is nothing left to ask of these terms.
func allSettled(terms []ShownTerm) bool {
	for _, t := range terms {
		if !t.Settled {
			return false
		}
	}
	return true
}

// Kept lists the true sums that the student has and that leave more unknowns than they can give.
func (d Display) Kept() []ShownSum {
	if d.route == nil {
		return nil
	}
	var all []ShownSum
	for _, s := range d.route.kept {
		all = append(all, ShownSum{Title: d.bodyAndSum(s), Numbers: d.route.keptText(s, d.Words(d.Style()))})
	}
	return all
}

// TurnCome is why a sum that was kept is taken up by itself, when its first question is in hand; nothing at any other question.
func (d Display) TurnCome() string {
	q, asking := d.lesson.Now()
	if !asking || d.route == nil || d.lesson.Exam() || q.Step == statics.None || d.step(q.Step).Why != statics.RelationUsed {
		return ""
	}
	if at := d.lesson.sheet.at; at > 0 && d.lesson.sheet.questions[at-1].Step == q.Step {
		return ""
	}
	return d.Step(q.Step).Because
}

// Found is what the sheet says of force f: its value once it is found or told, in an exam what was typed for it; with a
// remark. Nothing while it is asked for.
func (d Display) Found(f int) (text, remark string) {
	n := d.questionOf(f)
	typed := ""
	if n >= 0 {
		typed, _, _, _ = d.lesson.Standing(n)
	}
	_, known := d.lesson.Known(f)
	switch {
	case known || n < 0 || d.lesson.Exam() && !d.Hiding(): // n < 0: a worked step
		return d.valueText(f), d.remark(n, typed)
	case d.lesson.Exam() && typed != "":
		return d.assembly().Forces[f].Name + ": you typed " + typed, ""
	}
	return "", ""
}

// remark is what is said beside a value: that it was told, or what was typed where that reads otherwise; after an exam,
// how it was judged.
func (d Display) remark(n int, typed string) string {
	if n < 0 {
		return ""
	}
	_, _, told, v := d.lesson.Standing(n)
	switch {
	case d.lesson.Exam() && typed == "":
		return "left open"
	case d.lesson.Exam() && v.Right():
		return v.String() + ": you typed " + typed
	case d.lesson.Exam():
		return "not right: you typed " + typed
	case told:
		return "told"
	case v != judging.Exact && typed != "":
		return "you typed " + typed
	}
	return ""
}

// MemberTitle names a member, whence its distances run, and its length.
func (d Display) MemberTitle(m int) string {
	along, f := d.about.solution.Diagrams[m], &d.assembly().Frame
	return fmt.Sprintf("Member %s, distances from %s, length %s", f.Members[m].Name, d.startOf(m), d.Style().WithUnit(along.Length, notation.Length))
}

// startOf is the joint from which distances along a member run.
func (d Display) startOf(m int) string {
	f := &d.assembly().Frame
	return f.Joints[f.Members[m].From].Name
}

// Section is what the sheet says of question n, which asks for N, V, M or a shape; nothing as long as it must not be shown.
func (d Display) Section(n int) string {
	q := d.lesson.Asked()[n]
	typed, settled, _, _ := d.lesson.Standing(n)
	switch {
	case !settled && !(d.lesson.Exam() && !d.Hiding()):
		return ""
	case d.Hiding():
		return q.Name + ": you typed " + typed
	}
	text := q.Name + " = " + d.Style().Result(d.Shown(q), q.Dim)
	if q.Shape() {
		text = d.Answer(q)
	}
	if r := d.remark(n, typed); r != "" && !(r == "you typed "+typed && strings.Contains(text, " "+typed+" ")) {
		text += "  (" + r + ")"
	}
	return text
}

// Stations are N, V and M at all critical points of a member, a line each.
func (d Display) Stations(m int) []string {
	along := d.about.solution.Diagrams[m]
	if along.Withheld {
		return []string{"This member lies on a closed ring, so equilibrium alone does not give its N, V and M."}
	}
	st := d.Style()
	var lines []string
	for _, s := range along.Stations() {
		side := [...]string{"", " before", " after"}[s.Side]
		lines = append(lines, fmt.Sprintf("at %s%s: N %s, V %s, M %s", st.WithUnit(s.At, notation.Length), side, st.Result(s.N, notation.Force),
			st.Result(st.Shear.Value(s.V), notation.Force), st.Result(s.M, notation.Moment)))
	}
	return lines
}
