package tutor

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// stepLines say what a step is about; a step that asks nothing (a relation, the check, a worked step) in full.
func (l *Lesson) stepLines(i int) []string {
	a, st, step := l.Solution.Assembly, l.style(), l.Solution.Plan[i]
	before := l.Solution.KnownBefore(i)
	known := func(f int) bool { _, ok := before(f); return ok }
	lines := []string{fmt.Sprintf("Step %d of %d.", i+1, len(l.Solution.Plan))}
	switch {
	case l.again:
		lines = nil
	case l.route != nil:
		lines = []string{fmt.Sprintf("Step %d.", i+1)}
	}
	if !l.Own(i) {
		lines = append(lines, wording.New(a, st).Because(step, known))
	}
	for _, s := range step.Sums {
		lines = append(lines, "Free body: "+wording.Body(a, s.Body)+".", "Sum: "+wording.New(a, st).SumTitle(s)+".")
		if absent := wording.New(a, st).Absent(s); absent != "" {
			lines = append(lines, absent)
		}
		symbols, numbers := wording.New(a, st).Symbols(s), wording.New(a, st).Numbers(s, before)
		if l.RungOf(i) <= Values || step.Relation || step.Check {
			lines = append(lines, symbols)
		}
		if numbers != symbols && (l.RungOf(i) == Read || step.Check && !l.Exam) {
			lines = append(lines, numbers)
		}
	}
	if l.RungOf(i) == Read {
		for _, f := range step.Gives {
			lines = append(lines, l.forceText(f)+".")
		}
	}
	return lines
}

// knownLines tell the forces that are known by a question and that it rests on.
func (l *Lesson) knownLines(q Question, known func(int) bool) []string {
	var lines []string
	for f := range l.Solution.Forces {
		if known(f) && l.restsOn(q, f) {
			lines = append(lines, "Known by now: "+l.forceText(f)+".")
		}
	}
	return lines
}

// restsOn reports whether force f counts in the sums of a question, or touches the part of its member.
func (l *Lesson) restsOn(q Question, f int) bool {
	if q.Step == statics.None {
		return slices.Contains(l.Solution.ForcesOn(statics.FreeBody{l.Solution.PartOf(q.Member)}), f)
	}
	return slices.ContainsFunc(l.Solution.Plan[q.Step].Sums, func(s statics.Sum) bool { return !s.Factor(f).IsZero() })
}

// forceText is a force with its value, unit and sense.
func (l *Lesson) forceText(i int) string {
	f := l.Solution.Forces[i]
	return l.truthText(Question{Kind: ForceValue, Name: f.Name, Dim: notation.ForceDimension(f), Force: i, truth: l.Solution.Values[i]})
}

// memberLines say what is asked along a member; at the rung read, its critical points with their values.
func (l *Lesson) memberLines(m int) []string {
	d, f := l.Solution.Diagrams[m], &l.Solution.Frame
	mem := f.Members[m]
	slope, side := l.shearSigns()
	lines := []string{fmt.Sprintf("Member %s, distances from %s, length %s. N in tension, V and M as %s, V positive where the forces on the side of %s act to the %s as one looks along it.",
		mem.Name, f.Joints[mem.From].Name, l.style().WithUnit(d.Length, notation.Length), slope, f.Joints[mem.From].Name, side)}
	switch {
	case d.Withheld:
		lines = append(lines, "This member lies on a closed ring, so equilibrium alone does not give its N, V and M.")
	case l.RungAlong(m) == Read:
		for _, q := range l.sectionQuestions(d) {
			lines = append(lines, l.truthText(q))
		}
	}
	return lines
}

// frameLines describe the frame as given and what is unknown, one fact a line.
func (l *Lesson) frameLines() []string {
	lines := figure.Describe(l.Solution.Assembly, figure.Options{Style: l.style()})
	for _, p := range l.Solution.Pins {
		lines = append(lines, "The "+p.Name+" is a free body of its own.")
	}
	for _, x := range l.Solution.Forces {
		lines = append(lines, l.unknownText(x))
	}
	return lines
}

// unknownText says what an unknown is and which way counts as positive.
func (l *Lesson) unknownText(x statics.Force) string {
	sense := notation.SenseOf(x, exact.Int(1))
	text := fmt.Sprintf("%s%s acts on %s, positive %s", x.Name, l.slidingText(x), l.Solution.BodyName(x.On), sense)
	if x.By != statics.None {
		text += ", and the opposite on " + l.Solution.BodyName(x.By)
	}
	return text + "."
}

// slidingText says of the force of a slot or a sleeve why it has the direction it has.
func (l *Lesson) slidingText(x statics.Force) string {
	slides := func(c statics.Connection) bool { return c.Joint == x.Joint && c.Kind != statics.Pin }
	if x.Kind != statics.PinForce || x.Couple || !slices.ContainsFunc(l.Solution.Frame.Connections, slides) {
		return ""
	}
	return ", the force square to the line of sliding at " + l.Solution.Frame.Joints[x.Joint].Name + ","
}

// Marks lists, after an exam, each answer with its verdict.
func (l *Lesson) Marks() []string {
	var lines []string
	for n, q := range l.Questions {
		a := l.answers[n]
		switch {
		case q.Kind == Reading:
		case a.tries == 0:
			lines = append(lines, q.Name+" left open; "+l.truthText(q)+".")
		default:
			lines = append(lines, fmt.Sprintf("%s typed %s: %s; %s.", q.Name, a.typed, a.verdict, l.truthText(q)))
		}
	}
	return lines
}
