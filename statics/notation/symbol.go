package notation

import (
	"strings"

	"unpin/statics"
)

// Symbol parts the name of a force, whose joint has that name, as print sets it: the letter, and the index that stands
// small and low after it. Ax is A and x, MA is M and A, Cy.CDE is C and y.CDE, F_BD is F and BD.
func Symbol(f statics.Force, joint string) (letter, index string) {
	if letter, index, ok := strings.Cut(f.Name, "_"); ok {
		return letter, index
	}
	if index, ok := strings.CutPrefix(f.Name, joint); ok && !f.Couple && index != "" {
		return joint, index
	}
	return f.Name[:1], f.Name[1:]
}

// ForceDimension is what the value of a force measures.
func ForceDimension(f statics.Force) Dimension {
	if f.Couple {
		return Moment
	}
	return Force
}
