package worksheet

// A likeness is the rows of several tables whose columns are equally wide. What is found of all of them is found once, when
// it is asked for first, and not once for each table.
type likeness struct {
	rows    [][]string
	used    []bool    // which columns say anything
	kept    *likeness // without the others
	wide    []int     // how many signs the columns take
	page    *page     // the page that it is dressed for
	dress   *likeness // as that page has its texts
	printed []float64 // how wide the columns are in print
}

// add takes a further row, and forgets what was found.
func (k *likeness) add(cells []string) { *k = likeness{rows: append(k.rows, cells)} }

// dressed is the likeness as the page has its texts.
func (k *likeness) dressed(p *page) *likeness {
	if k.page != p {
		k.page, k.dress = p, &likeness{rows: p.dressRows(k.rows)}
	}
	return k.dress
}

// compact is the likeness without columns that are empty in all rows, of so many columns, and which are not.
func (k *likeness) compact(columns int) (*likeness, []bool) {
	if k.kept == nil {
		k.used = usedColumns(k.rows, columns)
		k.kept = &likeness{rows: keptCells(k.rows, k.used)}
	}
	return k.kept, k.used
}

// widest are the signs that the columns take, so many of them.
func (k *likeness) widest(columns int) []int {
	if k.wide == nil {
		k.wide = make([]int, columns)
		widen(k.wide, k.rows)
	}
	return k.wide
}

// widen makes columns as wide as rows ask for.
func widen(widths []int, rows [][]string) {
	for _, r := range rows {
		for i := range widths {
			widths[i] = max(widths[i], runes(r[i]))
		}
	}
}

// usedColumns tells which of so many columns say anything in some row.
func usedColumns(rows [][]string, columns int) []bool {
	used := make([]bool, columns)
	for _, r := range rows {
		for i := range used {
			used[i] = used[i] || r[i] != ""
		}
	}
	return used
}

// keptCells are rows without the columns that are not used.
func keptCells(rows [][]string, used []bool) [][]string {
	kept := make([][]string, len(rows))
	for n, r := range rows {
		for i, is := range used {
			if is {
				kept[n] = append(kept[n], r[i])
			}
		}
	}
	return kept
}
