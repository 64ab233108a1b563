package cells

import (
	"slices"

	"unpin/statics/figure"
)

// passes reports whether an arrow between two places, the first the nearer to its point, passes a member on which it does not act,
// or the arrow of another point, at which it would seem to act; or that one would seem to act at its point.
func (p *painter) passes(a figure.Arrow, near, far figure.Position) bool {
	at, own := p.spot(a.At).position(), hub(p, a, p.spot(a.At))
	point := figure.Drawn{From: own, To: own}
	arrow := figure.Drawn{Kind: figure.DrawnArrow, From: near, To: far, At: at}
	way := figure.Drawn{From: at, To: far}
	return slices.ContainsFunc(p.drawn, func(d figure.Drawn) bool {
		if d.Kind == figure.DrawnMember {
			return d.Gap(point, 2) >= ownMember && d.Gap(way, 2) == 0
		}
		return d.Kind == figure.DrawnArrow && elsewhere(d.At, at) && (comesBy(arrow, d) || comesBy(d, arrow))
	})
}

// elsewhere reports whether two arrows act at different points.
func elsewhere(a, b figure.Position) bool {
	return distance(a, b) >= ownMember
}

// comesBy reports whether on the way from an arrow to its point, along its own line or straight, another arrow stands.
func comesBy(a, other figure.Drawn) bool {
	near, far := a.From, a.To
	if distance(a.To, a.At) < distance(a.From, a.At) {
		near, far = far, near
	}
	return slices.ContainsFunc([]figure.Drawn{{From: near, To: a.At}, {From: near, To: levelWith(a)}, {From: far, To: a.At}}, func(way figure.Drawn) bool {
		return other.Gap(way, 2) == 0
	})
}

// levelWith is the place on an arrow's own line that is level with its point; a cell is two widths tall.
func levelWith(a figure.Drawn) figure.Position {
	x, y := a.To.X-a.From.X, 2*(a.To.Y-a.From.Y)
	long := x*x + y*y
	if long == 0 {
		return a.At
	}
	t := ((a.At.X-a.From.X)*x + 2*(a.At.Y-a.From.Y)*y) / long
	return figure.Position{X: a.From.X + t*(a.To.X-a.From.X), Y: a.From.Y + t*(a.To.Y-a.From.Y)}
}

// distance is that of two places, in cell widths.
func distance(a, b figure.Position) float64 {
	return figure.Drawn{From: a, To: a}.Gap(figure.Drawn{From: b, To: b}, 2)
}
