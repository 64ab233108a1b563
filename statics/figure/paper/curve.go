package paper

import (
	"math"
	"slices"

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
	p.outlines = append(p.outlines, outline)
}

// curveValues asks for the values of a curve, once all are drawn; index is its place among them.
func curveValues(p *layout, index int) {
	c := p.scene.Curves[index]
	for _, v := range c.Values {
		tip := ownTip(p, index, v.Ordinate)
		out := c.Side
		if v.Value < 0 {
			out = out.Opposite()
		}
		p.ask(want{
			text: typeset(p.scene, v.Text, c.Look), near: rectOf(tip), at: tip, look: c.Look, rank: figure.RankValue,
			side: figure.SideToward(out), outline: index + 1,
		})
	}
}

// ownTip is the place of a curve by which a value is written: its tip, or, at an end of the member where that lies on another
// member or within another curve, as at a corner, so near to it on the curve that it does so no more.
func ownTip(p *layout, index int, o figure.Ordinate) Place {
	const off, share = 3.0, 0.6
	c := p.scene.Curves[index]
	_, first := p.at(c, o)
	if o.Along != 0 && o.Along != 1 {
		return first
	}
	long := p.place(c.From).distance(p.place(c.To))
	tip := first
	for slid := off; slid <= share*long; slid += off {
		if !onOtherMember(p, c, tip) && !inOtherCurve(p, index, tip) {
			return tip
		}
		along := math.Abs(o.Along - slid/long)
		_, tip = p.at(c, figure.Ordinate{Along: along, Value: valueAt(c, along, o.Value)})
	}
	return first
}

// A shade is the area of a curve, or a part of it.
type shade struct {
	shape
	curve int
}

// inOtherCurve reports whether a place lies within the area of another curve.
func inOtherCurve(p *layout, index int, at Place) bool {
	const clear = 2.0
	here := square(at, clear)
	return slices.ContainsFunc(p.shades, func(k shade) bool { return k.curve != index && here.meets(k.shape) })
}

// onOtherMember reports whether a place lies on a member of which a curve is not.
func onOtherMember(p *layout, c figure.Curve, at Place) bool {
	here := figure.Drawn{From: at.position(), To: at.position()}
	return slices.ContainsFunc(p.scene.Strokes, func(k figure.Stroke) bool {
		return (k.From != c.From || k.To != c.To) && here.Gap(figure.Drawn{From: p.place(k.From).position(), To: p.place(k.To).position()}, 1) < 3
	})
}

// valueAt is the value of a curve at a place along its member between two ordinates, or else that one.
func valueAt(c figure.Curve, along, otherwise float64) float64 {
	for i, o := range c.Ordinates[1:] {
		before := c.Ordinates[i]
		if before.Along <= along && along <= o.Along && before.Along < o.Along {
			return before.Value + (o.Value-before.Value)*(along-before.Along)/(o.Along-before.Along)
		}
	}
	return otherwise
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
	p.shades = append(p.shades, shade{newShape(corners...), len(p.outlines)})
}
