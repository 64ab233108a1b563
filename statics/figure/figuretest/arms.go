package figuretest

import "strings"

// ManyArms reports whether what a drawing left out holds more arms than one figure has room for: such a sum of moments is
// told by its terms.
func ManyArms(dropped []string) bool {
	arms := 0
	for _, what := range dropped {
		if strings.HasPrefix(what, "an arm of") {
			arms++
		}
	}
	return arms > 4
}
