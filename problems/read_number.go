package problems

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A numberReader reads numbers, in which given names may stand.
type numberReader struct {
	*shapeReader
	numbers map[string]exact.Num // the given names
	spoiled map[string]bool      // given names whose value is at fault

	foreign      int    // how many values are in units of another system
	foreignFirst string // what is said of the first
}

// number reads a number of a dimension. One that uses a given name at fault is not read, and no fault of its own.
func (r *numberReader) number(n *node, what string, want notation.Dimension) (exact.Num, bool) {
	if !r.shaped(n, what, "12.5", scalar) {
		return exact.Num{}, false
	}
	return r.numberText(n, n.text, want)
}

// numberText reads the beginning of a value's text as a number.
func (r *numberReader) numberText(n *node, text string, want notation.Dimension) (exact.Num, bool) {
	if v, plain := notation.PlainNumber(text); plain {
		return v, true
	}
	for _, name := range notation.Names(text) {
		if r.spoiled[name] {
			return exact.Num{}, false
		}
	}
	v, err := notation.ReadNumber(text, r.numbers, r.problem.Units, want)
	if err != nil {
		r.readFault(n, r.withGivenHint(text, err))
		return exact.Num{}, false
	}
	if len(v.String()) > maxDigits {
		r.fault(n.at, "this number has more digits than can be worked with", "Write a number that a person would work with.")
		return exact.Num{}, false
	}
	if v.Inexact() && want != notation.Degrees {
		r.warn("The value %s on line %d is carried with 34 significant digits, and what rests on it is not exact.", n.text, n.at.line)
	}
	r.noteForeign(n, text, v, want)
	return v, true
}

// noteForeign notes a value in a unit of another system than the problem's, which is converted but may be a slip.
func (r *numberReader) noteForeign(n *node, text string, v exact.Num, want notation.Dimension) {
	unit := r.problem.Units.Foreign(text, r.numbers)
	if unit == "" {
		return
	}
	if r.foreign++; r.foreign > 1 {
		return
	}
	r.foreignFirst = fmt.Sprintf("The value %s on line %d is in %s and the problem in %s", n.text, n.at.line, unit, r.problem.Units)
	if want != notation.Any {
		r.foreignFirst += ", in which it is " + r.about(v, want)
	}
}

// warnForeign warns of what noteForeign noted.
func (r *numberReader) warnForeign() {
	switch {
	case r.foreign == 2:
		r.warn("%s; so is one more value.", r.foreignFirst)
	case r.foreign > 2:
		r.warn("%s; so are %d more values.", r.foreignFirst, r.foreign-1)
	case r.foreign == 1:
		r.warn("%s.", r.foreignFirst)
	}
}

// about is a number with its unit, to six figures.
func (r *numberReader) about(v exact.Num, d notation.Dimension) string {
	text := strings.TrimSpace(notation.Value(v, d, r.problem.Units, 6))
	if v.Terminates() && len(v.String()) <= 8 {
		return text
	}
	return "about " + text
}

// maxDigits bounds a number's text, so that numbers given by each other cannot grow without end.
const maxDigits = 400

// withGivenHint adds the near name to the fault of an unknown one.
func (r *numberReader) withGivenHint(text string, err error) error {
	e := (*notation.ReadError)(nil)
	if !errors.As(err, &e) || e.Start >= e.End || e.End > len(text) {
		return err
	}
	word := text[e.Start:e.End]
	if meant := near(word, slices.Sorted(maps.Keys(r.numbers))); meant != "" && meant != word && isName(word) {
		hinted := *e
		hinted.Remedy = fmt.Sprintf("did you mean %s?", meant)
		return &hinted
	}
	return err
}

// readFault is the fault of a text that notation could not read, at its place in the file if the text stands there as
// it is.
func (r *numberReader) readFault(n *node, err error) {
	e := (*notation.ReadError)(nil)
	if !errors.As(err, &e) {
		r.fault(n.at, err.Error(), "")
		return
	}
	at := n.at
	if n.literal && 0 <= e.Start && e.Start <= e.End && e.End <= len(n.text) && !strings.Contains(n.text, "\n") {
		at.column += n.quote + utf8.RuneCountInString(n.text[:e.Start])
		at.width = max(1, utf8.RuneCountInString(n.text[e.Start:e.End]))
	}
	r.fault(at, e.Problem, sentence(e.Remedy))
}

// counted reads a number that measures nothing, such as points; like is one. What is no number, or more than one, is told as a whole.
func (r *numberReader) counted(n *node, what, like string) (exact.Num, bool) {
	if n.shape != scalar {
		return r.number(n, what, notation.Pure)
	}
	if v, err := notation.ReadNumber(n.text, nil, r.problem.Units, notation.Pure); err == nil && len(v.String()) <= maxDigits {
		return v, true
	}
	number, rest := leadingNumber(n.text)
	if number == "" {
		r.fault(n.at, quoted(n.text)+" is not a number", fmt.Sprintf("Write one, such as %s: %s", what, like))
		return exact.Num{}, false
	}
	remedy := fmt.Sprintf("Write the number alone: %s: %s", what, number)
	if rest == "" || strings.ContainsFunc(rest, unicode.IsDigit) {
		remedy = fmt.Sprintf("Write one number, such as %s: %s", what, like)
	}
	r.fault(n.at, quoted(n.text)+" is not a number alone", remedy)
	return exact.Num{}, false
}

var leadingForm = notation.Pattern(`^[“"']?([0-9]+(?:\.[0-9]+)?)(.*)$`)

// leadingNumber is the decimal that a text begins with, perhaps after a quotation mark, and what follows it.
func leadingNumber(text string) (number, rest string) {
	found := leadingForm().FindStringSubmatch(strings.TrimSpace(text))
	if found == nil {
		return "", ""
	}
	return found[1], strings.TrimSpace(found[2])
}

// whole reads a plain whole number between two bounds.
func (r *shapeReader) whole(n *node, what string, low, high int) int {
	for v := low; v <= high; v++ {
		if n.text == fmt.Sprint(v) {
			return v
		}
	}
	remedy := fmt.Sprintf("Write one from %d to %d.", low, high)
	if number, rest := leadingNumber(n.text); rest != "" && !strings.ContainsFunc(rest, unicode.IsDigit) {
		remedy = fmt.Sprintf("Write the number alone, one from %d to %d: %s: %s", low, high, what, number)
	}
	r.fault(n.at, fmt.Sprintf("%s is a whole number from %d to %d, not %s", what, low, high, quoted(n.text)), remedy)
	return 0
}
