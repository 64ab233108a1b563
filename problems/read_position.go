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

// position reads a distance along a reach: a length; a fraction of its length, run or rise, "1/2 length", "40% run"; or
// "2 run", "1 rise", where the horizontal or vertical distance from the start is that. It must lie on the reach.
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
	switch {
	case base == "":
		return r.plainDistance(n, what)
	case !r.has(n, what, along, base):
		return exact.Num{}, false
	case base == "length" || isFraction(text):
		fraction, ok := r.fraction(n, text)
		return fraction.Mul(along.length), ok
	}
	x, ok := r.numberText(n, text, notation.Length)
	r.warnPlain(n, text, base, x)
	fraction, err := x.Quo(along.base(base))
	return fraction.Mul(along.length), ok && err == nil
}

// plainDistance is a distance along a member as a length.
func (r *frameReader) plainDistance(n *node, what string) (exact.Num, bool) {
	if strings.HasSuffix(n.text, "%") {
		r.fault(n.at, fmt.Sprintf("%s does not say what it is a part of", quoted(n.text)), fmt.Sprintf("Write %s: %s length.", what, n.text))
		return exact.Num{}, false
	}
	if remedy := r.placeInWords(n.text); remedy != "" {
		r.fault(n.at, fmt.Sprintf("%s is a distance or a fraction, not %s", what, quoted(n.text)), fmt.Sprintf("Write %s: %s", what, remedy))
		return exact.Num{}, false
	}
	x, ok := r.numberText(n, n.text, notation.Length)
	if ok {
		r.note(n, Distance, what, x)
	}
	return x, ok
}

var (
	middleWords = notation.Pattern(`^(?:at )?(?:the )?(?:middle|mid|midspan|mid-span|midpoint|midway|half|halfway|half way|centre|center)$`)
	spanWords   = notation.Pattern(`^([0-9]+(?:[./][0-9]+)?)\s*[*·×]?\s*(?:L|l|ℓ|span|of (?:the )?(?:length|span))$`)
	spanShare   = notation.Pattern(`^[Llℓ]\s*/\s*([0-9]+)$`)
	fromWords   = notation.Pattern(`^(.*[0-9A-Za-z)])\s+from\s+\S+$`)
)

// placeInWords is how a place is written that is told in words, such as middle or 2.5 m from A; empty for one that is not.
func (r *frameReader) placeInWords(text string) string {
	_, given := r.numbers[text]
	if _, plain := notation.PlainNumber(text); given || plain {
		return ""
	}
	if middleWords().MatchString(text) {
		return "1/2 length"
	}
	if _, isGiven := r.numbers["L"]; !isGiven && !r.problem.Units.Letters() {
		if found := spanWords().FindStringSubmatch(text); found != nil {
			return found[1] + " length"
		}
		if found := spanShare().FindStringSubmatch(text); found != nil {
			return "1/" + found[1] + " length"
		}
	}
	if found := fromWords().FindStringSubmatch(text); found != nil {
		return found[1] + ", from the first letter of the name in on"
	}
	return ""
}

// base is how far a reach runs in length, run or rise.
func (along reach) base(word string) exact.Num {
	switch word {
	case "run":
		return along.span.X.Abs()
	case "rise":
		return along.span.Y.Abs()
	}
	return along.length
}

// has reports whether a reach has a run or rise to measure by.
func (r *frameReader) has(n *node, what string, along reach, base string) bool {
	if !along.base(base).IsZero() {
		return true
	}
	lie := map[string]string{"run": "vertical", "rise": "horizontal"}[base]
	r.fault(n.at, fmt.Sprintf("%s is %s and has no %s", along.name, lie, base), fmt.Sprintf("Give %s as a distance along it, or as a fraction: 1/2 length.", what))
	return false
}

// fraction reads a part of a whole: "1/2", "0.4", "40%".
func (r *frameReader) fraction(n *node, text string) (exact.Num, bool) {
	number, percent := strings.CutSuffix(strings.TrimSpace(text), "%")
	x, ok := r.numberText(n, number, notation.Pure)
	if percent {
		x = x.Mul(exact.MustParse("0.01"))
	}
	return x, ok
}

var (
	fractionText = notation.Pattern(`^[0-9., ()*/+−-]*/[0-9., ()*/+−-]*$`)
	plainText    = notation.Pattern(`^ *[0-9.,]+ *$`)
)

// isFraction reports whether a number before run or rise is a fraction of it: it is written with % or, without names and
// units, with a stroke.
func isFraction(text string) bool {
	return strings.HasSuffix(strings.TrimSpace(text), "%") || fractionText().MatchString(text)
}

// warnPlain warns of a plain number below 1 before run or rise, which is a distance but looks like a fraction. Where
// lengths are in letters such distances are usual.
func (r *frameReader) warnPlain(n *node, text, base string, x exact.Num) {
	if !plainText().MatchString(text) || x.Sign() <= 0 || x.Cmp(exact.Int(1)) >= 0 || r.problem.Units.Letters() {
		return
	}
	r.warn("The place %s on line %d is %s along the %s; the fraction would be written %s%% %s.", n.text, n.at.line, r.lengthText(x), base, x.Mul(exact.Int(100)), base)
}

// cutBase parts a position's number from the word length, run or rise after it, if there is one.
func cutBase(text string) (number, base string) {
	for _, word := range positionWords {
		if rest, ok := strings.CutSuffix(text, word); ok && rest != "" && strings.ContainsAny(rest[len(rest)-1:], " )%0123456789") {
			return rest, word
		}
	}
	return text, ""
}

// lengthText is a length with its unit, to six figures.
func (r *frameReader) lengthText(l exact.Num) string { return r.about(l, notation.Length) }
