package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// mistakes lists the questions at which a value was not right.
func (l ending) mistakes() []Mistake {
	var all []Mistake
	for n, q := range l.sheet.questions {
		a := l.sheet.answers[n]
		wrong := a.tries
		if a.accepted {
			wrong--
		}
		if wrong <= 0 {
			continue
		}
		all = append(all, Mistake{Question: l.inWords(q, a.missed), Where: l.whereAt(n, q), Wrong: wrong, Kind: kindsMissed(a.missed), Caught: l.caught(q, a.slips),
			Check: checkedBy(l.about, q)})
	}
	return all
}

// inWords is what was typed wrong at a question: the piece of a term, by what the term is of, or what the first such line held besides.
func (l ending) inWords(q Question, all []wrongLine) string {
	switch {
	case q.Kind == ChooseSum:
		return "choice of a sum"
	case !q.ofTerm():
		return q.Name
	}
	first, piece := "", pieceWord(q)
	if len(all) > 0 {
		first = all[0].line
	}
	if wholeSum(l.about, first) {
		return "the whole sum"
	}
	if first != "" && q.Kind != TermSign {
		if w, ok := l.bench().readWhole(q, first, l.about.mentionsForce(first)); ok && (w.signed || w.otherArm()) {
			piece = "term"
		}
	}
	return piece + " of " + l.about.words().Component(l.about.solution.Plan[q.Step].Sums[q.Sum].Terms()[q.Term])
}

// whereAt names where question n stands: of an equation its sum.
func (l ending) whereAt(n int, q Question) string {
	if q.Kind == TypeSum && n > 0 {
		if s, err := l.about.readChoice(chosenBy(l.sheet.answers[n-1].typed)); err == nil {
			return bodyAndName(l.about, s)
		}
	}
	return l.about.where(q)
}

// bodyAndName names the free body of a sum and the sum.
func bodyAndName(m *matter, s statics.Sum) string {
	return wording.Body(m.solution.Assembly, s.Body) + ", " + m.words().SumName(s)
}

// where names the step or the member of a question.
func (m *matter) where(q Question) string {
	switch {
	case q.Step != statics.None && len(m.solution.Plan[q.Step].Sums) > 1:
		return fmt.Sprintf("step %d", q.Step+1)
	case q.Step != statics.None:
		return fmt.Sprintf("step %d, %s", q.Step+1, bodyAndName(m, m.solution.Plan[q.Step].Sums[q.Sum]))
	case q.Member != statics.None:
		return "member " + m.solution.Frame.Members[q.Member].Name
	}
	return "the plan"
}

// kindsMissed names the mistakes of each wrong line, each once; nothing where none was found.
func kindsMissed(all []wrongLine) string {
	var kinds []string
	for _, m := range all {
		if k := kindsOf(m.slips); k != "" && !slices.Contains(kinds, k) {
			kinds = append(kinds, k)
		}
	}
	return strings.Join(kinds, "; ")
}

// kindsOf names mistakes of these codes, each once; nothing where too many may have led to a value.
func kindsOf(ids []string) string {
	var names []string
	for _, id := range ids {
		if name := kindOf(id); !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	if len(names) > mostKinds {
		return ""
	}
	return strings.Join(names, ", or ")
}

// mostKinds is how many kinds are named of one value; more say no more than that it was not right.
const mostKinds = 3

// kindOf names one mistake, or two made at once.
func kindOf(id string) string {
	var both []string
	for one := range strings.SplitSeq(id, "+") {
		if s := slip.ByID(one); s != nil {
			one = s.Kind()
		}
		both = append(both, one)
	}
	return strings.Join(both, " and ")
}

// habits are what catches mistakes of each group before they cost anything; common practice, no source.
var habits = map[slip.Group]string{
	slip.Body:       "Draw the free body by itself and tick each force that crosses the cut.",
	slip.Connection: "Write beside each support what it can hold, before the first equation.",
	slip.PinPair:    "Draw both sides of the pin: its forces are equal and opposite.",
	slip.Moment:     "Mark the centre, and measure each arm perpendicular to its force from there.",
	slip.Component:  "Draw the triangle of an inclined force, and read its components off that.",
	slip.Spread:     "Draw the resultant of a distributed load, with its distance, before the sum.",
	slip.Algebra:    "Put the value back into the equation: its terms must add to zero.",
	slip.Internal:   "Take the piece on the other side of the cut: it must give the same value.",
}

// senseHabit is what catches a wrong sense in a sum of forces.
const senseHabit = "Draw the positive direction beside the sum, and compare each force with it."

// cutHabit is what catches a wrong sense on the piece kept at a cut.
const cutHabit = "Draw N, V and M on the cut face in their positive senses, before the sum."

// caught is what would have caught a mistake: by the first that was found, or by what is asked.
func (l ending) caught(q Question, ids []string) string {
	forces := q.Step != statics.None && !l.about.solution.Plan[q.Step].Sums[q.Sum].Moment
	if len(ids) > 0 {
		first, _, _ := strings.Cut(ids[0], "+")
		switch s := slip.ByID(first); {
		case s == nil:
		case s.ID == "spread-counted-twice": // a point load may be as well
			return habits[slip.Body]
		case q.Member != statics.None && (s.About == slip.Sense || s.Needs == slip.Reporting):
			return cutHabit
		case q.Member != statics.None && q.Quantity != statics.BendingMoment && s.Group == slip.Moment:
			return habits[slip.Internal]
		case forces && s.Group == slip.Moment && s.About == slip.Sense:
			return senseHabit
		default:
			return habits[s.Group]
		}
	}
	switch {
	case q.Shape():
		return "Hold the shape against the load: V falls or rises as the load says, and M as V says."
	case q.Member != statics.None:
		return habits[slip.Internal]
	case q.Kind == ChooseSum:
		return "Count the unknowns of each free body, and those that a sum leaves, before you choose it."
	case q.Composing():
		return habits[slip.Body]
	case q.Kind == TermSign && forces:
		return senseHabit
	case q.Kind == TermArm, q.Kind == TermSign:
		return habits[slip.Moment]
	case q.Kind == TermSize:
		return "Write beside each force in the free body its size, or its component along the sum."
	}
	return habits[slip.Algebra]
}

// checkedBy names the closing check of the plan in which a mistake in a question's step shows; nothing where there is none.
func checkedBy(m *matter, q Question) string {
	for n, step := range m.solution.Plan {
		if q.Step != statics.None && step.Check && slices.Contains(step.Catches, q.Step) {
			return fmt.Sprintf("It shows in the check, step %d.", n+1)
		}
	}
	return ""
}
