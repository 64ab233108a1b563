package figure

import "math"

// A Position is a place in the frame, in its unit of length, y upward.
type Position struct{ X, Y float64 }

// To is the direction from p to q, or none where they are one.
func (p Position) To(q Position) Direction { return NewDirection(q.X-p.X, q.Y-p.Y) }

// between is the point halfway between two.
func (p Position) between(q Position) Position { return Position{(p.X + q.X) / 2, (p.Y + q.Y) / 2} }

// A Direction is a direction in the frame, of length 1, y upward; the zero Direction stands for none.
type Direction struct{ X, Y float64 }

// NewDirection is the direction of (x, y), or none if that has no length.
func NewDirection(x, y float64) Direction {
	l := math.Hypot(x, y)
	if l == 0 || math.IsInf(l, 0) || math.IsNaN(l) {
		return Direction{}
	}
	return Direction{x / l, y / l}
}

// Level reports whether v runs along the x axis, as near as a figure can show.
func (v Direction) Level() bool { return math.Abs(v.Y) < 1e-6 }

// Upright reports whether v runs along the y axis, as near as a figure can show.
func (v Direction) Upright() bool { return math.Abs(v.X) < 1e-6 }

// Opposite is v turned by 180°.
func (v Direction) Opposite() Direction { return Direction{-v.X, -v.Y} }

// Left is v turned 90° counter-clockwise.
func (v Direction) Left() Direction { return Direction{-v.Y, v.X} }

// Dot is the scalar product.
func (v Direction) Dot(w Direction) float64 { return v.X*w.X + v.Y*w.Y }

// IsZero reports whether v stands for no direction.
func (v Direction) IsZero() bool { return v.X == 0 && v.Y == 0 }

// AngleBetween is the angle between two directions in radians, 0 to π.
func AngleBetween(v, w Direction) float64 {
	return math.Acos(min(max(v.Dot(w), -1), 1))
}
