package paper

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// Sizes of distributed load on paper, in points.
const (
	spreadDepth = 24.0 // at the greatest intensity of the scene
	spreadLeast = 12.0 // of a uniform load
	spreadStep  = 13.0 // between its arrows
	spreadHead  = 5.0
	projection  = 10.0 // between a load on a projection and the frame
)

// depthAt is the signed depth of a load where its intensity is w.
func depthAt(w float64, even bool) float64 {
	d := w * spreadDepth
	if even && math.Abs(d) < spreadLeast {
		return math.Copysign(spreadLeast, w)
	}
	return d
}

// A swath is a distributed load on paper: its base, and how deep it is at both ends.
type swath struct {
	figure.Spread
	a, b   Place
	d0, d1 float64
}

// at is the place on the base at a share of it, and depth how deep the load is there.
func (s swath) at(t float64) Place { return s.a.between(s.b, t) }

func (s swath) depth(t float64) float64 { return s.d0 + (s.d1-s.d0)*t }

func (s swath) top(t float64) Place { return s.at(t).by(s.Outward(), s.depth(t)) }

// spread draws a distributed load and asks for its labels.
func (p *layout) spread(index int) {
	s := p.scene.Spreads[index]
	even := s.First == s.Last
	stand := p.standOff(s)
	w := swath{s, p.place(s.From).by(s.Outward(), stand), p.place(s.To).by(s.Outward(), stand), depthAt(s.First, even), depthAt(s.Last, even)}
	along := w.a.toward(w.b)
	if math.Abs(along.X*s.Toward.Y-along.Y*s.Toward.X) < 0.17 { // within 10° of its line
		w = p.drawnAlong(w, along)
	} else {
		p.curtain(w, along)
	}
	ask := func(text string, t float64) {
		if text == "" {
			return
		}
		top, out := w.top(t), s.Outward()
		if w.depth(t) < 0 {
			out = out.Opposite()
		}
		p.ask(want{text: typeset(p.scene, text, s.Look), near: rectOf(top).grown(1), at: top, look: s.Look, rank: figure.RankValue, side: figure.SideToward(out)})
	}
	ask(s.FirstText, 0)
	ask(s.LastText, 1)
	if p.isCovered(index) {
		p.ask(want{text: typeset(p.scene, s.MidText, s.Look), near: rectOf(w.b, w.top(1)), at: w.at(1).between(w.top(1), 0.5), look: s.Look, rank: figure.RankValue, side: figure.AtRight | figure.AtLeft})
		return
	}
	ask(s.MidText, 0.5)
}

// isCovered reports whether another load stands on a load.
func (p *layout) isCovered(index int) bool {
	for _, s := range p.scene.Spreads {
		if slices.Contains(s.On, index) {
			return true
		}
	}
	return false
}

// standOff is how far the base of a load stands off its line: clear of the frame if it is a projection, and as far as
// the loads reach on which it stands.
func (p *layout) standOff(s figure.Spread) float64 {
	off := 0.0
	if s.Projected {
		off = projection
	}
	for _, i := range s.On {
		u := p.scene.Spreads[i]
		even := u.First == u.Last
		off += max(math.Abs(depthAt(u.First, even)), math.Abs(depthAt(u.Last, even))) + 2
	}
	return off
}

// curtain draws a load that crosses its line: a shaded area, its outline, and arrows from there to the base.
func (p *layout) curtain(w swath, along figure.Direction) {
	for _, part := range w.halves() {
		area := []Place{w.at(part[0]), w.top(part[0]), w.top(part[1]), w.at(part[1])}
		p.draw(shadeLayer, Mark{Path: area, Closed: true, Fill: blush, Line: NoInk})
		p.take(newShape(area...))
	}
	p.line(loadLayer, w.Look, spreadWeight, w.top(0), w.top(1))
	if w.Projected {
		p.line(loadLayer, w.Look, spreadWeight, w.a, w.b)
	}
	n := max(1, int(math.Round(w.a.distance(w.b)/spreadStep)))
	steep := max(math.Abs(along.X*w.Toward.Y-along.Y*w.Toward.X), 0.3)
	for i := range n + 1 {
		t := float64(i) / float64(n)
		p.tooth(w, t, steep)
	}
}

// halves are the stretches over which a load keeps its sense.
func (w swath) halves() [][2]float64 {
	if w.d0*w.d1 >= 0 {
		return [][2]float64{{0, 1}}
	}
	turn := w.d0 / (w.d0 - w.d1)
	return [][2]float64{{0, turn}, {turn, 1}}
}

// tooth draws one arrow of a load.
func (p *layout) tooth(w swath, t, steep float64) {
	depth := w.depth(t)
	toward, out := w.Toward, w.Outward()
	if depth < 0 {
		toward, out = toward.Opposite(), out.Opposite()
	}
	base := w.at(t)
	if !w.Projected && len(w.On) == 0 {
		base = base.by(out, memberWeight/2/steep)
	}
	tail, tip := w.top(t), base
	if w.Pull {
		tail, tip = base, w.top(t)
	}
	if math.Abs(depth) < spreadHead+1 {
		p.line(loadLayer, w.Look, spreadWeight/2, tail, tip)
		return
	}
	p.line(loadLayer, w.Look, spreadWeight, tail, tip.by(toward, -spreadHead+1))
	p.smallHead(tip, toward, spreadHead, w.Look)
}

// drawnAlong draws a load that runs along its own line: a row of arrows beside the member. It gives back where that is.
func (p *layout) drawnAlong(w swath, along figure.Direction) swath {
	const beside, gap = 6.0, 4.0
	side := along.Left()
	if side.Y < 0 || side.Y == 0 && side.X > 0 {
		side = side.Opposite()
	}
	w.a, w.b = w.a.by(side, beside), w.b.by(side, beside)
	n := max(1, int(w.a.distance(w.b)/(1.6*spreadStep)))
	for i := range n {
		from, to := w.at(float64(i)/float64(n)), w.at(float64(i+1)/float64(n))
		if toward := w.Toward; (toward.Dot(along) < 0) != (w.depth((float64(i)+0.5)/float64(n)) < 0) {
			from, to = to, from
		}
		run := from.toward(to)
		p.line(loadLayer, w.Look, spreadWeight, from.by(run, gap/2), to.by(run, -gap/2-spreadHead+1))
		p.smallHead(to.by(run, -gap/2), run, spreadHead, w.Look)
	}
	p.take(bar(w.a, w.b, 5))
	w.d0, w.d1 = 0, 0
	return w
}
