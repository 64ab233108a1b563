package tutor

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A teller says in lines what a lesson is about: its frame, its steps, its members.
type teller struct {
	about *matter
	again bool // it brings back one step, so that steps have no numbers
	open  bool // the student makes the plan
	exam  bool
}

// own reports whether step i of the plan is one that the student chose, so that it needs no reason.
func (t teller) own(i int) bool { return t.open && t.about.solution.Plan[i].Why == statics.StayOnBody }

// stepLines say what a step is about; a step that asks nothing (a relation, the check, a worked step) in full.
func (t teller) stepLines(i int) []string {
	a, st, step := t.about.solution.Assembly, t.about.style(), t.about.solution.Plan[i]
	before := t.about.solution.KnownBefore(i)
	known := func(f int) bool { _, ok := before(f); return ok }
	lines := []string{fmt.Sprintf("Step %d of %d.", i+1, len(t.about.solution.Plan))}
	switch {
	case t.again:
		lines = nil
	case t.open:
		lines = []string{fmt.Sprintf("Step %d.", i+1)}
	}
	if !t.own(i) && !t.about.withholds(i) {
		lines = append(lines, wording.New(a, st).Because(step, known))
	}
	for _, s := range step.Sums {
		lines = append(lines, "Free body: "+wording.Body(a, s.Body)+".", "Sum: "+wording.New(a, st).SumTitle(s)+".")
		if absent := wording.New(a, st).Absent(s); absent != "" && !(t.exam && t.open) && !t.about.withholds(i) {
			lines = append(lines, absent)
		}
		if pulleys := wording.New(a, st).KeptPulleys(s.Body); s.Moment && pulleys != "" && !t.exam && t.firstOn(i, s.Body) {
			lines = append(lines, pulleys)
		}
		symbols, numbers := wording.New(a, st).Symbols(s), wording.New(a, st).Numbers(s, before)
		if t.about.levels.of(i) <= Values || step.Relation || step.Check {
			lines = append(lines, symbols)
		}
		if numbers != symbols && (t.about.levels.of(i) == Read || step.Check && !t.exam) {
			lines = append(lines, numbers)
		}
	}
	if t.about.levels.of(i) == Read {
		for _, f := range step.Gives {
			lines = append(lines, t.about.forceText(f)+".")
		}
	}
	return lines
}

// firstOn reports whether no step before has moments of a free body.
func (t teller) firstOn(i int, body statics.FreeBody) bool {
	return !slices.ContainsFunc(t.about.solution.Plan[:i], func(step statics.Step) bool {
		return slices.ContainsFunc(step.Sums, func(s statics.Sum) bool { return s.Moment && slices.Equal(s.Body, body) })
	})
}

// knownLines tell the forces that are known by a question and that it rests on.
func (t teller) knownLines(q Question, known func(int) bool) []string {
	var lines []string
	for f := range t.about.solution.Forces {
		if known(f) && t.restsOn(q, f) {
			lines = append(lines, "Known by now: "+t.about.forceText(f)+".")
		}
	}
	return lines
}

// restsOn reports whether force f counts in the sums of a question, or touches the part of its member.
func (t teller) restsOn(q Question, f int) bool {
	if q.Step == statics.None {
		part := t.about.solution.PartOf(q.Member)
		return part != statics.None && slices.Contains(t.about.solution.ForcesOn(statics.FreeBody{part}), f)
	}
	return slices.ContainsFunc(t.about.solution.Plan[q.Step].Sums, func(s statics.Sum) bool { return !s.Factor(f).IsZero() })
}

// forceText is a force with its value, unit and sense.
func (m *matter) forceText(i int) string {
	f := m.solution.Forces[i]
	return m.truthText(Question{Kind: ForceValue, Name: f.Name, Dim: notation.ForceDimension(f), Force: i, truth: m.solution.Values[i]})
}

// memberLines say what is asked along a member; at the level read, its critical points with their values.
func (t teller) memberLines(m int) []string {
	d := t.about.solution.Diagrams[m]
	w := t.about.words().Spoken()
	lines := []string{w.Member(m) + ". " + w.SectionSigns(m)}
	switch {
	case d.Withheld:
		lines = append(lines, "This member lies on a closed ring, so equilibrium alone does not give its N, V and M.")
	case t.about.levels.along(m) == Read:
		for _, q := range t.about.script().sectionQuestions(d) {
			lines = append(lines, t.about.truthText(q))
		}
	}
	return lines
}

// frameLines describe the frame as given and what is unknown, one fact a line.
func (t teller) frameLines() []string {
	lines := figure.Describe(t.about.solution.Assembly, figure.Options{Style: t.about.style()})
	for _, p := range t.about.solution.Pins {
		lines = append(lines, "The "+p.Name+" is a free body of its own.")
	}
	for i := range t.about.solution.Forces {
		lines = append(lines, t.about.unknownText(i))
	}
	return lines
}

// unknownText says what unknown i is and which way counts as positive.
func (m *matter) unknownText(i int) string { return m.words().Spoken().Unknown(i) + "." }
