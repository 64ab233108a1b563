package wording

import (
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

const aPin = "pin"

// connectionNames are the kinds of connections as one reads them.
var connectionNames = []struct {
	kind statics.ConnectionKind
	name string
}{{statics.Pin, aPin}, {statics.Slot, "slot"}, {statics.Sleeve, "sleeve"}}

// A joining is a kind of connection by its name, and how many of a frame are of that kind.
type joining struct {
	name  string
	times int
}

// joinings are the kinds of connections that a frame has.
func joinings(f *statics.Frame) []joining {
	var all []joining
	for _, k := range connectionNames {
		n := 0
		for _, c := range f.Connections {
			if c.Kind == k.kind {
				n++
			}
		}
		if n > 0 {
			all = append(all, joining{k.name, n})
		}
	}
	return all
}

// PinForces are the forces that parts of a frame exert on each other, by what joins the parts: the pin forces; the forces at the sleeve.
func PinForces(f *statics.Frame) string {
	var at []string
	pins := true
	for _, j := range joinings(f) {
		at = append(at, Plural(j.times, j.name))
		pins = pins && j.name == aPin
	}
	if pins {
		return "the pin forces"
	}
	return "the forces at the " + notation.List(at)
}

// APin is what joins two parts of a frame: a pin; a pin or a sleeve.
func APin(f *statics.Frame) string {
	var all []string
	for _, j := range joinings(f) {
		all = append(all, "a "+j.name)
	}
	if len(all) == 0 {
		return "a " + aPin
	}
	return strings.Join(all, " or ")
}
