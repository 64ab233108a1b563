package notation

import "unpin/statics/exact"

// side is the terms of one side of an equation; zero alone is none.
func (e evaluator) side(x *node) ([]TypedTerm, *ReadError) {
	terms, fault := e.terms(x)
	if fault != nil || len(terms) == 1 && terms[0].Force == "" && terms[0].amount.n.IsZero() {
		return nil, fault
	}
	for i, t := range terms {
		terms[i].Value = t.amount.n.Mul(exact.Int(int64(t.Sign)))
	}
	return terms, nil
}

// terms are the products that x adds up.
func (e evaluator) terms(x *node) ([]TypedTerm, *ReadError) {
	switch x.kind {
	case nameNode:
		return []TypedTerm{{Start: x.start, End: x.end, Sign: 1, Force: x.text, amount: quantity{n: one, free: true}}}, nil
	case negativeNode:
		terms, fault := e.terms(x.x)
		return negated(terms), fault
	case sumNode, differenceNode:
		return e.added(x)
	case productNode, quotientNode:
		return e.multiplied(x)
	case measuredNode:
		if hasName(x.x) {
			return nil, faultAt(x.unitAt, x.unitAt+len(x.text), "a force has its unit already", "leave out "+shown(x.text))
		}
		if k := x.x.kind; k != numberNode && k != callNode {
			return e.inUnit(x)
		}
	case callNode:
		if hasName(x.x) {
			return nil, e.fault(x, "a force cannot stand in "+x.text, "write the force times a number")
		}
	case powerNode:
		if hasName(x.x) {
			return nil, e.fault(x, "two forces do not multiply in a sum", "write each force times a number")
		}
	}
	return e.single(x)
}

// hasName reports whether the name of a force is part of x.
func hasName(x *node) bool {
	return x != nil && (x.kind == nameNode || hasName(x.x) || hasName(x.y))
}

// single is the term of the one number x.
func (e evaluator) single(x *node) ([]TypedTerm, *ReadError) {
	q, fault := e.value(x)
	if fault != nil {
		return nil, fault
	}
	factor := TypedFactor{Start: x.start, End: x.end, Value: q.n}
	return []TypedTerm{{Start: x.start, End: x.end, Sign: 1, Factors: []TypedFactor{factor}, amount: q}}, nil
}

func negated(terms []TypedTerm) []TypedTerm {
	for i := range terms {
		terms[i].Sign = -terms[i].Sign
	}
	return terms
}

// added are the terms of the sum or difference x.
func (e evaluator) added(x *node) ([]TypedTerm, *ReadError) {
	a, fault := e.terms(x.x)
	if fault != nil {
		return nil, fault
	}
	b, fault := e.terms(x.y)
	if x.kind == differenceNode {
		b = negated(b)
	}
	return append(a, b...), fault
}

// multiplied are the terms of the product or quotient x: those of the side with a force, each times the other side.
func (e evaluator) multiplied(x *node) ([]TypedTerm, *ReadError) {
	left, right := hasName(x.x), hasName(x.y)
	switch {
	case left && right && x.kind == productNode:
		return nil, e.fault(x, "two forces do not multiply in a sum", "write each force times a number")
	case right && x.kind == quotientNode:
		return nil, e.fault(x.y, "nothing is divided by a force in a sum", "write the force times a number")
	}
	a, fault := e.factors(x.x)
	if fault != nil {
		return nil, fault
	}
	b, fault := e.factors(x.y)
	if fault != nil {
		return nil, fault
	}
	if right {
		return e.each(x, b, a[0], true)
	}
	return e.each(x, a, b[0], false)
}

// factors are the terms of a side of a product: where no force is in it one alone.
func (e evaluator) factors(x *node) ([]TypedTerm, *ReadError) {
	switch {
	case x.kind == negativeNode && !x.bracketed:
		terms, fault := e.factors(x.x)
		return negated(terms), fault
	case hasName(x), !x.bracketed && (x.kind == productNode || x.kind == quotientNode):
		return e.terms(x)
	}
	return e.single(x)
}

// each is the terms times k, or over k where x is a quotient; k stands before them if first is set.
func (e evaluator) each(x *node, terms []TypedTerm, k TypedTerm, first bool) ([]TypedTerm, *ReadError) {
	for i, t := range terms {
		q, fault := e.combine(x, t.amount, k.amount)
		if fault != nil {
			return nil, fault
		}
		start, end := min(t.Start, k.Start), max(t.End, k.End)
		if len(terms) > 1 {
			start, end = x.start, x.end // multiplied out
		}
		factors := joinFactors(t.Factors, k.Factors, first, x.kind == quotientNode)
		terms[i] = TypedTerm{Start: start, End: end, Sign: t.Sign * k.Sign, Force: t.Force, Factors: factors, amount: q}
	}
	return terms, nil
}

// joinFactors is the factors of a term and those of what multiplies or divides it.
func joinFactors(term, by []TypedFactor, first, under bool) []TypedFactor {
	turned := append([]TypedFactor{}, by...)
	for i := range turned {
		turned[i].Under = turned[i].Under != under
	}
	if first {
		return append(turned, term...)
	}
	return append(append([]TypedFactor{}, term...), turned...)
}

// inUnit are the terms of x, whose unit ends more than a number: 6*2.4 + 3 kN·m. The last factor of each takes the unit.
func (e evaluator) inUnit(x *node) ([]TypedTerm, *ReadError) {
	terms, fault := e.terms(x.x)
	for i := range terms {
		t := &terms[i]
		if t.amount, fault = e.measure(x, t.amount); fault != nil {
			return nil, fault
		}
		k, _ := e.units.scale(x.unit) // measure has found no fault
		last := &t.Factors[len(t.Factors)-1]
		if last.Under {
			k = over(one, k)
		}
		last.Value = last.Value.Mul(k)
	}
	return terms, fault
}

// sameMeasure reports terms that do not measure the same.
func (e evaluator) sameMeasure(terms []TypedTerm) *ReadError {
	for i := 1; i < len(terms); i++ {
		a, b := terms[0], terms[i]
		x := &node{start: a.Start, end: b.End, x: &node{start: a.Start, end: a.End}, y: &node{start: b.Start, end: b.End}}
		sum, fault := e.add(x, a.amount, b.amount)
		if fault != nil {
			return fault
		}
		terms[0].amount = sum
	}
	return nil
}
