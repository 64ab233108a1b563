package notation

import (
	"strings"
)

// NameMatches reports whether a typed name means that name: C_y and Cy are one, and so are C_y.CD and Cy.CD. Capitals
// count, since joints may differ by them.
func NameMatches(typed, name string) bool { return plainName(typed) == plainName(name) }

// plainName is a name without the marks that mean nothing.
func plainName(name string) string { return plain.Replace(name) }

var plain = strings.NewReplacer("_", "", "’", "'", " ", "")
