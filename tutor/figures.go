package tutor

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/wording"
)

// Figures are those of a lesson as it stands: which there are, which fits what is asked, and what each shows.
type Figures struct{ Display }

// Figures are those that there are to show.
func (d Display) Figures() Figures { return Figures{d} }

// A Figure is one of those that a lesson can show.
type Figure int

// The figures, in the order in which one goes through them.
const (
	Fitting      Figure = iota // whichever fits the question
	AsGiven                    // the frame with its supports
	AllApart                   // all parts as free bodies, both faces of every pin force
	WholeBody                  // the whole cut free
	ThisBody                   // the free body in hand, or the part to which a member belongs
	ThisSum                    // the sum in hand on its free body
	KeptPiece                  // the piece that is kept where N, V or M is asked for
	AxialDiagram               // N, V and M as far as they are found
	ShearDiagram
	MomentDiagram
	OnePart // the first part by itself, and from here on the others
)

// part is the part that a figure shows by itself.
func (s Figure) part() (part int, ok bool) { return int(s - OnePart), s >= OnePart }

// Word names a figure in a row of them.
func (d Figures) Word(s Figure) string {
	if part, ok := s.part(); ok {
		return d.assembly().BodyName(part)
	}
	return [...]string{"", "given", "apart", "whole", "body", "sum", "piece", "N", "V", "M"}[s]
}

// quantity is the internal force that a figure of one shows.
func (s Figure) quantity() (q statics.Quantity, ok bool) {
	return statics.Quantity(s - AxialDiagram), s >= AxialDiagram && s < OnePart
}

// ofQuantity is the figure of an internal force.
func ofQuantity(q statics.Quantity) Figure { return AxialDiagram + Figure(q) }

// Has reports whether there is such a figure to show now.
func (d Figures) Has(s Figure) bool {
	q, asking := d.lesson.Now()
	_, sum := d.sumInHand()
	switch s {
	case AllApart:
		return d.assembly().Bodies() > 1
	case ThisBody:
		return sum || asking && q.Member != statics.None
	case ThisSum:
		return sum && !(asking && q.Kind == TypeSum)
	case KeptPiece:
		return asking && q.Kind == SectionPart
	case AxialDiagram, ShearDiagram, MomentDiagram:
		return d.hasDiagrams()
	}
	return s != Fitting
}

// hasDiagrams reports whether N, V and M have been begun, or are all done.
func (d Figures) hasDiagrams() bool {
	q, asking := d.lesson.Now()
	along := slices.ContainsFunc(d.lesson.Asked(), func(q Question) bool { return q.Member != statics.None })
	return along && (!asking || q.Member != statics.None && !d.lesson.Exam())
}

// All lists those that there are to show now; the parts one by one where they have no room together.
func (d Figures) All(oneByOne bool) []Figure {
	var list []Figure
	for s := AsGiven; s < OnePart; s++ {
		switch {
		case s == AllApart && oneByOne:
			list = append(list, d.OneByOne()...)
		case d.Has(s):
			list = append(list, s)
		}
	}
	return list
}

// OneByOne lists the figures of single parts.
func (d Figures) OneByOne() []Figure {
	var list []Figure
	for i := range d.assembly().Bodies() {
		list = append(list, OnePart+Figure(i))
	}
	return list
}

// Fit is the one that fits what is asked or looked back at.
func (d Figures) Fit() Figure {
	q, asking := d.lesson.Now()
	switch {
	case d.looked != statics.None:
		return ThisSum
	case !asking:
		return WholeBody
	case q.Kind == ChooseSum && d.lesson.Level() == Plan && d.Has(AllApart):
		return AllApart
	case q.Kind == ChooseSum || q.Kind == CheckSum:
		return AsGiven
	case q.Kind == SectionPart:
		return KeptPiece
	case q.Kind == TypeSum || q.Step == statics.None:
		return ThisBody
	}
	return ThisSum
}

// Draw makes the scene of a figure.
func (d Figures) Draw(s Figure) figure.Scene {
	a := d.assembly()
	o := figure.Options{Style: d.Style()}
	q, asking := d.lesson.Now()
	if part, ok := s.part(); ok {
		return figure.OfBody(a, statics.FreeBody{part}, d.known(), o)
	}
	switch s {
	case AsGiven:
		return figure.OfFrame(&a.Frame, o)
	case AllApart:
		return figure.OfParts(a, d.known(), o)
	case WholeBody:
		return figure.OfBody(a, a.Whole(), d.known(), o)
	case ThisBody:
		return d.bodyScene(q, asking, o)
	case ThisSum:
		return d.sumScene(q, asking, o)
	case KeptPiece:
		return d.keptPiece(q, o)
	}
	n, _ := s.quantity()
	return d.diagram(n, o)
}

// Title is what stands above a figure, on the whole screen or in its pane.
func (d Figures) Title(s Figure, large bool) string {
	q, asking := d.lesson.Now()
	body := func() string { return wording.Body(d.assembly(), d.bodyInHand()) }
	n, diagram := s.quantity()
	part, single := s.part()
	switch {
	case single:
		return "Free body: " + wording.Body(d.assembly(), statics.FreeBody{part})
	case s == KeptPiece && large:
		return wording.Capital(d.Words(d.Style()).KeptPiece(d.kept(q)))
	case s == KeptPiece:
		return d.Words(d.Style()).KeptTitle(d.kept(q))
	case diagram:
		return d.diagramTitle(n)
	case s == AsGiven && d.Fit() == AsGiven && asking:
		return "The frame, to be cut free"
	case s == AsGiven:
		return "The frame as given"
	case s == AllApart:
		return "All parts apart"
	case s == WholeBody && !asking:
		return "The whole frame with all its forces"
	case s == WholeBody:
		return "Free body: the whole frame"
	case d.looked != statics.None:
		return fmt.Sprintf("Looking back at step %d: %s", d.looked+1, body())
	case q.Member != statics.None && s == ThisBody:
		return "Member " + d.assembly().Frame.Members[q.Member].Name + " on " + body()
	case s == ThisSum && large:
		return wording.Capital(d.bodyAndSum(d.sum(q)))
	}
	return "Free body: " + body()
}

// Diagram is the internal force that is asked for; when all is done, M.
func (d Figures) Diagram() Figure {
	q, asking := d.lesson.Now()
	if !asking || q.Member == statics.None {
		return MomentDiagram
	}
	return ofQuantity(quantityOf(q))
}

// kept is the piece that is kept where N, V or M is asked for: that on the side of the member's start.
func (d Figures) kept(q Question) statics.Kept {
	return statics.Kept{Solution: d.about.solution.Full(), Member: q.Member, At: q.Station}
}

// keptPiece draws the piece that is kept where N, V or M is asked for, with what is asked set off.
func (d Figures) keptPiece(q Question, o figure.Options) figure.Scene {
	section := figure.Section{Kept: d.kept(q), Found: d.foundAt(q), Lit: []statics.Quantity{q.Quantity}}
	return figure.OfKept(section, d.about.fullKnown(d.known()), o)
}
