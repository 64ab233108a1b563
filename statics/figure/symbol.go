package figure

// symbol draws something at a point and asks for its label.
func (p *painter) symbol(s Symbol) {
	at := p.spot(s.At)
	c, r := at.cell()
	was := p.used
	p.used = area{c, r, c, r}
	switch s.Kind {
	case PinSymbol:
		p.pin(at, s)
	case SlotSymbol, SleeveSymbol:
		p.slider(c, r, s)
	case PinnedSupport, FixedSupport, RollerSupport, GuideSupport:
		p.support(at, s)
	case TurnLeft, TurnRight:
		p.couple(c, r, s)
	case CentreSymbol:
		k := p.at(c, r)
		k.holder, k.char, k.look = mark, centreGlyph, s.Look
	}
	near := p.used
	p.used = p.used.with(was)
	if s.Text != "" {
		p.ask(request{text: s.Text, near: near, c: (near.c0 + near.c1) / 2, r: (near.r0 + near.r1) / 2, look: s.Look, rank: rankValue})
	}
}

// pin draws a pin on the joint, or beside it on the member that alone is hinged.
func (p *painter) pin(at spot, s Symbol) {
	if !s.Toward.isZero() {
		at = at.by(s.Toward, 2)
	}
	c, r := at.cell()
	p.put(c, r, pinGlyph, s.Look)
}

// slider draws a peg between the ends of its slot, or a collar on its bar.
func (p *painter) slider(c, r int, s Symbol) {
	ends := [2]rune{'(', ')'}
	middle := pinGlyph
	if s.Kind == SleeveSymbol {
		ends, middle = [2]rune{'[', ']'}, '='
	}
	p.put(c, r, middle, s.Look)
	if dc, _ := cellStep(s.Toward); dc == 0 && s.Kind == SlotSymbol {
		p.put(c, r-1, slotTop, s.Look)
		p.put(c, r+1, slotFoot, s.Look)
		return
	}
	p.put(c-1, r, ends[0], s.Look)
	p.put(c+1, r, ends[1], s.Look)
}

// couple draws a turning arrow on its point, or beside it if a symbol stands there.
func (p *painter) couple(c, r int, s Symbol) {
	glyph := turnLeft
	if s.Kind == TurnRight {
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
	p.put(c+dc, r+dr, glyph, Look{MemberLine, s.Emphasis})
}

// support draws what holds a joint. Toward points to the ground.
func (p *painter) support(at spot, s Symbol) {
	if !s.Toward.level() && !s.Toward.upright() {
		p.raking(at, s)
		return
	}
	c, r := at.cell()
	dc, dr := cellStep(s.Toward)
	far := 1
	switch s.Kind {
	case PinnedSupport:
		p.put(c+dc, r+dr, head(s.Toward.neg(), true), s.Look)
		far = 2
	case RollerSupport:
		p.put(c+dc, r+dr, pinGlyph, s.Look)
		far = 2
	case GuideSupport:
		p.plate(c, r, dc, s.Look)
		p.put(c+dc+abs(dr), r+dr+abs(dc), pinGlyph, s.Look)
		p.put(c+dc-abs(dr), r+dr-abs(dc), pinGlyph, s.Look)
		far = 2
	case FixedSupport:
		p.plate(c, r, dc, s.Look)
	}
	p.hatch(c+far*dc, r+far*dr, dc == 0)
}

// plate draws the heavy base on which a built-in member stands.
func (p *painter) plate(c, r, dc int, look Look) {
	if dc == 0 {
		wide := min(2, p.detail.apart-1)
		p.line(c-wide, r, c+wide, r, heavy, look)
		return
	}
	p.line(c, r-1, c, r+1, heavy, look)
}

// hatch draws the ground around a cell, lying or upright.
func (p *painter) hatch(c, r int, lying bool) {
	look := Look{Role: GroundMark}
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
func (p *painter) raking(at spot, s Symbol) {
	wheel := at.by(s.Toward, 2)
	c, r := wheel.cell()
	p.put(c, r, pinGlyph, s.Look)
	along := s.Toward.left()
	middle := spot{float64(c), float64(r)}.by(s.Toward, 1.6)
	p.slope(middle.by(along, 3.5), middle.by(along, -3.5), 1, false, s.Look)
	if s.Kind == GuideSupport {
		p.slope(at.by(along, 2.5), at.by(along, -2.5), 2, false, s.Look)
	}
	ground := Look{Role: GroundMark}
	for k := -3.0; k <= 3; k++ {
		c, r := middle.by(along, k).by(s.Toward, 1.6).cell()
		if p.at(c, r).holder == nothing {
			p.put(c, r, hatchGlyph, ground)
		}
	}
}

func abs(i int) int {
	if i < 0 {
		return -i
	}
	return i
}
