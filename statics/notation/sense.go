package notation

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
)

// A Sense is the way a force acts, in a word.
type Sense int

// The senses.
const (
	NoSense Sense = iota
	Up
	Down
	Left
	Right
	UpLeft
	UpRight
	DownLeft
	DownRight
	Clockwise
	CounterClockwise
	Tension
	Compression
)

// senseTexts are how senses are written.
var senseTexts = [...]string{"", "up", "down", "left", "right", "up to the left", "up to the right", "down to the left",
	"down to the right", "clockwise", "counter-clockwise", "tension", "compression"}

// String is the sense in words: "up to the left", "counter-clockwise"; empty for NoSense.
func (s Sense) String() string {
	if s < 0 || int(s) >= len(senseTexts) {
		return ""
	}
	return senseTexts[s]
}

// opposites are pairs of opposite senses.
var opposites = map[Sense]Sense{Up: Down, Left: Right, UpLeft: DownRight, UpRight: DownLeft, Clockwise: CounterClockwise, Tension: Compression}

// Opposite is the sense that −1 times the force has.
func (s Sense) Opposite() Sense {
	for a, b := range opposites {
		if s == a {
			return b
		}
		if s == b {
			return a
		}
	}
	return NoSense
}

// Acting is the sense in which a force of that value acts on f.On: a two-force member's pull is tension or compression.
// It is NoSense for nought.
func Acting(f statics.Force, value exact.Num) Sense {
	var s Sense
	switch {
	case value.IsZero():
		return NoSense
	case f.Kind == statics.MemberPull:
		s = Tension
	case f.Couple:
		s = CounterClockwise
	default:
		s = towards(f.Along.X.Sign(), f.Along.Y.Sign())
	}
	if value.Sign() < 0 {
		return s.Opposite()
	}
	return s
}

// towards is the sense of a direction with components of these signs.
func towards(x, y int) Sense {
	return [3][3]Sense{{DownLeft, Down, DownRight}, {Left, NoSense, Right}, {UpLeft, Up, UpRight}}[y+1][x+1]
}

// SenseOf is how a force of that value really acts on f.On: "up", "counter-clockwise", "up to the left", "tension"; empty
// for nought.
func SenseOf(f statics.Force, value exact.Num) string { return Acting(f, value).String() }

// senseWords are the words for a sense in small letters. T and C are read in capitals only.
var senseWords = map[string]Sense{
	"up": Up, "upward": Up, "upwards": Up, "↑": Up,
	"down": Down, "downward": Down, "downwards": Down, "↓": Down,
	"left": Left, "leftward": Left, "leftwards": Left, "←": Left,
	"right": Right, "rightward": Right, "rightwards": Right, "→": Right,
	"clockwise": Clockwise, "cw": Clockwise, "↻": Clockwise, "⟳": Clockwise,
	"counterclockwise": CounterClockwise, "anticlockwise": CounterClockwise, "ccw": CounterClockwise, "acw": CounterClockwise,
	"↺": CounterClockwise, "⟲": CounterClockwise,
	"tension": Tension, "tensile": Tension, "tens": Tension,
	"compression": Compression, "compressive": Compression, "comp": Compression,
}

// sideWords are the sides of a member, which only the word tension may go with.
var sideWords = map[string]Sense{"top": Up, "above": Up, "bottom": Down, "below": Down}

// fillers are words between those of a sense, and turners make clockwise its opposite.
var (
	fillers = []string{"to", "the", "on", "and", "at", "in", "side", "face"}
	turners = []string{"counter", "anti"}
)

// wordSense is the sense that a word stands for.
func wordSense(word string) Sense {
	switch word {
	case "T":
		return Tension
	case "C":
		return Compression
	}
	return senseWords[strings.ToLower(word)]
}
