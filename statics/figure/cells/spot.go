package cells

import (
	"math"

	"unpin/statics/figure"
)

// A spot is a place on the canvas in cells; whole numbers are the centres of cells.
type spot struct{ c, r float64 }

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
