package judging

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A balance is a sum that a value has to fit, with exact values of the others or the student's own.
type balance struct {
	gives     exact.Num                       // what the sum gives for the value
	off       func(value exact.Num) exact.Num // by how much the sum misses zero with a value, never negative
	allowance exact.Num                       // what rounding on the way may make of that
	reach     exact.Num                       // by how much the value may lie off what the sum gives, for that
	guarded   bool                            // a value that is no rounding of what the sum gives must lie nearer to that than to any slip
	empty     bool                            // all terms beside the value's own are zero
}

// linear is factor·X + rest = 0 as a balance for X; false where the factor is zero.
func linear(factor, rest, allowance exact.Num) (balance, bool) {
	gives, err := rest.Neg().Quo(factor)
	off := func(value exact.Num) exact.Num { return factor.Mul(value).Add(rest).Abs() }
	if err != nil {
		return balance{}, false
	}
	reach, _ := allowance.Quo(factor.Abs())
	return balance{gives: gives, off: off, allowance: allowance, reach: reach}, true
}

// stepBalance is the sum of a step seen as an equation for one force, with 1 % of its largest other term allowed; false
// where that force is not in it.
func stepBalance(s statics.Sum, force int, values []exact.Num) (balance, bool) {
	var rest, largest exact.Num
	for _, t := range s.Terms() {
		if t.Force != force {
			x := t.Amount(values)
			rest, largest = rest.Add(x), exact.Max(largest, x.Abs())
		}
	}
	b, ok := linear(s.Factor(force), rest, largest.Mul(percent))
	b.guarded = true
	return b, ok
}

// fits reports whether a value satisfies a balance to within so many allowances.
func (b balance) fits(value exact.Num, allowances int64) bool {
	return b.off(value).Cmp(b.allowance.Mul(exact.Int(allowances))) <= 0
}

// nearer reports whether v lies nearer to one of the slips than to the value meant.
func nearer(slips []exact.Num, v, meant exact.Num) bool {
	off := v.Sub(meant).Abs()
	for _, s := range slips {
		if v.Sub(s).Abs().Cmp(off) < 0 {
			return true
		}
	}
	return false
}
