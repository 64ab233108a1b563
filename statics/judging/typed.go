package judging

import (
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// A Typed value is an answer with its sense applied, in the units of the problem.
type Typed struct {
	Value exact.Num
	// Written is the number as it was typed, and Unit what one of it is in the problem's units. Places lists the places
	// (powers of ten of Written) that it may be meant to; an expression is meant to none.
	Written, Unit exact.Num
	Places        []int
}

// typedAs is a value that was read, with no sense applied.
func typedAs(a notation.Answer) (Typed, error) {
	written, err := exact.FromDecimal(a.Written)
	return Typed{Value: a.Value, Written: written, Unit: a.Scale, Places: placesOf(a)}, err
}

// Word is a typed word that stands for a whole number, as rises for 1: it is meant as it stands.
func Word(n int) Typed { return Typed{Value: exact.Int(int64(n)), Unit: exact.Int(1)} }

// neg is the value in the opposite sense.
func (v Typed) neg() Typed {
	v.Value, v.Written = v.Value.Neg(), v.Written.Neg()
	return v
}

// Means reports whether a value equals a number, or that number rounded at the place it was typed to.
func (v Typed) Means(n exact.Num) bool { return v.Value.Equal(n) || v.roundedFrom(n) }

// roundedFrom reports whether v is the truth rounded, ties either way, at a place v is typed to that is the truth's
// third significant figure or beyond.
func (v Typed) roundedFrom(truth exact.Num) bool {
	t, err := truth.Quo(v.Unit)
	if err != nil || t.IsZero() {
		return false
	}
	third := leading(t) - 2
	for _, place := range v.Places {
		if place <= third && v.Written.Sub(t).Abs().Mul(two).Cmp(powerOfTen(place)) <= 0 {
			return true
		}
	}
	return false
}

// Readings is the value as it may be meant, for the search of slips: one reading for each place that leaves three
// figures, the finest first; with fewer figures the number as it stands.
func (v Typed) Readings() []slip.Typed {
	if len(v.Places) == 0 || v.Written.IsZero() {
		return []slip.Typed{{Value: v.Value, Figures: slip.AllFigures}}
	}
	var all []slip.Typed
	first := leading(v.Written)
	for _, p := range v.Places {
		t := slip.Typed{Value: v.Value, Figures: first - p + 1}
		if t.Figures >= 3 {
			t.Within = powerOfTen(p).Mul(half).Mul(v.Unit)
		}
		if t.Figures >= 3 || len(all) == 0 {
			all = append(all, t)
		}
	}
	return all
}

// figures is how many figures the number was typed with; those of an expression are all.
func (v Typed) figures() int {
	if len(v.Places) == 0 || v.Written.IsZero() {
		return slip.AllFigures
	}
	return leading(v.Written) - v.Places[0] + 1
}

// placesOf lists the places that a typed number may be meant to: its last digit's, and where it is whole also those of
// the zeros it ends in. An expression is meant to none.
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

// leading is the place of the first significant figure of t, which is not zero: 3 for 1234.6.
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

var (
	one, two, ten        = exact.Int(1), exact.Int(2), exact.Int(10)
	half, tenth, percent = exact.MustParse("0.5"), exact.MustParse("0.1"), exact.MustParse("0.01")
)

// powerOfTen is 10ⁿ.
func powerOfTen(n int) exact.Num {
	factor := ten
	if n < 0 {
		factor = tenth
	}
	p := one
	for range max(n, -n) {
		p = p.Mul(factor)
	}
	return p
}
