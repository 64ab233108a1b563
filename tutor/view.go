package tutor

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// UseSigns has sums, numbers and units in replies written with the signs of the trade, as Σ, · and −, where they are
// otherwise in ASCII.
func (l *Lesson) UseSigns() {
	l.about.signs = true
	if l.about.aside != nil {
		l.about.aside = asideOf(l.about)
	}
}

// Composing reports whether the question is for the student's own plan: a sum to choose, or its equation.
func (q Question) Composing() bool { return q.Kind == ChooseSum || q.Kind == TypeSum }

// chosen is the sum whose equation is asked for.
func (v View) chosen() statics.Sum { return v.route.chosen }

// own reports whether step i of the plan is one that the student chose, so that it needs no reason.
func (v View) own(i int) bool {
	return v.route != nil && v.about.solution.Plan[i].Why == statics.StayOnBody
}

// Open reports whether the number of questions depends on what the student chooses.
func (l *Lesson) Open() bool { return l.route != nil }

// Shape reports whether the question is about the shape of a diagram: a place of no shear, a degree, or a slope.
func (q Question) Shape() bool {
	return q.Kind == ZeroPlace || q.Kind == ShapeDegree || q.Kind == ShapeSlope
}

// Answer is what a question asks for, written out.
func (v View) Answer(q Question) string { return v.about.truthText(q) }

// Level is how much of each step the student must supply.
func (l *Lesson) Level() Level { return l.about.levels.level }

// LevelOf is how much of step i of the plan is left to the student.
func (v View) LevelOf(i int) Level { return v.about.levels.of(i) }

// Exam reports whether there is no verdict and no help until the end.
func (l *Lesson) Exam() bool { return l.sheet.exam }

// Known is the value of force i on the student's sheet: the exact one, once the student has found it or been told. The
// sums of a worked step to read are all known.
func (l *Lesson) Known(i int) (exact.Num, bool) { return l.sheet.known(i) }

// Standing is how question n stands: what was typed for it, whether it is settled, and how.
func (l *Lesson) Standing(n int) (typed string, settled, told bool, v judging.Verdict) {
	return l.sheet.standing(n)
}

// Score is how many questions were right at the first try without help, of those that ask for a value.
func (l *Lesson) Score() (first, of int) { return l.sheet.score() }
