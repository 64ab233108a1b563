package wording

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Function is a polynomial in x: "72 − 10x + 0.5x²", marked if a coefficient is inexact.
func (w base) Function(p exact.Poly) string {
	var b strings.Builder
	mark := ""
	inFull := !slices.ContainsFunc(p, func(k exact.Num) bool { return !w.st.IsFull(k) })
	for power, k := range p {
		if k.Inexact() {
			mark = inexactMark
		}
		if !k.IsZero() {
			w.add(&b, k.Sign() < 0, w.monomial(k.Abs(), power, inFull))
		}
	}
	if b.Len() == 0 {
		return "0"
	}
	return b.String() + mark
}

// monomial is k·x^power.
func (w base) monomial(k exact.Num, power int, inFull bool) string {
	size := w.InFull(k)
	if w.short && !w.st.Units.Letters() {
		size = w.found(k, notation.Pure, inFull)
	}
	switch {
	case power == 0:
		return size
	case k.Equal(one):
		size = ""
	case strings.ContainsAny(size, "/ "):
		size = "(" + size + ")"
	}
	signs := [...]string{"", "x", "x²", "x³"}
	if power == 1 {
		return size + "x"
	}
	if power < len(signs) {
		return size + w.either(signs[power], fmt.Sprintf("x^%d", power))
	}
	return fmt.Sprintf("%sx^%d", size, power)
}
