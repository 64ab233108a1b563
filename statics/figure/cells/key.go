package cells

import (
	"strconv"

	"unpin/statics/figure"
)

// mostKey is the share of a grid's height that a key may take: one row in so many.
const mostKey = 3

// keyed fits the scene above a key: labels that find no place give way to a number there. It gives the scale and tells
// whether every label stands in the figure or the key.
func (r *renderer) keyed(d detail) (g Grid, scale float64, whole bool) {
	for rows := 1; rows <= r.h/mostKey; rows++ {
		p, ok := r.fit(d, rows)
		if !ok {
			break
		}
		if g, whole, fits := r.cutKeyed(p, rows); fits {
			if !whole {
				r.consider(g)
			}
			return g, p.x.Scale, whole
		}
	}
	return Grid{}, 0, false
}

// cutKeyed places labels or their numbers and writes the key in the last rows. It tells whether no label was dropped,
// and whether the key fitted.
func (r *renderer) cutKeyed(p *painter, rows int) (g Grid, whole, fits bool) {
	window := p.window(r.w, r.h-rows)
	var entries, dropped []string
	tags := map[string]string{}
	for _, q := range p.labels(window) {
		text := q.text
		tag, seen := tags[text]
		if !seen {
			tag = "#" + strconv.Itoa(len(entries)+1)
		}
		q.text, q.look.Role = tag, figure.KeyMark
		switch {
		case q.rank == figure.RankName || !p.settle(q, -1, window):
			dropped = append(dropped, text)
		case !seen:
			tags[text] = tag
			entries = append(entries, tag+" "+text)
		}
	}
	p.warnOffScale(window)
	p.slopes(window)
	lines, ok := wrap(entries, r.w)
	if !ok || len(lines) > rows {
		return Grid{}, false, false
	}
	for i, line := range lines {
		p.keyLine(line, window.c0, window.r1+1+i)
	}
	window.r1 += rows
	g = r.grid(p, window)
	g.Dropped, g.Lost = append(append(dropped, p.untold()...), p.lost...), p.lost
	return g, len(dropped)+len(p.lost) == 0, true
}

// keyLine writes one line of the key.
func (l *lettering) keyLine(entries []string, col, row int) {
	for _, e := range entries {
		l.write(e, col, row, figure.Look{Role: figure.KeyMark})
		col += len([]rune(e)) + 2
	}
}

// wrap sets entries in lines no wider than w, two blanks apart; it fails if one is wider than that.
func wrap(entries []string, w int) ([][]string, bool) {
	var lines [][]string
	col := w + 1
	for _, e := range entries {
		n := len([]rune(e))
		if n > w {
			return nil, false
		}
		if col+n > w {
			lines = append(lines, nil)
			col = 0
		}
		lines[len(lines)-1] = append(lines[len(lines)-1], e)
		col += n + 2
	}
	return lines, true
}

// untold lists, in words, the dimensions that this much detail leaves out.
func (p *painter) untold() []string {
	var out []string
	for _, d := range p.scene.Dimensions {
		if shown := d.Vertical && p.detail.up || !d.Vertical && p.detail.across; !shown {
			out = append(out, d.Meaning)
		}
	}
	return out
}

// bareRim is how many rows, and twice as many columns, are kept for arrows around a bare frame.
const bareRim = 3

// bare draws what it can where nothing whole fits: the frame as large as there is room for, and such labels as find a
// place.
func (r *renderer) bare() Grid {
	d := detail{arms: 1, apart: 1, names: true}
	p, ok := r.fit(d, 0)
	if !ok {
		scale := max(largest(figure.Span(r.xs), figure.Span(r.ys), max(r.w-1-2*bareRim, 1), max(r.h-1-bareRim, 1)), 1e-9)
		p = r.painter(d, figure.NewRuler(r.xs, scale, 0), figure.NewRuler(r.ys, scale/2, 0))
		p.paint()
		p.used = p.frame
	}
	g, _ := r.cut(p)
	g.Clipped = !ok
	return g
}
