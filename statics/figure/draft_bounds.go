package figure

import (
	"math"
)

// bounds is an upright rectangle in the frame, from its lower left to its upper right corner.
type bounds struct{ low, high Position }

// noBounds is the rectangle around nothing.
var noBounds = bounds{Position{math.Inf(1), math.Inf(1)}, Position{math.Inf(-1), math.Inf(-1)}}

// with is the rectangle around two.
func (b bounds) with(c bounds) bounds {
	return bounds{
		Position{min(b.low.X, c.low.X), min(b.low.Y, c.low.Y)}, Position{max(b.high.X, c.high.X), max(b.high.Y, c.high.Y)},
	}
}

func (b bounds) width() float64 { return b.high.X - b.low.X }

func (b bounds) height() float64 { return b.high.Y - b.low.Y }

func (b bounds) longer() float64 { return max(b.width(), b.height()) }

func (b bounds) middle() Position {
	return Position{(b.low.X + b.high.X) / 2, (b.low.Y + b.high.Y) / 2}
}

// grown is the rectangle with a rim around it.
func (b bounds) grown(by float64) bounds {
	return bounds{b.low.moved(offset{-by, -by}), b.high.moved(offset{by, by})}
}

// holds reports whether a point lies in the rectangle or on its edge.
func (b bounds) holds(p Position) bool {
	return p.X >= b.low.X && p.X <= b.high.X && p.Y >= b.low.Y && p.Y <= b.high.Y
}

// extent is the rectangle around what is drawn of the members.
func (d *draft) extent() bounds {
	all := noBounds
	for _, k := range d.Strokes {
		all = all.with(bounds{k.From, k.From}).with(bounds{k.To, k.To})
	}
	return all
}

// An offset is how far something is moved in the frame, or how fast.
type offset struct{ X, Y float64 }

func (p Position) moved(by offset) Position { return Position{p.X + by.X, p.Y + by.Y} }
