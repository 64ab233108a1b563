package cells

import (
	"unpin/statics/figure"
)

// support draws what holds a joint. Toward points to the ground.
func (p *painter) support(at spot, s figure.Symbol) {
	if !s.Toward.Level() && !s.Toward.Upright() {
		p.raking(at, s)
		return
	}
	c, r := at.cell()
	dc, dr := cellStep(s.Toward)
	far := 1
	switch s.Kind {
	case figure.PinnedSupport:
		p.put(c+dc, r+dr, figure.Head(s.Toward.Opposite(), true), s.Look)
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
	p.hatch(c+far*dc, r+far*dr, dc == 0)
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

// hatch draws the ground around a cell, lying or upright.
func (p *painter) hatch(c, r int, lying bool) {
	look := figure.Look{Role: figure.GroundMark}
	if !lying {
		for i := -1; i <= 1; i++ {
			p.put(c, r+i, hatchGlyph, look)
		}
		return
	}
	wide := min(2, p.detail.apart-1)
	for i := -wide; i <= wide; i++ {
		p.put(c+i, r, hatchGlyph, look)
	}
}

// raking draws a support on sloping ground: its wheel, the line of the ground, and hatch beyond it.
func (p *painter) raking(at spot, s figure.Symbol) {
	wheel := at.by(s.Toward, 2)
	c, r := wheel.cell()
	p.put(c, r, pinGlyph, s.Look)
	along := s.Toward.Left()
	middle := spot{float64(c), float64(r)}.by(s.Toward, 1.6)
	p.slope(middle.by(along, 3.5), middle.by(along, -3.5), 1, false, s.Look)
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
}
