package paper

import (
	"unpin/statics/figure"
)

// The layers of a sheet, from the lowest.
const (
	shadeLayer = iota
	fineLayer
	loadLayer
	memberLayer
	forceLayer
	symbolLayer
	typeLayer
	layerCount
)

// A board is a sheet in the making: what is drawn on it, layer by layer, and what is taken by it. Its places are points from
// the frame's upper left corner.
type board struct {
	layers    [layerCount][]Mark
	bounds    rect    // of all that is drawn
	solid     []shape // what no label may stand on, nor an arrow that can move
	lettered  []rect  // the labels
	solidAt   near    // where the solid shapes are
	lettersAt near    // where the labels are
	drawn     []figure.Drawn
	misread   int // labels that stand nearer to another arrow than to their own, and arrows that meet something, for want of room
}

// note keeps where something was drawn, and gives its index.
func (p *board) note(d figure.Drawn) int {
	p.drawn = append(p.drawn, d)
	return len(p.drawn) - 1
}

// position is a place as those who check figures have it.
func (s Place) position() figure.Position { return figure.Position(s) }

// draw puts a mark on a layer.
func (p *board) draw(layer int, m Mark) {
	p.layers[layer] = append(p.layers[layer], m)
	b := rectOf(m.Path...).grown(max(m.Radius, 0) + m.Weight/2)
	p.bounds = p.bounds.with(b)
}

// line draws a line in the look's ink.
func (p *board) line(layer int, l figure.Look, weight float64, path ...Place) {
	p.draw(layer, Mark{Path: path, Weight: weight, Line: lineInk(l), Fill: NoInk})
}

// ring draws a circle that hides what lies beneath.
func (p *board) ring(at Place, radius float64, l figure.Look) {
	p.draw(symbolLayer, Mark{Path: []Place{at}, Radius: radius, Weight: symbolWeight, Line: lineInk(l), Fill: white})
}

// plate draws a closed outline that hides what lies beneath.
func (p *board) plate(l figure.Look, weight float64, path []Place) {
	p.draw(symbolLayer, Mark{Path: path, Closed: true, Weight: weight, Line: lineInk(l), Fill: white})
}

// blank hides the lines beneath a text.
func (p *board) blank(b rect) {
	p.draw(fineLayer, Mark{Path: b.corners(), Closed: true, Fill: white, Line: NoInk})
}

// write sets a text into a rect and keeps everything else out of it.
func (p *board) write(text []Run, b rect, l figure.Look) {
	p.layers[typeLayer] = append(p.layers[typeLayer], Mark{
		Path: []Place{{b.middle().X, b.y0 + capHeight*typeSize}}, Text: text, Size: typeSize, Line: textInk(l), Fill: NoInk,
	})
	p.bounds = p.bounds.with(b)
	p.take(newShape(b.grown(labelRim).corners()...))
	p.lettered = append(p.lettered, b)
	p.lettersAt.add(b)
}

// take keeps labels, and arrows that can move, out of a shape.
func (p *board) take(s shape) {
	p.solid = append(p.solid, s.withSides())
	p.solidAt.add(s.rect)
}

// isFree reports whether a shape meets nothing but what holds the point itself, as the members there.
func (p *board) isFree(s shape, at Place) bool {
	return !p.solidAt.any(s.rect, func(i int) bool { return p.solid[i].meets(s) && !p.solid[i].holds(at) })
}

// isClear reports whether a label may stand in a rect.
func (p *board) isClear(b rect) bool {
	b = b.grown(labelRim)
	return !p.solidAt.any(b, func(i int) bool { return p.solid[i].meetsRect(b) })
}

// growth is what it costs that a label widens what the figure takes up.
func (p *board) growth(b rect) float64 {
	all := p.bounds.with(b)
	return growing * (all.width() - p.bounds.width() + all.height() - p.bounds.height())
}
