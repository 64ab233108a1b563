package cells

import (
	"unpin/statics/figure"
)

// detail is how much of a scene is drawn, and how large.
type detail struct {
	arms       int     // rows of an upright arrow; a level one has twice as many columns and one more
	curve      float64 // rows of the greatest value of a curve
	apart      int     // most cells kept between stations
	across, up bool    // dimensions along x and along y: drawn, or only told
	rulers     bool    // of dimensions that all begin at one place, one ruler in place of several lines
	values     bool    // of loads and forces: beside them, or only in the key
	longest    int     // length of the longest value that stands beside its thing; 0 is any
	names      bool
}

// A painter draws one scene at one scale on one canvas.
type painter struct {
	*lettering
	scene *figure.Scene
	x, y  figure.Ruler
	left  int  // column of the first station of x
	foot  int  // row of the first station of y
	frame area // from the first stations to the last
	ascii bool
	lost  []string // what there is no room to draw
}

// spot is where a point of the frame lies.
func (p *painter) spot(at figure.Position) spot {
	return spot{float64(p.left) + p.x.Place(at.X), float64(p.foot) - p.y.Place(at.Y)}
}

// cellOf is the cell of a point of the frame.
func (p *painter) cellOf(at figure.Position) (c, r int) { return p.spot(at).cell() }

// paint draws everything but the labels, and asks for those.
func (p *painter) paint() {
	p.frame = area{p.left, p.foot - p.y.Length(), p.left + p.x.Length(), p.foot}
	p.used = p.used.with(p.frame)
	for _, s := range p.scene.Strokes {
		p.stroke(s)
	}
	for _, k := range p.scene.Guides {
		p.guide(k)
	}
	for _, w := range p.scene.Wheels {
		p.wheel(w)
	}
	p.reserve()
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
		p.ask(request{text: n.Text, near: area{c, r, c, r}, c: c, r: r, look: n.Look, rank: figure.RankOf(n.Role)})
	}
}

// stroke draws a member.
func (p *painter) stroke(s figure.Stroke) {
	a, b := p.spot(s.From), p.spot(s.To)
	c0, r0 := a.cell()
	c1, r1 := b.cell()
	p.use(c0, r0)
	p.use(c1, r1)
	p.note(figure.Drawn{Kind: figure.DrawnMember, From: positionOf(c0, r0), To: positionOf(c1, r1)})
	if c0 == c1 || r0 == r1 {
		p.line(c0, r0, c1, r1, heavy, s.Look)
		return
	}
	p.slope(spot{float64(c0), float64(r0)}, spot{float64(c1), float64(r1)}, 2, false, s.Look)
}

// guide draws a fine line, dashed where something has moved.
func (p *painter) guide(k figure.Stroke) {
	p.slope(p.spot(k.From), p.spot(k.To), 1, k.Role == figure.MotionMark, k.Look)
}
