package cells

import (
	"unpin/statics/figure"
)

// symbol draws something at a point and asks for its label.
func (p *painter) symbol(s figure.Symbol) {
	at := p.spot(s.At)
	c, r := at.cell()
	was := p.used
	p.used = area{c, r, c, r}
	switch s.Kind {
	case figure.PinSymbol:
		p.pin(at, s)
	case figure.SlotSymbol, figure.SleeveSymbol:
		p.slider(c, r, s)
	case figure.PinnedSupport, figure.FixedSupport, figure.RollerSupport, figure.GuideSupport:
		p.support(at, s)
	case figure.TurnLeft, figure.TurnRight:
		p.couple(c, r, s)
	case figure.CentreSymbol:
		k := p.at(c, r)
		k.holder, k.char, k.look = mark, centreGlyph, s.Look
	}
	near := p.used
	p.used = p.used.with(was)
	if s.Text != "" {
		p.ask(request{text: s.Text, near: near, c: (near.c0 + near.c1) / 2, r: (near.r0 + near.r1) / 2, look: s.Look, rank: figure.RankValue, slope: s.Slope, along: s.Toward})
	}
}

// pin draws a pin on the joint, or beside it on the member that alone is hinged.
func (p *painter) pin(at spot, s figure.Symbol) {
	if !s.Toward.IsZero() {
		at = at.by(s.Toward, 2)
	}
	c, r := at.cell()
	p.put(c, r, pinGlyph, s.Look)
}

// slider draws a peg between the ends of its slot, or a collar on its bar.
func (p *painter) slider(c, r int, s figure.Symbol) {
	ends := [2]rune{'(', ')'}
	middle := pinGlyph
	if s.Kind == figure.SleeveSymbol {
		ends, middle = [2]rune{'[', ']'}, '='
	}
	p.put(c, r, middle, s.Look)
	if dc, _ := cellStep(s.Toward); dc == 0 && s.Kind == figure.SlotSymbol {
		p.put(c, r-1, slotTop, s.Look)
		p.put(c, r+1, slotFoot, s.Look)
		return
	}
	p.put(c-1, r, ends[0], s.Look)
	p.put(c+1, r, ends[1], s.Look)
}

// couple draws a turning arrow on its point, or beside it if a symbol stands there.
func (p *painter) couple(c, r int, s figure.Symbol) {
	glyph := turnLeft
	if s.Kind == figure.TurnRight {
		glyph = turnRight
	}
	if p.at(c, r).holder != mark {
		k := p.at(c, r)
		k.holder, k.char, k.look = mark, glyph, s.Look
		return
	}
	dc, dr := cellStep(s.Toward)
	for i := 1; i < 4; i++ {
		if p.at(c+i*dc, r+i*dr).holder == nothing {
			p.put(c+i*dc, r+i*dr, glyph, s.Look)
			return
		}
	}
	p.put(c+dc, r+dr, glyph, figure.Look{Role: figure.MemberLine, Emphasis: s.Emphasis})
}
