package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// hint points where to look, then teaches the rule, then says what to write.
func (l *Lesson) hint(q Question, asking bool) Reply {
	if !asking || q.Kind == Reading {
		return Reply{Kind: Unread, Lines: []string{"There is nothing to hint at here."}}
	}
	if l.sheet.exam {
		return Reply{Kind: Unread, Lines: []string{"No help during an exam."}}
	}
	return Reply{Kind: Hinted, Lines: []string{"hint: " + l.nextHint(q)}}
}

// nextHint is the next of the three hints. After them there is no more than the value itself.
func (l *Lesson) nextHint(q Question) string {
	a, three := l.sheet.inHand(), l.coach().hints(q)
	a.hints++
	if a.hints > len(three) {
		return "no more hints: type tell to see the answer."
	}
	return three[a.hints-1]
}

// A coach gives hints: from the free body, its sums, and what is known of them.
type coach struct {
	about *matter
	sheet *sheet
	route *route // where the student makes the plan
}

// hints are the three hints for a question: point, teach, tell.
func (c coach) hints(q Question) [3]string {
	switch q.Kind {
	case SectionPart:
		return c.sectionHints(q)
	case ZeroPlace, ShapeDegree, ShapeSlope:
		return c.shapeHints(q)
	case ChooseSum:
		return c.sumHints()
	case TypeSum:
		return c.equationHints(c.route.chosen)
	case ForceValue:
		return c.solvingHints(q)
	}
	s := c.about.solution.Plan[q.Step].Sums[q.Sum]
	if wholeSum(c.about, c.sheet.inHand().lastMissed()) {
		return c.equationHints(s)
	}
	t := s.Terms()[q.Term]
	return [3]string{
		"look at " + c.about.words().Component(t) + " in the free body" + lookedAt(q.Kind, s) + ".",
		c.about.termRule(q.Kind, s, t),
		c.tellPiece(q.Kind, s, t),
	}
}

// tellPiece says what is asked of a term: of a sense, what is left is its sign.
func (c coach) tellPiece(k Kind, s statics.Sum, t statics.Term) string {
	sense := wording.TermSense(s, t)
	switch {
	case k == TermSize:
		return "what goes in is " + c.about.words().TermSize(t) + "."
	case k == TermArm:
		return "the arm is " + c.about.style().WithUnit(t.Arm, notation.Length) + "."
	case s.Moment:
		return "it turns the body " + sense + ": is that the positive sense of the sum?"
	}
	return "it acts " + sense + ": is that the positive direction of the sum?"
}

// lookedAt is where else to look for a piece of a term.
func lookedAt(k Kind, s statics.Sum) string {
	switch {
	case k == TermSize:
		return ""
	case s.Moment:
		return ", and at the centre"
	}
	return ", and at the positive direction of the sum"
}

// acting names what acts from outside on the free body of a sum.
func (m *matter) acting(s statics.Sum) []string {
	var names []string
	for _, t := range s.Terms() {
		name := m.words().Source(t)
		if t.Why != statics.InsideBody && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// sumRule is the rule for a sum of that kind.
func sumRule(s statics.Sum) string {
	if s.Moment {
		return "each force counts with its arm, the shortest distance from the centre to its line; add a couple without an arm."
	}
	return "use only the component of each force along the sum; leave couples out."
}

// termRule is the rule for what is asked of a term.
func (m *matter) termRule(k Kind, s statics.Sum, t statics.Term) string {
	spread, inclined := false, t.What == statics.Horizontal || t.What == statics.Vertical
	if t.Action != statics.None {
		spread = m.solution.Actions[t.Action].Shape.Spread()
	}
	switch {
	case k == TermSize && t.What == statics.TurnOnly:
		return "a couple goes in with its own size, without an arm."
	case k == TermSize && spread:
		return "a distributed load counts as its resultant, the area of its diagram."
	case k == TermSize && inclined:
		return "an inclined force goes in by its components: which one is this?"
	case k == TermSize && !s.Moment && !t.Toward.Cross(s.Along).IsZero():
		return "only the component of a force along the sum goes in."
	case k == TermSize:
		return "a force goes in with the size that is given."
	case k == TermArm && inclined:
		return componentArm(t.What, spread)
	case k == TermArm && spread:
		return "the arm is the shortest distance from the centre to the line of the resultant, which acts at the centroid of its load."
	case k == TermArm:
		return "the arm is the shortest distance from the centre to the line of the force."
	case s.Moment:
		return "put a finger on the centre and push along the force: which way does the body turn?"
	}
	return "does the force point in the positive direction of the sum, or against it?"
}

// componentArm is the rule for the arm of a component, whose line is not that of its force.
func componentArm(what statics.Component, spread bool) string {
	own, across := "vertical", "horizontal"
	if what == statics.Horizontal {
		own, across = across, own
	}
	to := "to that line."
	if spread {
		to = "to the centroid of the load."
	}
	return "the line of a " + own + " component is " + own + ", so its arm is the " + across + " distance from the centre " + to
}

// sectionHints are the hints for N, V or M at a place.
func (c coach) sectionHints(q Question) [3]string {
	m := c.about.solution.Frame.Members[q.Member]
	from := c.about.startOf(q)
	a, s := c.about.sectionSum(q)
	sum := wording.New(a, c.about.style()).Numbers(s, c.about.knownIn(a))
	write := "write " + sum + "; then solve it for " + q.Quantity.Letter() + ", or type tell."
	if onlyZeros(s, c.about.knownIn(a)) {
		write = "on the side of " + from + " nothing is left for " + q.Quantity.Letter() + " to balance: what must it be? Or type tell."
	}
	return [3]string{
		"cut member " + m.Name + " here and keep the piece on the side of " + from + ".",
		c.about.sectionRule(q), write,
	}
}

// onlyZeros reports whether all terms of a sum but those of forces not known come to zero.
func onlyZeros(s statics.Sum, known func(int) (exact.Num, bool)) bool {
	return !slices.ContainsFunc(s.Terms(), func(t statics.Term) bool {
		value, given := exact.Int(1), true
		if t.Force != statics.None {
			value, given = known(t.Force)
		}
		return t.Why == statics.Counts && given && !value.Mul(t.Value()).IsZero()
	})
}

// sumHints are the hints for the choice of a sum.
func (c coach) sumHints() [3]string {
	step := c.route.expertStep()
	return [3]string{
		"count the unknowns on " + notation.List(c.about.bodyNames()) + " and the whole: where can one sum leave one?",
		"take moments where most unknowns pass, or forces perpendicular to them: what has no arm or no component drops out.",
		"look at " + wording.Body(c.about.solution.Assembly, step.Sums[0].Body) + ". " + c.about.words().Because(step, c.sheet.knownForce),
	}
}

// equationHints are the hints for the equation of a sum, where it is typed whole.
func (c coach) equationHints(s statics.Sum) [3]string {
	var terms []string
	for _, t := range s.Terms() {
		if t.Why == statics.Counts {
			terms = append(terms, c.about.words().Term(s, t))
		}
	}
	return [3]string{
		"go round " + wording.Body(c.about.solution.Assembly, s.Body) + ": it carries " + notation.List(c.about.acting(s)) + "; which of these count in this sum?",
		sumRule(s),
		"its terms are: " + strings.Join(terms, "; ") + ".",
	}
}
