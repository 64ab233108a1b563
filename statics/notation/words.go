package notation

import (
	"fmt"
	"strings"
)

// A meaning is what a word stands for.
type meaning int

const (
	strangeWord meaning = iota // nothing; so has a token that is no word
	nameWord
	letterWord
	functionWord
	unitWord
)

// functions are the functions of an expression.
var functions = []string{"sqrt", "sin", "cos", "tan"}

// ReservedWord reports whether a name of a problem may not be spelled so, because it is a unit or a function.
func ReservedWord(name string) bool {
	if _, ok := units[name]; ok || oneOf(functions, name) {
		return true
	}
	_, isMoment := moment(name)
	return isMoment || reserved[name] != ""
}

// Reserved reports whether a name may not be spelled so in a problem with these units: a ReservedWord, or a letter.
func (u Units) Reserved(name string) bool {
	return ReservedWord(name) || u.Letters() && areLetters(name, false)
}

// areLetters reports whether a word is made of P and L alone; lenient takes small letters too.
func areLetters(word string, lenient bool) bool {
	if lenient {
		word = strings.ToUpper(word)
	}
	return word != "" && strings.Trim(word, "PL") == ""
}

// letters is the measure of a word of P and L.
func letters(word string) measure {
	m := measure{size: one}
	for _, r := range strings.ToUpper(word) {
		if r == 'P' {
			m.force++
		} else {
			m.length++
		}
	}
	return m
}

// meaning is what a token stands for.
func (v vocabulary) meaning(t token) meaning {
	if t.kind != wordToken {
		return strangeWord
	}
	_, isUnit := unitNamed(t.text, v.lenient)
	switch {
	case v.letters && areLetters(t.text, v.lenient):
		return letterWord
	case v.known != nil && v.known(t.text) && !ReservedWord(t.text):
		return nameWord
	case oneOf(functions, t.text), v.lenient && oneOf(functions, strings.ToLower(t.text)):
		return functionWord
	case isUnit:
		return unitWord
	}
	return strangeWord
}

// unit reads a unit: words with nothing or a sign between them.
func (p *parser) unit() (measure, *ReadError) {
	m, _ := unitNamed(p.take().text, p.lenient)
	for {
		power, signs := p.unitSign()
		if power == 0 {
			return m, nil
		}
		p.at += signs
		if p.operands++; p.operands > maxOperands {
			return m, faultAt(p.next().start, p.next().end, "this unit is too long", "write one such as kN/m")
		}
		o, _ := unitNamed(p.take().text, p.lenient)
		m = m.times(o, power)
	}
}

// unitSign is the power at which the next tokens join another word to a unit, and how many of them are signs; or 0.
func (p *parser) unitSign() (power, signs int) {
	t, after := p.next(), p.peek(1)
	joins := p.meaning(after) == unitWord
	switch {
	case p.meaning(t) == unitWord:
		return 1, 0
	case joins && (t.is("*") || t.is(".") || t.is("-")):
		return 1, 1
	case joins && (t.is("/") || t.kind == wordToken && t.text == "per"):
		return -1, 1
	}
	return 0, 0
}

// missing is the fault of a token where an operand should stand.
func (p *parser) missing() *ReadError {
	t := p.next()
	switch {
	case t.kind == endToken && p.at > 0:
		last := p.tokens[p.at-1]
		return faultAt(last.start, last.end, fmt.Sprintf("nothing stands after %s", quoted(last.text)), "write a number there")
	case t.kind == wordToken && p.meaning(t) == unitWord:
		return faultAt(t.start, t.end, "there is no number before "+t.text, "write one, such as 12 "+t.text)
	case t.kind == wordToken:
		return p.unknown(t)
	}
	return faultAt(t.start, t.end, fmt.Sprintf("a number should stand where %s is", quoted(t.text)), "write one, such as 12.5")
}

// stray is the fault of a token after a complete expression.
func (p *parser) stray() *ReadError {
	t := p.next()
	switch {
	case t.kind == wordToken:
		return p.unknown(t)
	case t.is(")"):
		return faultAt(t.start, t.end, "this bracket was never opened", "write ( where it begins, or leave ) out")
	case t.is(","):
		return faultAt(t.start, t.end, "a comma has a digit after it", "write one number, such as 12.5")
	case t.is("="):
		return faultAt(t.start, t.end, "only a value is read here", "leave out = and what stands before it")
	}
	return faultAt(t.start, t.end, quoted(t.text)+" has no place here", "leave it out, or write + - * / there")
}

// unknown is the fault of a word that means nothing.
func (p *parser) unknown(t token) *ReadError {
	at := func(problem, remedy string) *ReadError { return faultAt(t.start, t.end, problem, remedy) }
	if why, ok := refused[t.text]; ok {
		return at(why[0], why[1])
	}
	if _, ok := unitNamed(t.text, true); ok {
		return at(quoted(t.text)+" is not spelled as a unit", "write "+spelling(t.text))
	}
	switch word := strings.ToLower(t.text); {
	case word == "x":
		return at("x is not read as times", "write *")
	case wordSense(word) != NoSense:
		return at(quoted(t.text)+" stands in the wrong place", "write the sense after the number and its unit")
	case oneOf(functions, word):
		return at(quoted(t.text)+" is not spelled as a function", "write "+word)
	case len(p.names) > 0:
		return at("nothing is called "+quoted(t.text)+" here", "the names are "+strings.Join(p.names, ", "))
	}
	return at(quoted(t.text)+" is not read here", "write a number, arithmetic, or a number with a unit")
}

// spelling is the unit that a word in the wrong capitals means.
func spelling(word string) string {
	for _, list := range [][]string{forceUnits, lengthUnits} {
		for _, w := range list {
			if strings.EqualFold(w, word) {
				return w
			}
		}
	}
	return strings.ToLower(word)
}
