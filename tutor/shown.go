package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// What a lesson offers to who shows it. All of it is read only.

// Title is the problem's title.
func (l *Lesson) Title() string { return l.about.problem.Title }

// Style is how the problem wants its sums and numbers written.
func (l *Lesson) Style(ascii bool) notation.Style { return l.about.problem.Style(ascii) }

// Words says what there is to say of the frame, by the senses assumed by now.
func (l *Lesson) Words(st notation.Style) wording.Speaker {
	return wording.New(l.about.solution.Assembly, st)
}

// Assembly is the frame taken apart, with its unknowns in the senses assumed by now: what figures are drawn from.
func (l *Lesson) Assembly() *statics.Assembly { return l.about.solution.Assembly }

// Steps is how many steps the plan has by now.
func (l *Lesson) Steps() int { return len(l.about.solution.Plan) }

// Step is step i of the plan, from zero.
func (l *Lesson) Step(i int) statics.Step { return l.about.solution.Plan[i] }

// KnownBefore tells the values of the forces that are known before step i.
func (l *Lesson) KnownBefore(i int) func(force int) (exact.Num, bool) {
	return l.about.solution.KnownBefore(i)
}

// Value is the true value of force i.
func (l *Lesson) Value(i int) exact.Num { return l.about.solution.Values[i] }

// Diagrams are N, V and M along all members, by their numbers.
func (l *Lesson) Diagrams() []statics.Diagram { return l.about.solution.Diagrams }

// DiagramScene draws N, V or M as far as it is found.
func (l *Lesson) DiagramScene(q Quantity, found map[int]figure.Growth, o figure.Options) figure.Scene {
	return figure.OfDiagramSoFar(l.about.solution, figure.InternalForce(q), found, o)
}

// Asked lists the questions by now, settled or not. Where the student makes the plan, more come with each choice.
func (l *Lesson) Asked() []Question { return slices.Clip(l.sheet.questions) }

// PartOf is the part that a member belongs to.
func (l *Lesson) PartOf(member int) int { return l.about.solution.PartOf(member) }

// Anew is a lesson on the same problem at another rung.
func (l *Lesson) Anew(rung Rung, exam bool) (*Lesson, error) { return New(l.about.problem, rung, exam) }
