package tutor

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/slip"
	"unpin/tutor/record"
)

// How long pieces of practice take, in half minutes: common practice, no source.
const (
	portionHalves = 20 // ten minutes
	findHalves    = 8
	sketchHalves  = 4
	stepHalves    = 2 // and one for each term of its sums
	alongHalves   = 1 // for each value along a member
)

// newEvery is after how many days something new is met, as long as there is something.
const newEvery = 3

// Portion is about ten minutes of practice, made up of short pieces on different frames: first what is most urgent, as a single step or
// the diagrams of one member; a mistake to find in what stands already; a sketch; then what else is wanting. Every third day it is a
// whole problem that asks for something new. For who has not begun, and
// where little is wanting, it is a whole problem.
func Portion(all []record.Record, now time.Time, at []*problems.Problem) []Offer {
	return newToday(all, now, at).portion()
}

// portion is what Portion makes up.
func (t *today) portion() []Offer {
	if t.now.YearDay()%newEvery == 0 && len(t.standings) > 0 && t.offerNew() { // something new as well, as a whole problem
		return t.offers
	}
	left := portionHalves
	add := func(o Offer, m material, halves int) {
		o.Halves = halves
		t.take(m, o)
		left -= halves
	}
	for _, n := range t.needs() {
		if t.covered(n.skill.Name) {
			continue
		}
		if n.level == Read { // who is stuck reads the worked steps before the one that is asked
			n.why = strings.Replace(n.why, "a worked example to read", "worked steps, then one of yours", 1)
		}
		if o, m, halves, found := t.piece(n, left); found {
			add(o, m, halves)
		}
		if len(t.offers) == 1 && t.now.YearDay()%2 == 0 { // every other day, so that there is room for more steps on the others
			if o, m, found := t.mistake(); found && left >= findHalves {
				add(o, m, findHalves)
			}
		}
	}
	if o, m, found := t.sketch(); found && len(t.offers) > 0 && left >= sketchHalves {
		add(o, m, sketchHalves)
	}
	if len(t.offers) > 0 && left < portionHalves/2 {
		return t.offers
	}
	whole := t.anew().wholes()
	return whole[:min(len(whole), 1)]
}

// piece is the step, or the member, that suits a need best, of those that take no more than so long.
func (t *today) piece(n need, left int) (o Offer, m material, halves int, found bool) {
	var of task
	m, found = t.freshest(func(m material) bool {
		_, _, fits := m.taskFor(n.skill.Name, left)
		return fits
	})
	if !found {
		return o, m, 0, false
	}
	of, halves, _ = m.taskFor(n.skill.Name, left)
	form, level := OneStep, Values
	if of.step == statics.None {
		form = OneMember
	}
	if t.standings[n.skill.Name].Stands() {
		level = Terms
	}
	return Offer{Problem: m.problem, Level: level, Skill: n.skill, Why: n.why, Form: form}, m, halves, true
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

// taskFor is the shortest step or member of a problem that asks for a skill, and how long it takes; false where all take longer than wanted.
func (m material) taskFor(skill string, most int) (of task, halves int, found bool) {
	for _, x := range m.tasks {
		if x.asks(skill) && x.halves <= most && (!found || x.halves < halves) {
			of, halves, found = x.task, x.halves, true
		}
	}
	return of, halves, found
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
		_, _, asks := m.taskFor(oldest.Name, 1<<10)
		return asks && len(m.tasks) <= mostTasks
	})
	return Offer{Problem: m.problem, Skill: oldest, Form: FindMistake, Why: "what you know by now, from the other side"}, m, found
}

// canBeMistaken reports whether a worked solution can show a mistake against a skill, that is not one of units.
func canBeMistaken(skill string) bool {
	return skill != "units-figures" && slices.ContainsFunc(problems.SlipsOf(skill), func(id string) bool { return slip.ByID(id).InWorking() })
}

// mostTasks is of how many steps and members a problem may be whose solution is read for a mistake, or of which a sketch is made.
const mostTasks = 14

// sketch is a frame to look at before any sum.
func (t *today) sketch() (o Offer, m material, found bool) {
	m, found = t.freshest(func(m material) bool { return len(m.tasks) <= mostTasks })
	return Offer{Problem: m.problem, Form: SketchFirst, Why: "for the eye: what do you expect of this frame"}, m, found
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
		at.Lesson, err = excerpt(p, o.Level, o.Skill.Name)
	default:
		at.Lesson, err = New(p, o.Level, false)
	}
	return at, err
}

// excerpt is a lesson that asks for one step of a problem, or for N, V and M along one member: the shortest that asks for a skill. What
// comes before is worked.
func excerpt(p *problems.Problem, level Level, skill string) (*Lesson, error) {
	m, ok := materialOf(p)
	of, _, found := m.taskFor(skill, 1<<10)
	if !ok || !found {
		return New(p, level, false)
	}
	l, err := New(p, level, false)
	if err != nil {
		return nil, err
	}
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
	if of.step == statics.None {
		l.sheet.ask(l.about.script().sectionQuestions(l.about.solution.Diagrams[diagramOf(l.about.solution, of.member)])...)
		return l, nil
	}
	if level == Terms {
		l.sheet.ask(l.about.script().termQuestions(of.step)...)
	}
	l.sheet.ask(l.about.script().valueQuestions(of.step)...)
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
