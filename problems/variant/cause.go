package variant

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// primes are the factors of denominators that are looked for: 2 and 5 let decimals end, and larger ones say little.
var primes = []int64{3, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47}

// Endless says from where the forces of a problem have decimals that do not end, as a clause: the factors of their denominators besides 2 and 5, and for each the
// slope, or the distance between supports or pins, that has it too; or the slope of which they have a root. Empty where all end,
// none of the factors is small, or answers are in letters, where fractions are as good.
func Endless(own problems.Solved) string {
	if own.Units.Letters() {
		return ""
	}
	if slices.ContainsFunc(own.Values, exact.Num.Inexact) {
		return "a direction is given by an angle that is no multiple of 15°, and its sine and cosine do not terminate; those of a slope such as [4, 3] or [12, 5] do"
	}
	if slices.ContainsFunc(own.Values, func(v exact.Num) bool { return !v.IsRational() }) {
		return rootOf(&own.Problem.Frame)
	}
	var all []string
	for _, prime := range primes {
		if slices.ContainsFunc(own.Values, func(v exact.Num) bool { return divides(prime, v, (*big.Rat).Denom) }) {
			all = append(all, fmt.Sprintf("%d, %s", prime, causeOf(&own.Problem.Frame, own.Problem.Units, prime)))
		}
	}
	if len(all) == 0 {
		return ""
	}
	return "in the denominators is the factor " + strings.Join(all, "; and ")
}

// rootOf says which loaded member has a root for its length.
func rootOf(f *statics.Frame) string {
	for _, l := range f.Loads {
		if l.Joint == statics.None && l.Member != statics.None && !f.Length(l.Member).IsRational() {
			return fmt.Sprintf("there is a root in the slope of %s, on which a load stands; a slope such as 3 to 4 or 5 to 12 has none", f.Members[l.Member].Name)
		}
	}
	return ""
}

// divides reports whether a prime divides a part of a rational number.
func divides(prime int64, v exact.Num, part func(*big.Rat) *big.Int) bool {
	r, rational := v.Rat()
	return rational && r.Sign() != 0 && new(big.Int).Rem(part(r), big.NewInt(prime)).Sign() == 0
}

// causeOf says what of a frame has a prime factor: a slope, or a distance between two supports, or from pins.
func causeOf(f *statics.Frame, u notation.Units, prime int64) string {
	for m, member := range f.Members {
		length := f.Length(m)
		for _, side := range []exact.Num{f.Span(m).X, f.Span(m).Y} {
			if cosine, err := side.Quo(length); err == nil && divides(prime, cosine, (*big.Rat).Denom) {
				return "as in the slope of " + member.Name
			}
		}
	}
	joints := heldJoints(f)
	for i, a := range joints {
		for _, b := range joints[:i] {
			span := f.Joints[b].At.To(f.Joints[a].At)
			for _, way := range []struct {
				far  exact.Num
				word string
			}{{span.X.Abs(), "across"}, {span.Y.Abs(), "up"}} {
				if divides(prime, way.far, (*big.Rat).Num) {
					far := strings.TrimSpace(notation.Value(way.far, notation.Length, u, 6))
					return fmt.Sprintf("as in the %s %s from %s to %s", far, way.word, f.Joints[b].Name, f.Joints[a].Name)
				}
			}
		}
	}
	return "which no length has by itself: several make it together"
}

// heldJoints are the joints with supports, then those with pins.
func heldJoints(f *statics.Frame) []int {
	var all []int
	for _, s := range f.Supports {
		all = append(all, s.Joint)
	}
	for _, c := range f.Connections {
		if !slices.Contains(all, c.Joint) {
			all = append(all, c.Joint)
		}
	}
	return all
}
