package wording

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// Connection says how the pieces at a joint are joined: "B: a pin joins AB and BC"; spoken, "at B, a pin joins AB to BC".
func (w givens) Connection(c statics.Connection) string {
	joint := w.joint(c.Joint)
	if w.spoken {
		return "at " + joint + ", " + w.spokenConnection(c)
	}
	pieces := w.pieces(c)
	if c.Kind == statics.Pin {
		return joint + ": a pin joins " + notation.List(pieces)
	}
	free, main := pieces[1-c.Main], pieces[c.Main]
	if c.Kind == statics.Slot {
		return fmt.Sprintf("%s: %s is held to %s by a peg in a slot: it turns, and slides %s", joint, free, main, w.line(c.Along))
	}
	return fmt.Sprintf("%s: %s is held to %s by a sleeve: it slides %s but does not turn", joint, free, main, w.line(c.Along))
}

// pieces names the pieces at a connection: "CD", "AC with CE (rigid together)".
func (w givens) pieces(c statics.Connection) []string {
	var all []string
	for _, piece := range c.Pieces {
		text := strings.Join(w.members(piece), " with ")
		if len(piece) > 1 {
			text += " (rigid together)"
		}
		all = append(all, text)
	}
	return all
}

// spokenConnection says what a connection does, after its joint.
func (w givens) spokenConnection(c statics.Connection) string {
	var free []string
	for i, piece := range c.Pieces {
		if i != c.Main {
			free = append(free, notation.List(w.members(piece)))
		}
	}
	switch {
	case c.Kind == statics.Slot:
		return free[0] + " turns and slides in a slot " + w.line(c.Along)
	case c.Kind == statics.Sleeve:
		return free[0] + " slides in a sleeve " + w.line(c.Along) + " and cannot turn"
	case c.Main == statics.None:
		return "a pin joins " + strings.Join(free, " to ")
	}
	return "a pin joins " + strings.Join(free, " and ") + " to " + notation.List(w.members(c.Pieces[c.Main]))
}
