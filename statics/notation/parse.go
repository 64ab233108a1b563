package notation

import (
	"fmt"
	"strings"
)

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
	if fault == nil && p.next().kind != endToken {
		fault = p.stray()
	}
	return x, fault
}

func (p *parser) next() token { return p.tokens[p.at] }

func (p *parser) peek() token { return p.tokens[min(p.at+1, len(p.tokens)-1)] }

// last is the token before the next; there is one.
func (p *parser) last() token { return p.tokens[p.at-1] }

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
	if fault != nil || len(p.measured) != measured+1 || p.named != named {
		return x, fault
	}
	inner := p.measured[measured]
	if inner == x || inner.end != x.end || inner.bracketed {
		return x, nil
	}
	whole := *inner
	*inner = *inner.x
	whole.start, whole.x = x.start, x
	p.measured[measured] = &whole
	return &whole, nil
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

// join is the node of x and what operand reads.
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
		case t.is("*"), t.is("/"), p.isTimes(t):
			if p.take(); t.is("/") {
				kind = quotientNode
			}
			if fault = p.timesNothing(t); fault != nil {
				return nil, fault
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
	return t.kind == numberToken || t.is("(") || t.is("√") || p.operandMeaning(t) != strangeWord
}

// mayTouch reports a fault if nothing between x and the next token cannot be read as a product without doubt.
func (p *parser) mayTouch(x *node) *ReadError {
	t, last := p.next(), p.last()
	fault := func(problem, remedy string) *ReadError { return faultAt(last.start, t.end, problem, remedy) }
	switch m := p.operandMeaning(t); {
	case t.kind == numberToken:
		return fault(p.besideNumber())
	case m == unitWord:
		return faultAt(t.start, t.end, quoted(last.text)+" has its unit already", "leave out "+t.text)
	case m == nameWord && last.kind == wordToken && p.operandMeaning(last) == nameWord:
		return fault("two names side by side do not multiply", "put a sign between them")
	case x.kind == quotientNode && !x.bracketed && !isFraction(x) && m != letterWord:
		return faultAt(x.start, t.end, "what is divided by here may be read in two ways",
			fmt.Sprintf("put brackets round all of it, or * before %s", quoted(t.text)))
	}
	return nil
}

// besideNumber says why the next token, a number, cannot stand beside the token before it.
func (p *parser) besideNumber() (problem, remedy string) {
	t, last := p.next(), p.last()
	switch {
	case last.kind == numberToken && p.peek().is("/"):
		return "two numbers side by side do not add", fmt.Sprintf("write %s + %s/%s", last.text, t.text, p.tokens[p.at+2].text)
	case last.kind == numberToken && (strings.Contains(last.text, ".") || len(last.text)+len(t.text) > 12):
		return "two numbers side by side do not multiply", "put * between them"
	case last.kind == numberToken:
		return "two numbers side by side do not multiply", fmt.Sprintf("write %s*%s, or %s%s if it is one number",
			last.text, t.text, last.text, t.text)
	case len(p.measured) > 0 && p.measured[len(p.measured)-1].end == last.end:
		return "two numbers side by side do not add", "put + between them"
	}
	return "a number does not multiply what stands before it", "put * between them"
}

// isFraction reports whether x, a quotient, is one plain number over another.
func isFraction(x *node) bool {
	top := x.x
	if top.kind == negativeNode {
		top = top.x
	}
	return top.kind == numberNode && x.y.kind == numberNode
}

func (p *parser) factor() (*node, *ReadError) {
	t := p.next()
	if !t.is("-") && !t.is("+") {
		return p.quantity()
	}
	return p.nested(func() (*node, *ReadError) {
		p.take()
		x, fault := p.factor()
		if fault != nil || t.is("+") {
			return x, fault
		}
		return &node{kind: negativeNode, start: t.start, end: x.end, x: x}, nil
	})
}

// nested reads something one level deeper.
func (p *parser) nested(read func() (*node, *ReadError)) (*node, *ReadError) {
	if p.depth >= maxNesting {
		return nil, faultAt(p.next().start, p.next().end, "there are too many brackets and signs within each other", "write it with fewer")
	}
	p.depth++
	x, fault := read()
	p.depth--
	return x, fault
}
