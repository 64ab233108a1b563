package notation

import (
	"fmt"
	"slices"
	"strings"
)

// missing is the fault of a token where an operand should stand.
func (p *parser) missing() *ReadError {
	t := p.next()
	switch {
	case t.kind == endToken && p.at > 0:
		return faultAt(p.last().start, p.last().end, fmt.Sprintf("nothing stands after %s", quoted(p.last().text)), "write a number there")
	case p.meaning(t) == unitWord:
		return faultAt(t.start, t.end, "there is no number before "+t.text, "write one, such as 12 "+t.text)
	case t.kind == wordToken:
		return p.unknown(t)
	}
	return faultAt(t.start, t.end, fmt.Sprintf("a number should stand where %s is", quoted(t.text)), "write one, such as 12.5")
}

// stray is the fault of the next token, after a complete expression.
func (p *parser) stray() *ReadError {
	t := p.next()
	switch {
	case t.kind == wordToken:
		return p.unknown(t)
	case t.is(".") && p.forces && p.peek().kind == wordToken:
		t = token{wordToken, p.last().text + "." + p.peek().text, p.last().start, p.peek().end}
		return p.unknown(t)
	case t.is(")"):
		return faultAt(t.start, t.end, "this bracket was never opened", "write ( where it begins, or leave ) out")
	case t.is(","):
		return faultAt(t.start, t.end, "a comma has a digit after it", "write one number, such as 12.5")
	}
	return faultAt(t.start, t.end, quoted(p.text[t.start:t.end])+" has no place here", "leave it out, or write + - * / there")
}

// unknown is the fault of a word that means nothing.
func (p *parser) unknown(t token) *ReadError {
	problem, remedy := p.strange(t.text)
	return faultAt(t.start, t.end, problem, remedy)
}

// strange says what is wrong with a word that means nothing.
func (p *parser) strange(typed string) (problem, remedy string) {
	if why, ok := refused[typed]; ok {
		return why[0], why[1]
	}
	word := strings.ToLower(typed)
	_, isUnit := unitNamed(typed, true)
	switch {
	case isUnit:
		return quoted(typed) + " is not spelled as a unit", "write " + spelling(typed)
	case slices.Contains(p.names, "x") && strings.Trim(word, "x0123456789") == "" && word[0] == 'x':
		return quoted(typed) + " is read as one name, and x is the distance", "write * or ^ between x and the number, as in 3*x or x^2"
	case strings.Trim(word, "x0123456789") == "" && word[0] == 'x' && p.at > 0 && p.last().kind == numberToken:
		return "x is not read as a times sign", "write * between the factors"
	case isSenseWord(word) && p.forces:
		return quoted(typed) + " is no part of a sum", "give the term its sense by its sign, + or -"
	case isSenseWord(word) && p.typed:
		return quoted(typed) + " stands in the wrong place", "write the sense last, after the number and its unit"
	case isSenseWord(word):
		return quoted(typed) + " is no part of a number", "leave it out"
	case oneOf(functions, word):
		return quoted(typed) + " is not spelled as a function", "write " + word
	case p.forces:
		return "no force here is called " + quoted(typed), "write the forces by their names"
	case len(p.names) > 0:
		return "nothing is called " + quoted(typed) + " here", "the names are " + strings.Join(p.names, ", ")
	}
	return quoted(typed) + " is not a number", "write a number, arithmetic, or a number with a unit"
}

// spelling is the unit that a word in the wrong capitals means.
func spelling(word string) string {
	for _, list := range [][]string{forceUnits, lengthUnits, {"kNm", "kNmm", "Nm", "Nmm"}} {
		for _, w := range list {
			if strings.EqualFold(w, word) {
				return w
			}
		}
	}
	return strings.ToLower(word)
}
