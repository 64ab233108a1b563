package problems

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// direction is a direction as written. Along and normal have no vector until a member gives them one.
type direction struct {
	vector        statics.Vector
	along, normal bool
	text          string
}

// axisWords are the directions along the axes.
var axisWords = map[string][2]int64{"up": {0, 1}, "down": {0, -1}, "left": {-1, 0}, "right": {1, 0}}

// directionHelp is what would be right where a direction is not.
const directionHelp = "Write up, down, left, right, an angle such as 60deg, or a pair such as [3, 4]."

// memberDirectionHelp is the same where a member gives along and normal a meaning.
const memberDirectionHelp = "Write up, down, left, right, along or normal (of the member in on), an angle such as 60deg, or a pair such as [3, 4]."

// direction reads a direction. Where no member gives along and normal a meaning, ofMember is false and they are faults.
func (r *numberReader) direction(n *node, what string, ofMember bool) (direction, bool) {
	if n.shape == list {
		return r.pairDirection(n, what)
	}
	d := direction{text: n.text}
	if axis, ok := axisWords[n.text]; ok {
		d.vector = statics.Vector{X: exact.Int(axis[0]), Y: exact.Int(axis[1])}
		return d, true
	}
	switch d.along, d.normal = n.text == "along", n.text == "normal"; {
	case (d.along || d.normal) && ofMember:
		return d, true
	case d.along || d.normal:
		r.fault(n.at, fmt.Sprintf("%s has no meaning here without a member", n.text), "Name the member with on:, or give the direction itself.")
		return d, false
	case strings.HasSuffix(n.text, "deg") || strings.HasSuffix(n.text, "°"):
		return r.angle(n, d)
	}
	help, words := directionHelp, []string{"up", "down", "left", "right"}
	if ofMember {
		help, words = memberDirectionHelp, append(words, "along", "normal")
	}
	if word := meant(n.text, words); word != "" {
		help = fmt.Sprintf("Did you mean %s?", word)
	} else if n.numeric {
		help = fmt.Sprintf("For an angle from the x axis, counter-clockwise, write %sdeg.", n.text)
	}
	r.fault(n.at, fmt.Sprintf("%s is not a direction", quoted(n.text)), help)
	return d, false
}

// pairDirection reads a direction [dx, dy], which is kept as it is.
func (r *numberReader) pairDirection(n *node, what string) (direction, bool) {
	pair, ok := r.pair(n, what, "[3, 4]", notation.Pure)
	if !ok {
		return direction{}, false
	}
	d := direction{vector: statics.Vector{X: pair[0], Y: pair[1]}}
	d.text = pairText(n)
	if d.vector.IsZero() {
		r.fault(n.at, d.text+" points nowhere", "One of the two numbers differs from 0.")
		return d, false
	}
	return d, true
}

// pairText is a pair as written.
func pairText(n *node) string { return "[" + strings.Join(texts(n.items), ", ") + "]" }

// angle reads a direction given by its angle from the x axis, counter-clockwise.
func (r *numberReader) angle(n *node, d direction) (direction, bool) {
	deg, ok := r.number(n, "an angle", notation.Degrees)
	if !ok {
		return d, false
	}
	d.vector = statics.Vector{X: exact.Cos(deg), Y: exact.Sin(deg)}
	if d.vector.X.Inexact() || d.vector.Y.Inexact() {
		r.warn("The direction %s is no multiple of 15°, so its sine and cosine are carried with 34 significant digits, and what rests on it is not exact.", n.text)
	}
	return d, true
}

// vectorOn is the direction as a vector, along and normal as the name of the member has them.
func (r *frameReader) vectorOn(d direction, m ref) statics.Vector {
	switch {
	case d.along:
		return r.span(m)
	case d.normal:
		return r.span(m).Left().Neg()
	}
	return d.vector
}
