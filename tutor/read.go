package tutor

import (
	"errors"
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// read reads a line as an answer to q: a number or expression, a unit, a sense. The error is a sentence for the student,
// where it can with a line beneath that points at the place.
func (l *Lesson) read(q Question, line string) (Typed, error) {
	if q.Kind == TermSign {
		return l.readSign(q, line)
	}
	if q.Kind == ShapeDegree || q.Kind == ShapeSlope {
		return l.readShape(q, line)
	}
	if err := l.strangeName(q, line); err != nil {
		return Typed{}, err
	}
	a, err := notation.ReadAnswer(withoutName(q, line), l.Problem.Units, q.Dim)
	if err != nil {
		return Typed{}, placed(line, err)
	}
	sign, err := l.senseSign(q, a.Sense)
	if err != nil {
		return Typed{}, err
	}
	v := Typed{Value: a.Value, Unit: a.Scale, Places: placesOf(a)}
	if v.Written, err = exact.FromDecimal(a.Written); err != nil {
		return Typed{}, err
	}
	if sign < 0 {
		v.Value, v.Written = v.Value.Neg(), v.Written.Neg()
	}
	return v, nil
}

// withoutName is a line without the name asked for and an equals sign before the answer, as in RB = 20.5. In their place
// stand blanks, so that the place of a fault stays what it is.
func withoutName(q Question, line string) string {
	name, _, found := strings.Cut(line, "=")
	if !found || !notation.NameMatches(strings.TrimSpace(name), q.Name) {
		return line
	}
	return strings.Repeat(" ", len(name)+1) + line[len(name)+1:]
}

// strangeName is the error of an answer that names an unknown other than the one asked for, alone or in an expression.
func (l *Lesson) strangeName(q Question, line string) error {
	for _, word := range strings.FieldsFunc(withoutName(q, line), func(r rune) bool { return strings.ContainsRune(" \t+-−*×·/()=", r) }) {
		f := l.forceNamed(word)
		switch {
		case f == statics.None:
		case l.Solution.Forces[f].Name == q.Name:
			return fmt.Errorf("%s itself is asked for: type what it comes to as a number", q.Name)
		default:
			return fmt.Errorf("%s is asked for, as a number: where %s stands in the sum, put its value", q.Name, l.Solution.Forces[f].Name)
		}
	}
	return nil
}

// placed is the error of a line that could not be read, with the place shown beneath where it is known. What was typed
// stands in from the margin, so that it is not taken for a reply.
func placed(line string, err error) error {
	var at *notation.ReadError
	if errors.As(err, &at) {
		return fmt.Errorf("%w\n  %s", err, strings.ReplaceAll(at.Caret(line), "\n", "\n  "))
	}
	return err
}

// unread is the reply to a line that could not be read.
func unread(err error) Reply {
	return Reply{Kind: Unread, Lines: strings.Split(err.Error(), "\n")}
}

// readSign reads the sign of a term: + or −, or a sense of the sum.
func (l *Lesson) readSign(q Question, line string) (Typed, error) {
	s := l.Solution.Plan[q.Step].Sums[q.Sum]
	for sign, words := range map[int][]string{1: l.senses(s, 1), -1: l.senses(s, -1)} {
		for _, w := range words {
			if strings.EqualFold(strings.TrimSpace(line), w) {
				return Typed{Value: exact.Int(int64(sign)), Unit: exact.Int(1)}, nil
			}
		}
	}
	return Typed{}, fmt.Errorf("Type + or -: does this term count with or against the positive sense of the sum?")
}

// senses are the words for a sign in a sum.
func (l *Lesson) senses(s statics.Sum, sign int) []string {
	words := []string{"+", "plus", "+1", "1"}
	if sign < 0 {
		words = []string{"-", "−", "minus", "-1", "−1"}
	}
	turn := []string{"ccw", "counter-clockwise", "anticlockwise"}
	if l.clockwise() != (sign < 0) {
		turn = []string{"cw", "clockwise"}
	}
	along := map[bool]string{true: "right", false: "left"}[s.Along.X.Sign()*sign > 0]
	if s.Along.X.IsZero() {
		along = map[bool]string{true: "up", false: "down"}[s.Along.Y.Sign()*sign > 0]
	}
	switch {
	case s.Moment:
		return append(words, turn...)
	case s.Along.X.IsZero() || s.Along.Y.IsZero():
		return append(words, along)
	}
	return words
}

// senseSign is +1 if a sense word agrees with the positive direction of what is asked, −1 if it is the opposite. A word
// that the quantity cannot have is an error.
func (l *Lesson) senseSign(q Question, s notation.Sense) (int, error) {
	if s == notation.NoSense {
		return 1, nil
	}
	var sign int
	switch q.Kind {
	case ForceValue:
		sign = notation.SignOf(l.Solution.Forces[q.Force], s)
	case SectionPart:
		if q.Quantity == AxialForce {
			sign = map[notation.Sense]int{notation.Tension: 1, notation.Compression: -1}[s]
		}
	}
	if sign == 0 {
		return 0, fmt.Errorf("%s has no such sense; %s", q.Name, l.sensesOf(q))
	}
	return sign, nil
}

// sensesOf says which sense words fit a question.
func (l *Lesson) sensesOf(q Question) string {
	switch {
	case q.Kind == SectionPart && q.Quantity == AxialForce:
		return "it is tension or compression."
	case q.Kind != ForceValue:
		return "give its sign."
	}
	f := l.Solution.Forces[q.Force]
	switch {
	case f.Couple:
		return "it is cw or ccw."
	case f.Along.X.IsZero():
		return "it is up or down."
	case f.Along.Y.IsZero():
		return "it is left or right."
	}
	return "it is up or down, left or right."
}
