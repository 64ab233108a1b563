package qti

import (
	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/wording"
)

// An answer is one number that an item asks for, by the signs of the problem's conventions.
type answer struct {
	id        string // of the response
	label     string // "V at 2.4 m, just after"
	sense     string // "positive up"; empty where it is said for a member at once, or where there is none
	unit      string // may be empty
	member    int    // for what is asked along it, else statics.None
	value     exact.Num
	low, high exact.Num // from where to where it is right
	feedback  []told    // of wrong values, the first that holds counts
	hidden    []string  // slips whose value lies in the range, by their IDs
	points    exact.Num
	accepted  []exact.Num // values that are right besides
}

// newAnswer is the answer that an item of a problem asks for.
func newAnswer(q Question, item problems.Item, say wording.Speaker) answer {
	st := q.Problem.Style(false)
	c := worksheet.Judged(q.Solved, item)
	low, high := c.Range()
	signed := func(x exact.Num) exact.Num { return x }
	if item.Force == statics.None && item.Quantity == statics.ShearForce && !item.Place {
		signed = st.Shear.Value
	}
	a := answer{
		id: answerID(q, item), label: answerLabel(q, item, say), sense: answerSense(q, item), unit: st.UnitOf(item.Dim),
		member: item.Member, value: signed(item.Value),
	}
	a.low, a.high = ordered(signed(low), signed(high))
	a.feedback = feedback(c, !item.Place, signed)
	for _, s := range c.Hidden() {
		a.hidden = append(a.hidden, s.ID)
	}
	if q.Scheme != nil {
		for _, x := range q.Scheme.AcceptedFor(item) {
			a.accepted = append(a.accepted, signed(x))
		}
	}
	return a
}

// ordered are two numbers, the less first.
func ordered(x, y exact.Num) (low, high exact.Num) { return exact.Min(x, y), exact.Max(x, y) }

// A told value is from where to where an answer has feedback of its own, and the verdict of a scheme on it.
type told struct {
	id, says, verdict string
	low, high         exact.Num
}

// toldVerdicts are the verdicts on told values.
var toldVerdicts = []string{"sense", "slip", "close"}

// likelyValues is how many wrong values have feedback of their own.
const likelyValues = 3

// What is told of a value in the opposite sense, and of one that is close.
const (
	senseSays = "the size is right, but not the sense: which sense is positive here?"
	closeSays = "close, but further off than rounding explains: was a number rounded before the end?"
)

// What becomes of an answer, besides the values that are told of.
const (
	isRight = "right"
	isWrong = "wrong"
	isNone  = "none" // nothing was typed
)

// closePart is within what part of the right value an answer is close, as package judging has it.
var closePart = exact.MustParse("0.02")

// feedback lists what is told of wrong values, by the signs that the problem prints.
func feedback(c *judging.Case, sensed bool, signed func(exact.Num) exact.Num) []told {
	var all []told
	used := map[string]bool{isRight: true, isWrong: true, isNone: true}
	around := func(id, says, verdict string, value, reach exact.Num) {
		all = append(all, told{unique(used, id), says, verdict, value.Sub(reach), value.Add(reach)})
	}
	right := signed(c.Truth)
	if sensed && !right.IsZero() {
		around("sense", senseSays, "sense", right.Neg(), judging.ThirdFigure(right))
	}
	for _, w := range c.LikelyWrong(likelyValues) {
		around(identifier(w.Slips[0]), w.Says, "slip", signed(w.Value), judging.ThirdFigure(w.Value))
	}
	if !right.IsZero() {
		around("close", closeSays, "close", right, right.Abs().Mul(closePart))
	}
	return all
}
