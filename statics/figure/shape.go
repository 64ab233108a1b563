package figure

import "math"

// A rect is an upright rectangle on paper.
type rect struct{ x0, y0, x1, y1 float64 }

// noRect is the rect of nothing.
var noRect = rect{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}

func (b rect) with(c rect) rect {
	return rect{min(b.x0, c.x0), min(b.y0, c.y0), max(b.x1, c.x1), max(b.y1, c.y1)}
}

func (b rect) width() float64  { return b.x1 - b.x0 }
func (b rect) height() float64 { return b.y1 - b.y0 }
func (b rect) middle() Place   { return Place{(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2} }

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

// A shape is a convex area on paper that something takes up.
type shape struct {
	corners []Place // in order around it
	rect    rect
	from    Place // of a member, its ends
	to      Place
	sides   []side // of what many labels are held against
}

// A side is a direction square to a side of a shape, and from where to where the shape reaches along it.
type side struct {
	square    Vector
	low, high float64
}

// withSides is the shape with its sides reckoned once for all.
func (s shape) withSides() shape {
	for i, a := range s.corners {
		b := s.corners[(i+1)%len(s.corners)]
		n := Vector{b.Y - a.Y, a.X - b.X}
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
	across := a.toward(b).left()
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
		n := Vector{b.Y - a.Y, a.X - b.X}
		if n.isZero() {
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
func (s *shape) extent(n Vector) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, c := range s.corners {
		d := c.X*n.X + c.Y*n.Y
		low, high = min(low, d), max(high, d)
	}
	return low, high
}

// by is the place at t points from s towards a direction of the frame, in which y runs up.
func (s Place) by(v Vector, t float64) Place { return Place{s.X + v.X*t, s.Y - v.Y*t} }

// toward is the direction, in the frame's sense, from one place to another.
func (s Place) toward(t Place) Vector { return unit(t.X-s.X, s.Y-t.Y) }

// between is the place at share t of the way from s to u.
func (s Place) between(u Place, t float64) Place { return Place{s.X + (u.X-s.X)*t, s.Y + (u.Y-s.Y)*t} }

// distance is how far apart two places are.
func (s Place) distance(u Place) float64 { return math.Hypot(u.X-s.X, u.Y-s.Y) }
