package tutor

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// At a faded step it helps to say which principle the step rests on (Atkinson, Renkl and Merrill, Journal of Educational Psychology
// 95(4), 2003), in one closed choice and not at every line: prompts everywhere lower what worked examples give (Barbieri and others,
// Educational Psychology Review 35, 2023). So at the level gradual it is asked once in a problem, after the first value that is asked for.

// An aside is the question why a sum leaves the one unknown that it gives. It counts for no skill, and holds nobody up for long.
type aside struct {
	choice
	step   int
	whyNot []string // of each answer, why it is not so
	state  asideState
	tries  int
}

// An asideState is how far an aside is.
type asideState int

const (
	asideAhead asideState = iota // its step is not done: the reason is not shown
	asideOpen
	asideDone
)

// asideOf is the aside of a problem at the level gradual: about the first step whose value is asked for while its sum is shown, of
// those of one sum that allow some false answers; nil where none does.
func asideOf(m *matter) *aside {
	if m.levels.level != Gradual || m.levels.earned != Read {
		return nil
	}
	for i, step := range m.solution.Plan {
		if m.levels.of(i) == Read || len(step.Sums) != 1 || len(step.Gives) != 1 || step.Check {
			continue
		}
		if a := whyOf(m, i); len(a.of) > 2 {
			return a
		}
	}
	return nil
}

// whyOf is the question why the sum of a step leaves one unknown: what is true of it, and what is not.
func whyOf(m *matter, i int) *aside {
	s, force := m.solution.Plan[i].Sums[0], m.solution.Forces[m.solution.Plan[i].Gives[0]]
	a := &aside{step: i}
	all := slices.Insert(falseReasons(m, i), 0, [2]string{trueReason(m, i)})
	pick := rand.New(rand.NewPCG(uint64(i), uint64(len(m.solution.Forces))))
	for place, k := range pick.Perm(len(all)) {
		a.of, a.whyNot = append(a.of, all[k][0]), append(a.whyNot, all[k][1])
		if k == 0 {
			a.right = []int{place}
		}
	}
	sum := m.words().SumName(s)
	if !m.signs {
		sum = "the " + sum
	}
	a.says = fmt.Sprintf("Why is %s the only unknown in %s on %s?", force.Name, sum, wording.Body(m.solution.Assembly, s.Body))
	a.why = trueReason(m, i)
	return a
}

// trueReason is what keeps the other unknowns of the body out of the sum of a step.
func trueReason(m *matter, i int) string {
	kept := unknownsOut(m, i)
	if len(kept.Terms()) == 0 {
		return "All other forces on " + wording.Body(m.solution.Assembly, kept.Body) + " are known by now."
	}
	return m.words().Absent(kept)
}

// unknownsOut is the sum of a step with those terms alone that unknowns other than its own do not add to it.
func unknownsOut(m *matter, i int) statics.Sum {
	s, before := m.solution.Plan[i].Sums[0], m.solution.KnownBefore(i)
	var kept []statics.Term
	for _, t := range s.Terms() {
		if t.Force == statics.None || t.Why == statics.Counts || t.Why == statics.InsideBody {
			continue
		}
		if _, known := before(t.Force); !known {
			kept = append(kept, t)
		}
	}
	return s.With(kept)
}

// falseReasons lists reasons that do not hold for a step, each with why not.
func falseReasons(m *matter, i int) [][2]string {
	step := m.solution.Plan[i]
	s, w, name := step.Sums[0], m.words(), m.solution.Forces[step.Gives[0]].Name
	var all [][2]string
	couple := m.solution.Forces[step.Gives[0]].Couple
	_, centre, _ := strings.Cut(w.SumName(s), " about ")
	switch {
	case s.Moment && !couple:
		all = append(all, [2]string{name + " passes through " + centre + ".", "a force through the centre would not stand in the sum, and " + name + " does."})
	case !s.Moment:
		all = append(all, [2]string{name + " is perpendicular to the direction of the sum.", "a force perpendicular to the sum would not stand in it, and " + name + " does."})
	}
	if slices.ContainsFunc(s.Terms(), func(t statics.Term) bool { return t.Action != statics.None && t.Why == statics.Counts }) {
		all = append(all, [2]string{"No load counts in this sum.", "loads stand in this sum; they are known, and so are no unknowns."})
	}
	pinForce := func(t statics.Term) bool {
		return t.Force != statics.None && m.solution.Forces[t.Force].By != statics.None
	}
	inside := func(t statics.Term) bool { return t.Why == statics.InsideBody }
	if slices.ContainsFunc(s.Terms(), pinForce) && !slices.ContainsFunc(s.Terms(), inside) {
		all = append(all, [2]string{"The pin forces on this body act inside it and cancel.", "only one face of a pin force acts on this body: it cancels where both bodies are inside the cut."})
	}
	if slices.ContainsFunc(unknownsOut(m, i).Terms(), func(t statics.Term) bool { return !m.solution.Values[t.Force].IsZero() }) {
		all = append(all, [2]string{"The other unknowns of this body are zero.", "nothing has been found of them yet: they only add nothing to this sum."})
	}
	return all[:min(len(all), mostRules)]
}

// An Aside is what is asked beside the questions of a lesson: the question and its answers by number, what may be typed, and the step of
// the plan that it is about.
type Aside struct {
	Says []string
	Unit string
	Step int
}

// AsideOf is what is asked beside the questions of a lesson now; false where nothing is.
func AsideOf(l *Lesson) (Aside, bool) {
	a := l.about.aside
	if a == nil || a.state != asideOpen {
		return Aside{Step: statics.None}, false
	}
	return Aside{a.lines(), a.unit(), a.step}, true
}

// withholds reports whether the reason of step i is not to be shown, since it is asked for.
func (m *matter) withholds(i int) bool {
	return m.aside != nil && m.aside.state != asideDone && m.aside.step == i
}

// turn opens the aside of a step that was just settled by a right value, and reports whether it did.
func (a *aside) turn(l *Lesson, q Question) bool {
	if a == nil || a.state != asideAhead || q.Kind != ForceValue || q.Step != a.step {
		return false
	}
	a.state = asideOpen
	if _, asking := l.Now(); l.replaying || !asking {
		a.state = asideDone
	}
	return a.state == asideOpen
}

// take takes an answer to the aside in hand; false for a command that is none of its own, or where none is in hand. After two wrong
// answers the reason is told.
func (a *aside) take(l *Lesson, line string) (Reply, bool) {
	word := strings.ToLower(strings.TrimSpace(line))
	if a == nil || a.state != asideOpen || IsCommand(line) && word != "tell" && word != "hint" {
		return Reply{}, false
	}
	if word == "tell" {
		a.state = asideDone
		a.heed(l, line, record.ReasonTold)
		return Reply{Kind: Told, Lines: []string{"told: " + a.answer()}}, true
	}
	if word == "hint" {
		return Reply{Kind: Hinted, Lines: []string{"hint: go through the unknowns of this body: what keeps each of the others out of the sum?"}}, true
	}
	at, err := numberOf(line, len(a.of))
	if err != nil {
		return unread(err), true
	}
	r, _ := a.read(line)
	reply := Reply{Kind: Judged, Verdict: r.verdict, Lines: []string{r.verdict.String() + ": " + r.says}}
	if r.verdict.Right() {
		a.state = asideDone
		a.heed(l, line, record.ReasonRight)
		return reply, true
	}
	a.heed(l, line, record.ReasonWrong)
	reply.Lines = []string{r.verdict.String() + ": " + a.whyNot[at]}
	if a.tries++; a.tries > 1 {
		a.state = asideDone
		reply.Lines = append(reply.Lines, "told: "+a.answer())
	}
	return reply, true
}

// heed tells of what was typed at an aside.
func (a *aside) heed(l *Lesson, typed string, outcome record.Outcome) {
	if l.Heed != nil {
		l.Heed(Event{Number: l.sheet.at, Question: "reason", Key: fmt.Sprintf("%d reason", a.step+1), Typed: strings.TrimSpace(typed), Outcome: outcome})
	}
}
