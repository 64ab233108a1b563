package judging

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// termAllowance is what a term may be off when the student rounds on the way: half a unit in the third figure of its
// product, of its force, and of the ratio or sine of its component, each as far as it changes the product and each only
// where that number does not end within three figures.
func termAllowance(a *statics.Assembly, t statics.Term, values []exact.Num) exact.Num {
	force, ratio := forceOf(a, t, values)
	off := OnlyLong(t.Amount(values))
	off = off.Add(OnlyLong(force).Mul(ratio).Mul(t.Arm))
	return off.Add(OnlyLong(ratio).Mul(force).Mul(t.Arm))
}

// forceOf is the force of a term, without its sign, and the ratio of the component that the term is about.
func forceOf(a *statics.Assembly, t statics.Term, values []exact.Num) (force, ratio exact.Num) {
	if t.Force != statics.None {
		return values[t.Force].Abs(), t.Size
	}
	force = a.Actions[t.Action].Size.Abs()
	ratio, err := t.Size.Quo(force)
	if err != nil {
		return force, exact.Num{}
	}
	return force, ratio
}

// OnlyLong is half a unit in the third figure of a number that does not end within three figures, else 0.
func OnlyLong(x exact.Num) exact.Num {
	if x.IsZero() || x.Rounded(3).Equal(x) {
		return exact.Num{}
	}
	return thirdFigure(x)
}

// thirdFigure is half a unit in the third figure of a number: 0.05 for 12.34. For 0 it is 0.
func thirdFigure(x exact.Num) exact.Num {
	if x.IsZero() {
		return exact.Num{}
	}
	return powerOfTen(leading(x) - 2).Mul(half)
}
