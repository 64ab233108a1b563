package cells

import "unpin/statics/figure"

// symbolWheel is how far, in columns, a wheel without a radius reaches to either side of its middle; half as many rows up and down.
const symbolWheel = 2

// pinWheel is the largest radius of a wheel on a pin that is drawn alone, in columns.
const pinWheel = 3.0

// wheel draws a pulley: small as a box with round corners, else as a circle in dots.
func (p *painter) wheel(w figure.Wheel) {
	c, r := p.cellOf(w.At)
	box := area{c - symbolWheel, r - symbolWheel/2, c + symbolWheel, r + symbolWheel/2}
	if w.Radius > 0 {
		box.c0, _ = p.cellOf(w.Rim(figure.Direction{X: -1}))
		box.c1, _ = p.cellOf(w.Rim(figure.Direction{X: 1}))
		_, box.r0 = p.cellOf(w.Rim(figure.Direction{Y: 1}))
		_, box.r1 = p.cellOf(w.Rim(figure.Direction{Y: -1}))
	}
	if box.height() > 3 && !p.ascii {
		var rim []spot
		for _, out := range figure.Circle(32) {
			rim = append(rim, p.spot(w.Rim(out)))
		}
		p.round(rim, w.Look)
		return
	}
	p.rounded(box, w)
}

// round draws the circle of a large wheel, through spots around it.
func (v *canvas) round(rim []spot, look figure.Look) {
	for i, at := range rim {
		v.slope(at, rim[(i+1)%len(rim)], 1, false, look)
	}
}

// rounded draws a small wheel. Where the rope runs on along a side, that goes on past its corner; members stay whole.
func (v *canvas) rounded(box area, w figure.Wheel) {
	for c := box.c0 + 1; c < box.c1; c++ {
		for _, r := range [2]int{box.r0, box.r1} {
			v.arm(c, r, east, light, w.Look)
			v.arm(c, r, west, light, w.Look)
		}
	}
	for r := box.r0 + 1; r < box.r1; r++ {
		for _, c := range [2]int{box.c0, box.c1} {
			v.arm(c, r, north, light, w.Look)
			v.arm(c, r, south, light, w.Look)
		}
	}
	for _, k := range []struct {
		c, r, level, upright int
		char                 rune
		out                  figure.Direction
	}{
		{box.c0, box.r0, east, south, '╭', figure.Direction{X: -1, Y: 1}}, {box.c1, box.r0, west, south, '╮', figure.Direction{X: 1, Y: 1}},
		{box.c0, box.r1, east, north, '╰', figure.Direction{X: -1, Y: -1}}, {box.c1, box.r1, west, north, '╯', figure.Direction{X: 1, Y: -1}},
	} {
		if v.isMember(k.c, k.r) {
			v.use(k.c, k.r)
			continue
		}
		on := leaving(w, k.out)
		if on < 0 {
			v.put(k.c, k.r, k.char, w.Look)
			continue
		}
		for _, side := range []int{k.level, k.upright, on} {
			v.arm(k.c, k.r, side, light, w.Look)
		}
	}
}

// leaving is the side on which the rope leaves the box of a wheel by the corner in a direction from its middle, or −1.
func leaving(w figure.Wheel, corner figure.Direction) int {
	for i, out := range w.Out {
		end := w.Ends[i]
		dc, dr := cellStep(end)
		switch {
		case out.IsZero() || out.Dot(corner) < 0.5 || end.Dot(corner) < 0.5:
		case out.Level() && dr < 0:
			return north
		case out.Level():
			return south
		case out.Upright() && dc < 0:
			return west
		case out.Upright():
			return east
		}
	}
	return -1
}
