package tutor

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/tutor/record"
)

// Worked steps give way to asked ones from the last backwards, which helps more than from the first (Atkinson, Renkl and
// Merrill, Journal of Educational Psychology 95(4), 2003, 774-783), and for each kind of step by itself.

// A task is what is learned in one go: a step of the plan, or the diagrams of one member. One of the two is statics.None.
type task struct{ step, member int }

// task is what a question belongs to; false where the student makes a plan.
func (q Question) task() (task, bool) {
	if q.Step != statics.None {
		return task{q.Step, statics.None}, true
	}
	return task{statics.None, q.Member}, q.Member != statics.None
}

// kind is the kind of a task, which a record keeps.
func (m *matter) kind(t task) record.Kind {
	switch {
	case t.step == statics.None:
		return record.Diagrams
	case len(m.solution.Plan[t.step].Sums) > 1:
		return record.Together
	case m.solution.Plan[t.step].Sums[0].Moment:
		return record.Moments
	}
	return record.Forces
}

// A ladder is the level of a lesson, and where they have their own, of each step and each member.
type ladder struct {
	level          Level
	steps, members []Level
	earned         Level // at the level gradual, Plan or Blank once every kind of step of the problem has come so far; else Read
}

// base is how much is left to the student where a step or member has no level of its own.
func (ld *ladder) base() Level {
	if ld.level == Gradual && ld.earned != Read {
		return ld.earned
	}
	return ld.level
}

// of is how much of step i of the plan is left to the student.
func (ld *ladder) of(i int) Level {
	if i < len(ld.steps) {
		return ld.steps[i]
	}
	return ld.base()
}

// along is how much of the diagrams of a member is left to the student.
func (ld *ladder) along(member int) Level {
	if member < len(ld.members) {
		return ld.members[member]
	}
	return ld.base()
}

// toTrust is how many tasks of a kind must come right before all of that kind are asked.
const toTrust = 3

// faded is the level of a task, when so many of its kind came right before and so many follow it here: with none right
// the last is asked for its value and the others are worked; with each that comes right one more is asked; after three
// all are, and then term by term, again from the last.
func faded(right, following int) Level {
	switch level := right - min(following, toTrust); {
	case level < 0:
		return Read
	case level < toTrust:
		return Values
	}
	return Terms
}

// GradualRule tells a student in one sentence how the level gradual goes.
const GradualRule = "You finish the last step of each kind; each success hands you one more, then its terms, and at last the plan and the blank page."

// ownPlan is the level of a problem once the student makes its plan: Plan when nine steps of each of its kinds have come
// right, which is three beyond all terms, and Blank after three more; before that Read.
func (m *matter) ownPlan(right map[record.Kind]int) Level {
	least := 4 * toTrust
	for i, step := range m.solution.Plan {
		if len(step.Gives) > 0 {
			least = min(least, right[m.kind(task{i, statics.None})])
		}
	}
	switch {
	case least >= 4*toTrust:
		return Blank
	case least >= 3*toTrust:
		return Plan
	}
	return Read
}

// fade gives each step and each member its level, by how many of each kind came right before.
func (m *matter) fade(right map[record.Kind]int) {
	following := map[record.Kind]int{}
	next := func(t task) Level {
		k := m.kind(t)
		following[k]++
		return faded(right[k], following[k]-1)
	}
	m.levels = ladder{level: m.levels.level, members: make([]Level, len(m.solution.Diagrams)), earned: m.ownPlan(right)}
	if m.levels.earned == Read {
		m.levels.steps = make([]Level, len(m.solution.Plan))
	}
	for i, step := range slices.Backward(m.solution.Plan[:len(m.levels.steps)]) {
		m.levels.steps[i] = Values
		if len(step.Gives) > 0 {
			m.levels.steps[i] = next(task{i, statics.None})
		}
	}
	for _, d := range slices.Backward(m.solution.Diagrams) {
		m.levels.members[d.Member] = Read
		if !d.Withheld {
			m.levels.members[d.Member] = next(task{statics.None, d.Member})
		}
	}
	m.aside = asideOf(m)
}

// finish keeps how a task came out, once all of it is settled.
func (l *Lesson) finish(q Question) {
	t, ok := q.task()
	if !ok || l.sheet.exam || l.done[t] {
		return
	}
	came, last, mended := record.StepRight, 0, true
	var slips []string
	var along places
	for n, other := range l.sheet.questions {
		if of, _ := other.task(); of != t || other.Composing() {
			continue
		}
		switch a := l.sheet.answers[n]; {
		case !a.accepted && !a.told:
			return
		case a.told:
			came = record.StepTold
		case !a.first && came == record.StepRight:
			came = record.StepHelped
		}
		mended = mended && l.sheet.answers[n].mended()
		last, slips = n, append(slips, l.sheet.answers[n].slips...)
		if t.step == statics.None {
			along.add(l.about, other, l.sheet.answers[n])
		}
	}
	l.done[t] = true
	if l.Heed != nil {
		e := Event{Number: last, Kind: l.about.kind(t), Outcome: came, Along: along.kept()}
		if e.Skills = along.skills(); t.step != statics.None {
			e.Skills = stepSkills(problems.Solved{Problem: l.about.problem, Solution: l.about.solution}, l.about.solution.Plan[t.step])
			e.Missed = missed(e.Skills, slips)
			if came == record.StepHelped && mended && len(e.Missed) > 0 {
				e.Right = slices.DeleteFunc(slices.Clone(e.Skills), func(skill string) bool { return slices.Contains(e.Missed, skill) })
			}
		}
		l.Heed(e)
	}
}
