package notation

import (
	"errors"
	"fmt"

	"unpin/statics/exact"
)

// call is the function x of a.
func (e evaluator) call(x *node, a quantity) (quantity, *ReadError) {
	if x.text == "sqrt" {
		return e.root(x, a)
	}
	if !a.plain && !a.free && a.powers != powers[Degrees] && a.powers != powers[Pure] {
		return a, e.fault(x.x, fmt.Sprintf("%s is %s, but %s is of an angle", e.typed(x.x), nameOf(a.powers), x.text), "write the angle in degrees")
	}
	sine, cosine := exact.Sin(a.n), exact.Cos(a.n)
	result := quantity{plain: !a.free, free: a.free}
	switch x.text {
	case "sin":
		result.n = sine
	case "cos":
		result.n = cosine
	default:
		var err error
		if result.n, err = sine.Quo(cosine); err != nil {
			return a, e.fault(x, "this angle has no tangent", "check the angle")
		}
	}
	return result, nil
}

// root is the square root x of a.
func (e evaluator) root(x *node, a quantity) (quantity, *ReadError) {
	for i, power := range a.powers {
		if power%2 != 0 && !a.free {
			return a, e.fault(x, "the root of "+nameOf(a.powers)+" means nothing here", "check the units")
		}
		a.powers[i] /= 2
	}
	if r, ok := a.n.Rat(); ok && (r.Num().BitLen() > maxBits/8 || r.Denom().BitLen() > maxBits/8) {
		return a, e.fault(x, "this is the root of a number with too many digits", "write shorter numbers")
	}
	n, err := a.n.Sqrt()
	switch {
	case a.n.Sign() < 0:
		return a, e.fault(x, "a negative number has no root", "check the sign under it")
	case errors.Is(err, exact.ErrNoRoot):
		return a, e.fault(x, "a root under a root is not read here", "write its value as a decimal")
	}
	a.n = n
	return a, nil
}
