package notation

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
)

// A Dimension says what a number measures.
type Dimension int

// The dimensions.
const (
	Pure      Dimension = iota // a plain number
	Force                      // force
	Length                     // length
	Moment                     // force × length
	Intensity                  // force ÷ length, of a spread load
	Degrees                    // an angle, in degrees
	Any                        // any of these: for ReadNumber, where a name may stand for each
)

// powers are the powers of force, length and angle of each dimension.
var powers = [...][3]int{Pure: {}, Force: {1, 0, 0}, Length: {0, 1, 0}, Moment: {1, 1, 0}, Intensity: {1, -1, 0}, Degrees: {0, 0, 1}}

// String is the dimension with its article: "a force".
func (d Dimension) String() string {
	words := [...]string{"a plain number", "a force", "a length", "a moment", "a force per length", "an angle", "a number"}
	if d < 0 || int(d) >= len(words) {
		return "something else"
	}
	return words[d]
}

// Units are the units of force and length that the numbers of a problem are in, or the letters P and L that they are
// multiples of. Units are comparable; the zero value has none.
type Units struct {
	force, length string
}

var (
	forceUnits  = []string{"N", "kN", "MN", "lb", "kip"}
	lengthUnits = []string{"mm", "m", "in", "ft"}
)

// ParseUnits reads a unit of force and a unit of length, as in "kN m", or the letters "P L".
func ParseUnits(text string) (Units, error) {
	words := strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == '\t' || r == ',' || r == '\u00a0' })
	if len(words) != 2 {
		return Units{}, unitsFault(text, fmt.Sprintf("%s is not a unit of force and a unit of length", quoted(text)))
	}
	force, length := words[0], words[1]
	switch {
	case force == "P" && length == "L", oneOf(forceUnits, force) && oneOf(lengthUnits, length):
		return Units{force, length}, nil
	case oneOf(lengthUnits, force) && oneOf(forceUnits, length):
		return Units{}, faultAt(0, len(text), "the unit of force comes first", fmt.Sprintf("write %q", length+" "+force))
	case !oneOf(forceUnits, force) && force != "P":
		return Units{}, unitsFault(text, quoted(force)+" is not a unit of force read here")
	}
	return Units{}, unitsFault(text, quoted(length)+" is not a unit of length that goes with "+force)
}

func unitsFault(text, problem string) *ReadError {
	remedy := "write one of N kN MN lb kip, then one of mm m in ft, as in kN m; or the letters P L"
	return faultAt(0, len(text), problem, remedy)
}

func oneOf(list []string, word string) bool {
	for _, w := range list {
		if w == word {
			return true
		}
	}
	return false
}

// String is the text that ParseUnits reads: "kN m".
func (u Units) String() string { return strings.TrimSpace(u.force + " " + u.length) }

// Letters reports whether numbers are multiples of the letters P and L.
func (u Units) Letters() bool { return u.force == "P" }

// Of is the unit of a dimension: "kN", "m", "kN·m", "kN/m", "°"; with letters "P", "L", "PL", "P/L". It is empty for a
// plain number.
func (u Units) Of(d Dimension) string {
	switch d {
	case Force:
		return u.force
	case Length:
		return u.length
	case Moment:
		if u.Letters() {
			return u.force + u.length
		}
		return u.force + "·" + u.length
	case Intensity:
		return u.force + "/" + u.length
	case Degrees:
		return "°"
	}
	return ""
}

// ASCII is Of in plain ASCII, with the product as a point, kN.m, as is usual where there is no raised one, and the
// degree as deg. ReadAnswer reads it.
func (u Units) ASCII(d Dimension) string { return ASCII(u.Of(d)) }

// size is one unit of force^f·length^l in SI units; u is not letters.
func (u Units) size(f, l int) exact.Num {
	return raised(raised(one, units[u.force].size, f), units[u.length].size, l)
}

// raised is n·size^power.
func raised(n, size exact.Num, power int) exact.Num {
	for ; power > 0; power-- {
		n = n.Mul(size)
	}
	for ; power < 0; power++ {
		n = over(n, size)
	}
	return n
}

// Factor is how many of the unit of u one of the unit in the text from is, exactly: 12 for "ft" in inches. The error
// says that from is no unit, or not one of dimension d.
func Factor(from string, u Units, d Dimension) (exact.Num, error) {
	tokens, fault := lex(from)
	if fault != nil {
		return exact.Num{}, fault
	}
	p := &parser{vocabulary: vocabulary{typed: true}, text: from, tokens: tokens}
	if !p.startsUnit() {
		return exact.Num{}, faultAt(0, len(from), quoted(from)+" is not a unit", unitRemedy(u, d))
	}
	m, fault := p.unit()
	if fault != nil {
		return exact.Num{}, fault
	}
	if p.next().kind != endToken {
		return exact.Num{}, p.stray()
	}
	x := &node{kind: measuredNode, end: len(from), text: from, unit: m, x: &node{kind: numberNode, text: "1"}}
	q, fault := evaluator{text: from, units: u}.wanted(x, d)
	if fault != nil {
		return exact.Num{}, fault
	}
	return q.n, nil
}

// unitRemedy says which unit dimension d has.
func unitRemedy(u Units, d Dimension) string {
	switch {
	case d == Pure:
		return "write the number alone"
	case d == Any:
		return "units are made of N kN MN lb kip, mm cm m in ft and deg"
	}
	return "write " + u.Of(d)
}
