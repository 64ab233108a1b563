package worksheet

import (
	"strings"

	"unpin/statics/figure/paper"
)

// Sizes of what is left free on a sheet, in points: the rows of dots of a room; around a picture to draw on, where an arrow and
// its name need about as much, and how tall that picture is at most; and a box for an answer.
const (
	dotRow       = 14.17 // 5 mm
	dotSize      = 0.7
	sketchPad    = 40.0
	sketchTall   = 150.0 // of which the layout keeps 60 for labels, more than outlines have
	blankAbove   = 9.0   // above a line with a blank for a value, which is written larger than print
	axesTall     = 215.0 // of the axes of one member,
	beamAxesTall = 300.0 // and of a beam
	boxTall      = 19.0
	boxWide      = 66.0
	boxLeast     = 40.0
	boxRow       = 23.0
	blankRow     = 21.0 // of a table with blanks to write on
)

// Greys of what is only to be written over: it must not be lost in a copy, nor be taken for what was drawn.
const (
	dotInk = 0x8c
	boxInk = 0x40
)

// room sets rows of dots, which may go on on the next page.
func (c *composer) room(rows int) {
	for i := range rows {
		above := 0.0
		if i == 0 {
			above = 3
		}
		c.strips = append(c.strips, strip{above: above, height: dotRow, with: i < 2 && i < rows-1, room: true, draw: c.dots})
	}
}

// dots draws a row of dots.
func (c *composer) dots(y float64) {
	c.doc.SetDrawColor(dotInk, dotInk, dotInk)
	c.doc.SetLineWidth(dotSize)
	c.doc.SetLineCapStyle("butt")
	c.doc.SetDashPattern([]float64{dotSize, dotRow - dotSize}, 0)
	c.doc.Line(sideMargin, y+dotRow, sideMargin+c.wide(), y+dotRow)
	c.doc.SetDashPattern(nil, 0)
}

// sketch sets a picture to draw on beside the one before, if that stands alone, or else waits for the next.
func (c *composer) sketch(i int) {
	first := i
	for c.isSketch(first-1, i) {
		first--
	}
	group, abreast := []int{i}, sketchesAbreast(c.wide())
	if c.d.list[i].alone {
		abreast = 1
	}
	if abreast == 2 && (i-first)%2 == 1 {
		group = []int{i - 1, i}
	} else if abreast == 2 && c.isSketch(i+1, i) {
		return
	}
	tall, pad := 0.0, sketchPad
	if c.d.list[i].axes {
		pad = 2
	}
	for _, k := range group {
		tall = max(tall, c.sheets[k].Height)
	}
	c.strips = append(c.strips, strip{above: 4, height: tall + 2*pad + lineHeight, draw: func(y float64) {
		for k, n := range group {
			s := c.sheets[n]
			paper.DrawPDF(c.doc, s, c.slot(k, abreast)-s.Width/2, y+pad+lineHeight+(tall-s.Height)/2, figureFamily)
			title := c.words(strings.TrimSuffix(c.d.list[n].text, "."), lineStyle{size: noteSize + 0.5, style: "B"})
			c.write(title, c.slot(k, abreast)-c.wide()/2/float64(abreast), y+noteSize, noteSize+0.5)
		}
	}})
}

// isSketch reports whether passage k is a picture to draw on like passage i.
func (c *composer) isSketch(k, i int) bool {
	list := c.d.list
	return k >= 0 && k < len(list) && list[k].kind == sketchPassage && list[k].axes == list[i].axes
}

// hasBoxes reports whether a table has boxes to write in.
func (t table) hasBoxes() bool { return strings.Contains(t.align, "b") }

// boxes sets a table with boxes to write in; the rows beneath its head stay with it.
func (c *composer) boxes(t table) {
	c.inset = 0
	t = t.withoutEmpty()
	head, body := lineStyle{size: noteSize + 0.5}, lineStyle{size: bodySize}
	widths := make([]float64, len(t.align))
	set := func(cells []string, s lineStyle) [][]typeWord {
		row := make([][]typeWord, len(cells))
		for i, text := range cells {
			if text == box {
				widths[i] = max(widths[i], boxWide)
				continue
			}
			row[i] = c.words(text, s)
			widths[i] = max(widths[i], lineWide(row[i], s.size))
		}
		return row
	}
	heads := c.heads(t, head, widths)
	var rows [][][]typeWord
	for _, r := range t.rows {
		rows = append(rows, set(r, body))
	}
	wasTight := c.tight
	c.narrow(t, widths)
	c.row(t, heads, widths, head, true)
	for i := range rows {
		c.boxesRow(t.rows[i], rows[i], widths, body, len(rows) <= wholeTable && i < len(rows)-1 || i == 0 && len(rows) > 1)
	}
	c.tight = wasTight
}

// boxesRow sets a row of such a table; texts that are too wide for their columns stand in several lines.
func (c *composer) boxesRow(cells []string, words [][]typeWord, widths []float64, s lineStyle, with bool) {
	folded := make([][][]typeWord, len(words))
	deep := 1
	for i := range words {
		folded[i] = c.lines(words[i], widths[i]+0.01, s)
		deep = max(deep, len(folded[i]))
	}
	tall, gap := max(boxRow, float64(deep)*s.leading()+3), c.cellGap()
	c.strips = append(c.strips, strip{above: 1, height: tall, with: with, draw: func(y float64) {
		x := sideMargin
		for k, lines := range folded {
			if cells[k] == box {
				c.box(x, y+(tall-boxRow)/2, widths[k])
			}
			top := y + boxTall/2 + (tall-boxRow)/2 + bodySize*0.38 - float64(len(lines)-1)*s.leading()/2
			for n, line := range lines {
				c.write(line, x, top+float64(n)*s.leading(), bodySize)
			}
			x += widths[k] + gap
		}
	}})
}

// narrow makes the boxes of a table narrower where its columns are wider than the page, and where that is not enough also the gaps
// between columns, then those of texts, which are folded: the last one, then the first.
func (c *composer) narrow(t table, widths []float64) {
	over := func() float64 {
		total := -c.cellGap()
		for _, w := range widths {
			total += w + c.cellGap()
		}
		return total - c.wide()
	}
	boxes := strings.Count(t.align, "b")
	if over() <= 0 || boxes == 0 {
		return
	}
	less := over() / float64(boxes)
	for i := range widths {
		if t.align[i] == 'b' {
			widths[i] = max(widths[i]-less, boxLeast)
		}
	}
	c.tight = c.tight || over() > 0.1
	for _, i := range [2]int{len(widths) - 1, 0} {
		if t.align[i] != 'b' && over() > 0 {
			widths[i] = max(widths[i]-over(), foldedLeast)
		}
	}
}

// foldedLeast is the least width to which a column of texts is folded.
const foldedLeast = 50.0

// box draws a box to write in.
func (c *composer) box(x, y, wide float64) {
	c.doc.SetDrawColor(boxInk, boxInk, boxInk)
	c.doc.SetLineWidth(0.7)
	c.doc.Rect(x, y+1, wide, boxTall, "D")
}

// withoutEmpty is the table without columns that have nothing in any row.
func (t table) withoutEmpty() table {
	var out table
	out.rows = make([][]string, len(t.rows))
	for k := range t.align {
		used := false
		for _, r := range t.rows {
			used = used || r[k] != ""
		}
		if !used {
			continue
		}
		out.align += t.align[k : k+1]
		out.head = append(out.head, t.head[k])
		if t.heard != nil {
			out.heard = append(out.heard, t.heard[k])
		}
		for i, r := range t.rows {
			out.rows[i] = append(out.rows[i], r[k])
		}
	}
	return out
}
