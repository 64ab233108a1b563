package cells

import (
	"unpin/statics/figure"
)

// foot adds lines beneath the grid.
func (g *Grid) foot(lines []string, ascii bool) {
	look := figure.Look{Role: figure.KeyMark}
	for _, line := range lines {
		if ascii {
			line = asciiText(line)
		}
		row := make([]Cell, g.Width)
		for i := range row {
			row[i] = Cell{Rune: ' '}
		}
		col := (g.Width - len([]rune(line))) / 2
		for i, char := range []rune(line) {
			row[col+i] = Cell{char, look}
		}
		g.Labels = append(g.Labels, Label{line, col, g.Height, look})
		g.Cells = append(g.Cells, row...)
		g.Height++
	}
}

// cut places the labels in the grid's window on what was painted, and cuts that out. It tells whether every label found
// a place.
func (r *renderer) cut(p *painter) (Grid, bool) {
	window := p.window(r.w, r.h)
	left := p.labels(window)
	p.warnOffScale(window)
	p.slopes(window)
	g := r.grid(p, window)
	for _, q := range left {
		g.Dropped = append(g.Dropped, q.text)
	}
	g.Dropped, g.Lost = append(append(g.Dropped, p.untold()...), p.lost...), p.lost
	return g, len(left)+len(p.lost) == 0
}

// grid cuts a window out of the canvas.
func (r *renderer) grid(p *painter, window area) Grid {
	g := Grid{Width: r.w, Height: r.h, Cells: make([]Cell, r.w*r.h)}
	for i := range g.Cells {
		k := *p.at(window.c0+i%r.w, window.r0+i/r.w)
		g.Cells[i] = Cell{' ', figure.Look{}}
		if k.holder != nothing {
			g.Cells[i] = Cell{k.glyph(r.ascii), k.look}
		}
	}
	for _, d := range p.drawn {
		g.Drawn = append(g.Drawn, d.Moved(-float64(window.c0), -float64(window.r0)))
	}
	for _, l := range p.placed {
		l.Col -= window.c0
		l.Row -= window.r0
		if r.ascii {
			l.Text = asciiText(l.Text)
		}
		g.Labels = append(g.Labels, l)
	}
	return g
}
