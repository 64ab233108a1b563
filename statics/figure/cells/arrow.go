package cells

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// stroke lengths of an arrow, in cells, along a direction.
func (p *painter) reach(dc int) int {
	if dc == 0 {
		return p.detail.arms
	}
	return 2*p.detail.arms + 1
}

// skip is how many cells an arrow may move out from its point to stand clear of what is there.
const skip = 10

// arrow draws a force and asks for its label: where it would have to pass a member on which it does not act, on the other side
// of its point. Where there is no room on either, it is not drawn, for it would be misread.
func (p *painter) arrow(a figure.Arrow) {
	turned := a
	turned.Pull = !a.Pull
	if p.hasRoom(a) || a.Beside.IsZero() && !a.Rope && p.hasRoom(turned) { // a rope can only pull
		return
	}
	text := a.Text
	if text == "" {
		text = "an arrow"
	}
	p.lost = append(p.lost, text)
}

// hasRoom draws a force if there is room for it on that side of its point.
func (p *painter) hasRoom(a figure.Arrow) bool {
	ray := a.Toward.Opposite()
	if a.Pull {
		ray = a.Toward
	}
	at := p.spot(a.At)
	if a.Beside.IsZero() {
		return p.outward(a, at, ray)
	}
	// A row off its line; a resultant, which acts at no joint, two where that row is taken.
	return p.outward(a, p.beside(at, a.Beside, ray, 2), ray) || a.Role == figure.ResultantMark && p.outward(a, p.beside(at, a.Beside, ray, 4), ray)
}

// outward draws an arrow outward along a ray, if there is room.
func (p *painter) outward(a figure.Arrow, at spot, ray figure.Direction) bool {
	if ray.Level() || ray.Upright() {
		return p.straight(a, at, ray)
	}
	return p.slanted(a, at, ray)
}

// ownMember is how near to its point, in cell widths, a member runs on which a force acts, for both are set to whole cells.
const ownMember = 2.1

// hub is where the member is on which an arrow acts: at its own point, but for a rope.
func hub(p *painter, a figure.Arrow, at spot) figure.Position {
	if a.Rope {
		at = p.spot(a.Hub)
	}
	return at.position()
}

// tangency is the least distance of a rope's line from the middle of its wheel, as part of the radius: circles are set to whole cells.
const tangency = 0.5

// tangent reports whether a pull of a rope that ends there still looks tangent to its wheel; other arrows need not.
func tangent(p *painter, a figure.Arrow, end figure.Position) bool {
	at, middle := p.spot(a.At).position(), p.spot(a.Hub).position()
	if !a.Rope || at == middle {
		return true
	}
	x, y := end.X-at.X, 2*(end.Y-at.Y)
	dx, dy := at.X-middle.X, 2*(at.Y-middle.Y)
	return math.Abs(dx*y-dy*x) >= tangency*math.Hypot(dx, dy)*math.Hypot(x, y)
}

// beside is a place on that side of a point, so many cell widths off its arrow's own line, from which an arrow finds free cells
// along a ray, past what stands perpendicular to it.
func (p *painter) beside(at spot, side, ray figure.Direction, off float64) spot {
	if !ray.Level() && !ray.Upright() {
		return at.by(side, off) // the way out along it is looked for later
	}
	dc, dr := cellStep(ray)
	c, r := at.by(side, off).cell()
	for slide := range skip {
		free := true
		for i := 1; i < p.reach(dc) && free; i++ {
			free = p.open(c+(slide+i)*dc, r+(slide+i)*dr)
		}
		if free {
			return spot{float64(c + slide*dc), float64(r + slide*dr)}
		}
	}
	return spot{float64(c), float64(r)}
}

// straight draws a level or upright arrow outward along a ray, beyond what already stands there, if there is room.
func (p *painter) straight(a figure.Arrow, at spot, ray figure.Direction) bool {
	c, r := at.cell()
	dc, dr := cellStep(ray)
	n := p.reach(dc)
	first := 1
	if !a.Beside.IsZero() && p.open(c, r) {
		first = 0 // its head stands level with the point
	}
	start, room := p.clear(c, r, dc, dr, n, first)
	if !room || p.passes(a, positionOf(c+start*dc, r+start*dr), positionOf(c+(start+n-1)*dc, r+(start+n-1)*dr)) || !tangent(p, a, positionOf(c+(start+n-1)*dc, r+(start+n-1)*dr)) {
		return false
	}
	tip, tail := start, start+n-1
	if a.Pull {
		tip, tail = tail, start
	}
	p.shaft(c, r, dc, dr, start, n, tip, a)
	if !p.wideHead(a, c+tip*dc, r+tip*dr) {
		p.put(c+tip*dc, r+tip*dr, figure.Head(a.Toward, a.Role == figure.UnknownForce), a.Look)
	}
	near := cellArea(c+start*dc, r+start*dr, c+(start+n-1)*dc, r+(start+n-1)*dr)
	out := max(tail, tip)
	k := p.note(figure.Drawn{
		Kind: figure.DrawnArrow, From: positionOf(c+tail*dc, r+tail*dr), To: positionOf(c+tip*dc, r+tip*dr), At: p.spot(a.At).position(), Hub: hub(p, a, p.spot(a.At)), Text: a.Text,
	})
	want := request{arrow: k + 1, text: a.Text, near: near, c: c + out*dc, r: r + out*dr, look: a.Look, rank: figure.RankValue}
	want.side = figure.AtLeft | figure.AtRight
	if dc != 0 {
		want.c = (near.c0 + near.c1) / 2
		want.side = figure.Above | figure.Below | figure.SideToward(ray)
	}
	p.ask(want)
	return true
}

// wideHead draws the head of an assumed upright force in ASCII as two strokes on either side of its shaft, if there is room.
func (p *painter) wideHead(a figure.Arrow, c, r int) bool {
	if !p.ascii || a.Role != figure.UnknownForce || !a.Toward.Upright() || !p.open(c-1, r) || !p.open(c+1, r) || !p.open(c, r) {
		return false
	}
	left, right := '/', '\\'
	if a.Toward.Y < 0 {
		left, right = right, left
	}
	p.put(c-1, r, left, a.Look)
	p.put(c, r, dashUpright, a.Look)
	p.put(c+1, r, right, a.Look)
	return true
}

// gapOfArrows is the least distance between arrows, in cell widths: two in one line, tail to tail, are not to look like one with
// two heads.
const gapOfArrows = 1.5

// apart reports whether an arrow from one place to another keeps clear of those drawn before.
func (p *painter) apart(from, to figure.Position) bool {
	a := figure.Drawn{From: from, To: to}
	return !slices.ContainsFunc(p.drawn, func(d figure.Drawn) bool { return d.Kind == figure.DrawnArrow && d.Gap(a, 2) < gapOfArrows })
}

// clear is how far out from (c, r) a run of n free cells begins; it tells whether there is one.
func (p *painter) clear(c, r, dc, dr, n, first int) (start int, room bool) {
	for start := first; start <= first+skip; start++ {
		free := true
		for i := start; i < start+n && free; i++ {
			free = p.open(c+i*dc, r+i*dr)
		}
		if free && p.apart(positionOf(c+start*dc, r+start*dr), positionOf(c+(start+n-1)*dc, r+(start+n-1)*dr)) {
			return start, true
		}
	}
	return first, false
}

// shaft draws the line of a straight arrow from start, n cells long, but for its head. A bar at its tail tells a known force from
// a load without colour, as on paper.
func (p *painter) shaft(c, r, dc, dr, start, n, tip int, a figure.Arrow) {
	for i := start; i < start+n; i++ {
		cc, rr := c+i*dc, r+i*dr
		if i == tip || !p.takes(cc, rr, a.Look) {
			p.use(cc, rr)
			continue
		}
		if a.Role == figure.KnownForce && i == start+n-1-(tip-start) {
			p.tailBar(cc, rr, a)
			continue
		}
		sides := [2]int{north, south}
		if dc != 0 {
			sides = [2]int{east, west}
		}
		p.arm(cc, rr, sides[0], light, a.Look)
		p.arm(cc, rr, sides[1], light, a.Look)
		p.at(cc, rr).dashed = a.Role == figure.UnknownForce || a.Role == figure.ResultantMark
	}
}

// tailBar draws the tail of a level or upright arrow, with a bar across it.
func (p *painter) tailBar(c, r int, a figure.Arrow) {
	bar, on := [2]int{east, west}, north
	switch {
	case a.Toward.Level() && a.Toward.X > 0:
		bar, on = [2]int{north, south}, east
	case a.Toward.Level():
		bar, on = [2]int{north, south}, west
	case a.Toward.Y < 0:
		on = south
	}
	p.arm(c, r, bar[0], light, a.Look)
	p.arm(c, r, bar[1], light, a.Look)
	p.arm(c, r, on, light, a.Look)
}

// slanted draws an arrow at any other angle, in dots, if there is room.
func (p *painter) slanted(a figure.Arrow, at spot, ray figure.Direction) bool {
	long := 2*float64(p.detail.arms) + 3
	start, room := p.clearSlant(at, ray, long)
	if !room || p.passes(a, at.by(ray, start).position(), at.by(ray, start+long).position()) || !tangent(p, a, at.by(ray, start+long).position()) {
		return false
	}
	near, far := at.by(ray, start), at.by(ray, start+long)
	tip := near
	if a.Pull {
		tip = far
	}
	hc, hr := tip.cell()
	p.put(hc, hr, figure.Head(a.Toward, a.Role == figure.UnknownForce), a.Look)
	p.slope(near, far, 1, a.Role == figure.UnknownForce, a.Look)
	c0, r0 := near.between(far, 0.6).cell() // a label by the tail is read with the arrow
	c1, r1 := far.cell()
	tail := far
	if a.Pull {
		tail = near
	}
	point := p.spot(a.At) // also of an arrow beside it; a rope's is where its line leaves the wheel
	if a.Rope {
		point = at
	}
	k := p.note(figure.Drawn{Kind: figure.DrawnArrow, From: tail.position(), To: tip.position(), At: point.position(), Hub: hub(p, a, point), Text: a.Text})
	p.ask(request{arrow: k + 1, text: a.Text, near: cellArea(c0, r0, c1, r1), c: c1, r: r1, look: a.Look, rank: figure.RankValue, slope: a.Slope, along: a.Toward})
	return true
}

// clearSlant is how far out, in cell widths, a slanted arrow finds free cells; it tells whether it does.
func (p *painter) clearSlant(at spot, ray figure.Direction, long float64) (start float64, room bool) {
	const first = 1.7
	for start := first; start < first+skip; start++ {
		free := true
		for t := start; t <= start+long && free; t++ {
			c, r := at.by(ray, t).cell()
			free = p.open(c, r)
		}
		if free && p.apart(at.by(ray, start).position(), at.by(ray, start+long).position()) {
			return start, true
		}
	}
	return first, false
}
