package cells

import (
	"slices"

	"unpin/statics/figure"
)

// support draws what holds a joint, unless its ground would lie over a member that runs on, or over a distributed load. Toward points to
// the ground.
func (p *painter) support(at spot, s figure.Symbol) {
	ground := figure.Drawn{Kind: figure.DrawnSupport, At: at.position()}
	c, r := at.cell()
	dc, dr := cellStep(s.Toward)
	if !s.Aside.IsZero() {
		c, r = lugEnd(c, r, s)
		at = spot{float64(c), float64(r)}
	}
	raking := !s.Toward.Level() && !s.Toward.Upright()
	far := 2
	if s.Kind == figure.FixedSupport {
		far = 1
	}
	if raking {
		from, to := rakingGround(at, s)
		ground.From, ground.To = from.position(), to.position()
	} else {
		ground.From, ground.To = p.groundAt(c+far*dc, r+far*dr, dc == 0)
	}
	if p.overMember(ground) || overLoad(p.drawn, ground) {
		p.lost = append(p.lost, "a support")
		return
	}
	p.note(ground)
	if !s.Aside.IsZero() {
		c0, r0 := spot{ground.At.X, ground.At.Y}.cell()
		p.line(c0, r0, c, r, heavy, s.Look)
	}
	if raking {
		p.raking(at, s)
		return
	}
	switch s.Kind {
	case figure.PinnedSupport:
		p.triangle(c+dc, r+dr, dc, dr, s.Look)
	case figure.RollerSupport:
		p.put(c+dc, r+dr, pinGlyph, s.Look)
	case figure.GuideSupport:
		p.plate(c, r, dc, s.Look)
		p.put(c+dc+abs(dr), r+dr+abs(dc), pinGlyph, s.Look)
		p.put(c+dc-abs(dr), r+dr-abs(dc), pinGlyph, s.Look)
	case figure.FixedSupport:
		p.plate(c, r, dc, s.Look)
	}
	p.hatch(c+far*dc, r+far*dr, dc == 0)
}

// Of a member that ends at a support so much lies at its joint; from the rest, and from members that run on, the ground keeps
// clear, both in cell widths.
const (
	jointPart   = 1.0
	groundClear = 0.7
)

// overMember reports whether the ground of a support would lie over a member.
func (p *painter) overMember(ground figure.Drawn) bool {
	joint := figure.Drawn{From: ground.At, To: ground.At}
	return slices.ContainsFunc(p.drawn, func(d figure.Drawn) bool {
		if d.Kind != figure.DrawnMember || isFar(d, ground) {
			return false
		}
		a, b := figure.Drawn{From: d.From, To: d.From}, figure.Drawn{From: d.To, To: d.To}
		long := a.Gap(b, 2)
		if long > jointPart {
			t := jointPart / long
			dx, dy := (d.To.X-d.From.X)*t, (d.To.Y-d.From.Y)*t
			switch {
			case a.Gap(joint, 2) < 1.5:
				d.From.X, d.From.Y = d.From.X+dx, d.From.Y+dy
			case b.Gap(joint, 2) < 1.5:
				d.To.X, d.To.Y = d.To.X-dx, d.To.Y-dy
			}
		}
		return d.Gap(ground, 2) < groundClear
	})
}

// overLoad reports whether the ground of a support would lie over a distributed load.
func overLoad(drawn []figure.Drawn, ground figure.Drawn) bool {
	return slices.ContainsFunc(drawn, func(d figure.Drawn) bool {
		return d.Kind == figure.DrawnDistributed && d.Over(ground, 2, groundClear)
	})
}

// isFar reports whether the blocks that two strokes fill are so far apart that neither can be over the other.
func isFar(d, ground figure.Drawn) bool {
	const far = groundClear + 1e-6
	x := max(min(d.From.X, d.To.X)-max(ground.From.X, ground.To.X), min(ground.From.X, ground.To.X)-max(d.From.X, d.To.X))
	y := max(min(d.From.Y, d.To.Y)-max(ground.From.Y, ground.To.Y), min(ground.From.Y, ground.To.Y)-max(d.From.Y, d.To.Y))
	return x > far || 2*y > far
}

// lugEnd is the end of the short bar on which a support stands beside its joint.
func lugEnd(c, r int, s figure.Symbol) (int, int) {
	dc, dr := cellStep(s.Aside)
	return c + 5*dc, r + 3*dr
}

// groundAt is from where to where the ground around a cell reaches, lying or upright.
func (p *painter) groundAt(c, r int, lying bool) (from, to figure.Position) {
	if !lying {
		return positionOf(c, r-1), positionOf(c, r+1)
	}
	wide := min(2, p.detail.apart-1)
	return positionOf(c-wide, r), positionOf(c+wide, r)
}

// rakingGround is from where to where the line of sloping ground reaches.
func rakingGround(at spot, s figure.Symbol) (from, to spot) {
	along, middle := s.Toward.Left(), rakingMiddle(at, s)
	return middle.by(along, 3.5), middle.by(along, -3.5)
}

// rakingMiddle is the middle of sloping ground, beyond the wheel.
func rakingMiddle(at spot, s figure.Symbol) spot {
	c, r := at.by(s.Toward, 2).cell()
	return spot{float64(c), float64(r)}.by(s.Toward, 1.6)
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
	from, to := p.groundAt(c, r, lying)
	for x := from.X; x <= to.X; x++ {
		for y := from.Y; y <= to.Y; y++ {
			p.put(int(x), int(y), hatchGlyph, figure.Look{Role: figure.GroundMark})
		}
	}
}

// raking draws a support on sloping ground: its wheel, the line of the ground, and hatch beyond it.
func (p *painter) raking(at spot, s figure.Symbol) {
	c, r := at.by(s.Toward, 2).cell()
	p.put(c, r, pinGlyph, s.Look)
	along, middle := s.Toward.Left(), rakingMiddle(at, s)
	from, to := rakingGround(at, s)
	p.slope(from, to, 1, false, s.Look)
	if s.Kind == figure.GuideSupport {
		p.slope(at.by(along, 2.5), at.by(along, -2.5), 2, false, s.Look)
	}
	ground := figure.Look{Role: figure.GroundMark}
	for k := -3.0; k <= 3; k++ {
		c, r := middle.by(along, k).by(s.Toward, 1.6).cell()
		if p.open(c, r) {
			p.put(c, r, hatchGlyph, ground)
		}
	}
}
