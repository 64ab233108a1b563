package figure

import "strconv"

// mostKey is the share of a grid's height that a key may take: one row in so many.
const mostKey = 3

// keyed fits a scene above a key: labels that find no place give way to a number there. It tells whether every label
// stands in the figure or the key.
func keyed(s *Scene, d detail, w, h int, ascii bool) (Grid, bool) {
	for rows := 1; rows <= h/mostKey; rows++ {
		p, ok := fit(s, d, w, h, rows)
		if !ok {
			break
		}
		if g, whole, fits := p.cutKeyed(w, h, rows, ascii); fits {
			return g, whole
		}
	}
	return Grid{}, false
}

// cutKeyed places labels or their numbers and writes the key in the last rows. It tells whether no label was dropped,
// and whether the key fitted.
func (p *painter) cutKeyed(w, h, rows int, ascii bool) (g Grid, whole, fits bool) {
	window := p.window(w, h-rows)
	var entries, dropped []string
	for _, q := range p.labels(window) {
		tag := "#" + strconv.Itoa(len(entries)+1)
		text := q.text
		q.text, q.look.Role = tag, KeyMark
		if q.rank != rankName && p.settle(q, -1, window) {
			entries = append(entries, tag+" "+text)
			continue
		}
		dropped = append(dropped, text)
	}
	lines, ok := wrap(entries, w)
	if !ok || len(lines) > rows {
		return Grid{}, false, false
	}
	for i, line := range lines {
		p.keyLine(line, window.c0, window.r1+1+i)
	}
	window.r1 += rows
	g = p.grid(window, w, h, ascii)
	g.Dropped = append(dropped, p.untold()...)
	return g, len(dropped) == 0, true
}

// keyLine writes one line of the key.
func (p *painter) keyLine(entries []string, col, row int) {
	for _, e := range entries {
		p.write(e, col, row, Look{Role: KeyMark})
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
	if p.detail.dimensions {
		return nil
	}
	var out []string
	for _, d := range p.scene.Dimensions {
		out = append(out, d.Meaning)
	}
	return out
}

// bare draws what it can where nothing whole fits: the frame as large as there is room for, and such labels as find a
// place.
func bare(s *Scene, w, h int, ascii bool) Grid {
	d := detail{arms: 1, apart: 1, names: true}
	p, ok := fit(s, d, w, h, 0)
	if !ok {
		xs, ys := stations(s)
		scale := max(largest(span(xs), span(ys), w-1, h-1), 1e-9)
		p = newPainter(s, d, w, h, newRuler(xs, scale, 0), newRuler(ys, scale/2, 0))
		p.paint()
		p.used = p.frame
	}
	g, _ := p.cut(w, h, ascii)
	return g
}
