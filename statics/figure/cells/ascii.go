package cells

// asciiText is a text with each rune beyond ASCII replaced.
func asciiText(s string) string {
	out := []rune(s)
	for i, r := range out {
		out[i] = toASCII(r)
	}
	return string(out)
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

// asciiTwin maps every mark, and every rune that a label of this package may hold beyond ASCII, to its stand-in.
var asciiTwin = map[rune]rune{
	pinGlyph: 'o', centreGlyph: '@', '▼': 'v', '▲': '^', '►': '>', '◄': '<',
	'∨': 'v', '∧': '^', '▽': 'v', '△': '^', '▷': '>', '◁': '<',
	'↗': '/', '↖': '\\', '↘': '\\', '↙': '/',
	turnLeft: '&', turnRight: '&', hatchGlyph: '/', dashLevel: '.', dashUpright: ':',
	slotTop: '^', slotFoot: 'v', '╭': '.', '╮': '.', '╰': '\'', '╯': '\'',
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
