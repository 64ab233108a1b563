package paper

import (
	"math"

	"unpin/statics/figure"
)

// straightEnough is the sine of the angle by which a straight line of members may seem bent.
const straightEnough = 0.03

// bends reports whether a straight line of members, as a ladder with a pin on its way, is bent by the axes of a layout.
func bends(p *layout) bool {
	ends := map[figure.Position][]figure.Position{} // of the members at each joint, the other ends
	for _, k := range p.scene.Strokes {
		ends[k.From] = append(ends[k.From], k.To)
		ends[k.To] = append(ends[k.To], k.From)
	}
	for at, all := range ends {
		for i, a := range all {
			for _, b := range all[:i] {
				if opposite(Place(a), Place(at), Place(b)) < 1e-6 && opposite(p.plain(a), p.plain(at), p.plain(b)) > straightEnough {
					return true
				}
			}
		}
	}
	return false
}

// opposite is how far a way from a over at to b is from straight on, as the sine of the angle; 1 where it turns back.
func opposite(a, at, b Place) float64 {
	x0, y0, x1, y1 := at.X-a.X, at.Y-a.Y, b.X-at.X, b.Y-at.Y
	long := math.Hypot(x0, y0) * math.Hypot(x1, y1)
	if long == 0 || x0*x1+y0*y1 <= 0 {
		return 1
	}
	return math.Abs(x0*y1-y0*x1) / long
}
