package tutor

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Display says what is to be shown of a lesson as it stands: words, the sheet that fills, the figures. It tells nothing
// that has still to be found, and all of it is read only. Who shows a lesson lays out what it says, and asks nothing else.
type Display struct {
	View
	lesson *Lesson
	ascii  bool
	looked int
}

// Display is what there is to show, in signs of the trade or in ASCII.
func (l *Lesson) Display(ascii bool) Display {
	return Display{View{l.about, l.route}, l, ascii, statics.None}
}

// LookingBack is the display of step i, which was worked before; statics.None is the question in hand.
func (d Display) LookingBack(i int) Display {
	d.looked = i
	return d
}

// Style is how the problem wants its sums and numbers written.
func (d Display) Style() notation.Style { return d.View.Style(d.ascii) }

// StepInHand is the step of the plan that is worked on, from zero: at N, V and M and at the end, all of them are done.
func (d Display) StepInHand() int {
	if q, asking := d.lesson.Now(); asking && q.Step != statics.None {
		return q.Step
	}
	return d.Steps()
}

// sum is the sum that a question belongs to. Of sums that are solved together each unknown shows another, so that all
// of their free bodies are seen.
func (d Display) sum(q Question) statics.Sum {
	step := d.step(q.Step)
	if at := slices.Index(step.Gives, q.Force); q.Kind == ForceValue && at >= 0 {
		return step.Sums[min(at, len(step.Sums)-1)]
	}
	return step.Sums[q.Sum]
}

// Hiding reports whether an exam still keeps back what is right.
func (d Display) Hiding() bool {
	return d.lesson.Exam() && !examOver(d.lesson)
}

// sumInHand is the sum that is looked back at, or that the question belongs to.
func (d Display) sumInHand() (statics.Sum, bool) {
	q, asking := d.lesson.Now()
	switch {
	case d.looked != statics.None:
		return d.step(d.looked).Sums[0], true
	case !asking:
	case q.Kind == TypeSum:
		return d.chosen(), true
	case q.Step != statics.None:
		return d.sum(q), true
	}
	return statics.Sum{}, false
}

// bodyInHand is the free body in hand, or the part to which the member in hand belongs.
func (d Display) bodyInHand() statics.FreeBody {
	if s, ok := d.sumInHand(); ok {
		return s.Body
	}
	q, _ := d.lesson.Now()
	return statics.FreeBody{max(d.about.solution.PartOf(q.Member), 0)}
}

// known are the forces on the sheet; after an exam, all of them.
func (d Display) known() map[int]exact.Num {
	known := map[int]exact.Num{}
	q, asking := d.lesson.Now()
	for i := range d.assembly().Forces {
		if _, ok := d.lesson.Known(i); ok || examOver(d.lesson) {
			known[i] = d.value(i)
		}
	}
	if asking && q.Kind == Reading && q.Step != statics.None {
		for _, i := range d.step(q.Step).Gives {
			known[i] = d.value(i)
		}
	}
	return known
}

// HidesTerms reports whether the terms of a step's sums are the student's own to set down and, in an exam, not told yet.
func (d Display) HidesTerms(step int) bool { return d.Hiding() && d.LevelOf(step) >= Terms }

// MembersBegun lists the members along which something was asked, in order.
func (d Display) MembersBegun() []int {
	var list []int
	at, of := d.lesson.Position()
	for _, q := range d.lesson.Asked()[:min(at+1, of)] {
		if q.Member != statics.None && (len(list) == 0 || list[len(list)-1] != q.Member) {
			list = append(list, q.Member)
		}
	}
	return list
}

// Equations are the sum in hand in symbols, of those solved together all; nothing where it is asked for itself. In an exam
// they are as the student set them down.
func (d Display) Equations() []string {
	q, asking := d.lesson.Now()
	reads := asking && q.Kind == Reading
	switch {
	case !asking || q.Step == statics.None || !reads && q.Kind != ForceValue:
		return nil
	case !reads && d.HidesTerms(q.Step):
		return d.ownEquations(q)
	}
	var all []string
	sums := d.step(q.Step).Sums
	for n, s := range sums {
		symbols := d.Words(d.Style()).Symbols(s)
		if len(sums) > 1 {
			symbols = fmt.Sprintf("(%d) %s", n+1, symbols)
		}
		all = append(all, symbols)
	}
	return all
}

// foundAt lists which of N, V and M are on the sheet at the place that a question asks about.
func (d Display) foundAt(q Question) []statics.Quantity {
	var found []statics.Quantity
	for n, other := range d.lesson.Asked() {
		_, settled, _, _ := d.lesson.Standing(n)
		same := other.Kind == SectionPart && other.Member == q.Member && other.Station.At.Equal(q.Station.At) && other.Station.Side == q.Station.Side
		if same && settled && other.Quantity != q.Quantity && !d.Hiding() {
			found = append(found, other.Quantity)
		}
	}
	return found
}

// Senses changes with every unknown that is taken in the other sense: what was written before no longer holds.
func (d Display) Senses() any { return d.assembly() }

// Bodies is how many free bodies there are to cut: parts, and pins that are bodies of their own.
func (d Display) Bodies() int { return d.assembly().Bodies() }
