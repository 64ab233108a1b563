package screen

import (
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
