package notation

import (
	"strings"
	"unicode"
)

// ForceName is a name as in print, with its index set off: A_x, M_A, R_D, F_BD, C_y.CD. Text shows the plain name.
func ForceName(name string) string {
	force, part, hasPart := strings.Cut(name, ".")
	force = strings.ReplaceAll(force, "_", "")
	if letters := []rune(force); len(letters) > 1 {
		at := len(letters) - 1 // Ax
		if strings.ContainsRune("MRSFNV", letters[0]) && unicode.IsUpper(letters[1]) {
			at = 1 // MA, RD, FBD
		}
		force = string(letters[:at]) + "_" + string(letters[at:])
	}
	if hasPart {
		return force + "." + part
	}
	return force
}

// NameMatches reports whether a typed name means that name: C_y and Cy are one, and so are C_y.CD and Cy.CD. Capitals
// count, since joints may differ by them.
func NameMatches(typed, name string) bool { return plainName(typed) == plainName(name) }

// plainName is a name without the marks that mean nothing.
func plainName(name string) string { return plain.Replace(name) }

var plain = strings.NewReplacer("_", "", "’", "'", " ", "")
