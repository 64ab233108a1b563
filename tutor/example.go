package tutor

import (
	"cmp"
	"slices"
	"sync"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// An example is a step of another problem, worked whole: the reader sees the method and no value of the problem in hand.

// example shows the step of another problem that is most like the one in hand; asked again, the next like it.
func (l *Lesson) example(q Question, asking bool) Reply {
	if !asking || q.Kind == Reading {
		return Reply{Kind: Unread, Lines: []string{"There is nothing to show an example of here."}}
	}
	if l.sheet.exam {
		return Reply{Kind: Unread, Lines: []string{"No help during an exam."}}
	}
	all := l.coach().examples(q)
	if len(all) == 0 {
		return Reply{Kind: Unread, Lines: []string{"No problem of the library has a step like this."}}
	}
	a := l.sheet.inHand()
	x := all[a.examples%len(all)]
	a.examples++
	return Reply{Kind: Worked, Lines: x.lines(l.about)}
}

// readFirst has a lesson begin with an example of what shows a skill in it, worked, as help that is given and not asked for; n chooses one of several.
func readFirst(l *Lesson, skill string, n int) {
	q, asking := l.Now()
	for _, other := range l.sheet.questions[l.sheet.at:] {
		if other.Kind == SectionPart && skillAlong(l.about, other) == skill && (skill != "cut-forces" || other.Quantity != statics.AxialForce) {
			q = other // of several the last, in which most comes together
		}
	}
	if asking {
		if all := l.coach().examples(q); len(all) > 0 {
			l.worked = &all[n%len(all)]
		}
	}
}

// WorkedOf is the example that a lesson begins with; nothing for most.
func WorkedOf(l *Lesson) []string {
	if l.worked == nil {
		return nil
	}
	return l.worked.lines(l.about)
}

// mostExamples is how many examples there are for one question.
const mostExamples = 3

// An example is a question of another problem, for what is worked there.
type example struct {
	of   *Lesson
	what Question
	far  int // how unlike the question in hand it is
}

// A shelved problem is one that examples are taken from, with the traits of each of its questions.
type shelved struct {
	*Lesson
	frame  string
	traits []traits
}

// shelf is the library, read and solved once.
var shelf = sync.OnceValue(func() []shelved {
	var all []shelved
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		l, err := New(p, Terms, false)
		if err != nil {
			continue
		}
		s := shelved{Lesson: l, frame: bareFrame(p)}
		for _, q := range l.sheet.questions {
			s.traits = append(s.traits, l.coach().traits(q))
		}
		all = append(all, s)
	}
	return all
})

// bareFrame stands for what is asked of a frame, whatever the conventions.
func bareFrame(p *problems.Problem) string { return record.Fingerprint(p.In(notation.Conventions{})) }

// examples lists the questions of other problems most like q, the most alike first, one of each problem.
func (c coach) examples(q Question) []example {
	var all []example
	like, frame := c.traits(q), bareFrame(c.about.problem)
	for _, other := range shelf() {
		if other.about.problem.Name == c.about.problem.Name || other.frame == frame {
			continue
		}
		best := example{far: -1}
		for n, what := range other.sheet.questions {
			if !c.comparable(q, other.Lesson, what) {
				continue
			}
			if far := like.far(other.traits[n]); best.far < 0 || far < best.far {
				best = example{other.Lesson, what, far}
			}
		}
		if best.far >= 0 {
			all = append(all, best)
		}
	}
	slices.SortStableFunc(all, func(x, y example) int { return cmp.Compare(x.far, y.far) })
	return all[:min(len(all), mostExamples)]
}

// comparable reports whether a question of another problem serves as an example for q: it asks for the same kind of
// thing, and its answer is neither zero nor the one asked for here.
func (c coach) comparable(q Question, other *Lesson, what Question) bool {
	if q.Step == statics.None && !q.Composing() {
		same := what.Kind == q.Kind && what.Quantity == q.Quantity && what.Step == statics.None
		return same && (q.Shape() || !what.truth.IsZero() && !what.truth.Abs().Equal(q.truth.Abs()))
	}
	if what.Kind != ForceValue {
		return false
	}
	mine, theirs := c.stepOf(q), other.about.solution.Plan[what.Step]
	if len(mine.Sums) == 0 || len(mine.Sums) > 1 != (len(theirs.Sums) > 1) || mine.Sums[0].Moment != theirs.Sums[0].Moment {
		return false
	}
	return !slices.ContainsFunc(theirs.Gives, func(f int) bool {
		v := other.about.solution.Values[f].Abs()
		return v.IsZero() || slices.ContainsFunc(mine.Gives, func(g int) bool { return c.about.solution.Values[g].Abs().Equal(v) })
	})
}

// stepOf is the step that a question belongs to: where the student chooses, that which help follows.
func (c coach) stepOf(q Question) statics.Step {
	switch q.Kind {
	case ChooseSum:
		return c.route.expertStep()
	case TypeSum:
		return statics.Step{Sums: []statics.Sum{c.route.chosen}, Gives: c.route.chosen.Unknowns(c.sheet.knownForce)}
	}
	return c.about.solution.Plan[q.Step]
}

// traits are what makes a step what it is.
type traits struct {
	bodies, terms                          int
	spread, ramp, couple, slanting, before bool
}

// traits of the sums that a question rests on.
func (c coach) traits(q Question) traits {
	a, sums := c.about.solution.Assembly, []statics.Sum(nil)
	switch {
	case q.Kind == SectionPart:
		var s statics.Sum
		a, s = c.about.section(q, c.about.solution.Values).Sum()
		sums = []statics.Sum{s}
	case q.Step != statics.None || q.Composing():
		sums = c.stepOf(q).Sums
	}
	x := traits{before: q.Kind == SectionPart && q.Station.Side == statics.Before}
	for _, s := range sums {
		x.bodies += min(len(s.Body), 2)
		for _, t := range s.Terms() {
			if t.Why != statics.Counts {
				continue
			}
			x.terms++
			x.couple = x.couple || t.What == statics.TurnOnly
			x.slanting = x.slanting || t.What == statics.Horizontal || t.What == statics.Vertical || t.Size.Cmp(exact.Int(1)) != 0 && t.Force != statics.None
			if t.Action != statics.None {
				shape := a.Actions[t.Action].Shape
				x.spread = x.spread || shape == statics.Uniform
				x.ramp = x.ramp || shape == statics.RisingRamp || shape == statics.FallingRamp
			}
		}
	}
	return x
}

// far is how unlike two steps are.
func (x traits) far(y traits) int {
	n := max(x.terms-y.terms, y.terms-x.terms)
	for _, differ := range []bool{x.bodies != y.bodies, x.spread != y.spread, x.ramp != y.ramp, x.couple != y.couple,
		x.slanting != y.slanting, x.before != y.before} {
		if differ {
			n += 3
		}
	}
	return n
}

// lines are the example, worked: the other frame, what is known there, and the step.
func (x example) lines(m *matter) []string {
	other := *x.of.about
	other.signs, other.levels = m.signs, ladder{level: Read}
	other.problem = other.problem.In(m.problem.Conventions)
	t := teller{about: &other}
	lines := []string{"Worked, from another problem: " + other.problem.Title + "."}
	lines = append(lines, figure.Describe(other.solution.Assembly, figure.Options{Style: other.style()})...)
	if x.what.Step != statics.None {
		lines = append(lines, t.knownLines(x.what, func(f int) bool { _, known := other.solution.KnownBefore(x.what.Step)(f); return known })...)
		return append(lines, t.stepLines(x.what.Step)[1:]...)
	}
	lines = append(lines, t.knownLines(x.what, func(int) bool { return true })...)
	if x.what.Shape() {
		return append(lines, t.shapeExample(x.what, x.of.sheet.questions)...)
	}
	return append(lines, t.sectionExample(x.what)...)
}

// sectionExample works N, V or M at a place.
func (t teller) sectionExample(q Question) []string {
	m := t.about.solution.Frame.Members[q.Member]
	rule := t.about.sectionRule(q)
	a, s := t.about.sectionSum(q)
	lines := []string{
		wording.Sentence(q.Name + " is asked for: cut member " + m.Name + " there, and keep the piece on the side of " + t.about.startOf(q)),
		wording.Sentence(rule[:len(rule)-1]),
		wording.New(a, t.about.style()).Symbols(s),
	}
	if numbers := wording.New(a, t.about.style()).Numbers(s, t.about.knownIn(a)); numbers != lines[2] {
		lines = append(lines, numbers)
	}
	return append(lines, t.about.truthText(q)+".")
}

// shapeExample tells a shape, or where the shear is zero, with the values of the member it rests on.
func (t teller) shapeExample(q Question, asked []Question) []string {
	var lines []string
	for _, other := range asked {
		if other.Kind == SectionPart && other.Member == q.Member && other.Quantity != statics.AxialForce {
			lines = append(lines, t.about.truthText(other)+".")
		}
	}
	return append(lines, wording.Sentence(t.about.truthText(q)+": "+t.about.shapeRight(q)[:len(t.about.shapeRight(q))-1]))
}
