package screen

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/tutor"
)

// A current is what is worked on in a lesson, or looked back at: what figures and sheet are about.
type current struct {
	l      *tutor.Lesson
	ascii  bool
	looked int // the step that is looked back at, or statics.None
}

// step is the step of the plan that is worked on: at N, V and M and at the end, all of them are done.
func (c *current) step() int {
	if q, asking := c.l.Now(); asking && q.Step != statics.None {
		return q.Step
	}
	return c.l.View().Steps()
}

// sum is the sum that a question belongs to. Of sums that are solved together each unknown shows another, so that all
// of their free bodies are seen.
func (c *current) sum(q tutor.Question) statics.Sum {
	step := c.l.View().Step(q.Step)
	if at := slices.Index(step.Gives, q.Force); q.Kind == tutor.ForceValue && at >= 0 {
		return step.Sums[min(at, len(step.Sums)-1)]
	}
	return step.Sums[q.Sum]
}

// hiding reports whether an exam still keeps back what is right.
func (c *current) hiding() bool {
	_, asking := c.l.Now()
	return c.l.Exam() && asking
}

// sumInHand is the sum that is looked back at, or that the question belongs to.
func (c *current) sumInHand() (statics.Sum, bool) {
	q, asking := c.l.Now()
	switch {
	case c.looked != statics.None:
		return c.l.View().Step(c.looked).Sums[0], true
	case !asking:
	case q.Kind == tutor.TypeSum:
		return c.l.View().Chosen(), true
	case q.Step != statics.None:
		return c.sum(q), true
	}
	return statics.Sum{}, false
}

// bodyInHand is the free body in hand, or the part to which the member in hand belongs.
func (c *current) bodyInHand() statics.FreeBody {
	if s, ok := c.sumInHand(); ok {
		return s.Body
	}
	q, _ := c.l.Now()
	return statics.FreeBody{max(c.l.View().PartOf(q.Member), 0)}
}

// known are the forces on the sheet; after an exam, all of them.
func (c *current) known() map[int]exact.Num {
	known := map[int]exact.Num{}
	_, asking := c.l.Now()
	for i := range c.l.View().Assembly().Forces {
		if _, ok := c.l.Known(i); ok || !asking {
			known[i] = c.l.View().Value(i)
		}
	}
	if q, asking := c.l.Now(); asking && q.Kind == tutor.Reading && q.Step != statics.None {
		for _, i := range c.l.View().Step(q.Step).Gives {
			known[i] = c.l.View().Value(i)
		}
	}
	return known
}

// hidesTerms reports whether the terms of a step's sums are asked for and, in an exam, not told yet.
func (c *current) hidesTerms(step int) bool {
	return c.hiding() && c.l.View().LevelOf(step) == tutor.Terms
}

// settledArm reports whether the arm of the term in hand is on the sheet.
func (c *current) settledArm(q tutor.Question) bool {
	n := slices.IndexFunc(c.l.Asked(), func(k tutor.Question) bool {
		return k.Kind == tutor.TermArm && k.Step == q.Step && k.Sum == q.Sum && k.Term == q.Term
	})
	if n < 0 {
		return false
	}
	_, settled, _, _ := c.l.Standing(n)
	return settled
}

// diagramInHand is the internal force that is asked for; when all is done, M.
func (c *current) diagramInHand() scene {
	q, asking := c.l.Now()
	if !asking || q.Member == statics.None {
		return bending
	}
	return ofQuantity(quantityOf(q))
}

// membersBegun lists the members along which something was asked, in order.
func (c *current) membersBegun() []int {
	var list []int
	at, of := c.l.Position()
	for _, q := range c.l.Asked()[:min(at+1, of)] {
		if q.Member != statics.None && (len(list) == 0 || list[len(list)-1] != q.Member) {
			list = append(list, q.Member)
		}
	}
	return list
}

// equation is the sum in hand in symbols, of those solved together all, in lines of a width; where its terms are asked
// for, the one in hand.
func (c *current) equation(w int) []line {
	q, asking := c.l.Now()
	if q.Kind == tutor.TermSize || q.Kind == tutor.TermArm || q.Kind == tutor.TermSign {
		return c.termLine(q, w)
	}
	reads := asking && q.Kind == tutor.Reading
	if !asking || q.Step == statics.None || !reads && (q.Kind != tutor.ForceValue || c.hidesTerms(q.Step)) {
		return nil
	}
	var all []line
	sums := c.l.View().Step(q.Step).Sums
	for n, s := range sums {
		symbols := c.l.View().Words(style(c.l, c.ascii)).Symbols(s)
		if len(sums) > 1 {
			symbols = fmt.Sprintf("(%d) %s", n+1, symbols)
		}
		for _, text := range fold(symbols, w, 4) {
			if l := say(text, plainInk); reads {
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
	terms := termsAsked(c.l, q.Step, q.Sum)
	for i, t := range terms {
		if t.inHand {
			all = append(all, folded(fmt.Sprintf("Term %d of %d: %s", i+1, len(terms), t.text(style(c.l, c.ascii))), w, 4, plainInk)...)
		}
	}
	return all
}

// places divides a screen for what is in hand.
func (c *current) places(w, h int) lessonPlaces {
	return placeLesson(w, h, len(c.equation(w-2)))
}

// foundAt lists which of N, V and M are on the sheet at the place that a question asks about.
func (c *current) foundAt(q tutor.Question) []statics.Quantity {
	var found []statics.Quantity
	for n, other := range c.l.Asked() {
		_, settled, _, _ := c.l.Standing(n)
		same := other.Kind == tutor.SectionPart && other.Member == q.Member && other.Station.At.Equal(q.Station.At) && other.Station.Side == q.Station.Side
		if same && settled && other.Quantity != q.Quantity && !c.hiding() {
			found = append(found, other.Quantity)
		}
	}
	return found
}
