package marking

import (
	"strings"

	"unpin/problems/worksheet"
	"unpin/statics/wording"
)

// PDF is a report in print.
func (r *Report) PDF() ([]byte, error) {
	w := worksheet.NewWriting("What the class got wrong")
	w.Say(r.head())
	for _, n := range r.notes() {
		w.Say(n)
	}
	if len(r.Topics) > 0 {
		w.Section("To teach again")
		var rows [][]string
		for _, t := range r.Topics {
			rows = append(rows, []string{percentOf(t.Papers, r.Papers), t.words(), t.Says})
		}
		w.Table([]string{"papers", "kind of mistake", "say first"}, "rll", rows)
	}
	if len(r.Mistakes) > 0 {
		w.Section("The commonest mistakes")
	}
	for _, m := range r.told() {
		w.Say(m.says())
		lines := m.example()
		for i, line := range lines {
			if i == 0 {
				w.Say(line)
			} else {
				w.Equate(line)
			}
		}
	}
	for _, p := range r.problems() {
		w.Section(r.title(p))
		write := func(t shownTable, cell func(Count) string) {
			if len(t.rows) > 0 {
				w.Table(t.heads, "l"+strings.Repeat("r", len(t.heads)-1), t.cells(cell))
			}
		}
		write(r.stepTable(p), r.share)
		if t := r.mistakeMap(p); len(t.rows) > 0 {
			w.Say(wording.Capital(t.title) + ", of mistakes by number: " + strings.Join(t.notes, "; ") + ".")
			write(t, r.number)
		}
		if t := r.itemTable(p); len(t.rows) > 0 {
			w.Say(wording.Capital(t.title) + ":")
			write(t, r.share)
		}
	}
	if len(r.Students) > 0 {
		w.Section("Papers")
		w.Say(wording.Capital(unrounded) + ".")
		var rows [][]string
		for _, s := range r.Students {
			rows = append(rows, []string{s.Student, s.Problem, s.marks(), s.begins()})
		}
		w.Table([]string{"student", "problem", "marks", "trouble begins at"}, "llrl", rows)
	}
	return w.PDF(worksheet.A4)
}

// cells are the rows of a table as text.
func (t shownTable) cells(cell func(Count) string) [][]string {
	var all [][]string
	for _, row := range t.rows {
		cells := []string{row.name}
		for _, c := range row.cells {
			cells = append(cells, cell(c))
		}
		all = append(all, cells)
	}
	return all
}
