package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A View is what a lesson offers to who shows it, as it stands when it is asked. All of it is read only.
type View struct {
	about *matter
	route *route
}

// Title is the problem's title.
func (v View) Title() string { return v.about.problem.Title }

// Style is how the problem wants its sums and numbers written.
func (v View) Style(ascii bool) notation.Style { return v.about.problem.Style(ascii) }

// Words says what there is to say of the frame, by the senses assumed by now.
func (v View) Words(st notation.Style) wording.Speaker {
	return wording.New(v.about.solution.Assembly, st)
}

// assembly is the frame taken apart, with its unknowns in the senses assumed by now.
func (v View) assembly() *statics.Assembly { return v.about.solution.Assembly }

// Steps is how many steps the plan has by now.
func (v View) Steps() int { return len(v.about.solution.Plan) }

// step is step i of the plan, from zero.
func (v View) step(i int) statics.Step { return v.about.solution.Plan[i] }

// value is the true value of force i.
func (v View) value(i int) exact.Num { return v.about.solution.Values[i] }

// Asked lists the questions by now, settled or not. Where the student makes the plan, more come with each choice.
func (l *Lesson) Asked() []Question { return slices.Clip(l.sheet.questions) }

// Anew is a lesson on the same problem at another level.
func (l *Lesson) Anew(level Level, exam bool) (*Lesson, error) {
	return New(l.about.problem, level, exam)
}
