package marking

import (
	"fmt"
	"slices"
	"strings"
)

// A shownTable is a table of a report: its title, the heads of its columns, and its rows, of which the first cell is a name and the
// others are counts.
type shownTable struct {
	title string
	heads []string
	rows  []shownRow
	notes []string
}

type shownRow struct {
	name  string
	cells []Count
}

// stepTable is what became of each step of a problem. The working has columns where papers show any.
func (r *Report) stepTable(problem string) shownTable {
	t := shownTable{title: "step by step", heads: []string{"step", "right", "carried", "trouble begins", "missing"}}
	names, shown := []string{"body", "method", "terms"}, [3]bool{}
	for _, s := range r.stepsOf(problem) {
		for k, w := range s.Working {
			shown[k] = shown[k] || w.Of > 0
		}
	}
	for k, name := range names {
		if shown[k] {
			t.heads = append(t.heads, name+" right")
		}
	}
	for _, s := range r.stepsOf(problem) {
		row := shownRow{s.Name, []Count{{s.Right, s.Papers}, {s.Carried, s.Papers}, {s.Begins, s.Papers}, {s.Blank, s.Papers}}}
		for k, w := range s.Working {
			if shown[k] {
				row.cells = append(row.cells, w)
			}
		}
		t.rows = append(t.rows, row)
	}
	return t
}

func (r *Report) stepsOf(problem string) []StepReport {
	return slices.DeleteFunc(slices.Clone(r.Steps), func(s StepReport) bool { return s.Problem != problem })
}

// itemTable is what became of each value along the members of a problem; those of forces are the steps themselves.
func (r *Report) itemTable(problem string) shownTable {
	t := shownTable{title: "each value along the members", heads: []string{"value", "right", "carried", "trouble begins", "missing"}}
	if r.anyDiffer(problem) {
		t.title += ", in the order of the answers, for copies have other lengths"
	}
	for _, i := range r.Items {
		if i.Problem == problem && stepOfRow(i.Quantity) != i.Quantity {
			t.rows = append(t.rows, shownRow{i.Quantity, []Count{{i.Right, i.Papers}, {i.Carried, i.Papers}, {i.Begins, i.Papers}, {i.Blank, i.Papers}}})
		}
	}
	return t
}

// mostMapped bounds the mistakes that a map shows.
const mostMapped = 9

// mistakeMap is how many papers made which mistake at which step: its columns are numbered, and the notes say which mistake each is.
func (r *Report) mistakeMap(problem string) shownTable {
	t := shownTable{title: "papers by step and mistake", heads: []string{"step"}}
	var of []Mistake
	for _, m := range r.Mistakes {
		if m.Problem == problem && len(of) < mostMapped {
			of = append(of, m)
			t.heads = append(t.heads, fmt.Sprint(len(of)))
			t.notes = append(t.notes, fmt.Sprintf("%d: %s", len(of), m.Slip.Kind()))
		}
	}
	for _, s := range r.stepsOf(problem) {
		row, some := shownRow{name: s.Name}, false
		for _, m := range of {
			n := m.At[s.Name]
			row.cells, some = append(row.cells, Count{n, m.Of}), some || n > 0
		}
		if some {
			t.rows = append(t.rows, row)
		}
	}
	return t
}

// hidden reports whether a count is of so few papers that it is not told where no student is to be known.
func (r *Report) hidden(n int) bool { return r.anonymous && n > 0 && n < Few }

// fewWord stands for a count that is not told.
const fewWord = "few"

// share is a count as whole per cent.
func (r *Report) share(c Count) string {
	if r.hidden(c.Papers) {
		return fewWord
	}
	return percentOf(c.Papers, c.Of)
}

// number is a count as it is; nothing for none.
func (r *Report) number(c Count) string {
	switch {
	case c.Papers == 0:
		return ""
	case r.hidden(c.Papers):
		return fewWord
	}
	return fmt.Sprint(c.Papers)
}

// lines are the table as text.
func (t shownTable) lines(cell func(Count) string) []string {
	width := 20
	for _, row := range t.rows {
		width = max(width, len([]rune(row.name)))
	}
	head := fmt.Sprintf("  %-*s", width, t.heads[0])
	for _, h := range t.heads[1:] {
		head += fmt.Sprintf("  %*s", max(5, len(h)), h)
	}
	all := []string{head}
	for _, row := range t.rows {
		line := fmt.Sprintf("  %-*s", width, row.name)
		for k, c := range row.cells {
			line += fmt.Sprintf("  %*s", max(5, len(t.heads[k+1])), cell(c))
		}
		all = append(all, strings.TrimRight(line, " "))
	}
	return all
}
