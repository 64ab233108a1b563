package notation

import (
	"fmt"
	"strings"
	"unicode"

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
	Intensity                  // force ÷ length, of a distributed load
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
	words := strings.FieldsFunc(text, func(r rune) bool { return unicode.IsSpace(r) || r == ',' })
	if len(words) != 2 {
		return Units{}, faultAt(0, len(text), quoted(text)+" is not a unit of force and a unit of length", unitsRemedy)
	}
	force, length := words[0], words[1]
	isForce, isLength := oneOf(forceUnits, force), oneOf(lengthUnits, length)
	switch {
	case force == "P" && length == "L", isForce && isLength:
		return Units{force, length}, nil
	case oneOf(lengthUnits, force) && oneOf(forceUnits, length), force == "L" && length == "P":
		return Units{}, faultAt(0, len(text), "the force comes first", fmt.Sprintf("write %s %s", length, force))
	case force == "P" || isForce && length == "L":
		return Units{}, faultAt(0, len(text), "the letters P and L go together", "write P L, or two units such as kN m")
	case !isForce:
		return Units{}, notIn(text, force, forceUnits, "is not a unit of force for a problem")
	}
	return Units{}, notIn(text, length, lengthUnits, "is not a unit of length for a problem")
}

// UnitPairs lists all that units of a problem can be, as ParseUnits reads and String writes them.
func UnitPairs() []string {
	var all []string
	for _, force := range forceUnits {
		for _, length := range lengthUnits {
			all = append(all, force+" "+length)
		}
	}
	return append(all, "P L")
}

const unitsRemedy = "write one of N kN MN lb kip, then one of mm m in ft, as in kN m; or the letters P L"

// notIn is the fault of a word of the text that is none of the units; it may be another spelling of one.
func notIn(text, word string, list []string, problem string) *ReadError {
	at := strings.Index(text, word)
	remedy := "write one of " + strings.Join(list, " ")
	meant, _ := unitNamed(word, true)
	for _, unit := range list {
		if m := units[unit]; m.powers() == meant.powers() && m.size.Equal(meant.size) {
			remedy = "write " + unit
		}
	}
	return faultAt(at, at+len(word), quoted(word)+" "+problem, remedy)
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

// Customary reports whether lengths are in feet or inches.
func (u Units) Customary() bool { return u.length == "ft" || u.length == "in" }

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

// Foreign is the first unit in a text that is customary where that of u is metric, or the other way round; empty if
// there is none. A word that is one of the names is no unit.
func (u Units) Foreign(text string, names map[string]exact.Num) string {
	tokens, fault := lex(text)
	if fault != nil || u.Letters() || u == (Units{}) {
		return ""
	}
	for _, t := range tokens {
		m, ok := unitNamed(t.text, false)
		if _, named := names[t.text]; named || t.kind != wordToken || !ok || m.angle != 0 {
			continue
		}
		own := units[u.length]
		if m.force != 0 {
			own = units[u.force]
		}
		if m.metric() != own.metric() {
			return t.text
		}
	}
	return ""
}

// metric reports whether a unit is a power of ten of the SI units.
func (m measure) metric() bool {
	r, ok := m.size.Rat()
	return ok && strings.TrimRight(r.Num().String(), "0") == "1" && strings.TrimRight(r.Denom().String(), "0") == "1"
}

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
	p := &parser{vocabulary: vocabulary{letters: u.Letters(), typed: true}, text: from, tokens: tokens}
	x, fault := p.unitAlone()
	if fault != nil {
		return exact.Num{}, fault
	}
	q, fault := evaluator{text: from, units: u}.wanted(x, d)
	switch {
	case fault != nil:
		return exact.Num{}, fault
	case u.Letters() && d != Degrees && !q.n.Equal(one): // P/2
		return exact.Num{}, faultAt(0, len(from), quoted(from)+" is not a unit", unitRemedy(u, d))
	}
	return q.n, nil
}

// unitAlone reads a unit or letters that are all of the text, as one of that unit.
func (p *parser) unitAlone() (*node, *ReadError) {
	t := p.next()
	m := p.meaning(t)
	switch {
	case m == letterWord:
		return p.expression()
	case m == strangeWord && refused[t.text][0] != "":
		return nil, p.unknown(t)
	case m != unitWord:
		return nil, faultAt(0, len(p.text), quoted(p.text)+" is not a unit", "write one such as kN, m, kN·m or kN/m")
	}
	unit, fault := p.unit()
	if fault == nil && p.next().kind != endToken {
		fault = faultAt(p.next().start, len(p.text), quoted(p.text)+" is more than a unit", "write the unit alone")
	}
	return &node{kind: measuredNode, end: len(p.text), text: p.text, unit: unit, x: &node{kind: numberNode, text: "1"}}, fault
}

// unitRemedy says which unit dimension d has.
func unitRemedy(u Units, d Dimension) string {
	if unit := u.Of(d); unit != "" {
		return "write " + unit
	}
	return "check the unit"
}
