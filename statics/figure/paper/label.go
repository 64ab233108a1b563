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
	// the arrow it belongs to, counted from 1 in what was drawn; 0 for other things
	arrow int
	// the outline of the curve that it is a value of, likewise
	outline int
}

// A lettering holds the labels of a board that want a place.
type lettering struct {
	*board
	wants   []want
	leaders []shape // lines from labels to what they belong to
	wantsAt near    // where what they belong to is, once all have been asked
	// the outlines of curves, whose values must not be taken for one another's
	outlines [][]Place
}

// ask takes a want, unless it has nothing to say.
func (l *lettering) ask(w want) {
	if len(w.text) > 0 {
		l.wants = append(l.wants, w)
	}
}

// Places of labels on paper: in points, and what departing from the best costs in points of distance.
const (
	labelTall     = typeSize * (capHeight + descent)
	labelRim      = 1.2  // kept free around a label
	leaderFrom    = 13.0 // from which distance on a line leads to what a label belongs to
	wrongSide     = 9.0
	leaderOver    = 150.0 // a line from a label to what it belongs to runs through another
	offCorner     = 2.0
	besideBay     = 8.0
	otherNearer   = 9.0
	memberBetween = 60.0   // a value on the other side of a member than its curve
	acrossMember  = 10.0   // the label of an arrow likewise
	notNearest    = 1000.0 // nearer to another arrow
	growing       = 0.08   // for each point by which the sheet grows
)

// gaps are the distances at which a place for a label is sought, in order.
var gaps = []float64{2.2, 5, 9, 13, 18, 25, 34, 45, 60, 80, 110, 150}

// label gives every label its place, in order of rank: dimensions and values first, names last.
func (l *lettering) label() {
	slices.SortStableFunc(l.wants, func(a, b want) int { return a.rank - b.rank })
	l.wantsAt = near{}
	for _, w := range l.wants {
		l.wantsAt.add(w.near)
	}
	for i, w := range l.wants {
		b := l.settle(w, i)
		if !l.isNearest(w, b) {
			l.misread++
		}
		if from, to, needed := l.leader(w, b); needed {
			l.draw(fineLayer, Mark{Path: []Place{from, to}, Weight: fineWeight, Line: grey, Fill: NoInk})
			l.leaders = append(l.leaders, bar(from, to, fineWeight).withSides())
		}
		l.write(w.text, b, w.look)
		l.note(figure.Drawn{
			Kind: figure.DrawnLabel, From: Place{b.x0, b.y0}.position(), To: Place{b.x1, b.y1}.position(), Owner: w.arrow - 1, Text: Mark{Text: w.text}.plain(),
		})
	}
	l.wants = nil
}

// settle finds the cheapest free place for a label. If there is none nearby, it is beside all that is drawn.
func (l *lettering) settle(w want, index int) rect {
	wide := lineWidth(w.text, typeSize)
	best, least := rect{}, math.Inf(1)
	for _, gap := range gaps {
		if gap >= least {
			break
		}
		for _, c := range w.candidates(wide, gap) {
			cost := gap + c.cost + l.growth(c.rect)
			if cost >= least || !l.isClear(c.rect) {
				continue
			}
			if !l.isNearest(w, c.rect) {
				cost += notNearest
			}
			if cost += l.mistakable(w, index, c.rect) + l.crossed(w, c.rect); cost < least {
				best, least = c.rect, cost
			}
		}
	}
	if math.IsInf(least, 1) {
		y := w.near.middle().Y - labelTall/2
		return rect{l.bounds.x1 + gaps[0], y, l.bounds.x1 + gaps[0] + wide, y + labelTall}
	}
	return best
}

// isNearest reports whether the label of an arrow is at least as near to it as to any other.
func (l *lettering) isNearest(w want, b rect) bool {
	return w.arrow == 0 || figure.IsNearest(l.drawn, w.arrow-1, Place{b.x0, b.y0}.position(), Place{b.x1, b.y1}.position(), 1)
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
	switch w.rank {
	case figure.RankName:
		corner = -offCorner
	case figure.RankDimension: // there it would stand beside the next one
		corner = besideBay
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

// mistakable is what it costs that a label lies as near to something else that has a label, or nearer.
func (l *lettering) mistakable(w want, index int, b rect) float64 {
	own, cost := w.near.gap(b), 0.0
	l.wantsAt.any(b.grown(own+2), func(i int) bool {
		other := l.wants[i]
		if i == index || (other.rank == figure.RankName) != (w.rank == figure.RankName) || other.near == w.near {
			return false
		}
		if d := other.near.gap(b); d < own {
			cost += otherNearer
		} else if d < own+2 {
			cost += 1
		}
		return false
	})
	switch {
	case w.rank == figure.RankName:
		cost += l.besideArrow(w, b)
	case w.outline > 0:
		cost += memberBetween*l.membersBetween(w, b) + l.besideCurve(w, b)
	case w.arrow > 0:
		cost += acrossMember * l.membersBetween(w, b)
	}
	return cost
}

// membersBetween is how many members lie between a label and what it belongs to.
func (l *lettering) membersBetween(w want, b rect) float64 {
	n := 0.0
	from, _, _ := w.line(b)
	way := figure.Drawn{From: from.position(), To: w.at.position()}
	for i := range l.drawn {
		if d := &l.drawn[i]; d.Kind == figure.DrawnMember && d.Gap(way, 1) < 1 {
			n++
		}
	}
	return n
}

// besideCurve is what it costs that a value of a curve stands nearer to another curve.
func (l *lettering) besideCurve(w want, b rect) float64 {
	own := outlineGap(l.outlines[w.outline-1], b, math.Inf(1))
	for i, o := range l.outlines {
		if i != w.outline-1 && outlineGap(o, b, own) < own {
			return otherNearer
		}
	}
	return 0
}

// outlineGap is the distance of an outline from a rect, if that is less than so far.
func outlineGap(outline []Place, b rect, most float64) float64 {
	upper, lower := Place{b.x0, b.y0}.position(), Place{b.x1, b.y1}.position()
	for i := 1; i < len(outline); i++ {
		if k := rectOf(outline[i-1], outline[i]); k.gap(b) < most {
			most = min(most, figure.Drawn{From: outline[i-1].position(), To: outline[i].position()}.FromBox(upper, lower, 1))
		}
	}
	return most
}

// besideArrow is what it costs that the name of a joint stands nearer to where the force of another point acts: it would name that.
func (l *lettering) besideArrow(w want, b rect) float64 {
	own := rectOf(w.at).gap(b)
	for _, d := range l.drawn {
		if at := Place(d.At); d.Kind == figure.DrawnArrow && at != w.at && rectOf(at).gap(b) < own {
			return otherNearer
		}
	}
	return 0
}

// line is the way from a label to what it belongs to, and whether that is so far that it is drawn.
func (w want) line(b rect) (from, to Place, far bool) {
	from = Place{min(max(w.at.X, b.x0), b.x1), min(max(w.at.Y, b.y0), b.y1)}
	const short = 3 // of the thing itself
	return from, w.at.by(w.at.toward(from), short), b.gap(w.near) >= leaderFrom
}

// leader is the line from a label to what it belongs to, if it is needed: where that is not near, and from a value of a curve that might be
// taken for that of another, for it stands nearer to it, or on the other side of a member.
func (l *lettering) leader(w want, b rect) (from, to Place, needed bool) {
	from, to, needed = w.line(b)
	const visible = 3
	if w.outline > 0 && !needed && from.distance(w.at) > 2*visible {
		needed = l.besideCurve(w, b) > 0 || l.membersBetween(w, b) > 0
	}
	return from, to, needed
}

// crossed is what it costs that the line from a label would run through others, or that it would stand on the line of another.
func (l *lettering) crossed(w want, b rect) float64 {
	cost := 0.0
	for i := range l.leaders {
		if l.leaders[i].meetsRect(b) {
			cost += leaderOver
		}
	}
	from, to, needed := l.leader(w, b)
	if !needed {
		return cost
	}
	line := bar(from, to, fineWeight).withSides()
	l.lettersAt.any(line.rect, func(i int) bool {
		if line.meetsRect(l.lettered[i]) {
			cost += leaderOver
		}
		return false
	})
	return cost
}
