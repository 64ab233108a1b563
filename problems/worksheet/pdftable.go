package worksheet

import (
	"fmt"

	"unpin/statics/figure"
)

// cellGap is the room between two columns of a printed table.
const cellGap = 12.0

// narrowestCell is the least width to which the last column is pressed.
const narrowestCell = 60.0

// Weights of the rules of a table.
const (
	outerRule = 0.8
	innerRule = 0.4
)

// table sets a table: a rule above the head, below it, and at the foot. With keeps it with what follows.
func (c *composer) table(t table, with bool) {
	head, body := lineStyle{size: noteSize + 0.5, style: "I"}, lineStyle{size: bodySize}
	widths := make([]float64, len(t.align))
	set := func(cells []string, s lineStyle) [][]typeWord {
		row := make([][]typeWord, len(cells))
		for i, text := range cells {
			row[i] = c.words(text, s)
			widths[i] = max(widths[i], lineWide(row[i], s.size))
		}
		return row
	}
	heads := set(t.head, head)
	rows := make([][][]typeWord, len(t.rows))
	for i, r := range t.rows {
		rows[i] = set(r, body)
	}
	total := -cellGap
	for _, w := range widths {
		total += w + cellGap
	}
	if last := len(widths) - 1; total > c.wide() {
		widths[last] = max(widths[last]-(total-c.wide()), narrowestCell)
		total = c.wide()
	}
	c.rule(outerRule, total, 5, true)
	c.row(t, heads, widths, head, true)
	c.rule(innerRule, total, 1.5, true)
	for i, r := range rows {
		c.row(t, r, widths, body, i == 0 || i >= len(rows)-2)
	}
	c.rule(outerRule, total, 1.5, with)
}

// lineWide is the width of words on one line.
func lineWide(words []typeWord, size float64) float64 {
	wide := 0.0
	for i, w := range words {
		if i > 0 {
			wide += blankWidth * size
		}
		wide += w.wide
	}
	return wide
}

// rule sets a line across a table.
func (c *composer) rule(weight, wide, above float64, with bool) {
	c.strips = append(c.strips, strip{above: above, height: 2.5, with: with, draw: func(y float64) {
		c.doc.SetDrawColor(0, 0, 0)
		c.doc.SetLineWidth(weight)
		c.doc.Line(sideMargin, y, sideMargin+wide, y)
	}})
}

// row sets one row; what is too wide for its column goes on beneath.
func (c *composer) row(t table, cells [][]typeWord, widths []float64, s lineStyle, with bool) {
	folded := make([][][]typeWord, len(cells))
	deep := 1
	for i, words := range cells {
		folded[i] = c.lines(words, widths[i]+0.01, s)
		deep = max(deep, len(folded[i]))
	}
	for k := range deep {
		c.strips = append(c.strips, strip{height: s.leading(), with: with || k < deep-1, draw: func(y float64) {
			x := sideMargin
			for i, lines := range folded {
				if k < len(lines) {
					at := x
					if t.align[i] == 'r' {
						at += widths[i] - lineWide(lines[k], s.size)
					}
					c.write(lines[k], at, y+s.size*0.95, s.size)
				}
				x += widths[i] + cellGap
			}
		}})
	}
}

// Heights of printed figures at most, in points: of a frame, taken apart, and one of two side by side.
const (
	pictureTall = 220.0
	bodiesTall  = 275.0
	besideTall  = 195.0
	besideGap   = 16.0
)

// picture sets a figure with its number and title beneath. Those of the internal forces of a frame stand two by two.
func (c *composer) picture(i int) {
	b := c.d.list[i]
	switch {
	case len(b.picture.Links) > 0:
		c.pictures([]passage{b}, c.wide(), bodiesTall)
	case len(b.picture.Curves) > 0 && !b.picture.IsLevel():
		c.pair(i)
	default:
		c.pictures([]passage{b}, c.wide(), pictureTall)
	}
}

// pair sets a figure beside the one before, if that stands alone, or else waits for the next.
func (c *composer) pair(i int) {
	first := i
	for first > 0 && c.d.list[first-1].kind == picturePassage {
		first--
	}
	group := c.d.list[first : i+1]
	next := i+1 < len(c.d.list) && c.d.list[i+1].kind == picturePassage
	if len(group)%2 == 0 {
		group = group[len(group)-2:]
	} else if next {
		return
	} else {
		group = group[len(group)-1:]
	}
	c.pictures(group, (c.wide()-besideGap)/2, besideTall)
}

// pictures sets figures side by side.
func (c *composer) pictures(group []passage, wide, tall float64) {
	var sheets []figure.Sheet
	deep := 0.0
	for _, b := range group {
		s := figure.Paper(b.picture, wide, tall)
		sheets = append(sheets, s)
		deep = max(deep, s.Height)
	}
	c.strips = append(c.strips, strip{above: 10, height: deep, with: true, draw: func(y float64) {
		for k, s := range sheets {
			figure.DrawPDF(c.doc, s, c.slot(k, len(sheets))-s.Width/2, y+deep-s.Height, family)
		}
	}})
	var captions [][]typeWord
	for _, b := range group {
		captions = append(captions, c.caption(b.text))
	}
	c.strips = append(c.strips, strip{above: 3, height: lineHeight + 4, draw: func(y float64) {
		for k, words := range captions {
			c.write(words, c.slot(k, len(captions))-lineWide(words, noteSize+0.5)/2, y+noteSize, noteSize+0.5)
		}
	}})
}

// caption is the number and title of a figure.
func (c *composer) caption(title string) []typeWord {
	c.figures++
	number := c.words(fmt.Sprintf("Figure %d.", c.figures), lineStyle{size: noteSize + 0.5, style: "B"})
	return append(number, c.words(title, lineStyle{size: noteSize + 0.5})...)
}

// slot is the middle of the place of figure k of n side by side.
func (c *composer) slot(k, n int) float64 {
	return sideMargin + c.wide()*(float64(k)+0.5)/float64(n)
}
