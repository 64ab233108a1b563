package judging

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// withoutName is a line without what stands before an equals sign: nothing, the name asked for, or its first word, as in
// RB = 20.5, M = 8 and = 8. In its place stand blanks, so that the place of a fault stays what it is.
func (q Asked) withoutName(line string) string {
	if after, whole := strings.CutPrefix(strings.TrimLeft(line, " "), q.Name+" ="); whole { // a name may hold an equals sign itself
		return strings.Repeat(" ", len(line)-len(after)) + after
	}
	name, _, found := strings.Cut(line, "=")
	first, _, _ := strings.Cut(strings.ReplaceAll(q.Name, "(", " "), " ")
	name = strings.TrimSpace(name)
	if letter, _, ok := strings.Cut(strings.ReplaceAll(name, " ", ""), "(x"); ok && strings.EqualFold(letter, first) {
		name = first
	}
	if !found || name != "" && !notation.NameMatches(name, q.Name) && !notation.NameMatches(name, first) {
		return line
	}
	at := strings.Index(line, "=") + 1
	return strings.Repeat(" ", at) + line[at:]
}

// onPart is the end of a line that says on which part or pin a force is meant.
var onPart = notation.Pattern(`(?i)\s+on\s+(?:(?:the\s+)?part\s+)?((?:pin\s+)?[\w'’+]+)\s*\.?\s*$`)

// withoutPart is a line without the name asked for and without the part that a force is meant on, as in 10.2 right on CDE
// or Cx.CDE = 10.2; the turn is −1 if that is the part on which the force acts reversed.
func (j Judge) withoutPart(q Asked, line string) (text string, turn int, err error) {
	text = q.withoutName(line)
	if q.Force == nil {
		return text, 1, nil
	}
	if name, _, found := strings.Cut(text, "="); found {
		if plain, part, ok := strings.Cut(strings.TrimSpace(name), "."); ok && notation.NameMatches(plain, q.Force.Name) {
			turn, err = j.facing(*q.Force, part)
			return strings.Repeat(" ", len(name)+1) + text[len(name)+1:], turn, err
		}
	}
	m := onPart().FindStringSubmatchIndex(text)
	if m == nil {
		return text, 1, nil
	}
	turn, err = j.facing(*q.Force, text[m[2]:m[3]])
	return text[:m[0]], turn, err
}

// facing is +1 for the part on which a force acts as it is given, −1 for the one on which it acts reversed.
func (j Judge) facing(f statics.Force, part string) (int, error) {
	is := func(body int) bool {
		return body != statics.None && strings.EqualFold(strings.TrimSuffix(part, "+"), strings.TrimSuffix(j.Solution.BodyName(body), "+"))
	}
	switch {
	case f.Kind == statics.MemberPull, is(f.On):
		return 1, nil
	case is(f.By):
		return -1, nil
	case f.By == statics.None:
		return 0, fmt.Errorf("%s acts on %s, not on %s", f.Name, j.Solution.BodyName(f.On), part)
	}
	return 0, fmt.Errorf("%s acts on %s, and reversed on %s, not on %s", f.Name, j.Solution.BodyName(f.On), j.Solution.BodyName(f.By), part)
}

// sense is the sign that the words of an answer give its number.
func (j Judge) sense(q Asked, a notation.Answer) (int, error) {
	s, along := a.Sense, q.Span.Left()
	switch {
	case q.Bends:
		return q.stretched(a)
	case a.Side != notation.NoSense && a.Sense != notation.Tension:
		return 0, fmt.Errorf("the side that is stretched is named for a bending moment; for %s %s", q.Name, q.Senses())
	case !q.Shear || s == notation.NoSense:
		return q.SenseSign(s)
	case s == notation.Clockwise:
		return 1, nil
	case s == notation.CounterClockwise:
		return -1, nil
	}
	if sign := notation.SignOf(statics.Force{Along: along}, s); sign != 0 {
		return sign, nil
	}
	return 0, fmt.Errorf("a shear force acts across its member: %s", q.Senses())
}

// stretched is the sign of a bending moment that stretches the side that an answer names: with dM/dx = V it is positive if
// that is the right-hand side on the way along the member.
func (q Asked) stretched(a notation.Answer) (int, error) {
	side, sign := a.Side, 1
	switch {
	case side == notation.NoSense && a.Sense == notation.NoSense:
		return 1, nil
	case a.Sense == notation.Compression:
		sign = -1
	case side == notation.NoSense:
		side = a.Sense
	}
	if sign *= notation.SignOf(statics.Force{Along: q.Span.Left().Neg()}, side); sign != 0 {
		return sign, nil
	}
	return 0, fmt.Errorf("a bending moment has a sign or a stretched side: %s", q.Senses())
}

// ways are the two words for the ways across a member: up and down where it is level, else left and right.
func (q Asked) ways(joined string) string {
	words := []string{"up", "down"}
	switch {
	case q.Span.X.IsZero():
		words = []string{"left", "right"}
	case q.Bends:
		words = []string{"top", "bottom"}
	}
	return strings.Join(words, joined)
}
