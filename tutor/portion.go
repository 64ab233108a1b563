package tutor

import (
	"cmp"
	"slices"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/slip"
	"unpin/tutor/record"
)

// How long pieces of practice take, in half minutes: common practice, no source.
const (
	portionHalves = 20 // ten minutes
	longest       = 3 * portionHalves
	findHalves    = 8
	sketchHalves  = 4
	stepHalves    = 2 // and one for each term of its sums
	alongHalves   = 1 // for each value along a member
)

// newEvery is after how many days something new is met, as long as there is something, no more than so many skills are in work already, and none is
// stuck; newCosts is what a new skill takes from the worth of a piece; of those that are not sure, what is beyond mostUnsure adds nothing: a step
// that asks for five of them goes wrong whatever one learns. The numbers were tuned on simulated learners: testdata/measured/practice.md.
const (
	newEvery   = 3
	mostInWork = 5
	newCosts   = 2
	mostUnsure = 2
)

// readyForNew reports whether something new may come.
func (t *today) readyForNew() bool {
	inWork := 0
	for _, s := range t.standings {
		if s.Stuck() {
			return false
		}
		if !s.Stands() {
			inWork++
		}
	}
	return len(t.standings) > 0 && inWork <= mostInWork
}

// Portion is about ten minutes of practice, made up of short pieces on different frames: first what is most urgent, as a single step or
// the diagrams of one member, for what is stuck after a worked step and twice; a mistake to find in what stands already; a sketch; then what else
// is wanting. Every third day it is a whole problem that asks for something new. For who has not begun, and
// where little is wanting, it is a whole problem.
func Portion(all []record.Record, now time.Time, at []*problems.Problem) []Offer {
	return newToday(all, now, at).portion()
}

// portion is what Portion makes up.
func (t *today) portion() []Offer {
	if t.now.YearDay()%newEvery == 0 && t.readyForNew() && t.offerNew() { // something new as well, as a whole problem
		return t.offers
	}
	left := portionHalves
	add := func(o Offer, m material, found bool) bool {
		if found = found && o.Halves <= left; found {
			t.take(m, o)
			left -= o.Halves
		}
		return found
	}
	for _, n := range t.needs() {
		if t.covered(n.skill.Name) {
			continue
		}
		if add(t.piece(n, left)) && n.stuck { // at once on another frame, with none worked
			add(t.piece(need{skill: n.skill, why: "the same once more: " + n.skill.Doc, gently: true}, left))
		}
		if len(t.offers) == 1 && t.now.YearDay()%2 == 0 { // every other day, so that there is room for more steps on the others
			add(t.mistake())
		}
	}
	if len(t.offers) > 0 {
		add(t.sketch())
	}
	if len(t.offers) > 0 && left < portionHalves/2 {
		return t.offers
	}
	whole := t.anew().wholes()
	return whole[:min(len(whole), 1)]
}

// piece is the step, or the member, that suits a need best, of those that take no more than so long.
func (t *today) piece(n need, left int) (o Offer, of material, found bool) {
	var best pieceWork
	for _, m := range t.materials {
		for _, w := range m.tasks {
			if w.asks(n.skill.Name) && w.halves <= left && !w.trivial() && !t.offered(m) && (!found || t.suits(n, m, w, of, best)) {
				of, best, found = m, w, true
			}
		}
	}
	o = Offer{Problem: of.problem, Level: Values, Skill: n.skill, Why: n.why, Form: OneStep, Halves: best.halves, Skills: best.skills, Worked: n.stuck, of: best.task, day: t.now.YearDay()}
	if found && best.step == statics.None {
		o.Form = OneMember
	}
	if t.standings[n.skill.Name].Stands() {
		o.Level = Terms
	}
	o.Level = max(o.Level, best.level)
	return o, of, found
}

// trivial reports whether nothing is to be done but to read a sum of one term.
func (w pieceWork) trivial() bool { return w.step != statics.None && w.halves <= stepHalves+1 }

// suits reports whether a piece suits a need better than another. For who is stuck it is the one that asks for the least that is not sure, was not worked on
// these days, and is the shortest. For others its problem is not much harder than those worked on before, it was not worked on these days, it does more for what is wanting in the same time, it is of another shape than the
// piece before, it was not worked on for longer, it is gentler.
func (t *today) suits(n need, m material, w pieceWork, than material, best pieceWork) bool {
	if n.stuck || n.gently {
		return cmp.Or(t.unsure(w)-t.unsure(best), t.recent(m)-t.recent(than), w.halves-best.halves, m.grade-than.grade) < 0
	}
	return cmp.Or(
		t.beyond(m)-t.beyond(than),
		t.recent(m)-t.recent(than),
		t.worth(best)*w.halves-t.worth(w)*best.halves,
		t.alike(m)-t.alike(than),
		t.last[m.problem.Name].Compare(t.last[than.problem.Name]),
		m.grade-than.grade,
	) < 0
}

// beyond is by how much a problem is harder than is to be expected of who worked on what was worked on so far.
func (t *today) beyond(m material) int {
	reach := 0
	for _, other := range t.materials {
		if _, done := t.last[other.problem.Name]; done {
			reach = max(reach, other.grade+1)
		}
	}
	return max(m.grade-reach, 0)
}

// worth is what a piece does for what is wanting. What is new comes by whole problems: in a piece it stands in the way.
func (t *today) worth(w pieceWork) int {
	n := t.gain(w.skills)
	for _, skill := range w.skills {
		if _, met := t.standings[skill]; !met {
			n -= newCosts
		}
	}
	return n - 2*max(t.unsure(w)-mostUnsure, 0)
}

// unsure counts the skills that a piece asks for and that are not likely to come right.
func (t *today) unsure(w pieceWork) int {
	n := 0
	for _, skill := range w.skills {
		if !t.standings[skill].Likely() {
			n++
		}
	}
	return n
}

// freshest is the problem, of those that will do and are not offered, that serves best for a piece.
func (t *today) freshest(will func(material) bool) (best material, found bool) {
	for _, m := range t.materials {
		if will(m) && !t.offered(m) && (!found || t.fresher(m, best)) {
			best, found = m, true
		}
	}
	return best, found
}

// fresher reports whether a problem serves better than another for a piece: it was not worked on for longer, it is of another shape than the
// piece before, it is gentler. So a skill is met on one frame after the other.
func (t *today) fresher(a, b material) bool {
	return cmp.Or(t.last[a.problem.Name].Compare(t.last[b.problem.Name]), t.alike(a)-t.alike(b), a.grade-b.grade) < 0
}

// taskFor is the step or member that an offer is of, in a copy with other numbers: where the copy has none like it there, the shortest that asks for
// the skill.
func (m material) taskFor(o Offer) (of task, found bool) {
	halves := 0
	for _, x := range m.tasks {
		switch {
		case x.task == o.of && slices.Equal(x.skills, o.Skills):
			return x.task, true
		case x.asks(o.Skill.Name) && (!found || x.halves < halves):
			of, halves, found = x.task, x.halves, true
		}
	}
	return of, found
}

// mistake is a mistake to find, in what stands and was done longest ago.
func (t *today) mistake() (o Offer, m material, found bool) {
	var oldest problems.Skill
	for _, skill := range problems.Skills() {
		s := t.standings[skill.Name]
		if s.Stands() && canBeMistaken(skill.Name) && (oldest.Name == "" || s.Last.Before(t.standings[oldest.Name].Last)) {
			oldest = skill
		}
	}
	if oldest.Name == "" {
		return o, m, false
	}
	m, found = t.freshest(func(m material) bool {
		return slices.Contains(m.skills, oldest.Name) && m.steps <= mostTasks
	})
	return Offer{Problem: m.problem, Skill: oldest, Form: FindMistake, Halves: findHalves, Why: "what you know by now, from the other side"}, m, found
}

// canBeMistaken reports whether a worked solution can show a mistake against a skill, that is not one of units.
func canBeMistaken(skill string) bool {
	return skill != "units-figures" && slices.ContainsFunc(problems.SlipsOf(skill), func(id string) bool { return slip.ByID(id).InWorking() })
}

// mostTasks is of how many steps and members a problem may be whose solution is read for a mistake, or of which a sketch is made.
const mostTasks = 14

// sketch is a frame to look at before any sum.
func (t *today) sketch() (o Offer, m material, found bool) {
	m, found = t.freshest(func(m material) bool { return m.steps <= mostTasks })
	return Offer{Problem: m.problem, Form: SketchFirst, Halves: sketchHalves, Why: "for the eye: what do you expect of this frame"}, m, found
}

// A Piece is what an offer comes to: a lesson, or a drill.
type Piece struct {
	Lesson *Lesson
	Drill  *Drill
}

// Begin makes what is offered, with new numbers.
func (o Offer) Begin(now time.Time) (Piece, error) {
	p := Fresh(o.Problem, now)
	n := uint64(now.UnixNano())
	var at Piece
	var err error
	switch o.Form {
	case FindMistake:
		at.Drill, err = FindTheMistake(p, o.Skill.Name, n)
	case SketchFirst:
		at.Drill, err = Sketch(p, n)
	case OneStep, OneMember:
		at.Lesson, err = o.excerpt(p)
	default:
		at.Lesson, err = New(p, o.Level, false)
	}
	return at, err
}

// excerpt is a lesson that asks for one step of a problem, or for N, V and M along one member. What comes before is worked.
func (o Offer) excerpt(p *problems.Problem) (*Lesson, error) {
	l, err := New(p, o.Level, false)
	if err != nil {
		return nil, err
	}
	m, _ := materialOf(p)
	of, found := m.taskFor(o)
	if !found {
		return l, nil
	}
	level := o.Level
	l = newLesson(l.about, false)
	l.excerpt = true
	if of.step != statics.None {
		l.about.solution.Plan = l.about.solution.Plan[:of.step+1]
	}
	l.about.levels.steps = make([]Level, len(l.about.solution.Plan))
	for i, step := range l.about.solution.Plan {
		if i == of.step {
			l.about.levels.steps[i] = level
		} else if len(step.Gives) > 0 {
			l.sheet.ask(Question{Kind: Reading, Step: i, Member: statics.None})
		}
	}
	l.sheet.at = len(l.sheet.questions)
	switch {
	case of.step == statics.None:
		l.sheet.ask(l.about.script().sectionQuestions(l.about.solution.Diagrams[diagramOf(l.about.solution, of.member)])...)
	case level == Terms:
		l.sheet.ask(l.about.script().termQuestions(of.step)...)
		fallthrough
	default:
		l.sheet.ask(l.about.script().valueQuestions(of.step)...)
	}
	if o.Worked {
		readFirst(l, o.Skill.Name, o.day)
	}
	return l, nil
}

// diagramOf is the place of a member's diagrams.
func diagramOf(s *statics.Solution, member int) int {
	for i, d := range s.Diagrams {
		if d.Member == member {
			return i
		}
	}
	return 0
}
