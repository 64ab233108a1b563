package notation

import (
	"unpin/statics/exact"
)

// maxDegree bounds the power of x in a function.
const maxDegree = 9

// ReadFunction reads a function of the distance x that a person types for something of dimension want, such as
// 11.5x - 2x². Coefficients may have units: with kN, 11.5 kN x is a moment. It gives the polynomial, lowest power first,
// in the units of the problem. Errors are *ReadError.
func ReadFunction(text string, u Units, want Dimension) (exact.Poly, error) {
	tokens, fault := lex(text)
	if fault == nil {
		fault = onlyValue(tokens)
	}
	if fault != nil {
		return nil, fault
	}
	isX := func(name string) bool { return name == "x" || name == "X" }
	p := &parser{vocabulary: vocabulary{letters: u.Letters(), typed: true, known: isX, names: []string{"x"}}, text: text, tokens: tokens}
	x, fault := p.expression()
	if fault != nil {
		return nil, fault
	}
	e := evaluator{text: text, units: u}
	all, fault := e.function(x)
	if fault != nil {
		return nil, fault
	}
	poly := make(exact.Poly, len(all))
	for power, q := range all {
		need := powers[want]
		need[1] -= power // the length that each x brings
		if !q.plain && !q.free && q.powers != need && !q.n.IsZero() {
			return nil, &ReadError{Start: x.start, End: x.end, Problem: "the units here do not make " + want.String(), Remedy: "leave them out", Mismatch: true}
		}
		poly[power] = q.n
	}
	return poly.Trim(), nil
}

// function is x as a polynomial in the one name that it may have, lowest power first.
func (e evaluator) function(x *node) ([]quantity, *ReadError) {
	switch {
	case x.kind == nameNode:
		return []quantity{{plain: true}, {n: one, plain: true}}, nil
	case !hasName(x):
		q, fault := e.value(x)
		return []quantity{q}, fault
	}
	a, fault := e.function(x.x)
	if fault != nil {
		return nil, fault
	}
	switch x.kind {
	case negativeNode:
		for i := range a {
			a[i].n = a[i].n.Neg()
		}
		return a, nil
	case powerNode:
		all := a
		for range int(x.text[0]-'0') - 1 {
			if all, fault = e.product(x, all, a); fault != nil {
				return nil, fault
			}
		}
		return all, nil
	case callNode:
		return nil, e.fault(x, x.text+" of x is not read here", "write powers of x")
	case measuredNode:
		return nil, e.fault(x, "a unit after a function belongs to none of its numbers", "leave it out")
	}
	b, fault := e.function(x.y)
	if fault != nil {
		return nil, fault
	}
	return e.combined(x, a, b)
}

// combined is the sum, difference, product or quotient x of two functions.
func (e evaluator) combined(x *node, a, b []quantity) ([]quantity, *ReadError) {
	switch {
	case x.kind == productNode:
		return e.product(x, a, b)
	case x.kind == quotientNode && len(b) > 1:
		return nil, e.fault(x.y, "nothing is divided by x here", "write powers of x times numbers")
	case x.kind == quotientNode:
		for i := range a {
			q, fault := e.combine(x, a[i], b[0])
			if fault != nil {
				return nil, fault
			}
			a[i] = q
		}
		return a, nil
	}
	for len(a) < len(b) {
		a = append(a, quantity{plain: true})
	}
	for i := range b {
		q, fault := e.combine(x, a[i], b[i])
		if fault != nil {
			return nil, fault
		}
		a[i] = q
	}
	return a, nil
}

// product is a times b; x is where it stands.
func (e evaluator) product(x *node, a, b []quantity) ([]quantity, *ReadError) {
	if len(a)+len(b)-2 > maxDegree {
		return nil, e.fault(x, "this is too high a power of x", "N, V and M have none above the third")
	}
	all := make([]quantity, len(a)+len(b)-1)
	for k := range all {
		all[k].plain = true // zero, which goes with anything
	}
	for i := range a {
		for j := range b {
			q := a[i].times(a[i].n.Mul(b[j].n), b[j], 1)
			if tooLong(q.n) {
				return nil, e.fault(x, "this comes to a number with too many digits", "write shorter numbers")
			}
			if q.n.IsZero() {
				continue
			}
			sum, fault := e.add(&node{start: x.start, end: x.end, x: x, y: x}, all[i+j], q)
			if fault != nil {
				return nil, fault
			}
			all[i+j] = sum
		}
	}
	return all, nil
}
