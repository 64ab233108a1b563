package screen

import (
	"fmt"

	"unpin/statics/notation"
	"unpin/tutor"
)

// A current is what is worked on in a lesson, or looked back at: what figures and sheet are about.
type current struct {
	l      *tutor.Lesson
	ascii  bool
	looked int // the step that is looked back at, or statics.None
}

// shows is what there is to show of it.
func (c *current) shows() tutor.Display { return c.l.Display(c.ascii).LookingBack(c.looked) }

// figures are those of it.
func (c *current) figures() tutor.Figures { return c.shows().Figures() }

// equation is the sum in hand in symbols, of those solved together all, in lines of a width; where its terms are asked
// for, the one in hand.
func (c *current) equation(w int) []line {
	if aside, open := tutor.AsideOf(c.l); open {
		return choiceLines(aside.Says, w)
	}
	q, _ := c.l.Now()
	if q.Kind == tutor.TermSize || q.Kind == tutor.TermArm || q.Kind == tutor.TermSign {
		return c.termLine(q, w)
	}
	var all []line
	for _, symbols := range c.shows().Equations() {
		for _, text := range fold(symbols, w, 4) {
			if l := say(text, plainInk); q.Kind == tutor.Reading {
				all = append(all, l)
			} else {
				all = append(all, lit(l, q.Name))
			}
		}
	}
	return all
}

// termLine is the term that is asked about, as far as it is settled.
func (c *current) termLine(q tutor.Question, w int) []line {
	var all []line
	terms := c.shows().TermsAsked(q.Step, q.Sum)
	for i, t := range terms {
		if t.InHand {
			all = append(all, folded(fmt.Sprintf("Term %d of %d: %s", i+1, len(terms), t.Text()), w, 4, plainInk)...)
		}
	}
	return all
}

// places divides a screen for what is in hand.
func (c *current) places(w, h int) lessonPlaces {
	return placeLesson(w, h, len(c.equation(w-2)))
}

// prompt is what stands before the answer, with the positive sense in brackets if there is one.
func prompt(q tutor.Question, sense string, st notation.Style) string {
	unit := st.UnitOf(q.Dim)
	switch {
	case q.Kind == tutor.TermSign:
		unit = "+ or −"
	case unit == "":
		return q.Name + " = "
	}
	if sense != "" {
		sense = " (" + sense + " +)"
	}
	return q.Name + " [" + unit + "]" + sense + " = "
}
