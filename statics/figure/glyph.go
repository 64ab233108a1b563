package figure

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

// asciiBox stands for boxGlyph in ASCII.
func asciiBox(arms [4]weight) rune {
	level := max(arms[east], arms[west])
	upright := max(arms[north], arms[south])
	switch {
	case level > 0 && upright > 0:
		return '+'
	case level == heavy:
		return '='
	case level == light:
		return '-'
	case upright == heavy:
		return '#'
	case upright == light:
		return '|'
	}
	return ' '
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

// asciiTwin maps every mark, and every rune that a label of this package may hold beyond ASCII, to its stand-in.
var asciiTwin = map[rune]rune{
	pinGlyph: 'o', centreGlyph: '0', '▼': 'v', '▲': '^', '►': '>', '◄': '<',
	'▽': 'v', '△': '^', '▷': '>', '◁': '<',
	'↗': '/', '↖': '\\', '↘': '\\', '↙': '/',
	turnLeft: '@', turnRight: '@', hatchGlyph: '/', dashLevel: '.', dashUpright: ':',
	slotTop: '^', slotFoot: 'v',
	'·': '.', '−': '-', '°': 'd', '×': 'x', '…': '.', '√': 'V',
}

// toASCII is a rune that any terminal shows.
func toASCII(r rune) rune {
	if r < 0x80 {
		return r
	}
	if t, ok := asciiTwin[r]; ok {
		return t
	}
	return '?'
}

// brailleBit is the bit of a braille cell's dot at column 0…1 and row 0…3 (Unicode, Braille Patterns block).
var brailleBit = [4][2]uint8{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}

func brailleGlyph(dots uint8) rune { return 0x2800 + rune(dots) }

// asciiDots stands for a braille cell in ASCII: a slash where its dots climb or fall, else a mark at their height.
func asciiDots(dots uint8) rune {
	var sum, n [2]int // of the rows of the dots in each column
	top, foot := 4, -1
	for row := range 4 {
		for col := range 2 {
			if dots&brailleBit[row][col] != 0 {
				sum[col] += row
				n[col]++
				top, foot = min(top, row), max(foot, row)
			}
		}
	}
	switch {
	case n[0] > 0 && n[1] > 0 && foot-top >= 2:
		if sum[0]*n[1] > sum[1]*n[0] {
			return '/'
		}
		if sum[0]*n[1] < sum[1]*n[0] {
			return '\\'
		}
		return '|'
	case foot-top >= 2:
		return '|'
	case top >= 2:
		return '_'
	case foot <= 1:
		return '\''
	}
	return '-'
}
