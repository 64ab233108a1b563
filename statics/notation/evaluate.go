package notation

import (
	"fmt"

	"unpin/statics/exact"
)

// maxBits bounds the length of a value, numerator or denominator, in binary digits.
const maxBits = 4096

var one = exact.Int(1)

// An evaluator works out expressions.
type evaluator struct {
	text  string
	units Units
	names map[string]exact.Num
}

// value is what x comes to.
func (e evaluator) value(x *node) (quantity, *ReadError) {
	switch x.kind {
	case numberNode:
		return quantity{n: exact.MustParse(x.text), plain: true}, nil
	case nameNode:
		return quantity{n: e.names[x.text], free: true}, nil
	case letterNode:
		return quantity{n: one, powers: x.unit.powers()}, nil
	}
	a, fault := e.value(x.x)
	if fault != nil {
		return a, fault
	}
	switch x.kind {
	case negativeNode:
		a.n = a.n.Neg()
		return a, nil
	case measuredNode:
		return e.measure(x, a)
	case callNode:
		return e.call(x, a)
	case powerNode:
		return e.raise(x, a)
	}
	b, fault := e.value(x.y)
	if fault != nil {
		return b, fault
	}
	return e.combine(x, a, b)
}

// tooLong reports whether n has more digits than any problem needs.
func tooLong(n exact.Num) bool {
	r, ok := n.Rat()
	return ok && (r.Num().BitLen() > maxBits || r.Denom().BitLen() > maxBits)
}

func (e evaluator) fault(x *node, problem, remedy string) *ReadError {
	return faultAt(x.start, x.end, problem, remedy)
}

// typed is the text of x, quoted.
func (e evaluator) typed(x *node) string { return quoted(e.text[x.start:x.end]) }

// combine is the sum, difference, product or quotient x of a and b.
func (e evaluator) combine(x *node, a, b quantity) (q quantity, fault *ReadError) {
	switch x.kind {
	case differenceNode:
		b.n = b.n.Neg()
		fallthrough
	case sumNode:
		q, fault = e.add(x, a, b)
	case productNode:
		q = a.times(a.n.Mul(b.n), b, 1)
	default:
		n, err := a.n.Quo(b.n)
		if err != nil {
			return a, e.fault(x.y, e.typed(x.y)+" is zero, and nothing can be divided by zero", "check what stands after /")
		}
		q = a.times(n, b, -1)
	}
	if fault == nil && tooLong(q.n) {
		return q, e.fault(x, "this comes to a number with too many digits", "write shorter numbers")
	}
	return q, fault
}

// add is a + b, which must measure the same.
func (e evaluator) add(x *node, a, b quantity) (quantity, *ReadError) {
	n := a.n.Add(b.n)
	sum := a
	if a.yieldsTo(b) {
		sum = b
	}
	sum.n = n
	switch {
	case a.yieldsTo(b), b.yieldsTo(a):
	case a.plain:
		return sum, e.fault(x.x, e.typed(x.x)+" has no unit, but what is added to it has one", "give both a unit, or neither")
	case b.plain:
		return sum, e.fault(x.y, e.typed(x.y)+" has no unit, but what it is added to has one", "give both a unit, or neither")
	default:
		problem := fmt.Sprintf("%s is %s and %s is %s, which do not add", e.typed(x.x), nameOf(a.powers), e.typed(x.y), nameOf(b.powers))
		return sum, e.fault(x, problem, "check the units")
	}
	return sum, nil
}

// measure gives a the unit of x and turns it into the units of the problem.
func (e evaluator) measure(x *node, a quantity) (quantity, *ReadError) {
	k, fault := e.units.scale(x.unit)
	if fault != nil {
		fault.Start, fault.End = x.unitAt, x.unitAt+len(x.text)
		return a, fault
	}
	return a.times(a.n.Mul(k), quantity{powers: x.unit.powers()}, 1), nil
}

// scale is one m in the units of u.
func (u Units) scale(m measure) (exact.Num, *ReadError) {
	switch {
	case m.force == 0 && m.length == 0:
		return m.size, nil
	case u.Letters():
		return m.size, &ReadError{Problem: "the numbers of this problem are multiples of P and L", Remedy: "write no other unit", Mismatch: true}
	case u == Units{}:
		return m.size, &ReadError{Problem: "the numbers here have no units", Remedy: "write the number alone", Mismatch: true}
	}
	return over(m.size, u.size(m.force, m.length)), nil
}
