package wording

import (
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
)

// connectionNames are the kinds of connections as one reads them.
var connectionNames = []struct {
	kind statics.ConnectionKind
	name string
}{{statics.Pin, "pin"}, {statics.Slot, "slot"}, {statics.Sleeve, "sleeve"}}

// PinForces are the forces that parts of a frame exert on each other, by what joins the parts: the pin forces; the forces at the sleeve.
func PinForces(f *statics.Frame) string {
	var at []string
	pins := true
	for _, k := range connectionNames {
		n := 0
		for _, c := range f.Connections {
			if c.Kind == k.kind {
				n++
			}
		}
		if n > 0 {
			at = append(at, Plural(n, k.name))
			pins = pins && k.kind == statics.Pin
		}
	}
	if pins {
		return "the pin forces"
	}
	return "the forces at the " + notation.List(at)
}

// APin is what joins two parts of a frame: a pin; a pin or a sleeve.
func APin(f *statics.Frame) string {
	text := ""
	for _, k := range connectionNames {
		if !slices.ContainsFunc(f.Connections, func(c statics.Connection) bool { return c.Kind == k.kind }) {
			continue
		}
		if text != "" {
			text += " or "
		}
		text += "a " + k.name
	}
	if text == "" {
		return "a pin"
	}
	return text
}
