package tutor

import (
	"fmt"
	"strconv"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// A diagram is more than its critical values. The place where the shear is zero is asked before the moment there; from the
// level terms on, the values of a member come after the shape of each stretch, by its degree and the way it curves.

// shapeQuestions ask for the degree of V and M on each stretch, where M curves for the way its slope goes, and at last
// where M peaks.
func (sc script) shapeQuestions(d statics.Diagram) []Question {
	var all []Question
	for _, p := range d.Stretches {
		for _, q := range []statics.Quantity{statics.ShearForce, statics.BendingMoment} {
			poly := []exact.Poly{statics.ShearForce: p.V, statics.BendingMoment: p.M}[q]
			ask := func(kind Kind, word string, truth int) {
				all = append(all, Question{
					Kind: kind, Name: word + " of " + q.Letter() + " in " + problems.StretchName(sc.about.solution, d.Member, p), Step: statics.None,
					Member: d.Member, Stretch: p, Quantity: q, truth: exact.Int(int64(truth)),
				})
			}
			ask(ShapeDegree, "degree", poly.Degree())
			if bend := bending(p); q == statics.BendingMoment && bend != 0 {
				ask(ShapeSlope, "slope", bend)
			}
		}
	}
	for _, item := range problems.SectionItems(sc.about.solution, d) {
		if item.Place {
			all = append(all, zeroQuestion(item))
		}
	}
	return all
}

// bending is +1 if the slope of M rises all along the stretch, −1 if it falls, and 0 if it does neither.
func bending(p statics.Stretch) int {
	slope := p.V.Derivative()
	from, until := slope.At(p.From).Sign(), slope.At(p.Until).Sign()
	switch {
	case from == 0:
		return until
	case until == 0 || from == until:
		return from
	}
	return 0
}

// readShape reads a degree, or the way a slope goes.
func (b bench) readShape(q Question, line string) (judging.Typed, error) {
	words := map[string]int{
		"level": 0, "constant": 0, "horizontal": 0, "flat": 0, "straight": 1, "linear": 1, "sloping": 1,
		"second": 2, "quadratic": 2, "parabola": 2, "parabolic": 2, "third": 3, "cubic": 3,
	}
	if q.Kind == ShapeSlope {
		words = map[string]int{"rises": 1, "rising": 1, "rise": 1, "+": 1, "falls": -1, "falling": -1, "fall": -1, "-": -1}
	}
	word := strings.ToLower(strings.TrimSpace(line))
	n, ok := words[word]
	if k, err := strconv.Atoi(word); !ok && err == nil && q.Kind == ShapeDegree && k >= 0 && k <= 9 {
		n, ok = k, true
	}
	switch {
	case ok:
		return judging.Word(n), nil
	case functionName().MatchString(line):
		return judging.Typed{}, fmt.Errorf("first the shape: the function can be typed where the values of this stretch are asked for")
	case q.Kind == ShapeSlope:
		return judging.Typed{}, fmt.Errorf("type rises or falls: how does the slope of M go along the stretch, from its start?")
	}
	return judging.Typed{}, fmt.Errorf("type a degree: 0 level, 1 straight, 2 or 3 for a curve")
}

// shapeRight says why a shape is so.
func (m *matter) shapeRight(q Question) string {
	switch {
	case q.Kind == ZeroPlace:
		return "the shear is zero here, so the moment has its peak."
	case q.Kind == ShapeSlope:
		if m.turnedShear() {
			return "the slope of M is minus the shear, and the shear " + goes(-q.truth.Sign()) + " here."
		}
		return "the slope of M is the shear, and the shear " + goes(q.truth.Sign()) + " here."
	case q.Quantity == statics.ShearForce:
		return "the slope of V is the load perpendicular to the member, " + [...]string{
			"and here is none: V is constant.", "uniform here: V is a straight line.", "which changes along this stretch: V is curved.",
		}[min(max(q.Stretch.V.Degree(), 0), 2)]
	}
	return "the slope of M is " + m.slopeOfMoment() + ", so M is one degree above it."
}

// goes says how what changes by that sign runs along a member.
func goes(sign int) string {
	if sign < 0 {
		return "falls"
	}
	return "rises"
}

// beyondStretch is said of a place where the shear is to be zero that is not on the stretch.
const beyondStretch = "the place lies on the stretch named, and is measured from the start of the member: where on it is the shear zero?"

// shapeRule is the principle behind what is asked of a shape.
func (m *matter) shapeRule(q Question) string {
	switch {
	case q.Kind == ZeroPlace:
		return "go on from the shear at the near end of the stretch until the load has brought it to zero, and measure from the start of the member."
	case q.Kind == ShapeSlope:
		return "the slope of M is " + m.slopeOfMoment() + ": does the shear grow or shrink along this stretch?"
	case q.Quantity == statics.ShearForce:
		return "without a load V is constant, under a uniform load it is straight, under a growing one it is curved."
	}
	return "M is one degree above V: a constant V gives a straight M, and a sloping V a curved M."
}

// shapeHints are the hints for the shape of a diagram.
func (c coach) shapeHints(q Question) [3]string {
	m := c.about.solution.Frame.Members[q.Member].Name
	return [3]string{
		"look at the load along this stretch of " + m + ", and at the shear at its ends.",
		c.about.shapeRule(q),
		map[Kind]string{
			ZeroPlace:   "from the start of the stretch its distance is the shear there divided by the intensity, where the load is uniform.",
			ShapeDegree: "count up from the load: none, then 0 for V and 1 for M; uniform, then 1 and 2; a triangle, then 2 and 3.",
			ShapeSlope:  "compare the shear at both ends of the stretch.",
		}[q.Kind],
	}
}

// shapeWrong says where to look after a wrong shape or place.
func (fb *feedback) shapeWrong(q Question, v judging.Typed) string {
	if q.Kind == ZeroPlace && fb.fromOtherEnd(q, v) {
		return "from which end did you measure?"
	}
	beyond := v.Value.Cmp(q.Stretch.From) < 0 || v.Value.Cmp(q.Stretch.Until) > 0
	switch tries := fb.sheet.inHand().tries; {
	case q.Kind == ZeroPlace && tries <= 1 && beyond:
		return beyondStretch
	case q.Kind == ZeroPlace && tries == 2 && beyond: // there is no shear at that place to ask for
		return fb.about.shapeRule(q)
	case q.Kind == ZeroPlace && tries == 2:
		return "V at the start of the stretch and the load from there on add to V at your place: what do they come to?"
	case q.Kind == ZeroPlace && tries > 2:
		return helpOffered
	}
	return fb.about.shapeRule(q)
}

// fromOtherEnd reports whether a place was measured from the member's end, or from the start of the stretch.
func (fb *feedback) fromOtherEnd(q Question, v judging.Typed) bool {
	length := fb.about.solution.Diagrams[q.Member].Length
	for _, from := range []exact.Num{length.Sub(q.truth), q.truth.Sub(q.Stretch.From), q.Stretch.Until.Sub(q.truth)} {
		if !from.Equal(q.truth) && v.Means(from) {
			return true
		}
	}
	return false
}
