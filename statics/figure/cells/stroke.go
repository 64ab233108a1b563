package cells

import (
	"math"

	"unpin/statics/figure"
)

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

// track draws a light stroke, in arms if it lies along an axis.
func (v *canvas) track(a, b spot, look figure.Look) {
	c0, r0 := a.cell()
	c1, r1 := b.cell()
	if c0 == c1 || r0 == r1 {
		v.line(c0, r0, c1, r1, light, look)
		return
	}
	v.slope(a, b, 1, false, look)
}

// join carries the shaft of a tooth down to its head, so that a shaft of one cell is a whole stroke.
func (v *canvas) join(c, r, dc, dr int, look figure.Look) {
	if k := v.at(c, r); k.holder == dotted {
		return
	}
	switch {
	case dr < 0:
		v.arm(c, r, south, light, look)
	case dr > 0:
		v.arm(c, r, north, light, look)
	case dc < 0:
		v.arm(c, r, east, light, look)
	default:
		v.arm(c, r, west, light, look)
	}
}
