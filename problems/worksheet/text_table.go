package worksheet

import "strings"

// A table is rows of cells beneath a head. Align has a letter for each column: l for left, r for right, m for left and with
// the letters of mathematics in it.
type table struct {
	head  []string
	heard []string // or nil: names of the columns that have no head, for who hears the table
	align string
	rows  [][]string
	alike *likeness // or nil: the rows of all tables whose columns are as wide as those of this one
}

func (t *table) add(cells ...string) {
	t.rows = append(t.rows, cells)
	if t.alike != nil {
		t.alike.add(cells)
	}
}

// lettersOf are the letters that stand for numbers in column i.
func (t table) lettersOf(i int) string {
	if t.align[i] == 'm' {
		return mathLetters
	}
	return ""
}

// columnGap is the blanks between two columns.
const columnGap = 2

// narrowest is the least width to which a column is pressed.
const narrowest = 5

// table writes a table with an indent. Columns without a cell that says anything are left out; a table that is too wide
// gets its widest columns folded.
func (p *page) table(indent int, t table) {
	t = t.dressed(p).compact()
	widths := t.widths(p.width - indent)
	if len(t.head) > 0 {
		p.row(indent, t, widths, t.head)
	}
	for _, r := range t.rows {
		p.row(indent, t, widths, r)
	}
}

// dressed is the table as the page has its texts.
func (t table) dressed(p *page) table {
	d := table{align: t.align, head: p.dressRow(t.head), rows: p.dressRows(t.rows)}
	if t.alike != nil {
		d.alike = t.alike.dressed(p)
	}
	return d
}

func (p *page) dressRow(cells []string) (all []string) {
	for _, c := range cells {
		all = append(all, p.dress(c))
	}
	return all
}

func (p *page) dressRows(rows [][]string) (all [][]string) {
	for _, r := range rows {
		all = append(all, p.dressRow(r))
	}
	return all
}

// compact is the table without columns that are empty in all tables like it.
func (t table) compact() table {
	var c table
	used := usedColumns(t.rows, len(t.align))
	if t.alike != nil {
		c.alike, used = t.alike.compact(len(t.align))
	}
	for i, kept := range used {
		if !kept {
			continue
		}
		c.align += t.align[i : i+1]
		if len(t.head) > 0 {
			c.head = append(c.head, t.head[i])
		}
		if t.heard != nil {
			c.heard = append(c.heard, t.heard[i])
		}
	}
	c.rows = keptCells(t.rows, used)
	return c
}

// widths are those of the columns, within a width in all.
func (t table) widths(width int) []int {
	widths := make([]int, len(t.align))
	if t.alike != nil {
		copy(widths, t.alike.widest(len(t.align)))
	} else {
		widen(widths, t.rows)
	}
	total := columnGap * (len(widths) - 1)
	for i := range widths {
		if len(t.head) > 0 {
			widths[i] = max(widths[i], runes(t.head[i]))
		}
		total += widths[i]
	}
	for total > width {
		widest := 0
		for i, w := range widths {
			if w > widths[widest] {
				widest = i
			}
		}
		if widths[widest] <= narrowest {
			break
		}
		cut := min(total-width, max(1, widths[widest]/4))
		widths[widest] -= cut
		total -= cut
	}
	return widths
}

// row writes one row, over several lines where a cell is folded.
func (p *page) row(indent int, t table, widths []int, cells []string) {
	folded := make([][]string, len(cells))
	lines := 0
	for i, c := range cells {
		folded[i] = fold(c, widths[i])
		lines = max(lines, len(folded[i]))
	}
	for n := range lines {
		var b strings.Builder
		b.WriteString(strings.Repeat(" ", indent))
		for i := range cells {
			text := ""
			if n < len(folded[i]) {
				text = folded[i][n]
			}
			if i > 0 {
				b.WriteString(strings.Repeat(" ", columnGap))
			}
			space := strings.Repeat(" ", max(0, widths[i]-runes(text)))
			if t.align[i] == 'r' {
				b.WriteString(space + text)
			} else {
				b.WriteString(text + space)
			}
		}
		p.write(b.String())
	}
}
