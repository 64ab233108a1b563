package paper

import (
	"fmt"

	"unpin/statics/figure"
)

// An Ink is a colour as 0xRRGGBB, or NoInk.
type Ink uint32

// NoInk leaves the paper as it is.
const NoInk Ink = 1 << 24

// The inks. Those of forces are from the palette of Okabe and Ito (Color Universal Design, 2008), which the colour-blind
// can tell apart; in grey they differ in weight, dashes and heads.
const (
	black  Ink = 0x000000
	white  Ink = 0xffffff
	grey   Ink = 0x767676 // readable on white: 4.5 to 1 (Web Content Accessibility Guidelines 2.1)
	pale   Ink = 0xc8c8c8
	red    Ink = 0xd55e00 // vermilion
	blush  Ink = 0xfbe7d9 // vermilion, thinned
	blue   Ink = 0x0072b2
	green  Ink = 0x009e73
	leaf   Ink = 0xd9f1ea // green, thinned
	purple Ink = 0xcc79a7
	yellow Ink = 0xf0e442
)

// lineInk is the ink of a mark's lines.
func lineInk(l figure.Look) Ink {
	if l.Emphasis == figure.Faded {
		return grey
	}
	switch l.Role {
	case figure.LoadMark, figure.ResultantMark:
		return red
	case figure.MotionMark, figure.CentreMark:
		return purple
	case figure.KnownForce, figure.UnknownForce, figure.ReversedForce:
		return blue
	case figure.DiagramMark, figure.DiagramHatch:
		return green
	}
	return black
}

// textInk is the ink of a label.
func textInk(l figure.Look) Ink {
	if l.Emphasis == figure.Faded || l.Role == figure.ReversedForce {
		return grey
	}
	return black
}

func (k Ink) hex() string { return fmt.Sprintf("#%06x", uint32(k)) }

// rgb are the shares of red, green and blue, from 0 to 255.
func (k Ink) rgb() (r, g, b int) { return int(k >> 16 & 0xff), int(k >> 8 & 0xff), int(k & 0xff) }
