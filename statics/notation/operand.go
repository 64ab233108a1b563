package notation

import (
	"fmt"
	"strings"
)

// quantity reads an operand and the unit after it.
func (p *parser) quantity() (*node, *ReadError) {
	x, fault := p.operand()
	if fault == nil {
		x, fault = p.raised(x)
	}
	if fault != nil || x.kind == nameNode || x.kind == letterNode || !p.startsUnit() {
		return x, fault
	}
	at := p.next().start
	unit, fault := p.unit()
	if fault != nil {
		return nil, fault
	}
	if t := p.next(); t.kind == signToken && strings.HasPrefix(t.text, "^") {
		return nil, faultAt(t.start, t.end, "a unit squared is not read here", "a distributed load is a force per length, such as kN/m")
	}
	end := p.last().end
	word := strings.TrimRight(p.text[at:end], ".")
	m := &node{kind: measuredNode, start: x.start, end: end, text: word, unit: unit, unitAt: at, x: x}
	p.measured = append(p.measured, m)
	return m, nil
}

func (p *parser) operand() (*node, *ReadError) {
	if p.operands++; p.operands > maxOperands {
		return nil, faultAt(p.next().start, p.next().end, fmt.Sprintf("there are more than %d numbers here", maxOperands), "write fewer")
	}
	switch t := p.next(); {
	case t.kind == numberToken:
		return p.leaf(numberNode), nil
	case t.is("("):
		return p.nested(p.bracket)
	case t.is("√"):
		return p.nested(p.root)
	}
	switch p.operandMeaning(p.next()) {
	case nameWord:
		return p.name(), nil
	case letterWord:
		x := p.leaf(letterNode)
		x.unit = letters(x.text)
		return x, nil
	case functionWord:
		return p.call()
	}
	return nil, p.missing()
}

// leaf is a node of the next token alone.
func (p *parser) leaf(kind nodeKind) *node {
	t := p.take()
	return &node{kind: kind, start: t.start, end: t.end, text: t.text}
}

// bracket reads a sum in brackets.
func (p *parser) bracket() (*node, *ReadError) {
	open := p.take()
	x, fault := p.scope()
	switch {
	case fault != nil:
		return nil, fault
	case p.next().kind == endToken, p.next().is("="):
		return nil, faultAt(open.start, open.end, "this bracket is not closed", "write ) where it ends")
	case !p.next().is(")"):
		return nil, p.stray()
	}
	x.start, x.end, x.bracketed = open.start, p.take().end, true
	return x, nil
}

// root reads √ and what stands under it.
func (p *parser) root() (*node, *ReadError) {
	sign := p.take()
	x, fault := p.operand()
	if fault != nil {
		return nil, fault
	}
	return &node{kind: callNode, start: sign.start, end: x.end, text: "sqrt", x: x}, nil
}

// call reads a function and its bracket.
func (p *parser) call() (*node, *ReadError) {
	name := p.take()
	function := strings.ToLower(name.text)
	if !p.next().is("(") {
		return nil, faultAt(name.start, name.end, name.text+" needs brackets", fmt.Sprintf("write %s(30)", function))
	}
	x, fault := p.nested(p.bracket)
	if fault != nil {
		return nil, fault
	}
	return &node{kind: callNode, start: name.start, end: x.end, text: function, x: x}, nil
}
