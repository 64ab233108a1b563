package notation

import (
	"strings"

	"github.com/shopspring/decimal"

	"unpin/statics/exact"
)

// An Answer is a value as a person typed it.
type Answer struct {
	Value      exact.Num       // in the units of the problem, with the sign as typed
	Written    decimal.Decimal // a literal's number as typed, in the unit as typed; zero for an expression
	Literal    bool            // a decimal, perhaps with a sign and a unit, so that Written, Scale, Places and Figures count
	Expression bool            // arithmetic, a function or letters: the opposite of Literal
	Scale      exact.Num       // a literal's Value ÷ Written: its unit in the units of the problem
	Places     int             // digits after the point as typed; 0 for a whole number, whatever its trailing zeros
	Figures    int             // digits as typed from the first that is not 0; 0 for zero
	Sense      Sense           // how it acts, if a word says so
	Side       Sense           // of "tension left", and of "top" alone: the side that is stretched; of "compression left" the other
	Unit       string          // the last unit as typed, or the letters of a letter problem; empty for none
}

// ReadAnswer reads the value that a person types for something of dimension want: a decimal or an expression, perhaps with
// a unit of any supported system and with words for its sense. Errors are *ReadError; its Mismatch tells a unit of the
// wrong dimension.
func ReadAnswer(text string, u Units, want Dimension) (Answer, error) {
	tokens, fault := lex(timesApart(text))
	if fault != nil {
		return Answer{}, fault
	}
	if fault := onlyValue(tokens); fault != nil {
		return Answer{}, fault
	}
	tokens, words, fault := takePhrase(tokens)
	if fault != nil {
		return Answer{}, fault
	}
	p := &parser{vocabulary: vocabulary{letters: u.Letters(), typed: true}, text: text, tokens: tokens}
	x, fault := p.expression()
	if fault != nil {
		return Answer{}, fault
	}
	e := evaluator{text: text, units: u}
	q, fault := e.wanted(x, want)
	if fault != nil {
		return Answer{}, fault
	}
	a := Answer{Value: q.n, Sense: words.sense, Side: words.side, Unit: lastUnit(x)}
	e.describe(&a, x)
	return a, nil
}

// onlyValue reports the equals sign of a text such as Cy = 9.5.
func onlyValue(tokens []token) *ReadError {
	for _, t := range tokens {
		if t.is("=") {
			return faultAt(tokens[0].start, t.end, "only a value is read here", "leave out = and what stands before it")
		}
	}
	return nil
}

// lastUnit is the last unit or letters in x, as typed.
func lastUnit(x *node) string {
	switch {
	case x == nil:
		return ""
	case x.kind == measuredNode, x.kind == letterNode:
		return x.text
	}
	if unit := lastUnit(x.y); unit != "" {
		return unit
	}
	return lastUnit(x.x)
}

// describe notes how a literal was typed.
func (e evaluator) describe(a *Answer, x *node) {
	number, unit := literal(x)
	if a.Literal = number != ""; !a.Literal {
		a.Expression = true
		return
	}
	a.Written = decimal.RequireFromString(number)
	if x.kind == negativeNode || x.x != nil && x.x.kind == negativeNode {
		a.Written = a.Written.Neg()
	}
	if a.Scale = one; unit != nil {
		a.Scale, _ = e.units.scale(*unit)
	}
	whole, fraction, _ := strings.Cut(number, ".")
	a.Places = len(fraction)
	a.Figures = len(strings.TrimLeft(whole+fraction, "0"))
}

// literal is the number of an x that is a number with at most a sign and a unit or letters, and the unit; else nothing.
func literal(x *node) (number string, unit *measure) {
	switch {
	case x.bracketed:
		return "", nil
	case x.kind == measuredNode:
		number, _ = literal(x.x)
		return number, &x.unit
	case x.kind == productNode && x.y.kind == letterNode:
		number, _ = literal(x.x)
		return number, nil
	case x.kind == negativeNode && x.x.kind == numberNode && !x.x.bracketed:
		return x.x.text, nil
	case x.kind == numberNode:
		return x.text, nil
	}
	return "", nil
}
