package figure

import "math"

// A spot is a place on the canvas in cells; whole numbers are the centres of cells.
type spot struct{ c, r float64 }

func (s spot) cell() (c, r int) { return int(math.Round(s.c)), int(math.Round(s.r)) }

// by is the spot at t cell widths from s towards v; a cell is two widths tall, and rows count downward.
func (s spot) by(v Vector, t float64) spot { return spot{s.c + v.X*t, s.r - v.Y*t/2} }

// between is the spot at share t of the way from s to u.
func (s spot) between(u spot, t float64) spot { return spot{s.c + (u.c-s.c)*t, s.r + (u.r-s.r)*t} }

// detail is how much of a scene is drawn, and how large.
type detail struct {
	arms       int     // rows of an upright arrow; a level one has twice as many columns and one more
	curve      float64 // rows of the greatest value of a curve
	apart      int     // most cells kept between stations
	dimensions bool    // drawn, or only told
	values     bool    // of loads and forces: beside them, or only in the key
	longest    int     // length of the longest value that stands beside its thing; 0 is any
	names      bool
}

// A painter draws one scene at one scale on one canvas.
type painter struct {
	*canvas
	scene    *Scene
	detail   detail
	x, y     ruler
	left     int // column of the first station of x
	foot     int // row of the first station of y
	frame    area
	requests []request
	placed   []Placed
}

// spot is where a point of the frame lies.
func (p *painter) spot(at Point) spot {
	return spot{float64(p.left) + p.x.place(at.X), float64(p.foot) - p.y.place(at.Y)}
}

// cellOf is the cell of a point of the frame.
func (p *painter) cellOf(at Point) (c, r int) { return p.spot(at).cell() }

// paint draws everything but the labels, and asks for those.
func (p *painter) paint() {
	p.frame = area{p.left, p.foot - p.y.length(), p.left + p.x.length(), p.foot}
	p.used = p.used.with(p.frame)
	for _, s := range p.scene.Strokes {
		p.stroke(s)
	}
	for _, k := range p.scene.Guides {
		p.guide(k)
	}
	for _, s := range p.scene.Symbols {
		p.symbol(s)
	}
	for _, s := range p.scene.Spreads {
		p.spread(s)
	}
	for _, a := range p.scene.Arrows {
		p.arrow(a)
	}
	for _, c := range p.scene.Curves {
		p.curve(c)
	}
	for _, n := range p.scene.Notes {
		c, r := p.cellOf(n.At)
		p.ask(request{text: n.Text, near: area{c, r, c, r}, c: c, r: r, look: n.Look, rank: rankOf(n.Role)})
	}
}

// rankOf orders the labels: names come last of all.
func rankOf(role Role) int {
	if role == NameMark {
		return rankName
	}
	return rankNote
}

// stroke draws a member.
func (p *painter) stroke(s Stroke) {
	a, b := p.spot(s.From), p.spot(s.To)
	c0, r0 := a.cell()
	c1, r1 := b.cell()
	p.use(c0, r0)
	p.use(c1, r1)
	if c0 == c1 || r0 == r1 {
		p.line(c0, r0, c1, r1, heavy, s.Look)
		return
	}
	p.slope(spot{float64(c0), float64(r0)}, spot{float64(c1), float64(r1)}, 2, false, s.Look)
}

// guide draws a fine line, dashed where something has moved.
func (p *painter) guide(k Stroke) {
	p.slope(p.spot(k.From), p.spot(k.To), 1, k.Role == MotionMark, k.Look)
}

// level and upright tell whether a direction runs along an axis, as near as a figure can show.
func (v Vector) level() bool   { return math.Abs(v.Y) < 1e-6 }
func (v Vector) upright() bool { return math.Abs(v.X) < 1e-6 }

// neg is the opposite direction.
func (v Vector) neg() Vector { return Vector{-v.X, -v.Y} }

// left is v turned 90° counter-clockwise.
func (v Vector) left() Vector { return Vector{-v.Y, v.X} }

// dot is the scalar product.
func (v Vector) dot(w Vector) float64 { return v.X*w.X + v.Y*w.Y }

// isZero reports whether v stands for no direction.
func (v Vector) isZero() bool { return v.X == 0 && v.Y == 0 }

// cellStep is the nearest of the four directions, as a step in cells.
func cellStep(v Vector) (dc, dr int) {
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

// head is the arrow head that points in direction v, open for an assumed sense.
func head(v Vector, open bool) rune {
	const tilt = 0.3827 // sin 22.5°
	if math.Abs(v.X) > tilt && math.Abs(v.Y) > tilt {
		switch {
		case v.X > 0 && v.Y > 0:
			return '↗'
		case v.X > 0:
			return '↘'
		case v.Y > 0:
			return '↖'
		}
		return '↙'
	}
	level, i := math.Abs(v.X) > math.Abs(v.Y), 0
	switch {
	case level && v.X > 0:
		i = 2
	case level:
		i = 3
	case v.Y < 0:
		i = 1
	}
	if open {
		return [...]rune{'△', '▽', '▷', '◁'}[i]
	}
	return [...]rune{'▲', '▼', '►', '◄'}[i]
}
