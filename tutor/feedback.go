package tutor

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Feedback is what a judged value is told, and the slips that were found to lead to it.
type feedback struct {
	about *matter
	sheet *sheet
	slips []string
}

// feedback is one sentence on a judged value, the principle first and no number in it.
func (fb *feedback) says(q Question, c *judging.Case, v judging.Verdict, typed judging.Typed) string {
	switch {
	case v == judging.Rounded:
		return "the method holds; carry one or two more figures until the end."
	case v == judging.Close && c.Coarse(typed):
		return "close, but three figures are asked for: what is the third?"
	case v == judging.Close:
		return "close, but further off than rounding explains" + fb.closer(q, c, typed)
	case v.Right():
		return fb.praise(q)
	case q.Kind == SectionPart:
		return fb.slipOr(q, c, v, typed, fb.sectionWrong)
	case q.Shape():
		return fb.shapeWrong(q, typed)
	case q.Kind == ForceValue:
		return fb.slipOr(q, c, v, typed, fb.forceWrong)
	}
	found := fb.found(c.Find(v, typed))
	if says := fb.beside(q, typed); says != "" {
		return says
	}
	if found != "" {
		return found
	}
	s := fb.about.solution.Plan[q.Step].Sums[q.Sum]
	return fb.about.termRule(q.Kind, s, s.Terms()[q.Term])
}

// closer is what is asked of a close value whose sum stands, or a full stop.
func (fb *feedback) closer(q Question, c *judging.Case, typed judging.Typed) string {
	if q.Kind == ForceValue {
		if says := fb.found(c.Find(judging.Close, typed)); says != "" {
			return ": " + strings.TrimPrefix(says, judging.AsItIs)
		}
	}
	return "."
}

// praise says why a right step was right.
func (fb *feedback) praise(q Question) string {
	switch q.Kind {
	case ZeroPlace, ShapeDegree, ShapeSlope:
		return fb.about.shapeRight(q)
	case SectionPart:
		return fb.sectionRight(q)
	case ForceValue:
		return fb.alone(q)
	case TermSize, TermArm:
		return fb.termRight(q)
	}
	return "that is its sense in this sum."
}

// termRight says why the size or arm of a term was right: a distributed load counts as its resultant, at its centroid.
func (fb *feedback) termRight(q Question) string {
	spread := false
	if t := fb.about.solution.Plan[q.Step].Sums[q.Sum].Terms()[q.Term]; t.Action != statics.None {
		spread = fb.about.solution.Actions[t.Action].Shape.Spread()
	}
	switch {
	case q.Kind == TermArm && spread:
		return "measured from the centre to the line through the centroid of the load."
	case q.Kind == TermArm:
		return "measured from the centre, perpendicular to the line of the force."
	case q.Dim == notation.Moment:
		return "a couple goes in as it is, without an arm."
	case spread:
		return "a distributed load counts as its resultant, the area of its diagram."
	}
	return "that is the size of this force."
}

// alone says why the unknown is the only one in its sum: what keeps the other unknowns of the body out of the sum.
func (fb *feedback) alone(q Question) string {
	step := fb.about.solution.Plan[q.Step]
	if len(step.Sums) > 1 {
		return "it satisfies both sums: two unknowns need two of them."
	}
	kept := unknownsOut(fb.about, q.Step)
	if len(kept.Terms()) == 0 {
		return q.Name + " was the only unknown left on " + wording.Body(fb.about.solution.Assembly, kept.Body) + "."
	}
	why := fb.about.words().Absent(kept)
	return strings.TrimSuffix(strings.ReplaceAll(why, ". ", ", and "), ".") + ", so " + q.Name + " is the only unknown in this sum."
}

// forceWrong says where to look after a wrong value of a force.
func (fb *feedback) forceWrong(q Question, v judging.Verdict) string {
	f := fb.about.solution.Forces[q.Force]
	switch {
	case fb.againstAssumed(q, v):
		return "the size is right. You took " + f.Name + " " + notation.SenseOf(f, exact.Int(1)) + " on " + fb.about.solution.BodyName(f.On) +
			", so a value in that sense is positive: which way does it act?"
	case v == judging.OtherSense && f.By != statics.None:
		return "the size is right, but what one part gets the other gives: same size, opposite sense; this asks for the force on " +
			fb.about.solution.BodyName(f.On) + "."
	case v == judging.OtherSense:
		return "the size is right, but not the sense: a negative value says that the force acts opposite to its assumed sense."
	}
	return fb.unsolved(q)
}

// helpOffered is said once all else has been.
const helpOffered = "type hint to see where to look, or example to see a step of this kind worked."
