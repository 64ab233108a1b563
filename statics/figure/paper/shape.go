package paper

import (
	"math"

	"unpin/statics/figure"
)

// A shape is a convex area on paper that something takes up.
type shape struct {
	corners []Place // in order around it
	rect    rect
	from    Place // of a member, its ends
	to      Place
	sides   []side // of what many labels are held against
}

// A side is a direction perpendicular to a side of a shape, and from where to where the shape reaches along it.
type side struct {
	square    figure.Direction
	low, high float64
}

// withSides is the shape with its sides reckoned once for all.
func (s shape) withSides() shape {
	for i, a := range s.corners {
		b := s.corners[(i+1)%len(s.corners)]
		n := figure.Direction{X: b.Y - a.Y, Y: a.X - b.X}
		if n.X == 0 || n.Y == 0 { // the rect tells
			continue
		}
		low, high := s.extent(n)
		s.sides = append(s.sides, side{n, low, high})
	}
	return s
}

// meetsRect reports whether a shape with its sides overlaps an upright rectangle.
func (s *shape) meetsRect(b rect) bool {
	if !s.rect.meets(b) {
		return false
	}
	middle, w, h := b.middle(), b.width()/2, b.height()/2
	for _, k := range s.sides {
		at, reach := middle.X*k.square.X+middle.Y*k.square.Y, w*math.Abs(k.square.X)+h*math.Abs(k.square.Y)
		if at+reach <= k.low+1e-9 || at-reach >= k.high-1e-9 {
			return false
		}
	}
	return true
}

func newShape(corners ...Place) shape { return shape{corners: corners, rect: rectOf(corners...)} }

// holds reports whether a place lies on the member that the shape is of.
func (s *shape) holds(at Place) bool {
	long := s.from.distance(s.to)
	return long > 0 && s.from.distance(at)+at.distance(s.to) < long+0.05
}

// bar is the shape of a straight line of that weight.
func bar(a, b Place, weight float64) shape {
	across := a.toward(b).Left()
	h := weight / 2
	return newShape(a.by(across, h), b.by(across, h), b.by(across, -h), a.by(across, -h))
}

// meets reports whether two shapes overlap: no line parallel to one of their sides parts them.
func (s *shape) meets(t shape) bool {
	return s.rect.meets(t.rect) && !s.parts(&t) && !t.parts(s)
}

// parts reports whether a side of s lies between s and t.
func (s *shape) parts(t *shape) bool {
	for i, a := range s.corners {
		b := s.corners[(i+1)%len(s.corners)]
		n := figure.Direction{X: b.Y - a.Y, Y: a.X - b.X}
		if n.IsZero() {
			continue
		}
		low, high := s.extent(n)
		if from, to := t.extent(n); to <= low+1e-9 || from >= high-1e-9 {
			return true
		}
	}
	return false
}

// extent is from where to where a shape reaches along a direction on paper.
func (s *shape) extent(n figure.Direction) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, c := range s.corners {
		d := c.X*n.X + c.Y*n.Y
		low, high = min(low, d), max(high, d)
	}
	return low, high
}
