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

// given reads the names for numbers. They may use each other in any order, so each is read when all it uses are known.
func (r *numberReader) given(n *node) {
	r.numbers, r.spoiled = map[string]exact.Num{}, map[string]bool{}
	if n == nil {
		return
	}
	g := giver{numberReader: r, values: map[string]*node{}, state: map[string]progress{}}
	for _, e := range n.entries {
		if !r.givenName(e.key) || !r.shaped(e.value, e.key.text, e.key.text+": 4.5", scalar) {
			r.spoiled[e.key.text] = true
			continue
		}
		g.values[e.key.text] = e.value
	}
	for _, e := range n.entries {
		name := e.key.text
		if g.settle(name) {
			r.problem.Given = append(r.problem.Given, Given{name, e.value.text, r.numbers[name]})
		}
	}
}

// positionWords follow a number in a position, and so are no names.
var positionWords = []string{"length", "run", "rise"}

// givenName reports whether the key can be a name for a number.
func (r *numberReader) givenName(key *node) bool {
	const remedy = "Names for numbers have letters and digits and begin with a letter: w, h2, span."
	switch name := key.text; {
	case !isName(name):
		r.fault(key.at, quoted(name)+" cannot be a name for a number", remedy)
	case r.problem.Units.Reserved(name):
		r.fault(key.at, name+" already has a meaning in numbers, as a unit or a function", fmt.Sprintf("Choose another name, such as %s1.", name))
	case slices.Contains(positionWords, name):
		r.fault(key.at, name+" already has a meaning in positions", fmt.Sprintf("Choose another name, such as %s1.", name))
	default:
		return true
	}
	return false
}

// isName reports whether a text is letters and digits, a letter first.
func isName(text string) bool {
	first, _ := utf8.DecodeRuneInString(text)
	return unicode.IsLetter(first) && !strings.ContainsFunc(text, func(c rune) bool {
		return !unicode.IsLetter(c) && !unicode.IsDigit(c) && c != '_'
	})
}

// progress is how far a given number is.
type progress int

const (
	untouched progress = iota
	underway
	settled
)

// A numberReader reads numbers, in which given names may stand.
type numberReader struct {
	*shapeReader
	numbers map[string]exact.Num // the given names
	spoiled map[string]bool      // given names whose value is at fault
}

// giver is the work of reading given numbers.
type giver struct {
	*numberReader
	values map[string]*node
	state  map[string]progress
	path   []string // names underway, each used by the one before
}

// settle reads the number of that name, after those it uses, and reports whether it has a value.
func (g *giver) settle(name string) bool {
	n, ok := g.values[name]
	if !ok {
		return false
	}
	switch g.state[name] {
	case settled:
		return !g.spoiled[name]
	case underway:
		g.cycle(name)
		return false
	}
	g.state[name] = underway
	g.path = append(g.path, name)
	for _, used := range notation.Names(n.text) {
		g.settle(used)
	}
	g.path = g.path[:len(g.path)-1]
	g.state[name] = settled
	if g.spoiled[name] {
		return false
	}
	v, ok := g.number(n, name, notation.Any)
	g.numbers[name] = v
	if !ok {
		delete(g.numbers, name)
		g.spoiled[name] = true
	}
	return ok
}

// cycle is the fault of numbers that are given by each other.
func (g *giver) cycle(name string) {
	loop := g.path[slices.Index(g.path, name):]
	for _, member := range loop {
		g.spoiled[member] = true
	}
	n := g.values[name]
	if len(loop) == 1 {
		g.fault(n.at, name+" is given by itself", "Give it a number.")
		return
	}
	g.fault(n.at, allOf(loop)+" are given by each other", "Give one of them a number.")
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
	return v, true
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

// whole reads a plain whole number between two bounds.
func (r *shapeReader) whole(n *node, what string, low, high int) int {
	for v := low; v <= high; v++ {
		if n.text == fmt.Sprint(v) {
			return v
		}
	}
	r.fault(n.at, fmt.Sprintf("%s is a whole number from %d to %d, not %s", what, low, high, quoted(n.text)), fmt.Sprintf("Write one from %d to %d.", low, high))
	return 0
}
