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

// open reports whether nothing stands in a cell, nor a distributed load around it.
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

// wipe empties a cell.
func (v *canvas) wipe(c, r int) { *v.at(c, r) = cell{} }

// isMember reports whether a member or what holds it lies in a cell.
func (v *canvas) isMember(c, r int) bool {
	k := v.at(c, r)
	return k.holder != nothing && k.look.Role <= figure.GroundMark && k.look.Role != figure.Blank
}

// shade keeps everything else out of the cells between a base and its outline.
func (v *canvas) shade(a, b spot, out figure.Direction, d0, d1 float64) {
	n := max(1, int(math.Ceil(max(math.Abs(b.c-a.c), math.Abs(b.r-a.r)))))
	for i := range n + 1 {
		t := float64(i) / float64(n)
		base, w := a.between(b, t), d0+(d1-d0)*t
		for k := 0.0; k <= 2*math.Abs(w); k++ {
			c, r := base.by(out, math.Copysign(k, w)).cell()
			v.at(c, r).shade = true
		}
	}
}

// free reports whether a label may stand in a block: all blank, and a blank before the next label on either side.
func (v *canvas) free(at area) bool {
	for c := at.c0; c <= at.c1; c++ {
		if !v.open(c, at.r0) {
			return false
		}
	}
	return v.at(at.c0-1, at.r0).holder != text && v.at(at.c1+1, at.r0).holder != text
}

// crowding is what a place costs for touching other things on its row.
func (v *canvas) crowding(at area) float64 {
	cost := 0.0
	for _, c := range [2]int{at.c0 - 1, at.c1 + 1} {
		if v.at(c, at.r0).holder != nothing {
			cost += 2.2
		}
	}
	for _, c := range [2]int{at.c0 - 2, at.c1 + 2} {
		if v.at(c, at.r0).holder == text {
			cost += 1.2
		}
	}
	return cost
}

// window is the block of w × h cells with what was painted in its middle.
func (v *canvas) window(w, h int) area {
	c := v.used.c0 - (w-v.used.width())/2
	r := v.used.r0 - (h-v.used.height())/2
	return area{c, r, c + w - 1, r + h - 1}
}
