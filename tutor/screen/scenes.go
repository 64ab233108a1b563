package screen

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/wording"
	"unpin/tutor"
)

// A scene is one of the figures that a lesson can show.
type scene int

// The scenes, in the order in which one goes through them.
const (
	fitting   scene = iota // whichever fits the question
	asGiven                // the frame with its supports
	allApart               // all parts as free bodies, both faces of every pin force
	wholeBody              // the whole cut free
	thisBody               // the free body in hand, or the part to which a member belongs
	thisSum                // the sum in hand on its free body
	keptPiece              // the piece that is kept where N, V or M is asked for
	axial                  // N, V and M as far as they are found
	shear
	bending
	onePart // the first part by itself, and from here on the others
)

// part is the part that a scene shows by itself.
func (s scene) part() (part int, ok bool) { return int(s - onePart), s >= onePart }

// word names a scene in a row of them.
func (c *current) word(s scene) string {
	if part, ok := s.part(); ok {
		return c.l.View().Assembly().BodyName(part)
	}
	return [...]string{"", "given", "apart", "whole", "body", "sum", "piece", "N", "V", "M"}[s]
}

// quantity is the internal force that a scene of one shows.
func (s scene) quantity() (q statics.Quantity, ok bool) {
	return statics.Quantity(s - axial), s >= axial && s < onePart
}

// ofQuantity is the scene of an internal force.
func ofQuantity(q statics.Quantity) scene { return axial + scene(q) }

// has reports whether there is such a scene to show now.
func (c *current) has(s scene) bool {
	q, asking := c.l.Now()
	_, sum := c.sumInHand()
	switch s {
	case allApart:
		return c.l.View().Assembly().Bodies() > 1
	case thisBody:
		return sum || asking && q.Member != statics.None
	case thisSum:
		return sum && !(asking && q.Kind == tutor.TypeSum)
	case keptPiece:
		return asking && q.Kind == tutor.SectionPart
	case axial, shear, bending:
		return c.hasDiagrams()
	}
	return s != fitting
}

// hasDiagrams reports whether N, V and M have been begun, or are all done.
func (c *current) hasDiagrams() bool {
	q, asking := c.l.Now()
	along := slices.ContainsFunc(c.l.Asked(), func(q tutor.Question) bool { return q.Member != statics.None })
	return along && (!asking || q.Member != statics.None && !c.l.Exam())
}

// available lists the scenes that there are to show now; the parts one by one where they have no room together.
func (c *current) available(oneByOne bool) []scene {
	var list []scene
	for s := asGiven; s < onePart; s++ {
		switch {
		case s == allApart && oneByOne:
			list = append(list, c.parts()...)
		case c.has(s):
			list = append(list, s)
		}
	}
	return list
}

// parts lists the scenes of single parts.
func (c *current) parts() []scene {
	var list []scene
	for i := range c.l.View().Assembly().Bodies() {
		list = append(list, onePart+scene(i))
	}
	return list
}

// fit is the scene that fits what is asked or looked back at.
func (c *current) fit() scene {
	q, asking := c.l.Now()
	switch {
	case c.looked != statics.None:
		return thisSum
	case !asking:
		return wholeBody
	case q.Kind == tutor.ChooseSum && c.l.Level() == tutor.Plan && c.has(allApart):
		return allApart
	case q.Kind == tutor.ChooseSum:
		return asGiven
	case q.Kind == tutor.SectionPart:
		return keptPiece
	case q.Kind == tutor.TypeSum || q.Step == statics.None:
		return thisBody
	}
	return thisSum
}

// draw makes the figure of a scene.
func (c *current) draw(s scene) figure.Scene {
	a := c.l.View().Assembly()
	o := figure.Options{Style: style(c.l, c.ascii)}
	q, asking := c.l.Now()
	if part, ok := s.part(); ok {
		return figure.OfBody(a, statics.FreeBody{part}, c.known(), o)
	}
	switch s {
	case asGiven:
		return figure.OfFrame(&a.Frame, o)
	case allApart:
		return figure.OfParts(a, c.known(), o)
	case wholeBody:
		return figure.OfBody(a, a.Whole(), c.known(), o)
	case thisBody:
		return c.bodyScene(q, asking, o)
	case thisSum:
		return c.sumScene(q, asking, o)
	case keptPiece:
		return c.l.View().KeptPiece(q, c.foundAt(q), c.known(), o)
	}
	n, _ := s.quantity()
	return growing{c.l}.scene(n, o)
}

// title is what stands above the figure of a scene, on the whole screen or in its pane.
func (c *current) title(s scene, large bool) string {
	q, asking := c.l.Now()
	body := func() string { return wording.Body(c.l.View().Assembly(), c.bodyInHand()) }
	n, diagram := s.quantity()
	part, single := s.part()
	switch {
	case single:
		return "Free body: " + wording.Body(c.l.View().Assembly(), statics.FreeBody{part})
	case s == keptPiece:
		return wording.Capital(c.l.View().KeptName(q, style(c.l, c.ascii)))
	case diagram:
		return growing{c.l}.title(n)
	case s == asGiven && c.fit() == asGiven && asking:
		return "The frame, to be cut free"
	case s == asGiven:
		return "The frame as given"
	case s == allApart:
		return "All parts apart"
	case s == wholeBody && !asking:
		return "The whole frame with all its forces"
	case s == wholeBody:
		return "Free body: the whole frame"
	case c.looked != statics.None:
		return fmt.Sprintf("Looking back at step %d: %s", c.looked+1, body())
	case q.Member != statics.None && s == thisBody:
		return "Member " + c.l.View().Assembly().Frame.Members[q.Member].Name + " on " + body()
	case s == thisSum && large:
		return wording.Capital(bodyAndSum(c.l, c.sum(q), style(c.l, c.ascii)))
	}
	return "Free body: " + body()
}
