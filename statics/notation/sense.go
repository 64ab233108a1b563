package notation

import (
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
// It is NoSense for zero.
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
	if against := f.Turned && (f.Couple || f.Kind == statics.MemberPull); (value.Sign() < 0) != against {
		return s.Opposite()
	}
	return s
}

// towards is the sense of a direction with components of these signs.
func towards(x, y int) Sense {
	return [3][3]Sense{{DownLeft, Down, DownRight}, {Left, NoSense, Right}, {UpLeft, Up, UpRight}}[y+1][x+1]
}

// DirectionWord is the sense of a direction: "right", "up", "down to the left". It is empty for no direction.
func DirectionWord(v statics.Vector) string { return towards(v.X.Sign(), v.Y.Sign()).String() }

// SenseOf is how a force of that value really acts on f.On: "up", "counter-clockwise", "up to the left", "tension"; empty
// for zero.
func SenseOf(f statics.Force, value exact.Num) string { return Acting(f, value).String() }

// SignOf is +1 if a force acts on f.On in the sense s when its value is positive, −1 when it is negative, and 0 if it can
// never act so. The sense of an inclined force is one of its components or both.
func SignOf(f statics.Force, s Sense) int {
	positive := Acting(f, one)
	for _, t := range []Sense{positive, horizontal(positive), vertical(positive)} {
		switch {
		case s == NoSense || t == NoSense:
		case s == t:
			return 1
		case s == t.Opposite():
			return -1
		}
	}
	return 0
}

// horizontal is Left or Right, if the sense has it.
func horizontal(s Sense) Sense {
	switch s {
	case UpLeft, DownLeft:
		return Left
	case UpRight, DownRight:
		return Right
	}
	return NoSense
}

// vertical is Up or Down, if the sense has it.
func vertical(s Sense) Sense {
	switch s {
	case UpLeft, UpRight:
		return Up
	case DownLeft, DownRight:
		return Down
	}
	return NoSense
}
