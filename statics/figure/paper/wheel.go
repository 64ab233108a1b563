package paper

import "unpin/statics/figure"

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
		return p.place(w.Rim(out))
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
