package paper

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// A want is a label that wants a place near what it belongs to.
type want struct {
	text []Run
	near rect  // what it belongs to
	at   Place // where a line from the label to that ends
	look figure.Look
	rank int
	side figure.Sides // where it may best stand; 0 is anywhere
}

// ask takes a want, unless it has nothing to say.
func (p *layout) ask(w want) {
	if len(w.text) > 0 {
		p.wants = append(p.wants, w)
	}
}

// Places of labels on paper: in points, and what departing from the best costs in points of distance.
const (
	labelTall   = typeSize * (capHeight + descent)
	labelRim    = 1.2  // kept free around a label
	leaderFrom  = 13.0 // from which distance on a line leads to what a label belongs to
	wrongSide   = 9.0
	offCorner   = 2.0
	otherNearer = 9.0
	onLine      = 6.0
	growing     = 0.08 // for each point by which the sheet grows
)

// gaps are the distances at which a place for a label is sought, in order.
var gaps = []float64{2.2, 5, 9, 13, 18, 25, 34, 45, 60, 80, 110, 150}

// label gives every label its place, in order of rank: dimensions and values first, names last.
func (p *layout) label() {
	slices.SortStableFunc(p.wants, func(a, b want) int { return a.rank - b.rank })
	for i, w := range p.wants {
		b := p.settle(w, i)
		if from, to, needed := w.leader(b); needed {
			p.draw(fineLayer, Mark{Path: []Place{from, to}, Weight: fineWeight, Line: grey, Fill: NoInk})
		}
		p.write(w.text, b, w.look)
	}
	p.wants = nil
}

// settle finds the cheapest free place for a label. If there is none nearby, it is beside all that is drawn.
func (p *layout) settle(w want, index int) rect {
	wide := lineWidth(w.text, typeSize)
	best, least := rect{}, math.Inf(1)
	for _, gap := range gaps {
		if gap >= least {
			break
		}
		for _, c := range w.candidates(wide, gap) {
			cost := gap + c.cost + p.growth(c.rect)
			if cost >= least || !p.isClear(c.rect) {
				continue
			}
			if cost += p.mistakable(w, index, c.rect) + p.crossed(w, c.rect) + p.across(c.rect); cost < least {
				best, least = c.rect, cost
			}
		}
	}
	if math.IsInf(least, 1) {
		y := w.near.middle().Y - labelTall/2
		return rect{p.bounds.x1 + gaps[0], y, p.bounds.x1 + gaps[0] + wide, y + labelTall}
	}
	return best
}

// A candidate is a place for a label and what it costs beyond its distance.
type candidate struct {
	rect rect
	cost float64
}

// candidates are the places around what a label belongs to, at one distance.
func (w want) candidates(wide, gap float64) []candidate {
	list := make([]candidate, 0, 20)
	n := w.near
	add := func(x, y float64, side figure.Sides, cost float64) {
		if w.side != 0 && w.side&side == 0 {
			cost += wrongSide
		}
		list = append(list, candidate{rect{x, y, x + wide, y + labelTall}, cost})
	}
	slant, corner := gap*0.7, offCorner
	if w.rank == figure.RankName {
		corner = -offCorner
	}
	right, left, top, foot := n.x1+slant, n.x0-slant-wide, n.y0-slant-labelTall, n.y1+slant
	add(right, top, figure.AtRight|figure.Above, corner)
	add(left, top, figure.AtLeft|figure.Above, corner+0.2)
	add(right, foot, figure.AtRight|figure.Below, corner+0.4)
	add(left, foot, figure.AtLeft|figure.Below, corner+0.6)
	mid := n.middle()
	for i, slide := range [5]float64{0, -0.3, 0.3, -0.6, 0.6} {
		cost := float64(i) * 0.8
		x, y := mid.X-wide/2+slide*wide*0.8, mid.Y-labelTall/2+slide*(labelTall+n.height())
		add(n.x1+gap, y, figure.AtRight, cost)
		add(n.x0-gap-wide, y, figure.AtLeft, cost+0.2)
		add(x, n.y0-gap-labelTall, figure.Above, cost)
		add(x, n.y1+gap, figure.Below, cost+0.4)
	}
	return list
}

// growth is what it costs that a label widens what the figure takes up.
func (p *layout) growth(b rect) float64 {
	all := p.bounds.with(b)
	return growing * (all.width() - p.bounds.width() + all.height() - p.bounds.height())
}

// isClear reports whether a label may stand in a rect.
func (p *layout) isClear(b rect) bool {
	b = b.grown(labelRim)
	for i := range p.solid {
		if p.solid[i].meetsRect(b) {
			return false
		}
	}
	return true
}

// mistakable is what it costs that a label lies as near to something else that has a label, or nearer.
func (p *layout) mistakable(w want, index int, b rect) float64 {
	own, cost := w.near.gap(b), 0.0
	for i, other := range p.wants {
		if i == index || (other.rank == figure.RankName) != (w.rank == figure.RankName) || other.near == w.near {
			continue
		}
		if d := other.near.gap(b); d < own {
			cost += otherNearer
		} else if d < own+2 {
			cost += 1
		}
	}
	return cost
}

// leader is the line from a label to what it belongs to, if that is not near.
func (w want) leader(b rect) (from, to Place, needed bool) {
	from = Place{min(max(w.at.X, b.x0), b.x1), min(max(w.at.Y, b.y0), b.y1)}
	const short = 3 // of the thing itself
	return from, w.at.by(w.at.toward(from), short), b.gap(w.near) >= leaderFrom
}

// crossed is what it costs that the line from a label would cross others.
func (p *layout) crossed(w want, b rect) float64 {
	from, to, needed := w.leader(b)
	if !needed {
		return 0
	}
	cost, line := 0.0, bar(from, to, fineWeight).withSides()
	for _, t := range p.lettered {
		if line.meetsRect(t) {
			cost += wrongSide
		}
	}
	return cost
}

// across is what it costs that a label stands on fine lines.
func (p *layout) across(b rect) float64 {
	cost := 0.0
	for i := range p.crossing {
		if p.crossing[i].meetsRect(b) {
			cost += onLine
		}
	}
	return cost
}

// write sets a text into a rect and keeps everything else out of it.
func (p *layout) write(text []Run, b rect, l figure.Look) {
	p.layers[typeLayer] = append(p.layers[typeLayer], Mark{
		Path: []Place{{b.middle().X, b.y0 + capHeight*typeSize}}, Text: text, Size: typeSize, Line: textInk(l), Fill: NoInk,
	})
	p.bounds = p.bounds.with(b)
	p.take(newShape(b.grown(labelRim).corners()...))
	p.lettered = append(p.lettered, b)
}
