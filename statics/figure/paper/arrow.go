package paper

import (
	"slices"

	"unpin/statics/figure"
)

// Sizes of arrows on paper, in points.
const (
	arrowLength = 32.0
	arrowRoom   = 7.0  // the width kept free for one
	arrowStep   = 3.0  // by which one moves out to find room
	arrowMost   = 90.0 // how far one may move out
	clearance   = 2.2  // between its end and its point, which is the middle of a member
)

// arrow draws a force and asks for its label.
func (p *layout) arrow(a figure.Arrow) {
	ray := a.Toward.Opposite()
	if a.Pull {
		ray = a.Toward
	}
	at := p.place(a.At)
	if !a.Beside.IsZero() {
		if turnsBeside(p, at, &a) {
			ray = ray.Opposite()
		}
		at = p.besides(at, a.Beside, ray)
	}
	near, far := p.room(at, ray, arrowLength)
	if astray := at.distance(near) > strayFrom; a.Beside.IsZero() && !a.Rope && (astray || p.comesBy(at, near)) {
		if other := ray.Opposite(); hasWay(p, at, other) && (!astray || roomAt(p, at, other) < at.distance(near)) {
			a.Pull, ray = !a.Pull, other
			near, far = p.room(at, ray, arrowLength)
		}
	}
	if length := p.runs(a, ray); a.Rope && length >= leastRun {
		near, far = at, at.by(ray, min(arrowLength, 0.4*length))
	}
	tip, tail := near, far
	if a.Pull {
		tip, tail = far, near
	}
	p.shaft(tail, tip, a.Look)
	taken := near
	if !a.Beside.IsZero() { // off its point another may end close before it
		taken = near.by(ray, -clearance)
	}
	p.take(bar(taken, far.by(ray, arrowStep), arrowRoom))
	hub := p.place(a.At)
	if a.Rope {
		hub = p.place(a.Hub)
		p.line(forceLayer, a.Look, forceWeight, at, near)
	}
	n := p.note(figure.Drawn{Kind: figure.DrawnArrow, From: tail.position(), To: tip.position(), At: p.place(a.At).position(), Hub: hub.position(), Text: a.Text})
	w := want{arrow: n + 1, text: typeset(p.scene, a.Text, a.Look), near: rectOf(near.between(far, 0.6), far).grown(2), at: far, look: a.Look, rank: figure.RankValue}
	w.side = figure.SideToward(ray)
	if ray.Upright() {
		w.side = figure.AtLeft | figure.AtRight | figure.SideToward(ray)
	}
	p.ask(w)
	p.askSlope(near.between(far, 0.5), ray, a.Slope, a.Text, a.Look)
}

// turnsBeside finds an arrow beside a member another side of it where it would stand far off, or reports that it had better stand
// on the other side of its point.
func turnsBeside(p *layout, at Place, a *figure.Arrow) bool {
	ray := a.Toward.Opposite()
	if a.Pull {
		ray = a.Toward
	}
	missed := p.misread
	defer func() { p.misread = missed }()
	side, other := a.Beside, a.Beside.Opposite()
	for _, k := range [...]struct {
		side figure.Direction
		turn bool
	}{{side, false}, {other, false}, {side, true}, {other, true}} {
		way := ray
		if k.turn {
			way = ray.Opposite()
		}
		near, far := p.room(p.besides(at, k.side, way), way, arrowLength)
		if at.distance(near) > strayFrom || p.misread > missed || p.comesBy(at, near) || p.comesBy(at, far) {
			p.misread = missed
			continue
		}
		a.Beside = k.side
		if k.turn {
			a.Pull = !a.Pull
		}
		return k.turn
	}
	return false
}

// comesBy reports whether the arrow of another point stands between a point and a place: an arrow there would seem to act on that.
func (p *board) comesBy(at, near Place) bool {
	way := figure.Drawn{From: at.position(), To: near.position()}
	return slices.ContainsFunc(p.drawn, func(d figure.Drawn) bool {
		return d.Kind == figure.DrawnArrow && d.At != way.From && d.Gap(way, 1) == 0
	})
}

// strayFrom is how far from its point the nearer end of an arrow is at which one looks for what it acts on.
const strayFrom = 20.0

// roomAt is how far from a point an arrow outward along a ray finds room.
func roomAt(p *layout, at Place, ray figure.Direction) float64 {
	missed := p.misread
	near, _ := p.room(at, ray, arrowLength)
	p.misread = missed
	return at.distance(near)
}

// astrayInAll is how far all arrows stand from their points, beyond what is near, but for those that have another of the same point
// between, as in a row, and for ropes.
func astrayInAll(drawn []figure.Drawn) float64 {
	const near = 8.0
	total := 0.0
	for i := range drawn {
		d := &drawn[i]
		if d.Kind != figure.DrawnArrow || d.At != d.Hub {
			continue
		}
		end := d.From
		if Place(d.At).distance(Place(d.To)) < Place(d.At).distance(Place(d.From)) {
			end = d.To
		}
		way := figure.Drawn{From: d.At, To: end}
		inRow := func(o figure.Drawn) bool {
			return o.Kind == figure.DrawnArrow && o.At == d.At && o != *d && min(Place(o.From).distance(Place(d.At)), Place(o.To).distance(Place(d.At))) > 0 && way.Gap(o, 1) < 1
		}
		if far := Place(d.At).distance(Place(end)); far > near && !slices.ContainsFunc(drawn, inRow) {
			total += far - near
		}
	}
	return total
}

// hasWay reports whether an arrow outward along a ray finds room without coming by that of another point or a member.
func hasWay(p *layout, at Place, ray figure.Direction) bool {
	missed := p.misread
	near, far := p.room(at, ray, arrowLength)
	found := p.misread == missed && !p.comesBy(at, near)
	p.misread = missed
	from := at.by(ray, clearance)
	way := figure.Drawn{From: from.position(), To: far.position()}
	return found && !slices.ContainsFunc(p.drawn, func(d figure.Drawn) bool { return d.Kind == figure.DrawnMember && d.Gap(way, 1) == 0 })
}

// leastRun is how far apart two pulleys are at least that both pulls of the rope between them stand there.
const leastRun = 32.0

// runs is how far it is along a ray to where the same rope pulls back at another pulley of the frame; 0 where it does not. Past
// that pulley a pull would seem to act on the other side of it.
func (p *layout) runs(a figure.Arrow, ray figure.Direction) float64 {
	for _, b := range p.scene.Arrows {
		if !b.Rope || b.Pull != a.Pull || b.Toward != a.Toward.Opposite() {
			continue
		}
		from, to := p.place(a.At), p.place(b.At)
		length := from.distance(to)
		if to.distance(from.by(ray, length)) < 1 {
			return length
		}
	}
	return 0
}

// besides is the nearest place on that side of a point from which an arrow finds room along a ray.
func (p *layout) besides(at Place, side, ray figure.Direction) Place {
	const first = 6.5
	for _, slide := range []float64{clearance, arrowRoom + clearance, 2 * arrowRoom, 4 * arrowRoom} { // past what stands perpendicular to it
		from := at.by(side, first).by(ray, slide)
		if p.isFree(bar(from, from.by(ray, arrowLength), arrowRoom-2), at) {
			return from.by(ray, -clearance)
		}
	}
	return at.by(side, first)
}

// room is where an arrow so long, from a point outward along a ray, finds its nearest free place.
func (p *layout) room(at Place, ray figure.Direction, long float64) (near, far Place) {
	for start := clearance; start < arrowMost; start += arrowStep {
		near, far = at.by(ray, start), at.by(ray, start+long)
		if p.isFree(bar(near.by(ray, 0.5), far, arrowRoom), at) {
			return near, far
		}
	}
	p.misread++
	return at.by(ray, clearance), at.by(ray, clearance+long)
}

// tailBar is half the length of the bar at the tail of a known force.
const tailBar = 3.2

// shaft draws an arrow: solid with a full head if its sense is known, else dashed with an open head of two strokes.
func (p *board) shaft(tail, tip Place, l figure.Look) {
	weight, size := forceWeight, 8.0
	if l.Role == figure.KnownForce {
		weight = 1.7
	}
	if l.Emphasis == figure.Lit {
		p.glow(tail, tip)
		weight, size = weight+0.7, 10
	}
	toward, end := tail.toward(tip), -size+1
	switch l.Role {
	case figure.UnknownForce:
		end = 0
	case figure.KnownForce: // a bar at its tail tells it from a load in grey as well
		p.line(forceLayer, l, weight, tail.by(toward.Left(), tailBar), tail.by(toward.Left(), -tailBar))
	}
	p.draw(forceLayer, Mark{
		Path: []Place{tail, tip.by(toward, end)}, Weight: weight, Line: lineInk(l), Fill: NoInk, Dashed: l.Role == figure.UnknownForce || l.Role == figure.ResultantMark,
	})
	p.head(tip, toward, size, l)
}

// glow puts a band of colour behind what is lit.
func (p *board) glow(a, b Place) {
	p.draw(shadeLayer, Mark{Path: []Place{a, b}, Weight: 9, Line: yellow, Fill: NoInk})
}

// head draws an arrow head: full, or open for an assumed sense.
func (p *board) head(tip Place, toward figure.Direction, size float64, l figure.Look) {
	across := toward.Left()
	back := tip.by(toward, -size)
	half := size * 0.33
	m := Mark{
		Path: []Place{tip, back.by(across, half), back.by(toward, size*0.15), back.by(across, -half)}, Closed: true,
		Line: lineInk(l), Fill: lineInk(l), Weight: fineWeight,
	}
	if l.Role == figure.UnknownForce {
		m.Path, m.Closed = []Place{back.by(across, half), tip, back.by(across, -half)}, false
		m.Fill, m.Weight = NoInk, forceWeight
	}
	p.draw(forceLayer, m)
}

// smallHead draws a full head.
func (p *board) smallHead(tip Place, toward figure.Direction, size float64, l figure.Look) {
	across := toward.Left()
	back := tip.by(toward, -size)
	p.draw(loadLayer, Mark{
		Path: []Place{tip, back.by(across, size*0.33), back.by(across, -size*0.33)}, Closed: true, Fill: lineInk(l), Line: NoInk,
	})
}

// dimensionHead draws the slender head of a dimension line.
func (p *board) dimensionHead(tip Place, toward figure.Direction) {
	across, back := toward.Left(), tip.by(toward, -dimensionHead)
	p.draw(fineLayer, Mark{
		Path: []Place{tip, back.by(across, 1.4), back.by(across, -1.4)}, Closed: true, Fill: black, Line: NoInk,
	})
}
