package figure

import "math"

// stroke lengths of an arrow, in cells, along a direction.
func (p *painter) reach(dc int) int {
	if dc == 0 {
		return p.detail.arms
	}
	return 2*p.detail.arms + 1
}

// skip is how many cells an arrow may move out from its point to stand clear of what is there.
const skip = 10

// arrow draws a force and asks for its label.
func (p *painter) arrow(a Arrow) {
	ray := a.Toward.neg()
	if a.Pull {
		ray = a.Toward
	}
	at := p.spot(a.At)
	if !a.Beside.isZero() {
		at = p.beside(at, a.Beside, ray)
	}
	if ray.level() || ray.upright() {
		p.straight(a, at, ray)
		return
	}
	p.slanted(a, at, ray)
}

// beside is the nearest place on that side of a point from which an arrow finds free cells along a ray.
func (p *painter) beside(at spot, side, ray Vector) spot {
	for k := 1.0; k < skip; k++ {
		from := at.by(side, 2*k)
		c, r := from.cell()
		dc, dr := cellStep(ray)
		free := true
		for i := 1; i < p.reach(dc) && free; i++ {
			free = p.open(c+i*dc, r+i*dr)
		}
		if free {
			return from
		}
	}
	return at.by(side, 2)
}

// straight draws a level or upright arrow outward along a ray, beyond what already stands there.
func (p *painter) straight(a Arrow, at spot, ray Vector) {
	c, r := at.cell()
	dc, dr := cellStep(ray)
	n := p.reach(dc)
	first := 1
	if !a.Beside.isZero() && p.open(c, r) {
		first = 0 // its head stands level with the point
	}
	start := p.clear(c, r, dc, dr, n, first)
	tip, tail := start, start+n-1
	if a.Pull {
		tip, tail = tail, start
	}
	p.shaft(c, r, dc, dr, start, n, tip, a)
	p.put(c+tip*dc, r+tip*dr, head(a.Toward, a.Role == UnknownForce), a.Look)
	near := cellArea(c+start*dc, r+start*dr, c+(start+n-1)*dc, r+(start+n-1)*dr)
	out := max(tail, tip)
	want := request{text: a.Text, near: near, c: c + out*dc, r: r + out*dr, look: a.Look, rank: rankValue}
	want.side = atLeft | atRight
	if dc != 0 {
		want.c = (near.c0 + near.c1) / 2
		want.side = above | below | outward(ray)
	}
	p.ask(want)
}

// clear is how far out from (c, r) a run of n free cells begins.
func (p *painter) clear(c, r, dc, dr, n, first int) int {
	for start := first; start <= first+skip; start++ {
		free := true
		for i := start; i < start+n && free; i++ {
			free = p.open(c+i*dc, r+i*dr)
		}
		if free {
			return start
		}
	}
	return first
}

// shaft draws the line of a straight arrow from start, n cells long, but for its head.
func (p *painter) shaft(c, r, dc, dr, start, n, tip int, a Arrow) {
	for i := start; i < start+n; i++ {
		cc, rr := c+i*dc, r+i*dr
		if i == tip || !p.takes(cc, rr, a.Look) {
			p.use(cc, rr)
			continue
		}
		sides := [2]int{north, south}
		if dc != 0 {
			sides = [2]int{east, west}
		}
		p.arm(cc, rr, sides[0], light, a.Look)
		p.arm(cc, rr, sides[1], light, a.Look)
		p.at(cc, rr).dashed = a.Role == UnknownForce || a.Role == ResultantMark
	}
}

// slanted draws an arrow at any other angle, in dots.
func (p *painter) slanted(a Arrow, at spot, ray Vector) {
	long := 2*float64(p.detail.arms) + 3
	start := p.clearSlant(at, ray, long)
	near, far := at.by(ray, start), at.by(ray, start+long)
	tip := near
	if a.Pull {
		tip = far
	}
	hc, hr := tip.cell()
	p.put(hc, hr, head(a.Toward, a.Role == UnknownForce), a.Look)
	p.slope(near, far, 1, a.Role == UnknownForce, a.Look)
	c0, r0 := near.between(far, 0.6).cell() // a label by the tail is read with the arrow
	c1, r1 := far.cell()
	p.ask(request{text: a.Text, near: cellArea(c0, r0, c1, r1), c: c1, r: r1, look: a.Look, rank: rankValue})
}

// clearSlant is how far out, in cell widths, a slanted arrow finds free cells.
func (p *painter) clearSlant(at spot, ray Vector, long float64) float64 {
	const first = 1.7
	for start := first; start < first+skip; start++ {
		free := true
		for t := start; t <= start+long && free; t++ {
			c, r := at.by(ray, t).cell()
			free = p.open(c, r)
		}
		if free {
			return start
		}
	}
	return first
}

// cellArea is the block between two cells.
func cellArea(c0, r0, c1, r1 int) area {
	return area{min(c0, c1), min(r0, r1), max(c0, c1), max(r0, r1)}
}

// offAxis is the angle between two directions, 0 to π.
func offAxis(v, w Vector) float64 {
	return math.Acos(min(max(v.dot(w), -1), 1))
}
