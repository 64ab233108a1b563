package cells

import (
	"math"

	"unpin/statics/figure"
)

// ordinate is where an ordinate of a curve begins and ends.
func (p *painter) ordinate(c figure.Curve, o figure.Ordinate) (base, tip spot) {
	base = p.spot(c.From).between(p.spot(c.To), o.Along)
	return base, base.by(c.Side, 2*p.detail.curve*o.Value)
}

// curve draws an internal force along a member in dots: strokes perpendicular to it, one to a cell, and the outline.
func (p *painter) curve(c figure.Curve) {
	a, b := p.spot(c.From), p.spot(c.To)
	n := max(1, math.Round(max(math.Abs(b.c-a.c), math.Abs(b.r-a.r))))
	for i := range int(n) {
		t := (float64(i) + 0.5) / n
		base, tip := p.ordinate(c, figure.Ordinate{Along: t, Value: curveAt(c, t)})
		p.slope(base, tip, 1, false, figure.Look{Role: figure.DiagramHatch, Emphasis: c.Emphasis})
	}
	for _, o := range c.Ordinates {
		_, tip := p.ordinate(c, o)
		p.slope(a, tip, 1, false, c.Look)
		a = tip
	}
	p.slope(a, b, 1, false, c.Look)
	for _, v := range c.Values {
		p.curveValue(c, v)
	}
}

// curveValue asks for the label of a value.
func (p *painter) curveValue(c figure.Curve, v figure.CurveValue) {
	_, tip := p.ordinate(c, v.Ordinate)
	out := c.Side
	if v.Value < 0 {
		out = out.Opposite()
	}
	at, r := tip.cell()
	p.ask(request{text: v.Text, near: area{at, r, at, r}, c: at, r: r, look: c.Look, rank: figure.RankValue, side: figure.SideToward(out)})
}

// curveAt is the value of a curve at a share of its member, after a step.
func curveAt(c figure.Curve, t float64) float64 {
	for i := len(c.Ordinates) - 1; i > 0; i-- {
		a, b := c.Ordinates[i-1], c.Ordinates[i]
		if a.Along <= t && a.Along < b.Along {
			return a.Value + (b.Value-a.Value)*(t-a.Along)/(b.Along-a.Along)
		}
	}
	return 0
}
