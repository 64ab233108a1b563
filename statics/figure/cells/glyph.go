package cells

import (
	"unpin/statics/figure"
)

// holder says what a cell of the canvas holds.
type holder uint8

const (
	nothing holder = iota
	lines          // arms, perhaps with dots beneath
	dotted         // dots of a sloping stroke
	mark           // one rune
	text           // one rune of a label
)

// A cell of the canvas collects what is drawn through it. It becomes a glyph last, so that strokes that meet join.
type cell struct {
	holder holder
	arms   [4]weight
	dots   uint8
	dashed bool
	char   rune
	look   figure.Look
	shade  bool // blank, but between a distributed load's outline and its base
}

// glyph is the rune that a cell comes to.
func (k cell) glyph(ascii bool) rune {
	r := ' '
	switch k.holder {
	case lines:
		k.end()
		if k.dashed {
			r = dashGlyph(k.arms)
			break
		}
		if ascii {
			return asciiBox(k.arms)
		}
		if k.dots != 0 {
			return brailleGlyph(k.dots | armDots(k.arms))
		}
		return boxGlyph(k.arms)
	case dotted:
		if ascii {
			return asciiDots(k.dots)
		}
		return brailleGlyph(k.dots)
	case mark, text:
		r = k.char
	}
	if ascii {
		return toASCII(r)
	}
	return r
}

// end carries the lone end of a member through its cell, so that it reaches what stands beyond.
func (k *cell) end() {
	lone, n := 0, 0
	for side, w := range k.arms {
		if w > 0 {
			lone = side
			n++
		}
	}
	if n == 1 && k.arms[lone] == heavy && k.dots == 0 {
		k.arms[(lone+2)%4] = heavy
	}
}

// armDots is about what arms look like in dots, for a cell in which a sloping stroke meets a level or upright one.
func armDots(arms [4]weight) uint8 {
	var dots uint8
	for side, mask := range [4]uint8{north: 0x1b, east: 0x30, south: 0xe4, west: 0x06} {
		if arms[side] > 0 {
			dots |= mask
		}
	}
	return dots
}

func dashGlyph(arms [4]weight) rune {
	if arms[east]+arms[west] > 0 {
		return dashLevel
	}
	return dashUpright
}

// weight is how heavily a stroke leaves the centre of a cell: 0 not at all, 1 light, 2 heavy.
type weight uint8

const (
	light weight = 1
	heavy weight = 2
)

// The arms of a cell, in the order of box: north, east, south, west.
const (
	north = iota
	east
	south
	west
)

// box holds the box glyph of every four arms, by base-3 digits north, east, south, west (Unicode, Box Drawing block).
var box = []rune("" +
	" ╴╸╷┐┑╻┒┓" +
	"╶─╾┌┬┭┎┰┱" +
	"╺╼━┍┮┯┏┲┳" +
	"╵┘┙│┤┥╽┧┪" +
	"└┴┵├┼┽┟╁╅" +
	"┕┶┷┝┾┿┢╆╈" +
	"╹┚┛╿┦┩┃┨┫" +
	"┖┸┹┞╀╃┠╂╉" +
	"┗┺┻┡╄╇┣╊╋")

// boxGlyph is the box glyph of four arms.
func boxGlyph(arms [4]weight) rune {
	i := 0
	for _, a := range arms {
		i = 3*i + int(a)
	}
	return box[i]
}

// The marks that are not made of arms or dots.
const (
	pinGlyph    = '○'
	centreGlyph = '◉'
	turnLeft    = '↺'
	turnRight   = '↻'
	hatchGlyph  = '╱'
	dashLevel   = '╌'
	dashUpright = '╎'
	slotTop     = '∩'
	slotFoot    = '∪'
)

// brailleBit is the bit of a braille cell's dot at column 0…1 and row 0…3 (Unicode, Braille Patterns block).
var brailleBit = [4][2]uint8{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}

func brailleGlyph(dots uint8) rune { return 0x2800 + rune(dots) }
