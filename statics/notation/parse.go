package notation

import (
	"fmt"
	"strings"
)

// A nodeKind is what a node of an expression is.
type nodeKind int

const (
	numberNode     nodeKind = iota
	nameNode                // a name that the caller knows
	letterNode              // P, L, PL…
	negativeNode            // −x
	sumNode                 // x + y
	differenceNode          // x − y
	productNode             // x · y
	quotientNode            // x ÷ y
	callNode                // a function of x
	measuredNode            // x with a unit
)

// A node is an expression as typed, from byte start to end of its text.
type node struct {
	kind       nodeKind
	start, end int
	text       string  // number, name, letters, function; of a measured node its unit as typed
	unit       measure // of a measured node; of letters their powers
	x, y       *node
	bracketed  bool // it stands in brackets of its own
}

// A vocabulary tells the parser what words mean.
type vocabulary struct {
	known   func(name string) bool // names; nil for none
	letters bool                   // P and L are letters
	lenient bool                   // units and functions may be spelled in any capitals
	names   []string               // for messages: names that are known
}

// A parser reads tokens by operator precedence.
type parser struct {
	vocabulary
	text     string
	tokens   []token
	at       int
	depth    int
	operands int
	named    int     // names read so far
	measured []*node // nodes with a unit read so far
}

// expression reads all tokens as one expression.
func (p *parser) expression() (*node, *ReadError) {
	if p.next().kind == endToken {
		return nil, faultAt(p.next().start, p.next().end, "there is no number here", "write one, such as 12.5")
	}
	x, fault := p.scope()
	if fault != nil {
		return nil, fault
	}
	if p.next().kind != endToken {
		return nil, p.stray()
	}
	return x, nil
}

func (p *parser) next() token { return p.tokens[p.at] }

func (p *parser) peek(ahead int) token { return p.tokens[min(p.at+ahead, len(p.tokens)-1)] }

// take moves past the next token.
func (p *parser) take() token {
	t := p.next()
	if t.kind != endToken {
		p.at++
	}
	return t
}

// scope reads a sum that fills a text or a bracket. Where a unit ends it and there is no other unit and no name, which
// would have a unit of its own, the unit belongs to the whole of it.
func (p *parser) scope() (*node, *ReadError) {
	measured, named := len(p.measured), p.named
	x, fault := p.sum()
	if fault != nil {
		return nil, fault
	}
	if len(p.measured) != measured+1 || p.named != named {
		return x, nil
	}
	if last := p.measured[measured]; last.end == x.end && last != x {
		unit := *last
		*last = *last.x
		unit.start, unit.x = x.start, x
		p.measured[measured] = &unit
		return &unit, nil
	}
	return x, nil
}

func (p *parser) sum() (*node, *ReadError) {
	x, fault := p.product()
	for fault == nil {
		kind := sumNode
		switch t := p.next(); {
		case t.is("-"):
			kind = differenceNode
		case !t.is("+"):
			return x, nil
		}
		p.take()
		x, fault = join(kind, x, p.product)
	}
	return nil, fault
}

// join is the node of x and what the operand reads.
func join(kind nodeKind, x *node, operand func() (*node, *ReadError)) (*node, *ReadError) {
	y, fault := operand()
	if fault != nil {
		return nil, fault
	}
	return &node{kind: kind, start: x.start, end: y.end, x: x, y: y}, nil
}

func (p *parser) product() (*node, *ReadError) {
	x, fault := p.factor()
	for fault == nil {
		kind := productNode
		switch t := p.next(); {
		case t.is("*"), t.is("/"):
			if p.take(); t.is("/") {
				kind = quotientNode
			}
		case !p.startsOperand():
			return x, nil
		default:
			if fault = p.mayTouch(x); fault != nil {
				return nil, fault
			}
		}
		x, fault = join(kind, x, p.factor)
	}
	return nil, fault
}

// startsOperand reports whether the next token may begin an operand.
func (p *parser) startsOperand() bool {
	t := p.next()
	return t.kind == numberToken || t.is("(") || t.is("√") || t.kind == wordToken && p.meaning(t) != strangeWord
}

// mayTouch reports a fault if nothing between x and the next token cannot be read as a product without doubt.
func (p *parser) mayTouch(x *node) *ReadError {
	t, last := p.next(), p.tokens[p.at-1]
	between := func(problem, remedy string) *ReadError { return faultAt(last.start, t.end, problem, remedy) }
	switch {
	case t.kind == numberToken && last.kind == numberToken:
		return between("two numbers side by side do not multiply", fmt.Sprintf("write %s*%s, or %s%s if it is one number",
			last.text, t.text, last.text, t.text))
	case t.kind == numberToken:
		return between("a number does not multiply what stands before it", "put * between them")
	case p.meaning(t) == unitWord:
		return faultAt(t.start, t.end, fmt.Sprintf("%s has its unit already", quoted(last.text)), "leave out "+t.text)
	case last.kind == wordToken && p.meaning(last) == nameWord && p.meaning(t) == nameWord:
		return between("two names side by side do not multiply", "put * between them")
	case x.kind == quotientNode && !x.bracketed && !isFraction(x) && p.meaning(t) != letterWord:
		return faultAt(x.start, t.end, "what stands after / may be read in two ways", "put brackets round what is divided by, or a * after it")
	}
	return nil
}

// isFraction reports whether x is one plain number over another.
func isFraction(x *node) bool {
	over := x.x
	if over.kind == negativeNode {
		over = over.x
	}
	return over.kind == numberNode && x.y.kind == numberNode
}

func (p *parser) factor() (*node, *ReadError) {
	t := p.next()
	if !t.is("-") && !t.is("+") {
		return p.quantity()
	}
	if fault := p.deeper(); fault != nil {
		return nil, fault
	}
	defer func() { p.depth-- }()
	p.take()
	x, fault := p.factor()
	if fault != nil || t.is("+") {
		return x, fault
	}
	return &node{kind: negativeNode, start: t.start, end: x.end, x: x}, nil
}

// deeper counts one more level of nesting.
func (p *parser) deeper() *ReadError {
	if p.depth++; p.depth > maxNesting {
		return faultAt(p.next().start, p.next().end, "there are too many brackets within each other", "write the sum with fewer")
	}
	return nil
}

// quantity reads an operand and the unit after it.
func (p *parser) quantity() (*node, *ReadError) {
	x, fault := p.operand()
	if fault != nil || x.kind == nameNode || x.kind == letterNode || p.meaning(p.next()) != unitWord {
		return x, fault
	}
	from := p.next().start
	unit, fault := p.unit()
	if fault != nil {
		return nil, fault
	}
	end := p.tokens[p.at-1].end
	m := &node{kind: measuredNode, start: x.start, end: end, text: p.text[from:end], unit: unit, x: x}
	p.measured = append(p.measured, m)
	return m, nil
}

func (p *parser) operand() (*node, *ReadError) {
	if p.operands++; p.operands > maxOperands {
		return nil, faultAt(p.next().start, p.next().end, fmt.Sprintf("there are more than %d numbers here", maxOperands), "write fewer")
	}
	t := p.next()
	switch {
	case t.kind == numberToken:
		return p.leaf(numberNode), nil
	case t.is("("):
		return p.bracket()
	case t.is("√"):
		return p.root()
	}
	switch p.meaning(t) {
	case nameWord:
		p.named++
		return p.leaf(nameNode), nil
	case letterWord:
		x := p.leaf(letterNode)
		x.unit = letters(t.text)
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
	if fault := p.deeper(); fault != nil {
		return nil, fault
	}
	defer func() { p.depth-- }()
	open := p.take()
	x, fault := p.scope()
	switch {
	case fault != nil:
		return nil, fault
	case p.next().kind == endToken:
		return nil, faultAt(open.start, open.end, "this bracket is not closed", "write ) where it ends")
	case !p.next().is(")"):
		return nil, p.stray()
	}
	whole := *x
	whole.start, whole.end, whole.bracketed = open.start, p.take().end, true
	p.replace(x, &whole)
	return &whole, nil
}

// replace puts a copy of a node in its place among those with a unit.
func (p *parser) replace(x, by *node) {
	for i, m := range p.measured {
		if m == x {
			p.measured[i] = by
		}
	}
}

// root reads √ and what stands under it.
func (p *parser) root() (*node, *ReadError) {
	if fault := p.deeper(); fault != nil {
		return nil, fault
	}
	defer func() { p.depth-- }()
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
	if !p.next().is("(") {
		return nil, faultAt(name.start, name.end, name.text+" needs brackets", fmt.Sprintf("write %s(30)", strings.ToLower(name.text)))
	}
	x, fault := p.bracket()
	if fault != nil {
		return nil, fault
	}
	return &node{kind: callNode, start: name.start, end: x.end, text: strings.ToLower(name.text), x: x}, nil
}
