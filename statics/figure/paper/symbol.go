package paper

import (
	"unpin/statics/figure"
)

// Sizes of symbols on paper, in points.
const (
	pinRadius   = 3.1
	wheelRadius = 4.6
	plateWeight = 2.2
	groundHalf  = 13.0 // half the line of the ground
	rollerHalf  = 9.0  // of a roller, beside which a member may slope down
	hatchStep   = 4.0
	hatchDepth  = 5.0
)

// symbol draws something at a point and asks for its label.
func (p *layout) symbol(s figure.Symbol) {
	k := local{p.place(s.At), s.Toward}
	switch s.Kind {
	case figure.PinSymbol:
		p.pin(k, s)
		return
	case figure.TurnLeft, figure.TurnRight:
		p.couple(s)
		return
	case figure.CentreSymbol:
		p.centre(k, s)
		return
	}
	if !s.Aside.IsZero() {
		k.at = p.lug(k.at, s)
	}
	var body shape
	switch s.Kind {
	case figure.SlotSymbol:
		body = p.slot(k, s.Look)
	case figure.SleeveSymbol:
		body = p.sleeve(k, s.Look)
	default:
		body = p.support(k, s)
	}
	p.take(body)
	if s.Text != "" {
		p.ask(want{text: typeset(p.scene, s.Text, s.Look), near: body.rect, at: body.rect.middle(), look: s.Look, rank: figure.RankNote})
		p.askSlope(k.at.by(s.Toward, groundHalf), s.Toward, s.Slope, s.Text, s.Look)
	}
}

// lug draws the short bar on which a support stands beside its joint, and gives its end.
func (p *layout) lug(at Place, s figure.Symbol) Place {
	end := at.by(s.Aside, groundHalf+6)
	p.line(memberLayer, figure.Look{Role: figure.MemberLine}, memberWeight, at, end)
	p.take(bar(at, end, memberWeight+1))
	p.ring(end, memberWeight/2, figure.Look{Role: figure.MemberLine})
	return end
}

// pin draws a pin on the joint, or beside it on the member that alone is hinged.
func (p *layout) pin(k local, s figure.Symbol) {
	at := k.at
	if !s.Toward.IsZero() {
		at = k.to(memberWeight/2+pinRadius, 0)
	}
	p.ring(at, pinRadius, s.Look)
	p.take(square(at, pinRadius+0.6))
}

// centre draws a centre of moments: a ring with its middle filled.
func (p *layout) centre(k local, s figure.Symbol) {
	const inner, outer = 2.0, 5.5
	p.draw(symbolLayer, Mark{Path: []Place{k.at}, Radius: outer, Weight: symbolWeight, Line: lineInk(s.Look), Fill: NoInk})
	p.draw(symbolLayer, Mark{Path: []Place{k.at}, Radius: inner, Line: NoInk, Fill: lineInk(s.Look)})
	p.take(square(k.at, outer))
	if s.Text != "" {
		p.ask(want{text: typeset(p.scene, s.Text, s.Look), near: rectOf(k.at).grown(outer), at: k.at, look: s.Look, rank: figure.RankNote})
	}
}

// square is the shape around a circle.
func square(at Place, radius float64) shape { return newShape(rectOf(at).grown(radius).corners()...) }

// slot draws a peg in a slot.
func (p *board) slot(k local, l figure.Look) shape {
	const half, wide = 12.0, 5.0
	p.plate(l, symbolWeight, k.panel(-half, half, wide))
	p.ring(k.at, pinRadius, l)
	return newShape(k.panel(-half-1, half+1, wide+1)...)
}

// sleeve draws a collar on its bar.
func (p *board) sleeve(k local, l figure.Look) shape {
	const half, wide = 10.0, 6.0
	p.plate(l, symbolWeight, k.panel(-half, half, wide))
	p.line(symbolLayer, l, fineWeight, k.to(-half, wide/2), k.to(half, wide/2))
	p.line(symbolLayer, l, fineWeight, k.to(-half, -wide/2), k.to(half, -wide/2))
	return newShape(k.panel(-half-1, half+1, wide+1)...)
}

// jointName is the name that stands at a point, if one does.
func (p *layout) jointName(at figure.Position) string {
	for _, n := range p.scene.Notes {
		if n.At == at && n.Role == figure.NameMark {
			return n.Text
		}
	}
	return ""
}
