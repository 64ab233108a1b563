package notation

import "strings"

// A vocabulary tells the parser what words mean.
type vocabulary struct {
	known   func(name string) bool // names; nil for none
	names   []string               // for messages: the names that are known
	letters bool                   // P and L are letters
	typed   bool                   // by a person at an answer: any capitals will do, and words for a sense have a meaning
	forces  bool                   // names are those of forces
}

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
	_, isUnit := units[name]
	_, isWord := reserved[name]
	_, isMoment := runTogether(name)
	return isUnit || isWord || isMoment || oneOf(functions, name)
}

// Reserved reports whether a name may not be spelled so in a problem with these units: a ReservedWord, or a letter.
func (u Units) Reserved(name string) bool {
	return ReservedWord(name) || u.Letters() && areLetters(name)
}

// areLetters reports whether a word is made of P and L alone.
func areLetters(word string) bool { return word != "" && strings.Trim(word, "PL") == "" }

// letters is the measure of a word of P and L.
func letters(word string) measure {
	word = strings.ToUpper(word)
	return measure{size: one, force: strings.Count(word, "P"), length: strings.Count(word, "L")}
}

// capitals is a word as it is compared: a typed one may have any capitals.
func (v vocabulary) capitals(word string, change func(string) string) string {
	if v.typed {
		return change(word)
	}
	return word
}

// meaning is what a token stands for after a number: a reserved word is never a name.
func (v vocabulary) meaning(t token) meaning {
	if t.kind != wordToken {
		return strangeWord
	}
	_, isUnit := unitNamed(t.text, v.typed)
	switch {
	case v.letters && areLetters(v.capitals(t.text, strings.ToUpper)):
		return letterWord
	case v.knows(t.text) && !ReservedWord(t.text):
		return nameWord
	case oneOf(functions, v.capitals(t.text, strings.ToLower)):
		return functionWord
	case isUnit:
		return unitWord
	}
	return strangeWord
}

// operandMeaning is what a token stands for where no unit can: any name that is known.
func (v vocabulary) operandMeaning(t token) meaning {
	if t.kind == wordToken && v.knows(t.text) && v.meaning(t) != letterWord {
		return nameWord
	}
	return v.meaning(t)
}

func (v vocabulary) knows(name string) bool { return v.known != nil && v.known(name) }

// startsUnit reports whether the next token begins a unit.
func (p *parser) startsUnit() bool { return p.meaning(p.next()) == unitWord }

// unit reads a unit: words with nothing or a sign between them, and perhaps the point of an abbreviation.
func (p *parser) unit() (measure, *ReadError) {
	m, _ := unitNamed(p.take().text, p.typed)
	for {
		power, signs := p.unitSign()
		if power == 0 && signs == 0 {
			return m, nil
		}
		p.at += signs
		if p.operands++; p.operands > maxOperands {
			return m, faultAt(p.next().start, p.next().end, "this unit is too long", "write one such as kN/m")
		}
		if power != 0 {
			o, _ := unitNamed(p.take().text, p.typed)
			m = m.times(o, power)
		}
	}
}

// unitSign is the power at which the next tokens join another word to a unit, or 0, and how many of them are signs.
func (p *parser) unitSign() (power, signs int) {
	t := p.next()
	joins := p.meaning(p.peek()) == unitWord
	switch {
	case p.startsUnit():
		return 1, 0
	case joins && (t.is("*") || t.is(".") || t.is("-")):
		return 1, 1
	case joins && (t.is("/") || t.kind == wordToken && t.text == "per"):
		return -1, 1
	case t.is(".") && t.start == p.last().end && !p.last().is("."):
		return 0, 1 // ft. in. lb.
	}
	return 0, 0
}

// name reads a name.
func (p *parser) name() *node {
	p.named++
	return p.leaf(nameNode)
}
