package paper

import (
	"math"

	"unpin/statics/figure"
)

// Sizes of curves on paper, in points.
const (
	curveDepth  = 38.0 // of the greatest value, at most
	curveLeast  = 20.0 // and at least
	curveShare  = 0.2  // of the frame's longer side
	curveHatch  = 6.0  // between the strokes perpendicular to the member
	curveWeight = 1.4
)

// at is where an ordinate stands.
func (p *layout) at(c figure.Curve, o figure.Ordinate) (base, tip Place) {
	base = p.place(c.From).between(p.place(c.To), o.Along)
	return base, base.by(c.Side, o.Value*p.curveDepth())
}

// curveDepth is the depth of the greatest value: less in a small frame, so that the curves of its members stay apart.
func (p *layout) curveDepth() float64 {
	return min(curveDepth, max(curveLeast, curveShare*max(p.x.length, p.y.length)))
}

// curve draws an internal force along a member: its area hatched perpendicular to the member, its outline, its values.
func (p *layout) curve(c figure.Curve) {
	a, b := p.place(c.From), p.place(c.To)
	outline := []Place{a}
	for i, o := range c.Ordinates {
		_, tip := p.at(c, o)
		outline = append(outline, tip)
		if i > 0 {
			p.curveArea(c, c.Ordinates[i-1], o)
		}
	}
	outline = append(outline, b)
	p.line(loadLayer, c.Look, curveWeight, outline...)
	for i := 1; i < len(outline); i++ {
		p.take(bar(outline[i-1], outline[i], curveWeight))
	}
	for _, v := range c.Values {
		_, tip := p.at(c, v.Ordinate)
		out := c.Side
		if v.Value < 0 {
			out = out.Opposite()
		}
		p.ask(want{text: typeset(p.scene, v.Text, c.Look), near: rectOf(tip), at: tip, look: c.Look, rank: figure.RankValue, side: figure.SideToward(out)})
	}
}

// curveArea shades and hatches the area between two neighbouring ordinates.
func (p *layout) curveArea(c figure.Curve, from, to figure.Ordinate) {
	b0, t0 := p.at(c, from)
	b1, t1 := p.at(c, to)
	if from.Value*to.Value < 0 {
		cross := b0.between(b1, from.Value/(from.Value-to.Value))
		p.curveShade(b0, t0, cross)
		p.curveShade(b1, t1, cross)
	} else {
		p.curveShade(b0, t0, t1, b1)
	}
	long := b0.distance(b1)
	start := math.Mod(p.place(c.From).distance(b0), curveHatch)
	for x := curveHatch - start; x < long; x += curveHatch {
		t := x / long
		p.draw(fineLayer, Mark{
			Path: []Place{b0.between(b1, t), t0.between(t1, t)}, Weight: fineWeight, Line: lineInk(figure.Look{Role: figure.DiagramHatch}), Fill: NoInk,
		})
	}
}

// curveShade shades an area and keeps names out of it.
func (p *layout) curveShade(corners ...Place) {
	p.draw(shadeLayer, Mark{Path: corners, Closed: true, Fill: leaf, Line: NoInk})
	p.take(newShape(corners...))
}
