package judging

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A balance is what a value has to fit: factor·X + rest = 0, where the largest term of rest is largest. Slips lists the
// values to which known slips would lead; it is asked only about a value that would fit, and may be nil.
type balance struct {
	factor, rest, largest exact.Num
	slips                 func() []exact.Num
}

// sumBalance is a sum seen as an equation for one force; false where that force is not in it.
func sumBalance(s statics.Sum, force int, values []exact.Num) (balance, bool) {
	b := balance{factor: s.Factor(force)}
	for _, t := range s.Terms {
		if t.Force != force {
			x := t.Amount(values)
			b.rest = b.rest.Add(x)
			b.largest = exact.Max(b.largest, x.Abs())
		}
	}
	return b, !b.factor.IsZero()
}

// judge compares a typed value with the truth, by the rules in order. All comparisons are exact.
func judge(v Typed, truth exact.Num, balances []balance) Verdict {
	switch {
	case v.Value.Equal(truth):
		return Exact
	case v.roundedFrom(truth):
		return ToFigures
	case v.fits(truth, balances):
		return Rounded
	case truth.IsZero():
		return Wrong
	}
	if v = v.neg(); v.Means(truth) || v.fits(truth, balances) {
		return OtherSense
	}
	return Wrong
}

// fits reports whether v has the right sign and satisfies one of the balances within 1 % of its largest term: it is what
// that balance gives, rounded, or lies no nearer to a slip than to it.
func (v Typed) fits(truth exact.Num, balances []balance) bool {
	if !truth.IsZero() && v.Value.Sign() != truth.Sign() {
		return false
	}
	for _, b := range balances {
		gives, err := b.rest.Neg().Quo(b.factor)
		if err != nil {
			continue
		}
		off := b.factor.Mul(v.Value).Add(b.rest).Abs()
		if off.Mul(exact.Int(100)).Cmp(b.largest) > 0 {
			continue
		}
		if v.Means(gives) || b.slips == nil || !nearSlip(v.Value, gives, b.slips()) {
			return true
		}
	}
	return false
}

// nearSlip reports whether v lies nearer to one of the slips than to the value meant.
func nearSlip(v, meant exact.Num, slips []exact.Num) bool {
	off := v.Sub(meant).Abs()
	for _, s := range slips {
		if v.Sub(s).Abs().Cmp(off) < 0 {
			return true
		}
	}
	return false
}
