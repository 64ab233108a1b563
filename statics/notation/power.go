package notation

import (
	"fmt"
	"strings"
)

// isTimes reports whether a token is an x between two numbers, which multiplies them.
func (p *parser) isTimes(t token) bool {
	return p.typed && t.kind == wordToken && strings.EqualFold(t.text, "x") && p.operandMeaning(t) == strangeWord
}

// timesNothing is the fault of an x that was taken for times and after which no factor begins, as in 2x + 1: the value of a
// function is asked, or a product was not finished.
func (p *parser) timesNothing(t token) *ReadError {
	if t.kind != wordToken || p.startsOperand() {
		return nil
	}
	before := "2"
	if p.at > 1 && p.tokens[p.at-2].kind == numberToken {
		before = p.tokens[p.at-2].text
	}
	product := before + "*3"
	switch next := p.next(); {
	case next.is("-") && p.peek().kind == numberToken:
		product = before + "*(-" + p.peek().text + ")"
	case next.is("+") && p.peek().kind == numberToken:
		product = before + "*" + p.peek().text
	}
	remedy := "write a value without x; a product is written " + product
	if p.forces {
		remedy = "write the other factor, as in " + product
	}
	return faultAt(t.start, t.end, "x is read as times here, and no number follows it", remedy)
}

// raised reads what stands after x: a power, such as ² or ^2, or nothing.
func (p *parser) raised(x *node) (*node, *ReadError) {
	sign := p.next()
	power, found := strings.CutPrefix(sign.text, "^")
	if !found || sign.kind != signToken {
		return x, nil
	}
	p.take()
	if power == "" {
		power = p.take().text
	}
	if len(power) != 1 || power < "1" || power > "9" {
		return nil, faultAt(sign.start, p.last().end, "a power is a whole number from 1 to 9", "write it as in 8^2")
	}
	return &node{kind: powerNode, start: x.start, end: p.last().end, text: power, x: x}, nil
}

// raise is a to the power of x.
func (e evaluator) raise(x *node, a quantity) (quantity, *ReadError) {
	q := a
	for range int(x.text[0]-'0') - 1 {
		if q = q.times(q.n.Mul(a.n), a, 1); tooLong(q.n) {
			return q, e.fault(x, fmt.Sprintf("%s comes to a number with too many digits", e.typed(x)), "write shorter numbers")
		}
	}
	return q, nil
}

// timesApart puts blanks round an x that stands for times with none, as in 2x3; the places of a text stay what they are,
// since it is the sign * that stands there then.
func timesApart(text string) string {
	b := []byte(text)
	for i := 1; i+1 < len(b); i++ {
		if (b[i] == 'x' || b[i] == 'X') && (isDigit(rune(b[i-1])) || b[i-1] == ')') && isDigit(rune(b[i+1])) {
			b[i] = '*'
		}
	}
	return string(b)
}
