package tutor

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// A Summary is what a lesson came to by now: what stands at its end.
type Summary struct {
	Results   []string  // every force, then the largest N, V and M
	Checks    []string  // the sums that check the work
	First, Of int       // questions right at the first try and without help, of all
	Mistakes  []Mistake // in the order of the questions; none in an exam, which has Marks
	Marks     []string  // of an exam
	Help      []string  // what helped: "2 hints"
	Skills    []Skill   // kinds of steps that were done here or before
	Next      []string  // two things to do next
}

// A Mistake is what went wrong at one question.
type Mistake struct {
	Question string
	Where    string // the step or the member
	Wrong    int    // values that were not right
	Kind     string // the mistakes that lead to these; empty where none was found, or too many
	Caught   string // what would have caught it, as a sentence
	Check    string // the check of the plan in which it shows, as a sentence; empty where there is none
}

// A Skill is how steps of a kind came out, here and in earlier work.
type Skill struct {
	Kind string
	record.Count
}

// SummaryOf is what a lesson came to by now.
func SummaryOf(l *Lesson) Summary { return ending{l}.summary() }

// An ending looks back on a lesson.
type ending struct{ *Lesson }

func (l ending) summary() Summary {
	s := Summary{Results: l.about.results(l.sheet.asksAlong()), Checks: l.checks(), Skills: l.skills(), Help: l.sheet.helped()}
	s.First, s.Of = l.sheet.score()
	if l.sheet.exam {
		s.Marks = l.Marks()
	} else {
		s.Mistakes = l.mistakes()
	}
	s.Next = l.suggestions(s)
	return s
}

// asksAlong reports whether N, V and M are asked for or worked.
func (sh *sheet) asksAlong() bool {
	return slices.ContainsFunc(sh.questions, func(q Question) bool { return q.Member != statics.None })
}

// results lists all forces, and where they are wanted, the largest N, V and M.
func (m *matter) results(along bool) []string {
	var lines []string
	for i := range m.solution.Forces {
		lines = append(lines, m.forceText(i))
	}
	if !along {
		return lines
	}
	for _, q := range []statics.Quantity{statics.AxialForce, statics.ShearForce, statics.BendingMoment} {
		if text := m.largest(q); text != "" {
			lines = append(lines, text)
		}
	}
	return lines
}

// largest says where N, V or M is largest, whatever its sign; of equal ones the first. It is empty where that is zero.
func (m *matter) largest(q statics.Quantity) string {
	var best problems.Item
	for _, d := range m.solution.Diagrams {
		for _, item := range problems.SectionItems(m.solution, d) {
			if item.Quantity == q && !item.Place && item.Value.Abs().Cmp(best.Value.Abs()) > 0 {
				best = item
			}
		}
	}
	if best.Value.IsZero() {
		return ""
	}
	return "largest " + q.Letter() + ": " + m.truthText(sectionQuestion(best))
}

// checks lists the sums of the plan that check the work.
func (m *matter) checks() []string {
	var lines []string
	for _, step := range m.solution.Plan {
		if step.Check {
			lines = append(lines, wording.Sentence(m.words().BodyAndSum(step.Sums[0])+" comes to 0"))
		}
	}
	return lines
}

// checks lists the sums that check the work: those of the plan; where the student made it, one of an expert's that was not used.
func (l ending) checks() []string {
	if l.route == nil {
		return l.about.checks()
	}
	for _, closing := range []bool{true, false} {
		for _, step := range l.route.expert {
			if s := step.Sums[0]; step.Check == closing && !step.Relation && !l.used(s) {
				return []string{wording.Sentence(l.about.words().BodyAndSum(s) + " comes to 0")}
			}
		}
	}
	return nil
}

// used reports whether a sum is among those with which the student found the forces, or holds too little to check anything.
func (l ending) used(s statics.Sum) bool {
	counting := 0
	for _, t := range s.Terms() {
		if t.Why == statics.Counts {
			counting++
		}
	}
	if counting < 2 {
		return true
	}
	return slices.ContainsFunc(l.about.solution.Plan, func(step statics.Step) bool { return slices.ContainsFunc(step.Sums, s.Same) })
}

// helped counts what helped: hints, of which there are three to a question and which guesses bring too, examples, and shown answers.
func (sh *sheet) helped() []string {
	var hints, examples, told int
	for _, a := range sh.answers {
		hints, examples = hints+min(a.hints, 3), examples+a.examples
		if a.told && !sh.exam { // there it is left open
			told++
		}
	}
	var all []string
	for _, h := range []struct {
		n    int
		what string
	}{{hints, "hint"}, {examples, "example"}, {told, "shown answer"}} {
		if h.n > 0 {
			all = append(all, wording.Counted(h.n, h.what))
		}
	}
	return all
}

// skills counts how steps of each kind came out, in earlier work on other frames and here.
func (l ending) skills() []Skill {
	counts := map[record.Kind]record.Count{}
	for k, c := range l.before {
		counts[k] = c
	}
	for t, came := range l.outcomes() {
		c := counts[l.about.kind(t)]
		c.Add(came)
		counts[l.about.kind(t)] = c
	}
	var all []Skill
	for _, k := range record.Kinds() {
		if c := counts[k]; c.Of > 0 {
			all = append(all, Skill{skillNames[k], c})
		}
	}
	return all
}

// skillNames are the kinds of steps as one reads them.
var skillNames = map[record.Kind]string{
	record.Forces: "sums of forces", record.Moments: "sums of moments", record.Together: "sums solved together",
	record.Diagrams: "N, V and M along a member",
}

// outcomes are how the tasks that are settled came out; an exam tells none.
func (l ending) outcomes() map[task]record.Outcome {
	came := map[task]record.Outcome{}
	for n, q := range l.sheet.questions {
		t, ok := q.task()
		if !ok || q.Kind == Reading || q.Composing() || l.sheet.exam {
			continue
		}
		a := l.sheet.answers[n]
		if came[t] == "" {
			came[t] = record.StepRight
		}
		switch {
		case !a.accepted && !a.told:
			came[t] = record.Left // not settled
		case came[t] == record.Left:
		case a.told:
			came[t] = record.StepTold
		case !a.first && came[t] == record.StepRight:
			came[t] = record.StepHelped
		}
	}
	return came
}
