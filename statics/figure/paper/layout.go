package paper

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// Sizes on paper, in points. Members are the heaviest lines and dimensions the finest, as technical drawing has it: wide
// and narrow lines, 2 to 1 or more (ISO 128; from memory).
const (
	memberWeight = 2.6
	groundWeight = 1.4
	forceWeight  = 1.3
	symbolWeight = 1.0
	spreadWeight = 0.9
	fineWeight   = 0.5
	heldApart    = 14.0 // what near joints are held apart
	leastApart   = 3.0  // the least, where more would bend a straight line of members
	lessApart    = 0.7  // from try to try
	rim          = 3    // around all that is drawn
)

// Layout lays a scene out on a sheet no larger than the given size in points: as large as fits, to one scale, and the sheet
// no larger than the figure. Every label has a place of its own, with a thin line to what it belongs to where that is not
// near. A size too small for the symbols and labels gives a larger sheet; Fits tells.
func Layout(s figure.Scene, width, height float64) Sheet {
	if s.IsApart() {
		return layoutApart(&s, width, height)
	}
	return fit(&s, width, height).finish().within(width, height)
}

// LayoutAll lays scenes of one frame out as Layout does, each on a sheet of its own, but all to the same scale. None of them
// shows parts apart.
func LayoutAll(scenes []figure.Scene, width, height float64) []Sheet {
	least := math.Inf(1)
	fitted := make([]*layout, len(scenes))
	for i := range scenes {
		fitted[i] = fit(&scenes[i], width, height)
		least = min(least, fitted[i].scale())
	}
	sheets := make([]Sheet, len(scenes))
	for i, p := range fitted {
		if p.scale() > least {
			xs, ys := figure.Stations(p.scene)
			p = newLayout(p.scene, xs, ys, least)
		}
		sheets[i] = p.finish().within(width, height)
	}
	return sheets
}

// fit draws a scene as large as fits.
func fit(s *figure.Scene, width, height float64) *layout {
	xs, ys := figure.Stations(s)
	marginX, marginY := 60.0, 60.0
	var p *layout
	for try := 1; ; try++ {
		scale := min(fillScale(figure.Span(xs), figure.Span(ys), width-marginX, height-marginY), s.MostScale(pinWheel))
		if p != nil && p.drawnTo == scale { // it would be the same again
			return p
		}
		p = newLayout(s, xs, ys, scale)
		overX, overY := p.bounds.width()-width, p.bounds.height()-height
		if overX <= 0.01 && overY <= 0.01 || try == tries {
			return p
		}
		marginX = min(max(marginX, p.bounds.width()-scale*figure.Span(xs)+1), mostMargin*width)
		marginY = min(max(marginY, p.bounds.height()-scale*figure.Span(ys)+1), mostMargin*height)
	}
}

// newLayout draws a scene to a scale.
func newLayout(s *figure.Scene, xs, ys []figure.Station, scale float64) *layout {
	p := begin(s, xs, ys, scale)
	p.paint()
	return p
}

// newPart is newLayout of one of several parts, of which one remark for all says that not all is to scale.
func newPart(s *figure.Scene, xs, ys []figure.Station, scale float64) *layout {
	p := begin(s, xs, ys, scale)
	p.isPart = true
	p.paint()
	return p
}

func begin(s *figure.Scene, xs, ys []figure.Station, scale float64) *layout {
	p := &layout{scene: s, drawnTo: scale, lettering: &lettering{board: &board{bounds: noRect}}}
	for apart := heldApart; ; apart *= lessApart {
		p.x, p.y = newAxis(xs, scale, apart), newAxis(ys, scale, apart)
		p.stretched = p.x.stretched() || p.y.stretched()
		if !p.stretched || apart < leastApart || !bends(p) {
			break
		}
	}
	if p.stretched {
		p.findStrokes()
	}
	p.wheels = p.wheelScale()
	return p
}

// tries is how often the margins are measured and the scale mended.
const tries = 5

// mostMargin is the share of the paper that the margins may take, for in a frame that has shrunk to nothing its labels
// crowd one another out.
const mostMargin = 0.8

// fillScale is the scale, in points a unit, that fills so much width or height, whichever is less.
func fillScale(spanX, spanY, width, height float64) float64 {
	scale := math.Inf(1)
	if spanX > 0 {
		scale = max(width, 1) / spanX
	}
	if spanY > 0 {
		scale = min(scale, max(height, 1)/spanY)
	}
	if math.IsInf(scale, 1) {
		return 1
	}
	return scale
}

// A layout draws one scene at one scale.
type layout struct {
	*lettering
	scene     *figure.Scene
	x, y      axis
	drawnTo   float64 // the scale, in points a unit of length
	stretched bool    // near joints are held apart
	wheels    float64 // the scale of wheels where they are: so that they stay round
	strokesAt near    // where the members are, for place
	slopeAsks []slopeAsk
	shades    []shade // the areas of curves
	isPart    bool
	hasShort  bool // a dimension too short for its heads
	offScale  bool // a dimension is underlined
}

// place is where a point of the frame lies. A point on a member stays on it even where joints are held apart, and a point at which a
// rope leaves its wheel on that.
func (p *layout) place(at figure.Position) Place {
	if len(p.scene.Wheels) > 0 {
		if i := slices.IndexFunc(p.scene.Arrows, func(a figure.Arrow) bool { return a.Rope && a.At == at }); i >= 0 {
			return p.onWheel(p.scene.Arrows[i].Hub, at)
		}
	}
	if p.stretched {
		if first := p.firstHolding(at); first < len(p.scene.Strokes) {
			k := p.scene.Strokes[first]
			t, _ := shareOf(k, at)
			return p.plain(k.From).between(p.plain(k.To), t)
		}
	}
	return p.plain(at)
}

// firstHolding is the first stroke on which a point lies, or their number.
func (p *layout) firstHolding(at figure.Position) int {
	strokes := p.scene.Strokes
	first := len(strokes)
	here := p.plain(at)
	p.strokesAt.any(rectOf(here), func(i int) bool {
		if i < first && beside(strokes[i], at) {
			if _, on := shareOf(strokes[i], at); on {
				first = i
			}
		}
		return false
	})
	return first
}

// findStrokes notes where each stroke may hold a point: within the box of beside, which the axes keep in order.
func (p *layout) findStrokes() {
	const rounding = 1
	for _, k := range p.scene.Strokes {
		slack := slackOf(k)
		low := figure.Position{X: min(k.From.X, k.To.X) - slack, Y: min(k.From.Y, k.To.Y) - slack}
		high := figure.Position{X: max(k.From.X, k.To.X) + slack, Y: max(k.From.Y, k.To.Y) + slack}
		p.strokesAt.add(rectOf(p.plain(low), p.plain(high)).grown(rounding))
	}
}

// plain is where the axes put a point.
func (p *layout) plain(at figure.Position) Place {
	return Place{p.x.at(at.X), p.y.length - p.y.at(at.Y)}
}

// beside reports whether a point may lie on a stroke: it is not clearly out of the box around it. This is quicker told.
func beside(k figure.Stroke, at figure.Position) bool {
	slack := slackOf(k)
	return at.X > min(k.From.X, k.To.X)-slack && at.X < max(k.From.X, k.To.X)+slack &&
		at.Y > min(k.From.Y, k.To.Y)-slack && at.Y < max(k.From.Y, k.To.Y)+slack
}

// slackOf is how far out of the box around a stroke a point on it may come by rounding, and more.
func slackOf(k figure.Stroke) float64 {
	return 1e-3 * (math.Abs(k.To.X-k.From.X) + math.Abs(k.To.Y-k.From.Y))
}

// shareOf is where on a stroke a point lies, from 0 at its beginning to 1, if it does.
func shareOf(k figure.Stroke, at figure.Position) (t float64, on bool) {
	whole := math.Hypot(k.To.X-k.From.X, k.To.Y-k.From.Y)
	before, after := math.Hypot(at.X-k.From.X, at.Y-k.From.Y), math.Hypot(k.To.X-at.X, k.To.Y-at.Y)
	return before / whole, before+after < whole*(1+1e-9)
}

// paint draws everything: what stands on the frame, then the labels, and around all that the dimensions.
func (p *layout) paint() {
	for _, k := range p.scene.Strokes {
		p.stroke(k)
	}
	for _, k := range p.scene.Guides {
		p.guide(k)
	}
	for _, k := range p.scene.Wheels {
		p.wheel(k)
	}
	for _, k := range p.scene.Symbols {
		p.symbol(k)
	}
	for i := range p.scene.Spreads {
		p.spread(i)
	}
	for _, k := range p.scene.Arrows {
		p.arrow(k)
	}
	for _, c := range p.scene.Curves {
		p.curve(c)
	}
	for i := range p.scene.Curves {
		curveValues(p, i)
	}
	for _, n := range p.scene.Notes {
		p.remarkAt(n)
	}
	p.slopes()
	p.label()
	p.dimensions()
	p.label()
	p.memberSlopes()
	for _, line := range p.scene.Legend {
		p.remark(line)
	}
	if p.stretched && (p.offScale || len(p.scene.Dimensions) == 0 && !p.isPart) {
		p.remark(p.scaleRemark())
	}
}

// scale is how many points stand for a unit of length.
func (p *layout) scale() float64 { return p.x.Scale / tenths }

// scaleRemark says which lengths are not to scale.
func (p *layout) scaleRemark() string {
	if len(p.scene.Dimensions) > 0 {
		return "underlined: not to scale"
	}
	return figure.OffScale
}

// remark writes a line under all that has been drawn.
func (p *layout) remark(text string) {
	look := figure.Look{Role: figure.KeyMark}
	runs := typeset(p.scene, text, look)
	wide := lineWidth(runs, typeSize)
	x, y := p.bounds.middle().X-wide/2, p.bounds.y1+typeSize*0.4
	p.write(runs, rect{x, y, x + wide, y + labelTall}, look)
}

// stroke draws a member.
func (p *layout) stroke(k figure.Stroke) {
	a, b := p.place(k.From), p.place(k.To)
	p.draw(memberLayer, Mark{Path: []Place{a, b}, Weight: memberWeight, Round: true, Line: lineInk(k.Look), Fill: NoInk})
	member := bar(a, b, memberWeight+1)
	member.from, member.to = a, b
	p.note(figure.Drawn{Kind: figure.DrawnMember, From: a.position(), To: b.position()})
	p.take(member)
}

// guide draws a fine line, dashed where something has moved.
func (p *layout) guide(k figure.Stroke) {
	m := Mark{Path: []Place{p.place(k.From), p.place(k.To)}, Weight: fineWeight, Line: lineInk(k.Look), Fill: NoInk}
	if k.Role == figure.MotionMark {
		m.Weight, m.Dashed = forceWeight, true
	}
	p.draw(fineLayer, m)
	p.take(bar(m.Path[0], m.Path[1], m.Weight))
}

// remarkAt asks for the place of a name or remark.
func (p *layout) remarkAt(n figure.Note) {
	at := p.place(n.At)
	p.ask(want{text: typeset(p.scene, n.Text, n.Look), near: rectOf(at), at: at, look: n.Look, rank: figure.RankOf(n.Role)})
}

// corner is the lower left corner of the frame, without the rims of wheels that reach beyond it.
func (p *layout) corner() Place {
	low := Place{0, p.y.length}
	if len(p.scene.Wheels) == 0 || p.scene.IsPin() {
		return low
	}
	low = p.plain(p.scene.Strokes[0].From)
	for _, k := range p.scene.Strokes {
		for _, end := range []figure.Position{k.From, k.To} {
			at := p.plain(end)
			low = Place{min(low.X, at.X), max(low.Y, at.Y)}
		}
	}
	return low
}

// finish moves all marks to the sheet's corner and stacks the layers.
func (p *layout) finish() Sheet {
	out := p.bounds.grown(rim)
	corner := p.corner()
	s := Sheet{
		Title: p.scene.Title, Width: out.width(), Height: out.height(),
		Origin: Place{corner.X - out.x0, corner.Y - out.y0}, Stretched: p.stretched, Fits: p.misread == 0, Astray: astrayInAll(p.drawn),
	}
	for _, d := range p.drawn {
		s.Drawn = append(s.Drawn, d.Moved(-out.x0, -out.y0))
	}
	for _, layer := range p.layers {
		for _, m := range layer {
			path := make([]Place, len(m.Path)) // of its own, for marks may share one
			for i, at := range m.Path {
				path[i] = Place{at.X - out.x0, at.Y - out.y0}
			}
			m.Path = path
			s.Marks = append(s.Marks, m)
		}
	}
	return s
}
