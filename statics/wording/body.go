package wording

import (
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// Body names a free body: "part CD", "pin C", "parts BC and CD", "the whole frame". A frame of one part is that part.
func Body(a *statics.Assembly, b statics.FreeBody) string {
	if len(b) == a.Bodies() && len(b) > 1 {
		return "the whole frame"
	}
	var parts, pins []string
	for _, i := range b {
		if a.IsPin(i) {
			pins = append(pins, a.BodyName(i))
		} else {
			parts = append(parts, a.BodyName(i))
		}
	}
	word := Plural(len(parts), "part") + " "
	switch {
	case len(parts) == 0:
		return notation.List(pins)
	case len(pins) == 0:
		return word + notation.List(parts)
	}
	return word + strings.Join(parts, ", ") + " and " + notation.List(pins)
}
