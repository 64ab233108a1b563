package paper

import (
	"math"
	"strings"

	"unpin/statics/figure"
)

// Sizes of slope triangles on paper, in points.
const (
	slopeLeg    = 14.0 // the longer leg
	slopeLeast  = 3.5  // the shorter leg
	slopeType   = 7.0
	slopeTall   = slopeType * (capHeight + 0.1)
	slopeOff    = 6.0  // of its long side from what slopes
	slopeMember = 60.0 // how long a member is that bears one
)

// A slopeAsk asks for a slope triangle beside an inclined arrow or support, whose label then need not tell the slope.
type slopeAsk struct {
	at    Place
	along figure.Direction
	slope figure.Slope
	want  int // the label, by its place among those that want one
	text  string
	look  figure.Look
}

// slopes draws the triangles that were asked for, where there is room, and takes the slopes out of their labels.
func (p *layout) slopes() {
	for _, k := range p.slopeAsks {
		if p.triangle(k.at, k.along, k.slope) && k.want < len(p.wants) {
			p.wants[k.want].text = typeset(p.scene, strings.Replace(k.text, " "+k.slope.String(), "", 1), k.look)
		}
	}
}

// askSlope asks for a triangle with the label that was asked for last.
func (p *layout) askSlope(at Place, along figure.Direction, s figure.Slope, text string, look figure.Look) {
	if !s.IsZero() {
		p.slopeAsks = append(p.slopeAsks, slopeAsk{at, along, s, len(p.wants) - 1, text, look})
	}
}

// memberSlopes draws a triangle beside each sloping member that is long enough, where labels leave room.
func (p *layout) memberSlopes() {
	for _, k := range p.scene.Strokes {
		if a, b := p.place(k.From), p.place(k.To); !k.Slope.IsZero() && a.distance(b) >= slopeMember {
			p.triangle(a.between(b, 0.5), a.toward(b), k.Slope)
		}
	}
}

// triangle draws a small right triangle whose long side runs along a direction beside a place, with the two numbers at its
// legs, and reports whether there was room.
func (p *layout) triangle(at Place, along figure.Direction, s figure.Slope) bool {
	scale := slopeLeg / max(math.Abs(along.X), math.Abs(along.Y))
	if scale*min(math.Abs(along.X), math.Abs(along.Y)) < slopeLeast {
		return false
	}
	for _, slide := range [...]float64{0, -7, 7, -14, 14, -21, 21} {
		for _, side := range [...]float64{1, -1} {
			t := newTriangle(at.by(along, slide).by(along.Left(), side*slopeOff), along, scale, side, s)
			if p.isRoom(&t) {
				p.drawTriangle(&t)
				return true
			}
		}
	}
	return false
}

// A slopeTriangle is a triangle with its numbers, laid out.
type slopeTriangle struct {
	corners []Place // the ends of its long side, and the right angle
	texts   [2][]Run
	rects   [2]rect
}

func newTriangle(middle Place, along figure.Direction, scale, side float64, s figure.Slope) slopeTriangle {
	a, b := middle.by(along, -scale/2), middle.by(along, scale/2)
	right := Place{a.X, b.Y}
	if out := along.Left(); side*(out.X*(right.X-middle.X)-out.Y*(right.Y-middle.Y)) < 0 {
		right = Place{b.X, a.Y}
	}
	t := slopeTriangle{corners: []Place{a, b, right}, texts: [2][]Run{{{Text: s.Across}}, {{Text: s.Up}}}}
	across, up := lineWidth(t.texts[0], slopeType), lineWidth(t.texts[1], slopeType)
	x, y := middle.X-across/2, right.Y+1.2
	if right.Y < middle.Y {
		y = right.Y - 1.2 - slopeTall
	}
	t.rects[0] = rect{x, y, x + across, y + slopeTall}
	x, y = right.X+1.4, middle.Y-slopeTall/2
	if right.X < middle.X {
		x = right.X - 1.4 - up
	}
	t.rects[1] = rect{x, y, x + up, y + slopeTall}
	return t
}

// isRoom reports whether a triangle and its numbers meet nothing.
func (p *layout) isRoom(t *slopeTriangle) bool {
	nowhere := Place{math.Inf(1), 0}
	for i := range p.leaders {
		if k := &p.leaders[i]; k.meets(newShape(t.corners...)) || k.meetsRect(t.rects[0]) || k.meetsRect(t.rects[1]) {
			return false
		}
	}
	return p.isFree(newShape(t.corners...), nowhere) && p.isClear(t.rects[0]) && p.isClear(t.rects[1])
}

func (p *layout) drawTriangle(t *slopeTriangle) {
	p.draw(fineLayer, Mark{Path: t.corners, Closed: true, Weight: fineWeight, Line: black, Fill: NoInk})
	p.take(newShape(t.corners...))
	for i, b := range t.rects {
		p.layers[typeLayer] = append(p.layers[typeLayer], Mark{
			Path: []Place{{b.middle().X, b.y0 + capHeight*slopeType}}, Text: t.texts[i], Size: slopeType, Line: black, Fill: NoInk,
		})
		p.bounds = p.bounds.with(b.grown(labelRim))
		p.take(newShape(b.corners()...))
		p.lettered = append(p.lettered, b)
		p.lettersAt.add(b)
	}
}
