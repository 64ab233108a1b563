package figure

import (
	"math"
)

// Cells draws a scene in exactly w × h terminal cells; nought or less counts as 1. Where room is short it gives up the
// dimensions first, then the values beside their arrows, then the names.
func Cells(s Scene, w, h int, ascii bool) Grid {
	w, h = max(w, 1), max(h, 1)
	for _, d := range details(&s, w, h) {
		if p, ok := fit(&s, d, w, h, 0); ok {
			if g, whole := p.cut(w, h, ascii); whole {
				return g
			}
			if g, whole := keyed(&s, d, w, h, ascii); whole {
				return g
			}
		}
	}
	return bare(&s, w, h, ascii)
}

// details lists how much to draw, from all to the least.
func details(s *Scene, w, h int) []detail {
	arms := min(max(h/12, 2), 4)
	if len(s.Strokes) > 0 && levelOnly(s) {
		arms = min(max(h/7, 2), 4)
	}
	list := []detail{{arms: arms, apart: 4, dimensions: true, values: true, names: true}}
	for arms > 2 {
		arms--
		list = append(list, detail{arms: arms, apart: 3, dimensions: true, values: true, names: true})
	}
	return append(list,
		detail{arms: 2, apart: 2, dimensions: true, values: true, names: true},
		detail{arms: 2, apart: 3, values: true, names: true},
		detail{arms: 2, apart: 2, values: true, names: true},
		detail{arms: 1, apart: 2, names: true},
		detail{arms: 1, apart: 1, names: true})
}

// levelOnly reports whether the whole scene is one level line.
func levelOnly(s *Scene) bool {
	for _, k := range s.Strokes {
		if k.From.Y != s.Strokes[0].From.Y || k.To.Y != s.Strokes[0].From.Y {
			return false
		}
	}
	return true
}

// fit finds the largest scale at which a scene at that detail fills no more than w × h cells, less a key's rows, and
// paints it there.
func fit(s *Scene, d detail, w, h, key int) (*painter, bool) {
	h -= key
	if h < 1 {
		return nil, false
	}
	xs, ys := stations(s)
	slackX, slackY := 2, 1
	for range 5 {
		scale := largest(span(xs), span(ys), w-1-slackX, h-1-slackY)
		if scale <= 0 {
			return nil, false
		}
		p := newPainter(s, d, w, h, snap(xs, scale, d.apart), snap(ys, scale/2, d.apart/2))
		p.paint()
		p.wish()
		p.dimensions()
		if p.used.width() <= w && p.used.height() <= h {
			return p, true
		}
		slackX = max(slackX, p.used.width()-p.x.length()-1)
		slackY = max(slackY, p.used.height()-p.y.length()-1)
		if p.x.length() > w-1-slackX {
			slackX++
		}
		if p.y.length() > h-1-slackY {
			slackY++
		}
	}
	return nil, false
}

// largest is the scale, in columns a unit, that fills so many columns or twice so many rows, whichever is less.
func largest(spanX, spanY float64, cols, rows int) float64 {
	if cols < 0 || rows < 0 {
		return 0
	}
	scale := math.Inf(1)
	if spanX > 0 {
		scale = float64(cols) / spanX
	}
	if spanY > 0 {
		scale = min(scale, 2*float64(rows)/spanY)
	}
	if math.IsInf(scale, 1) {
		return 1
	}
	return scale
}

// newPainter prepares a canvas with the scene in the middle and room around.
func newPainter(s *Scene, d detail, w, h int, x, y ruler) *painter {
	padX, padY := w/2+12, h/2+8
	return &painter{
		canvas: newCanvas(max(w, x.length())+2*padX, max(h, y.length())+2*padY),
		scene:  s, detail: d, x: x, y: y, left: padX, foot: padY + y.length(),
	}
}

// stations collects where things stand along both axes.
func stations(s *Scene) (xs, ys []station) {
	add := func(at Point, gapX, gapY int) {
		xs = append(xs, station{at.X, gapX})
		ys = append(ys, station{at.Y, gapY})
	}
	for _, k := range s.Strokes {
		add(k.From, 4, 2)
		add(k.To, 4, 2)
	}
	for _, k := range s.Symbols {
		add(k.At, 2, 1)
	}
	for _, k := range s.Arrows {
		add(k.At, 2, 1)
	}
	for _, k := range s.Spreads {
		add(k.From, 1, 1)
		add(k.To, 1, 1)
	}
	for _, n := range s.Notes {
		add(n.At, 1, 1)
	}
	return distinct(xs), distinct(ys)
}

// cut places the labels in a window of w × h cells about what was painted, and cuts it out. It tells whether every label
// found a place.
func (p *painter) cut(w, h int, ascii bool) (Grid, bool) {
	window := p.window(w, h)
	left := p.labels(window)
	g := p.grid(window, w, h, ascii)
	for _, q := range left {
		g.Dropped = append(g.Dropped, q.text)
	}
	g.Dropped = append(g.Dropped, p.untold()...)
	return g, len(left) == 0
}

// window is the block of w × h cells with what was painted in its middle.
func (p *painter) window(w, h int) area {
	c := p.used.c0 - (w-p.used.width())/2
	r := p.used.r0 - (h-p.used.height())/2
	return area{c, r, c + w - 1, r + h - 1}
}

// grid cuts a window out of the canvas into the top of a grid of w × h cells.
func (p *painter) grid(window area, w, h int, ascii bool) Grid {
	g := Grid{Width: w, Height: h, Cells: make([]Cell, w*h)}
	for i := range g.Cells {
		g.Cells[i].Rune = ' '
	}
	for r := window.r0; r <= window.r1; r++ {
		for c := window.c0; c <= window.c1; c++ {
			if k := p.at(c, r); k.holder != nothing {
				g.Cells[(r-window.r0)*w+c-window.c0] = Cell{k.glyph(ascii), k.look}
			}
		}
	}
	for _, l := range p.placed {
		l.Col -= window.c0
		l.Row -= window.r0
		if ascii {
			l.Text = asciiText(l.Text)
		}
		g.Labels = append(g.Labels, l)
	}
	return g
}

func asciiText(s string) string {
	out := []rune(s)
	for i, r := range out {
		out[i] = toASCII(r)
	}
	return string(out)
}
