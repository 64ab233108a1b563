package problems

import (
	"fmt"
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
			r.note(e.value, GivenNumber, name, r.numbers[name])
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
	case name == whereWord:
		r.fault(key.at, name+" already has a meaning under vary", fmt.Sprintf("Choose another name, such as %s1.", name))
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
