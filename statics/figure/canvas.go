package figure

import "math"

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
	look   Look
	shade  bool // blank, but between a spread load's outline and its base
}

// area is a block of cells, its ends included; it is empty if c1 < c0.
type area struct{ c0, r0, c1, r1 int }

var emptyArea = area{1 << 30, 1 << 30, -1 << 30, -1 << 30}

func (a area) with(b area) area {
	return area{min(a.c0, b.c0), min(a.r0, b.r0), max(a.c1, b.c1), max(a.r1, b.r1)}
}

func (a area) empty() bool { return a.c1 < a.c0 }
func (a area) width() int  { return a.c1 - a.c0 + 1 }
func (a area) height() int { return a.r1 - a.r0 + 1 }

// gap is how many columns and rows lie between a and b; negative where they overlap on that axis.
func (a area) gap(b area) (cols, rows int) {
	return max(b.c0-a.c1, a.c0-b.c1) - 1, max(b.r0-a.r1, a.r0-b.r1) - 1
}

func (a area) contains(b area) bool {
	return b.c0 >= a.c0 && b.c1 <= a.c1 && b.r0 >= a.r0 && b.r1 <= a.r1
}

// A canvas is a sheet of cells, larger than the grid it will be cut to. What falls outside is lost, yet counted in used.
type canvas struct {
	cols, rows int
	cells      []cell
	used       area
}

// newCanvas is a blank canvas in the memory of an earlier one, if that is enough.
func newCanvas(cols, rows int, memory []cell) *canvas {
	if cap(memory) < cols*rows {
		memory = make([]cell, cols*rows)
	}
	memory = memory[:cols*rows]
	clear(memory)
	return &canvas{cols: cols, rows: rows, cells: memory, used: emptyArea}
}

// at is the cell at (c, r), or a blank one of no effect outside the canvas.
func (v *canvas) at(c, r int) *cell {
	if c < 0 || r < 0 || c >= v.cols || r >= v.rows {
		return &cell{}
	}
	return &v.cells[r*v.cols+c]
}

// open reports whether nothing stands in a cell, nor a spread load around it.
func (v *canvas) open(c, r int) bool {
	k := v.at(c, r)
	return k.holder == nothing && !k.shade
}

func (v *canvas) use(c, r int) {
	v.used = v.used.with(area{c, r, c, r})
}

// takes reports whether a mark of that look may be drawn at (c, r): members and supports go everywhere, all else only
// on free cells and on strokes of its own role.
func (v *canvas) takes(c, r int, look Look) bool {
	k := v.at(c, r)
	if look.Role <= GroundMark || k.holder == nothing {
		return true
	}
	return (k.holder == lines || k.holder == dotted) && k.look.Role == look.Role
}

// put sets a rune.
func (v *canvas) put(c, r int, char rune, look Look) {
	v.use(c, r)
	if !v.takes(c, r, look) {
		return
	}
	k := v.at(c, r)
	k.holder, k.char, k.look = mark, char, look
}

// arm adds arms to a cell.
func (v *canvas) arm(c, r int, side int, w weight, look Look) {
	v.use(c, r)
	k := v.at(c, r)
	if !v.takes(c, r, look) || k.holder == mark {
		return
	}
	k.holder, k.look = lines, look
	k.arms[side] = max(k.arms[side], w)
}

// line draws a level or upright stroke from centre to centre.
func (v *canvas) line(c0, r0, c1, r1 int, w weight, look Look) {
	for c := min(c0, c1); c < max(c0, c1); c++ {
		v.arm(c, r0, east, w, look)
		v.arm(c+1, r0, west, w, look)
	}
	for r := min(r0, r1); r < max(r0, r1); r++ {
		v.arm(c0, r, south, w, look)
		v.arm(c0, r+1, north, w, look)
	}
}

// dot sets one braille dot; x counts half columns, y quarter rows.
func (v *canvas) dot(x, y int, look Look) {
	c, r := x>>1, y>>2
	v.use(c, r)
	k := v.at(c, r)
	if !v.takes(c, r, look) || k.holder == mark {
		return
	}
	if k.holder != lines {
		k.holder = dotted
		k.look = look
	}
	k.dots |= brailleBit[y&3][x&1]
}

// slope draws a straight stroke in dots between two places in cells (whole numbers are centres), as thick as given in
// dots; it leaves gaps if dashed.
func (v *canvas) slope(a, b spot, thick int, dashed bool, look Look) {
	x0, y0 := 2*(a.c+0.5), 4*(a.r+0.5)
	x1, y1 := 2*(b.c+0.5), 4*(b.r+0.5)
	steep := math.Abs(y1-y0) > math.Abs(x1-x0)
	if steep {
		x0, y0, x1, y1 = y0, x0, y1, x1
	}
	if x0 > x1 {
		x0, y0, x1, y1 = x1, y1, x0, y0
	}
	for x := int(math.Floor(x0)); x < max(int(math.Ceil(x1)), int(math.Floor(x0))+1); x++ {
		if dashed && x&3 == 3 {
			continue
		}
		y := y0
		if x1 > x0 {
			mid := min(max(float64(x)+0.5, x0), x1)
			y = y0 + (y1-y0)*(mid-x0)/(x1-x0)
		}
		first := int(math.Floor(y - float64(thick-1)/2))
		for k := range thick {
			if steep {
				v.dot(first+k, x, look)
			} else {
				v.dot(x, first+k, look)
			}
		}
	}
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
