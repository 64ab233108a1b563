package paper

import (
	"unpin/statics/figure"
)

// support draws what holds a joint; along points to the ground.
func (p *layout) support(k local, s figure.Symbol) shape {
	far, half := 0.0, groundHalf
	slim := half // half of what it takes up at the joint
	switch s.Kind {
	case figure.PinnedSupport:
		far, slim = 13, pinRadius+1
		p.plate(s.Look, symbolWeight, []Place{k.at, k.to(far, 8), k.to(far, -8)})
		p.ring(k.at, pinRadius, s.Look)
	case figure.RollerSupport:
		half, slim = rollerHalf, wheelRadius+0.5
		far = memberWeight/2 + 2*wheelRadius
		p.ring(k.to(memberWeight/2+wheelRadius, 0), wheelRadius, s.Look)
	case figure.GuideSupport:
		const wheel = 3.0
		p.line(symbolLayer, s.Look, plateWeight, k.to(0, 10), k.to(0, -10))
		far = memberWeight/2 + 2*wheel
		p.ring(k.to(memberWeight/2+wheel, 6), wheel, s.Look)
		p.ring(k.to(memberWeight/2+wheel, -6), wheel, s.Look)
	}
	p.ground(k, far, half)
	p.note(figure.Drawn{
		Kind: figure.DrawnSupport, From: k.to(far, half).position(), To: k.to(far, -half).position(), At: p.place(s.At).position(), Text: "at " + p.jointName(s.At),
	})
	return newShape(k.to(-1, slim), k.to(far, half), k.to(far+hatchDepth, half), k.to(far+hatchDepth, -half), k.to(far, -half), k.to(-1, -slim))
}

// ground draws the line of the ground, half so long to each side, and the hatch beyond it.
func (p *board) ground(k local, far, half float64) {
	look := figure.Look{Role: figure.GroundMark}
	p.line(symbolLayer, look, groundWeight, k.to(far, half), k.to(far, -half))
	for v := -half + hatchStep; v <= half+0.1; v += hatchStep {
		p.line(fineLayer, look, fineWeight, k.to(far, v), k.to(far+hatchDepth, v-hatchStep))
	}
}
