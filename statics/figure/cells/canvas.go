package cells

import (
	"math"

	"unpin/statics/figure"
)

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
func (v *canvas) takes(c, r int, look figure.Look) bool {
	k := v.at(c, r)
	if look.Role <= figure.GroundMark || k.holder == nothing {
		return true
	}
	return (k.holder == lines || k.holder == dotted) && k.look.Role == look.Role
}

// put sets a rune.
func (v *canvas) put(c, r int, char rune, look figure.Look) {
	v.use(c, r)
	if !v.takes(c, r, look) {
		return
	}
	k := v.at(c, r)
	k.holder, k.char, k.look = mark, char, look
}

// arm adds arms to a cell.
func (v *canvas) arm(c, r int, side int, w weight, look figure.Look) {
	v.use(c, r)
	k := v.at(c, r)
	if !v.takes(c, r, look) || k.holder == mark {
		return
	}
	k.holder, k.look = lines, look
	k.arms[side] = max(k.arms[side], w)
}

// line draws a level or upright stroke from centre to centre.
func (v *canvas) line(c0, r0, c1, r1 int, w weight, look figure.Look) {
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
func (v *canvas) dot(x, y int, look figure.Look) {
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
func (v *canvas) slope(a, b spot, thick int, dashed bool, look figure.Look) {
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

// wipe empties a cell.
func (p *painter) wipe(c, r int) { *p.at(c, r) = cell{} }
