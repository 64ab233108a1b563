package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A View is what a lesson offers to who shows it, as it stands when it is asked. All of it is read only.
type View struct {
	about *matter
	route *route
}

// View is what there is to show.
func (l *Lesson) View() View { return View{l.about, l.route} }

// Title is the problem's title.
func (v View) Title() string { return v.about.problem.Title }

// Style is how the problem wants its sums and numbers written.
func (v View) Style(ascii bool) notation.Style { return v.about.problem.Style(ascii) }

// Words says what there is to say of the frame, by the senses assumed by now.
func (v View) Words(st notation.Style) wording.Speaker {
	return wording.New(v.about.solution.Assembly, st)
}

// Assembly is the frame taken apart, with its unknowns in the senses assumed by now: what figures are drawn from.
func (v View) Assembly() *statics.Assembly { return v.about.solution.Assembly }

// Steps is how many steps the plan has by now.
func (v View) Steps() int { return len(v.about.solution.Plan) }

// Step is step i of the plan, from zero.
func (v View) Step(i int) statics.Step { return v.about.solution.Plan[i] }

// KnownBefore tells the values of the forces that are known before step i.
func (v View) KnownBefore(i int) func(force int) (exact.Num, bool) {
	return v.about.solution.KnownBefore(i)
}

// Value is the true value of force i.
func (v View) Value(i int) exact.Num { return v.about.solution.Values[i] }

// Diagrams are N, V and M along all members, by their numbers.
func (v View) Diagrams() []statics.Diagram { return v.about.solution.Diagrams }

// DiagramScene draws N, V or M as far as it is found.
func (v View) DiagramScene(q statics.Quantity, found map[int]figure.Growth, o figure.Options) figure.Scene {
	return figure.OfDiagramSoFar(v.about.solution, figure.InternalForce(q), found, o)
}

// kept is the piece that is kept where N, V or M is asked for: that on the side of the member's start.
func (v View) kept(q Question) statics.Kept {
	return statics.Kept{Solution: v.about.solution.Full(), Member: q.Member, At: q.Station}
}

// KeptPiece draws the piece that is kept where N, V or M is asked for, with what is asked set off; found are those of the
// three that stand with their values.
func (v View) KeptPiece(q Question, found []statics.Quantity, known map[int]exact.Num, o figure.Options) figure.Scene {
	return figure.OfKept(figure.Section{Kept: v.kept(q), Found: found, Lit: []statics.Quantity{q.Quantity}}, v.about.fullKnown(known), o)
}

// KeptName names that piece.
func (v View) KeptName(q Question, st notation.Style) string { return v.Words(st).KeptPiece(v.kept(q)) }

// Asked lists the questions by now, settled or not. Where the student makes the plan, more come with each choice.
func (l *Lesson) Asked() []Question { return slices.Clip(l.sheet.questions) }

// PartOf is the part that a member belongs to.
func (v View) PartOf(member int) int { return v.about.solution.PartOf(member) }

// Anew is a lesson on the same problem at another level.
func (l *Lesson) Anew(level Level, exam bool) (*Lesson, error) {
	return New(l.about.problem, level, exam)
}
