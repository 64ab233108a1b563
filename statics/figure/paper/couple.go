package paper

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// couple draws a turning arrow around its point, open on the side away from Toward.
func (p *layout) couple(s figure.Symbol) {
	const reach, step = 2.1, 0.15
	at, radius := p.place(s.At), 13.0
	if p.isHeld(s.At) {
		radius = 19
	}
	middle := math.Atan2(s.Toward.Y, s.Toward.X)
	turn := 1.0
	if s.Kind == figure.TurnRight {
		turn = -1
	}
	var path []Place
	for t := -reach; t < reach-0.4; t += step {
		path = append(path, at.by(figure.Direction{X: math.Cos(middle + turn*t), Y: math.Sin(middle + turn*t)}, radius))
	}
	weight := forceWeight
	if s.Emphasis == figure.Lit {
		weight += 0.7
		p.draw(shadeLayer, Mark{Path: path, Weight: 9, Line: yellow, Fill: NoInk})
	}
	p.draw(forceLayer, Mark{Path: path, Weight: weight, Line: lineInk(s.Look), Fill: NoInk, Dashed: s.Role == figure.UnknownForce})
	end := at.by(figure.Direction{X: math.Cos(middle + turn*reach), Y: math.Sin(middle + turn*reach)}, radius)
	p.head(end, path[len(path)-1].toward(end), 8, s.Look)
	p.take(bar(path[len(path)-2], end, arrowRoom))
	for i := 2; i < len(path); i += 2 {
		p.take(bar(path[i-2], path[i], 5))
	}
	p.ask(want{
		text: typeset(p.scene, s.Text, s.Look), near: rectOf(path...), at: at.by(s.Toward, radius), look: s.Look, rank: figure.RankValue,
		side: figure.SideToward(s.Toward),
	})
}

// isHeld reports whether a slot or sleeve stands at a point.
func (p *layout) isHeld(at figure.Position) bool {
	return slices.ContainsFunc(p.scene.Symbols, func(s figure.Symbol) bool {
		return s.At == at && (s.Kind == figure.SlotSymbol || s.Kind == figure.SleeveSymbol)
	})
}
