package cells

import (
	"math"
	"slices"

	"unpin/statics/figure"
)

// Parts drawn apart: blank cells kept between what is drawn of one and of another, how short the longest member of a part
// may be, in columns, and by how much the scale is lessened from try to try.
const (
	apartGap    = 1
	apartBeside = 1 // more on each side, in columns
	shortestBar = 5.0
	apartLess   = 0.9
)

// drawApart draws the parts of a scene to one scale, each by itself, and sets them apart, so that nothing of one meets
// anything of another. Where they do not fit with all their labels, the grid stays blank, is Clipped, and has dropped all
// labels: parts are better drawn one by one.
func drawApart(s *figure.Scene, w, h int, ascii bool) Grid {
	least := leastScale(s)
	for _, arms := range [...]int{3, 2} {
		if arms > max(2, h/12) {
			continue
		}
		for scale := float64(w) / longestSpan(s); ; scale = max(scale*apartLess, least) {
			if g, ok := newGroup(s, w, h, ascii, arms, scale); ok && g.arrange(w, h) {
				if grid := g.grid(w, h); eachNearest(grid.Drawn) {
					return grid
				}
			}
			if scale <= least {
				break
			}
		}
	}
	return blank(s, w, h)
}

// eachNearest reports whether each label of an arrow is as near to it as to those of all parts.
func eachNearest(drawn []figure.Drawn) bool {
	return !slices.ContainsFunc(drawn, func(d figure.Drawn) bool {
		return d.Kind == figure.DrawnLabel && d.Owner >= 0 && !figure.IsNearest(drawn, d.Owner, d.From, d.To, 2)
	})
}

// blank is a grid without anything, which tells what is missing.
func blank(s *figure.Scene, w, h int) Grid {
	g := Grid{Width: w, Height: h, Cells: make([]Cell, w*h), Clipped: true}
	for i := range g.Cells {
		g.Cells[i] = Cell{Rune: ' '}
	}
	for i := range s.Parts {
		g.Dropped = append(g.Dropped, textsOf(&s.Parts[i])...)
	}
	return g
}

// textsOf are the labels of a part.
func textsOf(s *figure.Scene) []string {
	var list []string
	add := func(text string) {
		if text != "" {
			list = append(list, text)
		}
	}
	for _, k := range s.Symbols {
		add(k.Text)
	}
	for _, k := range s.Spreads {
		add(k.FirstText)
		add(k.MidText)
		add(k.LastText)
	}
	for _, k := range s.Arrows {
		add(k.Text)
	}
	for _, k := range s.Notes {
		add(k.Text)
	}
	return list
}

// spanOf is the longer side of the rectangle around a part, in units of length.
func spanOf(s *figure.Scene) float64 {
	xs, ys := figure.Stations(s)
	return max(figure.Span(xs), figure.Span(ys))
}

// longestSpan is the longest of the parts' sides, for that is what fills the width first, or 1 if all are pins.
func longestSpan(s *figure.Scene) float64 {
	longest := 0.0
	for i := range s.Parts {
		longest = max(longest, spanOf(&s.Parts[i]))
	}
	if longest == 0 {
		return 1
	}
	return longest
}

// leastScale is the scale at which the smallest part that is no pin can still be read.
func leastScale(s *figure.Scene) float64 {
	least := 0.0
	for i := range s.Parts {
		if span := spanOf(&s.Parts[i]); span > 0 && !s.Parts[i].IsPin() {
			least = max(least, shortestBar/span)
		}
	}
	return max(least, 1e-9)
}

// A group is the parts of a scene at one scale: each painted on a canvas of its own, and where its cells go.
type group struct {
	parts []*painter
	homes []figure.Box // where the parts would stand best
	moved []figure.Box
	ascii bool
}

// newGroup paints the parts; it tells whether all their labels have places.
func newGroup(s *figure.Scene, w, h int, ascii bool, arms int, scale float64) (*group, bool) {
	g := &group{ascii: ascii}
	d := detail{arms: arms, curve: 2, apart: 3, values: true, names: true}
	for i := range s.Parts {
		r := renderer{scene: &s.Parts[i], w: w, h: h, ascii: ascii}
		r.xs, r.ys = figure.Stations(r.scene)
		x, y := snap(r.xs, scale, d.apart), snap(r.ys, scale/2, d.apart/2)
		if x.Length() > w || y.Length() > h {
			return nil, false
		}
		p := r.painter(d, x, y)
		p.paint()
		p.wish()
		if p.used.width() > w || p.used.height() > h || len(p.lost)+len(p.labels(p.used)) > 0 {
			return nil, false
		}
		p.slopes(p.used)
		g.add(p, math.Round(r.xs[0].At*scale), -math.Round(r.ys[len(r.ys)-1].At*scale/2))
	}
	return g, true
}

// add adds a painted part whose frame has its upper left corner at (x, y).
func (g *group) add(p *painter, x, y float64) {
	u := p.used
	left, top := x+float64(u.c0-p.frame.c0), y+float64(u.r0-p.frame.r0)
	g.parts = append(g.parts, p)
	g.homes = append(g.homes, figure.Box{
		X0: left - apartBeside, Y0: top, X1: left + float64(u.width()) + apartBeside, Y1: top + float64(u.height()),
	})
}

// arrange sets the parts apart in the way that fills the grid best, and reports whether they fit.
func (g *group) arrange(w, h int) bool {
	best := math.Inf(1)
	for _, moved := range figure.WaysApart(g.homes, apartGap, float64(w+2*apartBeside), float64(h)) {
		all := figure.Around(moved)
		if over := max((all.X1-all.X0)/float64(w+2*apartBeside), (all.Y1-all.Y0)/float64(h)); over < best-1e-9 {
			best, g.moved = over, moved
		}
	}
	return best <= 1
}

// grid copies all parts into one grid, in its middle.
func (g *group) grid(w, h int) Grid {
	all := figure.Around(g.moved)
	left, top := (w-int(all.X1-all.X0))/2-int(all.X0), (h-int(all.Y1-all.Y0))/2-int(all.Y0)
	out := Grid{Width: w, Height: h, Cells: make([]Cell, w*h)}
	for i := range out.Cells {
		out.Cells[i] = Cell{Rune: ' '}
	}
	for i, p := range g.parts {
		u := p.used
		c, r := left+int(g.moved[i].X0)+apartBeside-u.c0, top+int(g.moved[i].Y0)-u.r0
		for row := u.r0; row <= u.r1; row++ {
			for col := u.c0; col <= u.c1; col++ {
				if k := *p.at(col, row); k.holder != nothing {
					out.Cells[(r+row)*w+c+col] = Cell{k.glyph(g.ascii), k.look}
				}
			}
		}
		first := len(out.Drawn)
		for _, d := range p.drawn {
			if d.Part = i; d.Owner >= 0 {
				d.Owner += first
			}
			out.Drawn = append(out.Drawn, d.Moved(float64(c), float64(r)))
		}
		for _, l := range p.placed {
			l.Col, l.Row = l.Col+c, l.Row+r
			if g.ascii {
				l.Text = asciiText(l.Text)
			}
			out.Labels = append(out.Labels, l)
		}
	}
	return out
}
