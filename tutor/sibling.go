package tutor

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/tutor/record"
)

// A sibling of a problem has the same frame with other numbers: all lengths are doubled, and each load is taken a number
// of times of its own. So the same sums find the same unknowns, and no value can be carried over.

// shares are how many times the loads are taken, one after the other.
var shares = []exact.Num{exact.MustParse("1.5"), exact.MustParse("2"), exact.MustParse("0.5"), exact.MustParse("3"), exact.MustParse("2.5")}

// stretch is how many times the lengths are taken.
var stretch = exact.Int(2)

// sibling is a problem with other numbers; n chooses among several.
func sibling(p *problems.Problem, n int) *problems.Problem {
	other := *p
	other.Title, other.Text, other.Given, other.Vary, other.Entries = p.Title+", with other numbers", "", nil, nil, nil
	f := &other.Frame
	f.Joints, f.Loads = slices.Clone(f.Joints), slices.Clone(f.Loads)
	for i := range f.Joints {
		f.Joints[i].At = stretched(f.Joints[i].At)
	}
	for i := range f.Loads {
		x, share := &f.Loads[i], shares[(f.Loads[i].Entry+n)%len(shares)]
		x.Size, x.First, x.Last = x.Size.Mul(share), x.First.Mul(share), x.Last.Mul(share)
		x.At, x.Start, x.End = x.At.Mul(stretch), x.Start.Mul(stretch), x.End.Mul(stretch)
		x.Radius = x.Radius.Mul(stretch)
	}
	return &other
}

// stretched is where a point lies in a sibling.
func stretched(p statics.Point) statics.Point {
	return statics.Point{X: p.X.Mul(stretch), Y: p.Y.Mul(stretch)}
}

// Again lists, once a lesson is done, lessons of one step each that bring back what was told, with other numbers: of
// each kind of step the first.
func (l *Lesson) Again() []*Lesson {
	if _, asking := l.Now(); asking || l.sheet.exam || l.again {
		return nil
	}
	var all []*Lesson
	var kinds []record.Kind
	for n, q := range l.sheet.questions {
		if !l.sheet.answers[n].told {
			continue
		}
		if q.Composing() && n+1 < len(l.sheet.questions) {
			q = l.sheet.questions[n+1] // what the sum that was told gives
		}
		t, ok := q.task()
		if !ok || slices.Contains(kinds, l.about.kind(t)) {
			continue
		}
		if again := l.onceMore(q); again != nil {
			all, kinds = append(all, again), append(kinds, l.about.kind(t))
		}
	}
	return all
}

// onceMore is the lesson that asks for a step again, or for one value along a member: the steps before are worked. It is
// nil where a sibling needs another plan.
func (l *Lesson) onceMore(q Question) *Lesson {
	for n := range shares {
		p := sibling(l.about.problem, n)
		s, err := solved(p)
		if err != nil || s.Count.Determinacy() != statics.Determinate || !l.about.planOn(s, l.Open()) {
			return nil
		}
		again := newLesson(&matter{problem: p, solution: s, signs: l.about.signs}, false)
		again.Clock, again.again, again.keeper = l.Clock, true, l.keeper
		askAgain(again, l, q)
		if last, asks := again.Now(); !asks || l.sheet.givesAway(last) {
			continue
		}
		if l.keeper != nil {
			again.Heed = l.keeper.keep(again)
		}
		return again
	}
	return nil
}

// givesAway reports whether a question of a sibling has the answer that it has here, other than zero or in words.
func (sh *sheet) givesAway(again Question) bool {
	if again.Kind != ForceValue && again.Kind != SectionPart || again.truth.IsZero() {
		return false
	}
	return slices.ContainsFunc(sh.questions, func(q Question) bool {
		return q.Kind == again.Kind && q.Name == again.Name && q.truth.Equal(again.truth)
	})
}

// planOn gives a sibling's solution the plan in hand, the student's own or not, and reports whether it can be so.
func (m *matter) planOn(s *statics.Solution, own bool) bool {
	if !own { // a piece of practice has the plan up to its step
		n := min(len(m.solution.Plan), len(s.Plan))
		return slices.EqualFunc(m.solution.Plan, s.Plan[:n], func(x, y statics.Step) bool { return slices.Equal(x.Gives, y.Gives) })
	}
	s.Plan = nil
	for _, step := range m.solution.Plan {
		step.Sums = slices.Clone(step.Sums)
		for i, sum := range step.Sums {
			sum.About = stretched(sum.About)
			step.Sums[i] = sum.Again(s.Assembly)
		}
		s.Plan = append(s.Plan, step)
	}
	return true
}

// askAgain asks for what q asks in the lesson it is from, after all that comes before it as worked steps.
func askAgain(l, from *Lesson, q Question) {
	plan := l.about.solution.Plan
	if q.Step != statics.None {
		plan = plan[:q.Step+1]
		l.about.solution.Plan = plan
		l.about.levels.level = max(min(from.about.levels.of(q.Step), Terms), Values)
	} else {
		l.about.levels.level = max(min(from.about.levels.along(q.Member), Terms), Values)
	}
	l.about.levels.steps = make([]Level, len(plan))
	for i, step := range plan {
		l.about.levels.steps[i] = Read
		switch {
		case i == q.Step:
			l.about.levels.steps[i] = l.about.levels.level
		case len(step.Gives) > 0:
			l.sheet.ask(Question{Kind: Reading, Step: i, Member: statics.None})
		}
	}
	l.sheet.at = len(l.sheet.questions)
	l.sheet.ask(l.about.script().likeOf(q)...)
}

// likeOf lists the questions of a step, or the one along a member that is most like q.
func (sc script) likeOf(q Question) []Question {
	if q.Step != statics.None {
		var terms []Question
		if sc.about.levels.level == Terms {
			terms = sc.termQuestions(q.Step)
		}
		return append(terms, sc.valueQuestions(q.Step)...)
	}
	var like []Question
	for _, other := range sc.sectionQuestions(sc.about.solution.Diagrams[q.Member]) {
		if other.Kind == q.Kind && other.Quantity == q.Quantity {
			like = append(like, other)
		}
	}
	slices.SortStableFunc(like, func(x, y Question) int { return sc.unlike(q, x) - sc.unlike(q, y) })
	return like[:min(1, len(like))]
}

// unlike tells how far a question along a member is from q: at another place, and worse with nothing to find.
func (sc script) unlike(q, other Question) int {
	far := 0
	if !other.Station.At.Equal(q.Station.At.Mul(stretch)) || other.Station.Side != q.Station.Side {
		far++
	}
	if other.truth.IsZero() && !q.truth.IsZero() {
		far += 2
	}
	return far
}
