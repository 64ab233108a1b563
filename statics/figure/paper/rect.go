package paper

import (
	"math"
)

// A rect is an upright rectangle on paper.
type rect struct{ x0, y0, x1, y1 float64 }

// noRect is the rect of nothing.
var noRect = rect{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}

func (b rect) with(c rect) rect {
	return rect{min(b.x0, c.x0), min(b.y0, c.y0), max(b.x1, c.x1), max(b.y1, c.y1)}
}

func (b rect) width() float64 { return b.x1 - b.x0 }

func (b rect) height() float64 { return b.y1 - b.y0 }

func (b rect) middle() Place { return Place{(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2} }

// grown is the rect with a rim around it.
func (b rect) grown(by float64) rect { return rect{b.x0 - by, b.y0 - by, b.x1 + by, b.y1 + by} }

func (b rect) meets(c rect) bool { return b.x0 < c.x1 && c.x0 < b.x1 && b.y0 < c.y1 && c.y0 < b.y1 }

// gap is the distance between two boxes, or 0 where they meet.
func (b rect) gap(c rect) float64 {
	return math.Hypot(max(b.x0-c.x1, c.x0-b.x1, 0), max(b.y0-c.y1, c.y0-b.y1, 0))
}

// corners are those of the rect, in order around it.
func (b rect) corners() []Place {
	return []Place{{b.x0, b.y0}, {b.x1, b.y0}, {b.x1, b.y1}, {b.x0, b.y1}}
}

// rectOf is the rect around places.
func rectOf(at ...Place) rect {
	b := noRect
	for _, s := range at {
		b = b.with(rect{s.X, s.Y, s.X, s.Y})
	}
	return b
}
