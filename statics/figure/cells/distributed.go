package cells

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// deep is the depth in rows of a distributed load of the greatest intensity in the scene.
func (p *painter) deep() float64 {
	for _, s := range p.scene.Spreads {
		if s.First != s.Last {
			return float64(p.detail.arms + 1)
		}
	}
	return float64(p.detail.arms)
}

// depth is the signed depth in rows where the intensity is w; a load that is there at all shows its heads.
func (p *painter) depth(w float64, even bool) float64 {
	d := w * p.deep()
	if even && math.Abs(d) < 2 {
		return math.Copysign(2, w)
	}
	return d
}

// swathOf is where a distributed load lies on the canvas, with the direction of its base and its length in cell widths: 0 at too
// small a scale to draw it.
func swathOf(p *painter, s figure.Spread) (k swath, along figure.Direction, length float64) {
	stand := p.stand(s)
	a, b := p.spot(s.From).by(s.Outward(), stand), p.spot(s.To).by(s.Outward(), stand)
	along = figure.Direction{X: b.c - a.c, Y: 2 * (a.r - b.r)}
	length = math.Hypot(along.X, along.Y)
	if length == 0 {
		return swath{p, s, a, b}, along, 0
	}
	along = figure.Direction{X: along.X / length, Y: along.Y / length}
	if length > 8 && p.runsInto(s) {
		b = b.by(along, -2)
	}
	return swath{p, s, a, b}, along, length
}

// A lie is how a distributed load lies to its base.
type lie uint8

const (
	alongIt lie = iota
	upright
	level
	raking
)

// lies tells how a load lies to a base of that direction.
func (k swath) lies(along figure.Direction) lie {
	switch {
	case math.Abs(along.X*k.Toward.Y-along.Y*k.Toward.X) < 0.17: // within 10° of its line
		return alongIt
	case k.Toward.Upright() && along.X != 0:
		return upright
	case k.Toward.Level() && along.Y != 0:
		return level
	}
	return raking
}

// spread draws a distributed load and asks for its labels.
func (p *painter) spread(s figure.Spread) {
	w, along, length := swathOf(p, s)
	if length == 0 {
		c, r := w.a.cell()
		w.askEnds(area{c, r, c, r})
		return
	}
	was := p.used
	p.used = emptyArea
	switch how := w.lies(along); how {
	case alongIt:
		w.draw(along)
	case raking:
		w.rake(length)
	default:
		w.comb(how == level)
	}
	near := p.used
	p.used = p.used.with(was)
	w.askEnds(near)
}

// reserve notes where the distributed loads will stand, for the supports, which are drawn first.
func (p *painter) reserve() {
	for _, s := range p.scene.Spreads {
		k, along, length := swathOf(p, s)
		how := k.lies(along)
		if length == 0 || how == alongIt {
			continue
		}
		even, out, f := k.First == k.Last, k.Outward(), 1.0
		if how == raking {
			out = k.Toward.Opposite()
		} else {
			f = k.steepness(k.a, k.b, how == level)
		}
		d0, d1 := f*k.depth(k.First, even), f*k.depth(k.Last, even)
		k.shade(k.a, k.b, out, d0, d1)
		p.note(figure.Drawn{Kind: figure.DrawnDistributed, From: k.a.by(out, 2*d0).position(), To: k.b.by(out, 2*d1).position(),
			At: k.a.position(), Hub: k.b.position()})
	}
}

// runsInto reports whether another load on the same side begins where one ends: a gap keeps the two apart.
func (p *painter) runsInto(s figure.Spread) bool {
	return slices.ContainsFunc(p.scene.Spreads, func(u figure.Spread) bool {
		return u.From == s.To && u.Outward() == s.Outward() && u.Projected == s.Projected
	})
}

// A swath is a distributed load on the canvas, from a to b on its base.
type swath struct {
	*painter
	figure.Spread
	a, b spot
}

// askEnds asks for the labels of a distributed load at its ends and its middle.
func (k swath) askEnds(near area) {
	if near.empty() {
		c, r := k.a.cell()
		near = area{c, r, c, r}
	}
	even := k.First == k.Last
	var base *figure.Drawn
	if k.a.c != k.b.c && k.a.r != k.b.r {
		base = &figure.Drawn{From: k.a.position(), To: k.b.position()}
	}
	ask := func(text string, w, at float64) {
		if text == "" {
			return
		}
		out := k.Outward()
		if w < 0 {
			out = out.Opposite()
		}
		tail := k.a.between(k.b, at).by(out, 2*math.Abs(k.depth(w, even)))
		c, r := tail.cell()
		c, r = min(max(c, near.c0), near.c1), min(max(r, near.r0), near.r1)
		block := area{c - 2, min(r, near.r1), c + 2, r}
		if out.Level() || math.Abs(out.X) > math.Abs(out.Y) {
			block = area{c, r - 1, c, r + 1}
		}
		k.ask(request{text: text, near: block, c: c, r: r, look: k.Look, rank: figure.RankValue, side: figure.SideToward(out), base: base})
	}
	ask(k.FirstText, k.First, 0)
	ask(k.LastText, k.Last, 1)
	ask(k.MidText, (k.First+k.Last)/2, 0.5)
}

// stand is how far in cell widths the base of a load stands off its line: a row if it is a projection, and as far as
// the loads reach that it stands on.
func (p *painter) stand(s figure.Spread) float64 {
	off := 0.0
	if s.Projected {
		off = 2
	}
	for _, i := range s.On {
		under := p.scene.Spreads[i]
		if under.From.X != under.To.X && under.From.Y != under.To.Y {
			off += 2
		}
		off += 2 * max(math.Abs(p.depth(under.First, under.First == under.Last)), math.Abs(p.depth(under.Last, under.First == under.Last)))
	}
	return off
}

// draw draws a load that runs along its own line: heads in a row beside the member.
func (k swath) draw(along figure.Direction) {
	side := along.Left()
	if side.Y < 0 || side.Y == 0 && side.X > 0 {
		side = side.Opposite()
	}
	a, b := k.a.by(side, 2), k.b.by(side, 2)
	toward := k.Toward
	if k.First+k.Last < 0 {
		toward = toward.Opposite()
	}
	if toward.Dot(along) < 0 {
		a, b = b, a
	}
	k.track(a, b, k.Look)
	n := max(1, int(math.Hypot(b.c-a.c, 2*(b.r-a.r))/5))
	for i := range n {
		c, r := a.between(b, float64(i+1)/float64(n)).cell()
		k.put(c, r, figure.Head(toward, false), k.Look)
	}
}

// comb draws a load whose arrows are upright (or level, if turned): an outline, and arrows from it to the base.
func (k swath) comb(turned bool) {
	a, b := k.a, k.b
	out := k.Outward()
	even := k.First == k.Last
	f := k.steepness(a, b, turned)
	d0, d1 := f*k.depth(k.First, even), f*k.depth(k.Last, even)
	if !k.Pull {
		k.track(a.by(out, 2*d0), b.by(out, 2*d1), k.Look)
	}
	n := teeth(a.c, b.c, 4, 3, 5, 6)
	if turned {
		n = teeth(a.r, b.r, 2, 3)
	}
	if k.Projected {
		step := 2.0
		if turned {
			step = 1
		}
		k.track(a.by(out, step), b.by(out, step), k.Look)
	}
	k.shade(a, b, out, d0, d1)
	for i := range n + 1 {
		t := float64(i) / float64(n)
		w := d0 + (d1-d0)*t
		k.tooth(a.between(b, t), out, w, turned)
	}
}

// steepness is the factor by which a load on a steep member is deeper, so that its arrows clear the member's own cells.
func (p *painter) steepness(a, b spot, turned bool) float64 {
	climb := math.Abs(b.r-a.r) / max(1, math.Abs(b.c-a.c))
	if turned {
		climb = math.Abs(b.c-a.c) / max(1, 2*math.Abs(b.r-a.r))
	}
	return 1 + min(climb, 3)/p.deep()
}

// teeth is the number of gaps between the arrows of a comb: the first of the given steps that divides it evenly, else
// as near to the first as may be.
func teeth(from, to float64, steps ...int) int {
	length := int(math.Round(math.Abs(to - from)))
	for _, step := range steps {
		if length%step == 0 {
			return max(1, length/step)
		}
	}
	return max(1, (length+steps[0]/2)/steps[0])
}

// tooth draws one arrow of a comb, from its outline at depth w to the member at the base.
func (k swath) tooth(base spot, out figure.Direction, w float64, turned bool) {
	toward := k.Toward
	if w < 0 {
		out, toward = out.Opposite(), toward.Opposite()
	}
	c, r := base.cell()
	tc, tr := base.by(out, 2*math.Abs(w)).cell()
	dc, dr := cellStep(out)
	hc, hr := c+dc, r+dr
	moved := false
	for i := 0; i < 5 && k.isMember(hc, hr); i++ {
		hc, hr, moved = hc+dc, hr+dr, true
	}
	room := (tc-hc)*dc + (tr-hr)*dr
	if room < 0 || room == 0 && moved || math.Abs(w) < 0.8 { // too shallow for an arrow
		return
	}
	if k.Projected && !k.Pull {
		k.wipe(hc, hr)
	}
	if k.Pull {
		k.line(hc, hr, tc, tr, light, k.Look)
		k.put(tc, tr, figure.Head(toward, false), k.Look)
		return
	}
	if hc != tc || hr != tr {
		k.line(hc+dc, hr+dr, tc, tr, light, k.Look)
		k.join(hc+dc, hr+dr, dc, dr, k.Look)
	}
	k.put(hc, hr, figure.Head(toward, false), k.Look)
}

// rake draws a load at any other angle to the axes: its outline and arrows in dots.
func (k swath) rake(length float64) {
	a, b := k.a, k.b
	out := k.Toward.Opposite()
	even := k.First == k.Last
	d0, d1 := k.depth(k.First, even), k.depth(k.Last, even)
	n := max(1, int(math.Round(length/6)))
	tail := func(t float64) spot { return a.between(b, t).by(out, 2*(d0+(d1-d0)*t)+1.2*float64(sign(d0+d1))) }
	for i := range n + 1 {
		t := float64(i) / float64(n)
		w := d0 + (d1-d0)*t
		if math.Abs(w) < 0.8 {
			continue
		}
		toward, away := k.Toward, out
		if w < 0 {
			toward, away = toward.Opposite(), away.Opposite()
		}
		tip := a.between(b, t)
		c, r := tip.by(away, 1.5).cell()
		for j := 0; j < 4 && k.isMember(c, r); j++ {
			c, r = tip.by(away, 2+float64(j)).cell()
		}
		k.put(c, r, figure.Head(toward, false), k.Look)
		k.slope(tip.by(away, 1.5), tail(t), 1, false, k.Look)
	}
	k.shade(a, b, out, d0, d1)
	k.slope(tail(0), tail(1), 1, false, k.Look)
}
