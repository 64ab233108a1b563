package problems

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// reach is a member, or several in one line, along which positions are measured.
type reach struct {
	name   string // for messages: "BC", "BC and CE together"
	length exact.Num
	span   statics.Vector
}

// reachOf is a single member, the way its name runs.
func (r *frameReader) reachOf(m ref) reach {
	return reach{name: m.name, length: r.length(m.member), span: r.span(m)}
}

// position reads a distance along a reach: a length, a share "1/2 length", or "2 run", "1 rise", where the horizontal or
// vertical distance from the start is that. It must lie on the reach.
func (r *frameReader) position(n *node, what string, along reach) (exact.Num, bool) {
	x, ok := r.distance(n, what, along)
	if !ok {
		return x, false
	}
	if x.Sign() < 0 {
		r.fault(n.at, fmt.Sprintf("%s %s lies before the start of %s", what, n.text, along.name), fmt.Sprintf("Write a distance from 0 to %s.", r.lengthText(along.length)))
		return x, false
	}
	if x.Cmp(along.length) > 0 {
		r.fault(n.at, fmt.Sprintf("%s %s lies beyond the end of %s, which is %s long", what, n.text, along.name, r.lengthText(along.length)), fmt.Sprintf("Write a distance from 0 to %s.", r.lengthText(along.length)))
		return x, false
	}
	return x, true
}

// distance is a position as a distance, wherever it lies.
func (r *frameReader) distance(n *node, what string, along reach) (exact.Num, bool) {
	text, base := cutBase(n.text)
	if base == "length" {
		share, ok := r.numberText(n, text, notation.Pure)
		return share.Mul(along.length), ok
	}
	x, ok := r.numberText(n, text, notation.Length)
	if !ok || base == "" {
		return x, ok
	}
	projection, lie := along.span.X.Abs(), "vertical"
	if base == "rise" {
		projection, lie = along.span.Y.Abs(), "horizontal"
	}
	share, err := x.Quo(projection)
	if err != nil {
		r.fault(n.at, fmt.Sprintf("%s is %s and has no %s", along.name, lie, base), fmt.Sprintf("Give %s as a distance along it, or as a share: 1/2 length.", what))
		return x, false
	}
	return share.Mul(along.length), true
}

// cutBase parts a position's number from the word length, run or rise after it, if there is one.
func cutBase(text string) (number, base string) {
	for _, word := range positionWords {
		if rest, ok := strings.CutSuffix(text, word); ok && rest != "" && strings.ContainsAny(rest[len(rest)-1:], " )0123456789") {
			return rest, word
		}
	}
	return text, ""
}

// lengthText is a length with its unit, to six figures.
func (r *frameReader) lengthText(l exact.Num) string {
	text := strings.TrimSpace(notation.Value(l, notation.Length, r.problem.Units, 6))
	if l.Terminates() {
		return text
	}
	return "about " + text
}
