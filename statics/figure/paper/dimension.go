package paper

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// Sizes of dimensions on paper, in points.
const (
	dimensionOff   = 16.0 // from what is drawn to the first line
	dimensionLevel = 15.0 // from line to line below one another
	dimensionGap   = 8.0  // between the numbers of lines beside one another
	dimensionClear = 8.0  // from what is drawn to the numbers of the first line
	dimensionHead  = 6.0
	extensionOver  = 3.0 // how far an extension line runs past a dimension line
	extensionLong  = 9.0 // and before it
)

// dimensions draws the dimension lines below and beside all that has been drawn.
func (p *layout) dimensions() {
	p.hasShort = slices.ContainsFunc(p.scene.Dimensions, p.isShort)
	start := p.bounds
	y := start.y1 + dimensionOff
	wide := p.widestUpright()
	off, step := max(dimensionOff, wide/2+dimensionClear), wide+dimensionGap
	x := start.x1 + off
	if start.x1-p.x.length > -start.x0 {
		x, step = start.x0-off, -step
	}
	for _, d := range p.scene.Dimensions {
		if d.Vertical {
			from, to := p.y.at(d.From), p.y.at(d.To)
			p.dimension(d, local{Place{x + float64(d.Level)*step, p.y.length - from}, figure.Direction{X: 0, Y: 1}}, to-from)
			continue
		}
		from, to := p.x.at(d.From), p.x.at(d.To)
		p.dimension(d, local{Place{from, y + float64(d.Level)*dimensionLevel}, figure.Direction{X: 1, Y: 0}}, to-from)
	}
}

// widestUpright is the width of the widest number of a vertical dimension.
func (p *layout) widestUpright() float64 {
	wide := 0.0
	for _, d := range p.scene.Dimensions {
		if d.Vertical {
			wide = max(wide, lineWidth(typeset(p.scene, d.Text, figure.Look{Role: figure.DimensionMark}), typeSize))
		}
	}
	return wide
}

// isShort reports whether a dimension is too short for its heads.
func (p *layout) isShort(d figure.Dimension) bool {
	a := &p.x
	if d.Vertical {
		a = &p.y
	}
	return a.at(d.To)-a.at(d.From) <= 3*dimensionHead
}

// dimension draws one dimension line that begins at k and is that long: with full heads, or where one in the figure is too
// short for them all with strokes across their ends, for a drawing has one kind of end (ISO 129-1; from memory). The number stands in the line if there is room, else beside it.
func (p *layout) dimension(d figure.Dimension, k local, length float64) {
	look := figure.Look{Role: figure.DimensionMark}
	p.line(fineLayer, look, fineWeight, k.to(0, 0), k.to(length, 0))
	p.take(bar(k.to(0, 0), k.to(length, 0), symbolWeight))
	for _, end := range [2]float64{0, length} {
		p.line(fineLayer, look, fineWeight, k.to(end, -extensionOver), k.to(end, extensionLong))
		p.take(bar(k.to(end, -extensionOver), k.to(end, extensionLong), symbolWeight))
	}
	if !p.hasShort {
		p.dimensionHead(k.to(0, 0), k.along.Opposite())
		p.dimensionHead(k.to(length, 0), k.along)
	} else {
		p.line(fineLayer, look, symbolWeight, k.to(-2, -2), k.to(2, 2))
		p.line(fineLayer, look, symbolWeight, k.to(length-2, -2), k.to(length+2, 2))
	}
	text := typeset(p.scene, d.Text, look)
	if lineWidth(text, typeSize)+4 > length && !d.Vertical {
		text = typeset(p.scene, d.Short, look)
	}
	if due := (d.To - d.From) * p.scale(); math.Abs(length-due) > 1+0.04*due {
		for i := range text {
			text[i].Under = true
		}
		p.offScale = true
	}
	p.dimensionText(text, k, length, d.Vertical)
}

// dimensionText writes the number of a dimension: in a gap of the line, or, where that is short, at the nearest free place.
func (p *layout) dimensionText(text []Run, k local, length float64, vertical bool) {
	look := figure.Look{Role: figure.DimensionMark}
	wide, middle := lineWidth(text, typeSize), k.to(length/2, 0)
	room := length - 2*dimensionHead
	b := rect{middle.X - wide/2, middle.Y - typeSize/2, middle.X + wide/2, middle.Y + typeSize/2}
	if vertical && typeSize+4 < room || !vertical && wide+4 < room {
		p.blank(b.grown(2))
		p.write(text, b, look)
		return
	}
	p.ask(want{text: text, near: rectOf(k.to(0, 0), k.to(length, 0)), at: middle, look: look, rank: figure.RankDimension, side: figure.Below | figure.AtLeft | figure.AtRight})
}
