package tutor

import (
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Verdict is what a typed value comes to.
type Verdict int

// The verdicts, in the order of the rules.
const (
	Exact      Verdict = iota // equal to the true value
	ToFigures                 // the true value rounded where it was typed, at the third significant figure or beyond
	Rounded                   // within 1 % of the largest term of the sum, and nearer to the truth than to a slip
	OtherSense                // the right size in the opposite sense
	Wrong                     // none of these
)

// Right reports whether the lesson goes on.
func (v Verdict) Right() bool { return v <= Rounded }

// Exactly reports whether the value is right without allowance for figures lost on the way.
func (v Verdict) Exactly() bool { return v <= ToFigures }

// String is how a verdict line begins.
func (v Verdict) String() string {
	switch v {
	case Exact, ToFigures:
		return "right"
	case Rounded:
		return "right (rounded)"
	}
	return "not yet"
}

// A Typed value is an answer with its sense applied, in the units of the problem.
type Typed struct {
	Value exact.Num
	// Written is the number as it was typed, and Unit what one of it is in the problem's units. Places lists the places
	// (powers of ten of Written) that it may be meant to; an expression is meant to none.
	Written, Unit exact.Num
	Places        []int
}

// A Balance is what a value has to fit: Factor·X + Rest = 0, where the largest term of Rest is Largest. Slips
// lists the values to which known slips would lead; it is asked only about a value that would fit, and may be nil.
type Balance struct {
	Factor, Rest, Largest exact.Num
	Slips                 func() []exact.Num
}

// Judge compares a typed value with the truth, by the rules in order. All comparisons are exact.
func Judge(v Typed, truth exact.Num, balances []Balance) Verdict {
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
	v.Value, v.Written = v.Value.Neg(), v.Written.Neg()
	if v.Value.Equal(truth) || v.roundedFrom(truth) || v.fits(truth, balances) {
		return OtherSense
	}
	return Wrong
}

// roundedFrom reports whether v is the truth rounded, ties either way, at a place v is typed to that is the truth's
// third significant figure or beyond.
func (v Typed) roundedFrom(truth exact.Num) bool {
	t, err := truth.Quo(v.Unit)
	if err != nil || t.IsZero() {
		return false
	}
	third := leading(t) - 2
	two := exact.Int(2)
	for _, place := range v.Places {
		if place <= third && v.Written.Sub(t).Abs().Mul(two).Cmp(powerOfTen(place)) <= 0 {
			return true
		}
	}
	return false
}

// leading is the place of the first significant figure of t, which is not nought: 3 for 1234.6.
func leading(t exact.Num) int {
	t = t.Abs()
	place := 0
	for t.Cmp(powerOfTen(place+1)) >= 0 {
		place++
	}
	for t.Cmp(powerOfTen(place)) < 0 {
		place--
	}
	return place
}

var ten, tenth = exact.Int(10), exact.MustParse("0.1")

// powerOfTen is 10ⁿ.
func powerOfTen(n int) exact.Num {
	factor := ten
	if n < 0 {
		factor = tenth
	}
	p := exact.Int(1)
	for range max(n, -n) {
		p = p.Mul(factor)
	}
	return p
}

// fits reports whether v has the right sign and satisfies one of the balances within 1 % of its largest term: it is what
// that balance gives, rounded, or lies no nearer to a slip than to it.
func (v Typed) fits(truth exact.Num, balances []Balance) bool {
	if !truth.IsZero() && v.Value.Sign() != truth.Sign() {
		return false
	}
	for _, b := range balances {
		gives, err := b.Rest.Neg().Quo(b.Factor)
		if err != nil {
			continue
		}
		off := b.Factor.Mul(v.Value).Add(b.Rest).Abs()
		if off.Mul(exact.Int(100)).Cmp(b.Largest) > 0 {
			continue
		}
		if v.meant(gives) || b.Slips == nil || !nearSlip(v.Value, gives, b.Slips()) {
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

// placesOf lists the places that a typed number may be meant to: its last digit's, and where it is whole also those of
// the noughts it ends in. An expression is meant to none.
func placesOf(a notation.Answer) []int {
	if !a.Literal {
		return nil
	}
	places := []int{-a.Places}
	if a.Places > 0 || a.Written.IsZero() {
		return places
	}
	whole := a.Written.BigInt().String()
	for i := len(whole) - 1; i > 0 && whole[i] == '0'; i-- {
		places = append(places, len(whole)-i)
	}
	return places
}
