package cells

import (
	"unpin/statics/figure"
)

// support draws what holds a joint. Toward points to the ground.
func (p *painter) support(at spot, s figure.Symbol) {
	joint := at
	if !s.Aside.IsZero() {
		at = p.lug(at, s)
	}
	if !s.Toward.Level() && !s.Toward.Upright() {
		a, b := p.raking(at, s)
		p.note(figure.Drawn{Kind: figure.DrawnSupport, From: a.position(), To: b.position(), At: joint.position()})
		return
	}
	c, r := at.cell()
	dc, dr := cellStep(s.Toward)
	far := 1
	switch s.Kind {
	case figure.PinnedSupport:
		p.triangle(c+dc, r+dr, dc, dr, s.Look)
		far = 2
	case figure.RollerSupport:
		p.put(c+dc, r+dr, pinGlyph, s.Look)
		far = 2
	case figure.GuideSupport:
		p.plate(c, r, dc, s.Look)
		p.put(c+dc+abs(dr), r+dr+abs(dc), pinGlyph, s.Look)
		p.put(c+dc-abs(dr), r+dr-abs(dc), pinGlyph, s.Look)
		far = 2
	case figure.FixedSupport:
		p.plate(c, r, dc, s.Look)
	}
	from, to := p.hatch(c+far*dc, r+far*dr, dc == 0)
	p.note(figure.Drawn{Kind: figure.DrawnSupport, From: from, To: to, At: joint.position()})
}

// triangle draws a pinned support with its point to the joint: in ASCII, where there is room beside it, of three signs.
func (p *painter) triangle(c, r, dc, dr int, look figure.Look) {
	if p.ascii && dr != 0 && p.open(c-1, r) && p.open(c+1, r) {
		sides := [3]rune{'/', '_', '\\'}
		if dr < 0 {
			sides = [3]rune{'\\', '_', '/'}
		}
		for i, char := range sides {
			p.put(c-1+i, r, char, look)
		}
		return
	}
	glyph := map[[2]int]rune{{0, 1}: '△', {0, -1}: '▽', {1, 0}: '◁', {-1, 0}: '▷'}[[2]int{dc, dr}]
	p.put(c, r, glyph, look)
}

// lug draws the short bar on which a support stands beside its joint, and gives its end.
func (p *painter) lug(at spot, s figure.Symbol) spot {
	c, r := at.cell()
	dc, dr := cellStep(s.Aside)
	c1, r1 := c+5*dc, r+3*dr
	p.line(c, r, c1, r1, heavy, s.Look)
	return spot{float64(c1), float64(r1)}
}

// plate draws the heavy base on which a built-in member stands.
func (p *painter) plate(c, r, dc int, look figure.Look) {
	if dc == 0 {
		wide := min(2, p.detail.apart-1)
		p.line(c-wide, r, c+wide, r, heavy, look)
		return
	}
	p.line(c, r-1, c, r+1, heavy, look)
}

// hatch draws the ground around a cell, lying or upright, and gives its ends.
func (p *painter) hatch(c, r int, lying bool) (from, to figure.Position) {
	look := figure.Look{Role: figure.GroundMark}
	if !lying {
		for i := -1; i <= 1; i++ {
			p.put(c, r+i, hatchGlyph, look)
		}
		return positionOf(c, r-1), positionOf(c, r+1)
	}
	wide := min(2, p.detail.apart-1)
	for i := -wide; i <= wide; i++ {
		p.put(c+i, r, hatchGlyph, look)
	}
	return positionOf(c-wide, r), positionOf(c+wide, r)
}

// raking draws a support on sloping ground: its wheel, the line of the ground, whose ends it gives, and hatch beyond it.
func (p *painter) raking(at spot, s figure.Symbol) (from, to spot) {
	wheel := at.by(s.Toward, 2)
	c, r := wheel.cell()
	p.put(c, r, pinGlyph, s.Look)
	along := s.Toward.Left()
	middle := spot{float64(c), float64(r)}.by(s.Toward, 1.6)
	from, to = middle.by(along, 3.5), middle.by(along, -3.5)
	p.slope(from, to, 1, false, s.Look)
	if s.Kind == figure.GuideSupport {
		p.slope(at.by(along, 2.5), at.by(along, -2.5), 2, false, s.Look)
	}
	ground := figure.Look{Role: figure.GroundMark}
	for k := -3.0; k <= 3; k++ {
		c, r := middle.by(along, k).by(s.Toward, 1.6).cell()
		if p.at(c, r).holder == nothing {
			p.put(c, r, hatchGlyph, ground)
		}
	}
	return from, to
}
