package figure

// A local turns places near a point into places on paper: along is toward the ground or along a slot, across to its left.
type local struct {
	at    Place
	along Vector
}

func (k local) to(along, across float64) Place {
	return k.at.by(k.along, along).by(k.along.left(), across)
}

// panel is a rectangle along a local line.
func (k local) panel(from, until, half float64) []Place {
	return []Place{k.to(from, half), k.to(until, half), k.to(until, -half), k.to(from, -half)}
}

// Sizes of symbols on paper, in points.
const (
	pinRadius   = 3.1
	wheelRadius = 4.6
	plateWeight = 2.2
	groundHalf  = 13.0 // half the line of the ground
	hatchStep   = 4.0
	hatchDepth  = 5.0
)

// symbol draws something at a point and asks for its label.
func (p *paper) symbol(s Symbol) {
	k := local{p.place(s.At), s.Toward}
	switch s.Kind {
	case PinSymbol:
		p.pin(k, s)
		return
	case TurnLeft, TurnRight:
		p.couple(s)
		return
	case CentreSymbol:
		p.centre(k, s)
		return
	}
	var body shape
	switch s.Kind {
	case SlotSymbol:
		body = p.slot(k, s.Look)
	case SleeveSymbol:
		body = p.sleeve(k, s.Look)
	default:
		body = p.support(k, s)
	}
	p.take(body)
	if s.Text != "" {
		p.ask(want{text: typeset(p.scene, s.Text, s.Look), near: body.rect, at: body.rect.middle(), look: s.Look, rank: rankNote})
	}
}

// pin draws a pin on the joint, or beside it on the member that alone is hinged.
func (p *paper) pin(k local, s Symbol) {
	at := k.at
	if !s.Toward.isZero() {
		at = k.to(memberWeight/2+pinRadius, 0)
	}
	p.ring(at, pinRadius, s.Look)
	p.take(square(at, pinRadius+0.6))
}

// centre draws a centre of moments: a ring with its middle filled.
func (p *paper) centre(k local, s Symbol) {
	const inner, outer = 2.0, 5.5
	p.draw(symbolLayer, Mark{Path: []Place{k.at}, Radius: outer, Weight: symbolWeight, Line: lineInk(s.Look), Fill: NoInk})
	p.draw(symbolLayer, Mark{Path: []Place{k.at}, Radius: inner, Line: NoInk, Fill: lineInk(s.Look)})
	p.take(square(k.at, outer))
	if s.Text != "" {
		p.ask(want{text: typeset(p.scene, s.Text, s.Look), near: rectOf(k.at).grown(outer), at: k.at, look: s.Look, rank: rankNote})
	}
}

// ring draws a circle that hides what lies beneath.
func (p *paper) ring(at Place, radius float64, l Look) {
	p.draw(symbolLayer, Mark{Path: []Place{at}, Radius: radius, Weight: symbolWeight, Line: lineInk(l), Fill: white})
}

// square is the shape around a circle.
func square(at Place, radius float64) shape { return newShape(rectOf(at).grown(radius).corners()...) }

// plate draws a closed outline that hides what lies beneath.
func (p *paper) plate(l Look, weight float64, path []Place) {
	p.draw(symbolLayer, Mark{Path: path, Closed: true, Weight: weight, Line: lineInk(l), Fill: white})
}

// slot draws a peg in a slot.
func (p *paper) slot(k local, l Look) shape {
	const half, wide = 12.0, 5.0
	p.plate(l, symbolWeight, k.panel(-half, half, wide))
	p.ring(k.at, pinRadius, l)
	return newShape(k.panel(-half-1, half+1, wide+1)...)
}

// sleeve draws a collar on its bar.
func (p *paper) sleeve(k local, l Look) shape {
	const half, wide = 10.0, 6.0
	p.plate(l, symbolWeight, k.panel(-half, half, wide))
	p.line(symbolLayer, l, fineWeight, k.to(-half, wide/2), k.to(half, wide/2))
	p.line(symbolLayer, l, fineWeight, k.to(-half, -wide/2), k.to(half, -wide/2))
	return newShape(k.panel(-half-1, half+1, wide+1)...)
}

// support draws what holds a joint; along points to the ground.
func (p *paper) support(k local, s Symbol) shape {
	far := 0.0
	switch s.Kind {
	case PinnedSupport:
		far = 13
		p.plate(s.Look, symbolWeight, []Place{k.at, k.to(far, 8), k.to(far, -8)})
		p.ring(k.at, pinRadius, s.Look)
	case RollerSupport:
		far = memberWeight/2 + 2*wheelRadius
		p.ring(k.to(memberWeight/2+wheelRadius, 0), wheelRadius, s.Look)
	case GuideSupport:
		const wheel = 3.0
		p.line(symbolLayer, s.Look, plateWeight, k.to(0, 10), k.to(0, -10))
		far = memberWeight/2 + 2*wheel
		p.ring(k.to(memberWeight/2+wheel, 6), wheel, s.Look)
		p.ring(k.to(memberWeight/2+wheel, -6), wheel, s.Look)
	}
	p.ground(k, far)
	return newShape(k.panel(-1, far+hatchDepth, groundHalf)...)
}

// ground draws the line of the ground and the hatch beyond it.
func (p *paper) ground(k local, far float64) {
	look := Look{Role: GroundMark}
	p.line(symbolLayer, look, groundWeight, k.to(far, groundHalf), k.to(far, -groundHalf))
	for v := -groundHalf + hatchStep; v <= groundHalf+0.1; v += hatchStep {
		p.line(fineLayer, look, fineWeight, k.to(far, v), k.to(far+hatchDepth, v-hatchStep))
	}
}
