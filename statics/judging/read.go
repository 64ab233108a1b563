package judging

import (
	"errors"
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// An Asked is what a line is read as an answer to.
type Asked struct {
	Name  string // as the student reads it: Cy, "V(BC, 2.4 before)", "arm 2"
	Dim   notation.Dimension
	Force *statics.Force // the unknown whose value is asked for, or nil
	Axial bool           // an axial force, in tension or in compression
	Shear bool           // a shear force, in the sense in which the style counts it
	Bends bool           // a bending moment, which may be told by the side that it stretches
	Span  statics.Vector // of a shear force or bending moment: the direction of its member, from the start on
}

// Read reads a line as an answer: a number or expression, a unit, a sense, a part that it is meant on. The error is a
// sentence for the student, where it can with lines beneath that point at the place.
func (j Judge) Read(q Asked, line string) (Typed, error) {
	text, turn, err := j.withoutPart(q, line)
	if err != nil {
		return Typed{}, err
	}
	if err := q.strangeName(j.Solution.Assembly, text); err != nil {
		return Typed{}, err
	}
	a, err := notation.ReadAnswer(j.Decimals(text), j.Style.Units, q.Dim)
	if err != nil {
		return Typed{}, Placed(line, err)
	}
	sign, err := j.sense(q, a)
	if err != nil {
		return Typed{}, err
	}
	v, err := typedAs(a)
	bare := v
	if q.Shear {
		bare = j.turned(v)
	}
	switch {
	case a.Sense == notation.NoSense && a.Side == notation.NoSense || saidTwice(v, bare, sign):
		v = bare
	case sign < 0:
		v = v.neg()
	}
	if turn < 0 {
		v = v.neg()
	}
	return v, err
}

// saidTwice reports whether the minus of a value and the sense after it say the same: −12 left is 12 left, as in a table that has a
// column for the sense beside that of the value.
func saidTwice(v, bare Typed, sign int) bool {
	return v.Value.Sign() < 0 && bare.Value.Sign() == sign
}

// strangeName is the error of an answer that names an unknown other than the one asked for, alone or in an expression.
func (q Asked) strangeName(a *statics.Assembly, line string) error {
	apart := func(r rune) bool { return strings.ContainsRune(" \t+-−*×·/()=", r) }
	for _, word := range strings.FieldsFunc(line, apart) {
		f := ForceNamed(a, word)
		switch {
		case f == statics.None:
		case a.Forces[f].Name == q.Name:
			return fmt.Errorf("%s itself is asked for: type what it comes to as a number", q.Name)
		default:
			return fmt.Errorf("%s is asked for, as a number: wherever you need %s, put its value", q.Name, a.Forces[f].Name)
		}
	}
	return nil
}

// Placed is the error of a line that could not be read, with the place shown beneath where it is known. What was typed
// stands in from the margin, so that it is not taken for a reply.
func Placed(line string, err error) error {
	var at *notation.ReadError
	if errors.As(err, &at) {
		return fmt.Errorf("%w\n  %s", err, strings.ReplaceAll(at.Caret(line), "\n", "\n  "))
	}
	return err
}

// SenseSign is +1 if a sense word agrees with the positive direction of what is asked, −1 if it is the opposite. A word
// that the quantity cannot have is an error.
func (q Asked) SenseSign(s notation.Sense) (int, error) {
	if s == notation.NoSense {
		return 1, nil
	}
	sign := 0
	switch {
	case q.Force != nil:
		sign = notation.SignOf(*q.Force, s)
	case q.Axial:
		sign = map[notation.Sense]int{notation.Tension: 1, notation.Compression: -1}[s]
	}
	if sign == 0 {
		return 0, fmt.Errorf("%s has no such sense: %s", q.Name, q.Senses())
	}
	return sign, nil
}

// Senses says which sense words fit what is asked.
func (q Asked) Senses() string {
	switch {
	case q.Axial:
		return "it is tension or compression."
	case q.Shear:
		return "the forces on the side of the member's start push " + q.ways(" or ") + "."
	case q.Bends:
		return "name the side that is stretched, as in: " + q.ways(" or ") + "."
	case q.Force == nil && q.Dim == notation.Length:
		return "a length is a number with a unit."
	case q.Force == nil:
		return "its size is asked for, and its sign after it."
	case q.Force.Couple:
		return "it is cw or ccw."
	case q.Force.Along.X.IsZero():
		return "it is up or down."
	case q.Force.Along.Y.IsZero():
		return "it is left or right."
	}
	return "it is up or down, left or right."
}

// ReadSign reads the sign of a term: + or −, or a sense of the sum.
func (j Judge) ReadSign(s statics.Sum, line string) (Typed, error) {
	for sign, words := range map[int][]string{1: j.senses(s, 1), -1: j.senses(s, -1)} {
		for _, w := range words {
			if strings.EqualFold(strings.TrimSpace(line), w) {
				return Word(sign), nil
			}
		}
	}
	//lint:ignore ST1005 a student reads it as it stands
	return Typed{}, errors.New("Type + or -: does this term count with or against the positive sense of the sum?")
}

// senses are the words for a sign in a sum.
func (j Judge) senses(s statics.Sum, sign int) []string {
	words := []string{"+", "plus", "+1", "1"}
	if sign < 0 {
		words = []string{"-", "−", "minus", "-1", "−1"}
	}
	turn := []string{"ccw", "counter-clockwise", "anticlockwise"}
	if j.Style.Moments.Sign(sign) < 0 {
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
