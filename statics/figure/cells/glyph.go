package cells

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
