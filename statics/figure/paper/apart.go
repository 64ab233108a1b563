package paper

import (
	"math"

	"unpin/statics/figure"
)

// Parts drawn apart: points kept free between what is drawn of one and of another, how short the longest side of a part may
// be, and by how much the scale is lessened from try to try.
const (
	apartGap    = 10.0
	shortestBar = 34.0
	apartLess   = 0.9
)

// layoutApart lays the parts of a scene out to one scale, each by itself, and sets them apart, so that nothing of one meets
// anything of another. They are as large as fits, but no smaller than can be read, unless one part is so long that it alone
// would not fit.
func layoutApart(s *figure.Scene, width, height float64) Sheet {
	scale := largestScale(s, width, height)
	least := leastScale(s)
	legible := scale >= least
	least = min(least, scale)
	for {
		g := newGroup(s, scale)
		last := scale <= least
		if (last || g.mayFit(width-2*rim, height-2*rim)) && g.arrange(width-2*rim, height-2*rim) || last {
			sheet := g.finish().within(width, height)
			sheet.Fits = sheet.Fits && legible
			return sheet
		}
		scale = max(scale*apartLess, least)
	}
}

// longerSide is that of the rectangle around a part, 0 for a pin.
func longerSide(s *figure.Scene) float64 {
	xs, ys := figure.Stations(s)
	return max(figure.Span(xs), figure.Span(ys))
}

// leastScale is the scale at which the smallest part that is no pin can still be read.
func leastScale(s *figure.Scene) float64 {
	least := 0.0
	for i := range s.Parts {
		if side := longerSide(&s.Parts[i]); side > 0 && !s.Parts[i].IsPin() {
			least = max(least, shortestBar/side)
		}
	}
	return least
}

// largestScale is the scale at which the largest part alone would fill the sheet.
func largestScale(s *figure.Scene, width, height float64) float64 {
	scale := math.Inf(1)
	for i := range s.Parts {
		xs, ys := figure.Stations(&s.Parts[i])
		if figure.Span(xs)+figure.Span(ys) > 0 {
			scale = min(scale, fillScale(figure.Span(xs), figure.Span(ys), width, height))
		}
	}
	if math.IsInf(scale, 1) {
		return 1
	}
	return scale
}

// A group is the parts of a scene at one scale: each laid out in places of its own, and by how much these are moved.
type group struct {
	scene *figure.Scene
	parts []*layout
	homes []figure.Box // where the parts would stand best
	moved []figure.Box
}

func newGroup(s *figure.Scene, scale float64) *group {
	g := &group{scene: s}
	for i := range s.Parts {
		xs, ys := figure.Stations(&s.Parts[i])
		p := newPart(&s.Parts[i], xs, ys, scale)
		g.parts = append(g.parts, p)
		b, x, y := p.bounds, xs[0].At*scale, ys[len(ys)-1].At*scale
		g.homes = append(g.homes, figure.Box{X0: x + b.x0, Y0: b.y0 - y, X1: x + b.x1, Y1: b.y1 - y})
	}
	return g
}

// mayFit reports whether the parts, which cannot lie over one another, are no larger than the sheet in all.
func (g *group) mayFit(width, height float64) bool {
	area := 0.0
	for _, b := range g.homes {
		area += (b.X1 - b.X0) * (b.Y1 - b.Y0)
	}
	return area <= width*height
}

// arrange sets the parts apart in the way that fills the sheet best, and reports whether they fit.
func (g *group) arrange(width, height float64) bool {
	best := math.Inf(1)
	for _, moved := range figure.WaysApart(g.homes, apartGap, width, height) {
		all := figure.Around(moved)
		if over := max((all.X1-all.X0)/width, (all.Y1-all.Y0)/height); over < best-1e-9 {
			best, g.moved = over, moved
		}
	}
	return best <= 1
}

// shift is by how much the places of part i are moved.
func (g *group) shift(i int) Place {
	return Place{g.moved[i].X0 - g.parts[i].bounds.x0, g.moved[i].Y0 - g.parts[i].bounds.y0}
}

// finish draws all parts on one sheet, with fine lines between the faces of each pin where these are in nobody's way.
func (g *group) finish() Sheet {
	all := &layout{scene: g.scene, lettering: &lettering{board: &board{bounds: noRect}}}
	for i, p := range g.parts {
		all.board.add(p.board, g.shift(i))
		first, by := len(all.drawn), g.shift(i)
		for _, d := range p.drawn {
			if d.Part = i; d.Owner >= 0 {
				d.Owner += first
			}
			all.note(d.Moved(by.X, by.Y))
		}
		all.stretched = all.stretched || p.stretched
		all.misread += p.misread
	}
	all.misread += all.astray() + barred(all.drawn)
	for _, f := range g.scene.Faces {
		g.join(all, f)
	}
	if all.stretched {
		all.remark(figure.OffScale)
	}
	return all.finish()
}

// astray is how many labels stand nearer to an arrow of another part than to their own.
func (p *board) astray() int {
	n := 0
	for i := range p.drawn {
		if d := &p.drawn[i]; d.Kind == figure.DrawnLabel && d.Owner >= 0 && !figure.IsNearest(p.drawn, d.Owner, d.From, d.To, 1) {
			n++
		}
	}
	return n
}

// barred is how many arrows have the arrow of another point on the way to their own, at which they would seem to act: a pull of a
// rope leads to its wheel and is plain.
func barred(drawn []figure.Drawn) int {
	n := 0
	for i := range drawn {
		d := &drawn[i]
		if d.Kind != figure.DrawnArrow || d.At != d.Hub {
			continue
		}
		from, far := figure.Drawn{From: d.From, To: d.At}, figure.Drawn{From: d.To, To: d.At}
		for k := range drawn {
			o := &drawn[k]
			if o.Kind == figure.DrawnArrow && o.At != d.At && o.Part == d.Part && (o.Gap(from, 1) == 0 || o.Gap(far, 1) == 0) {
				n++
			}
		}
	}
	return n
}

// join draws the line between two faces.
func (g *group) join(all *layout, f figure.Face) {
	const clear = 5.0 // of a pin's ring
	place := func(i int) Place { return g.parts[i].place(f.At).plus(g.shift(i)) }
	a, b := place(f.A), place(f.B)
	if a.distance(b) < 4*clear {
		return
	}
	from, to := a.by(a.toward(b), clear), b.by(b.toward(a), clear)
	line := bar(from, to, fineWeight)
	for i := range all.solid {
		if t := &all.solid[i]; t.meets(line) {
			return
		}
	}
	all.draw(fineLayer, Mark{Path: []Place{from, to}, Weight: fineWeight, Dashed: true, Line: grey, Fill: NoInk})
}

// plus is the place moved.
func (s Place) plus(by Place) Place { return Place{s.X + by.X, s.Y + by.Y} }

// add puts all that is drawn on another board onto this one, moved.
func (p *board) add(o *board, by Place) {
	move := func(path []Place) []Place {
		out := make([]Place, len(path))
		for i, at := range path {
			out[i] = at.plus(by)
		}
		return out
	}
	for layer, marks := range o.layers {
		for _, m := range marks {
			m.Path = move(m.Path)
			p.layers[layer] = append(p.layers[layer], m)
		}
	}
	for _, s := range o.solid {
		p.take(newShape(move(s.corners)...))
	}
	b := o.bounds
	p.bounds = p.bounds.with(rect{b.x0 + by.X, b.y0 + by.Y, b.x1 + by.X, b.y1 + by.Y})
}
