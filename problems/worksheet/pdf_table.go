package worksheet

import (
	"slices"
	"strings"
)

// cellGap is the room between two columns of a printed table.
const cellGap = 12.0

// hasBlanks reports whether there are blanks to write on in a table.
func (t table) hasBlanks() bool {
	return slices.ContainsFunc(t.rows, func(r []string) bool { return strings.Contains(strings.Join(r, ""), signBlank) })
}

// tightGap is that of tables that are tight.
const tightGap = 6.0

func (c *composer) cellGap() float64 {
	if c.tight {
		return tightGap
	}
	return cellGap
}

// narrowestCell is the least width to which the last column is pressed.
const narrowestCell = 60.0

// Weights of the rules of a table.
const (
	outerRule = 0.8
	innerRule = 0.4
)

// table sets a table: a rule above the head, below it, and at the foot. With keeps it with what follows.
func (c *composer) table(t table, with bool) {
	head, body := lineStyle{size: noteSize + 0.5}, lineStyle{size: bodySize}
	if c.tight {
		body.size = noteSize + 0.5
	}
	widths := make([]float64, len(t.align))
	set := func(cells []string, s lineStyle, letters func(column int) string) [][]typeWord {
		row := make([][]typeWord, len(cells))
		for i, text := range cells {
			s.letters = letters(i)
			row[i] = c.words(text, s)
			widths[i] = max(widths[i], lineWide(row[i], s.size))
		}
		return row
	}
	heads := c.heads(t, head, widths)
	if t.alike != nil && t.alike.printed == nil {
		own := widths
		widths = make([]float64, len(own))
		for _, r := range t.alike.rows {
			set(r, body, t.lettersOf)
		}
		t.alike.printed, widths = widths, own
	}
	if t.alike != nil {
		for i, w := range t.alike.printed {
			widths[i] = max(widths[i], w)
		}
	}
	rows := make([][][]typeWord, len(t.rows))
	for i, r := range t.rows {
		rows[i] = set(r, body, t.lettersOf)
	}
	total := -c.cellGap()
	for _, w := range widths {
		total += w + c.cellGap()
	}
	if c.tight && len(rows) > wholeTable/2 && 2*total+c.cellGap() <= c.wide() {
		c.table(t.folded(), with)
		return
	}
	if last := len(widths) - 1; total > c.wide()-c.inset {
		widths[last] = max(widths[last]-(total-c.wide()+c.inset), min(widths[last], narrowestCell))
		squeeze(widths, leastOf(append(rows, heads), len(widths)), c.cellGap(), c.wide()-c.inset)
		total = c.wide() - c.inset
	}
	first := len(c.strips)
	c.rule(outerRule, total, 5, true)
	c.row(t, heads, widths, head, true)
	c.rule(innerRule, total, 1.5, true)
	again := c.strips[first:len(c.strips):len(c.strips)]
	if t.hasBlanks() {
		body.tall = blankRow
	}
	for i, r := range rows {
		begin := len(c.strips)
		c.row(t, r, widths, body, len(rows) <= wholeTable || i == 0 || i >= len(rows)-2)
		c.strips[begin].again = again
	}
	c.rule(outerRule, total, 1.5, with)
}

// squeeze makes the widest columns narrower where a table is still wider than its room, as far as their longest words allow; what is in
// them goes on beneath.
func squeeze(widths, least []float64, gap, room float64) {
	for range widths {
		over, most := -room-gap, 0
		for i, w := range widths {
			if over += w + gap; w-least[i] > widths[most]-least[most] {
				most = i
			}
		}
		if over <= 0 {
			return
		}
		widths[most] = max(widths[most]-over, least[most])
	}
}

// leastOf is how wide the columns of a table are at least, for their longest words.
func leastOf(rows [][][]typeWord, columns int) []float64 {
	least := make([]float64, columns)
	for _, row := range rows {
		for i, words := range row {
			for _, w := range words {
				least[i] = max(least[i], w.wide)
			}
		}
	}
	return least
}

// wholeTable is how many rows a table may have that is kept on one page. A longer one that goes on on the next page has its
// head there again.
const wholeTable = 12

// heads are the words of the heads of columns, whose widths grow with them. In N in kN the quantity is slanted and the unit is not.
func (c *composer) heads(t table, s lineStyle, widths []float64) [][]typeWord {
	row := make([][]typeWord, len(t.head))
	for i, text := range printedHeads(t.head) {
		quantity, unit, ok := strings.Cut(text, " in ")
		s.letters = mathLetters
		row[i] = c.words(quantity, s)
		if ok {
			s.letters = ""
			row[i] = append(row[i], c.words("in "+unit, s)...)
		}
		widths[i] = max(widths[i], lineWide(row[i], s.size))
	}
	return row
}

// folded is the table with the second half of its rows beside the first. Where the first cell of that half is empty, it is that of
// the row above which it goes on from.
func (t table) folded() table {
	half := (len(t.rows) + 1) / 2
	out := table{align: t.align + t.align, head: slices.Concat(t.head, t.head)}
	first := ""
	for i, row := range t.rows {
		if row[0] != "" {
			first = row[0]
		}
		switch {
		case i < half:
			out.rows = append(out.rows, slices.Clone(row))
		default:
			row = slices.Clone(row)
			if i == half {
				row[0] = first
			}
			out.rows[i-half] = append(out.rows[i-half], row...)
		}
	}
	if last := out.rows[half-1]; len(last) < len(out.align) {
		out.rows[half-1] = append(last, make([]string, len(t.align))...)
	}
	return out
}

// printedHeads are the heads of columns with their units as print has them: N in kN (brackets stand around no unit, ISO
// 80000-1; from memory).
func printedHeads(heads []string) []string {
	out := make([]string, len(heads))
	for i, h := range heads {
		out[i] = strings.TrimSuffix(strings.Replace(h, " [", " in ", 1), "]")
	}
	return out
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
	left := sideMargin + c.inset
	c.strips = append(c.strips, strip{above: above, height: 2.5, with: with, draw: func(y float64) {
		c.doc.SetDrawColor(0, 0, 0)
		c.doc.SetLineWidth(weight)
		c.doc.Line(left, y, left+wide, y)
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
	left, gap := sideMargin+c.inset, c.cellGap()
	for k := range deep {
		c.strips = append(c.strips, strip{height: s.leading(), with: with || k < deep-1, draw: func(y float64) {
			x := left
			for i, lines := range folded {
				if k < len(lines) {
					at := x
					if t.align[i] == 'r' {
						at += widths[i] - lineWide(lines[k], s.size)
					}
					c.write(lines[k], at, y+s.base(), s.size)
				}
				x += widths[i] + gap
			}
		}})
	}
}
