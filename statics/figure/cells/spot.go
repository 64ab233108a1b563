package cells

import (
	"math"

	"unpin/statics/figure"
)

// A spot is a place on the canvas in cells; whole numbers are the centres of cells.
type spot struct{ c, r float64 }

func (s spot) position() figure.Position { return figure.Position{X: s.c, Y: s.r} }

func (s spot) cell() (c, r int) { return int(math.Round(s.c)), int(math.Round(s.r)) }

// by is the spot at t cell widths from s towards v; a cell is two widths tall, and rows count downward.
func (s spot) by(v figure.Direction, t float64) spot { return spot{s.c + v.X*t, s.r - v.Y*t/2} }

// between is the spot at share t of the way from s to u.
func (s spot) between(u spot, t float64) spot { return spot{s.c + (u.c-s.c)*t, s.r + (u.r-s.r)*t} }

// cellStep is the nearest of the four directions, as a step in cells.
func cellStep(v figure.Direction) (dc, dr int) {
	if math.Abs(v.X) > math.Abs(v.Y) {
		return sign(v.X), 0
	}
	return 0, -sign(v.Y)
}

func sign(x float64) int {
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
	}
	return 0
}

func abs(i int) int {
	if i < 0 {
		return -i
	}
	return i
}

// cellArea is the block between two cells.
func cellArea(c0, r0, c1, r1 int) area {
	return area{min(c0, c1), min(r0, r1), max(c0, c1), max(r0, r1)}
}

// area is a block of cells, its ends included; it is empty if c1 < c0.
type area struct{ c0, r0, c1, r1 int }

var emptyArea = area{1 << 30, 1 << 30, -1 << 30, -1 << 30}

func (a area) with(b area) area {
	return area{min(a.c0, b.c0), min(a.r0, b.r0), max(a.c1, b.c1), max(a.r1, b.r1)}
}

func (a area) empty() bool { return a.c1 < a.c0 }

func (a area) width() int { return a.c1 - a.c0 + 1 }

func (a area) height() int { return a.r1 - a.r0 + 1 }

// gap is how many columns and rows lie between a and b; negative where they overlap on that axis.
func (a area) gap(b area) (cols, rows int) {
	return max(b.c0-a.c1, a.c0-b.c1) - 1, max(b.r0-a.r1, a.r0-b.r1) - 1
}

func (a area) contains(b area) bool {
	return b.c0 >= a.c0 && b.c1 <= a.c1 && b.r0 >= a.r0 && b.r1 <= a.r1
}
