package paper

import (
	"math"

	"unpin/statics/figure"
)

// symbolWheel is the radius of a wheel of which none is given.
const symbolWheel = 8.0

// pinWheel is the largest radius of a wheel on a pin that is drawn alone.
const pinWheel = 20.0

// wheel draws a pulley behind the members, and the rope as far as it lies on it.
func (p *layout) wheel(w figure.Wheel) {
	const corners, steps = 36, 12
	rim := func(out figure.Direction) Place {
		if w.Radius == 0 {
			return p.place(w.At).by(out, symbolWheel)
		}
		return p.onWheel(w.At, w.Rim(out))
	}
	var path, lap []Place
	for _, out := range figure.Circle(corners) {
		path = append(path, rim(out))
	}
	p.draw(loadLayer, Mark{Path: path, Closed: true, Weight: symbolWeight, Line: lineInk(w.Look), Fill: NoInk})
	p.take(newShape(path...))
	if w.Radius == 0 {
		return
	}
	for _, out := range w.Lap(steps) {
		lap = append(lap, rim(out))
	}
	p.line(forceLayer, w.Rope, forceWeight, lap...)
}

// wheelScale is the largest scale at which no wheel of a scene reaches further on any side than the axes put its rim.
func (p *layout) wheelScale() float64 {
	least := math.Inf(1)
	for _, w := range p.scene.Wheels {
		for _, out := range figure.Circle(4) {
			if w.Radius > 0 {
				least = min(least, p.plain(w.At).distance(p.plain(w.Rim(out)))/w.Radius)
			}
		}
	}
	return least
}

// onWheel is where a point near the middle of a wheel lies: to the scale of wheels, which stay round where the axes hold
// joints apart, so that a rope leaves its wheel along a tangent.
func (p *layout) onWheel(middle, at figure.Position) Place {
	m := p.place(middle)
	return Place{m.X + p.wheels*(at.X-middle.X), m.Y - p.wheels*(at.Y-middle.Y)}
}
