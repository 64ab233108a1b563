package marking

import (
	"encoding/csv"
	"fmt"
	"slices"
	"strings"

	"unpin/problems/variant"
)

// A tableReader reads answers as CSV. Each line is read by itself, so that a fault in one does not swallow those after it.
type tableReader struct {
	answers *Answers
	comma   rune
	columns []string // the name of each column, or "" where it means nothing; nil until the first line
	last    *Paper
}

// columnNames are the columns that mean something.
var columnNames = []string{"student", "problem", "code", "attempt", "quantity", "value", "time"}

// isHeader reports whether a line names the columns of a table of answers.
func isHeader(line string) bool {
	cells, err := cellsOf(line, separator(line))
	return err == nil && slices.Contains(lowered(cells), "quantity") && slices.Contains(lowered(cells), "value")
}

// separator is what parts the cells of a line: of comma, semicolon and tab the most frequent.
func separator(line string) rune {
	best := ','
	for _, c := range ";\t" {
		if strings.Count(line, string(c)) > strings.Count(line, string(best)) {
			best = c
		}
	}
	return best
}

func cellsOf(line string, comma rune) ([]string, error) {
	r := csv.NewReader(strings.NewReader(line))
	r.Comma, r.FieldsPerRecord = comma, -1
	cells, err := r.Read()
	for i := range cells {
		cells[i] = strings.TrimSpace(variant.BareCell(strings.TrimSpace(cells[i])))
	}
	return cells, err
}

func lowered(cells []string) []string {
	all := make([]string, len(cells))
	for i, c := range cells {
		all[i] = strings.ToLower(c)
	}
	return all
}

func (t *tableReader) read(number int, line string) {
	if strings.Trim(line, " \t,;") == "" || t.columns == nil && withoutComment(line) == "" {
		return
	}
	cells, err := cellsOf(line, t.comma)
	switch {
	case err != nil:
		t.answers.fault(number, line, "a quotation mark is not where a cell begins and ends: write a cell with quotation marks as \"so \"\"called\"\"\"")
	case t.columns == nil:
		t.header(number, line, cells)
	case len(t.columns) > 0 && len(cells) > len(t.columns):
		t.answers.fault(number, line, "there are %d cells and %d columns: a quantity with a comma, and a decimal comma, go in quotation marks", len(cells), len(t.columns))
	case len(t.columns) > 0:
		t.row(number, line, cells)
	}
}

func (t *tableReader) header(number int, line string, cells []string) {
	t.columns = make([]string, len(cells))
	for i, name := range lowered(cells) {
		switch {
		case !slices.Contains(columnNames, name):
			if name != "" {
				t.answers.Ignored = append(t.answers.Ignored, cells[i])
			}
		case slices.Contains(t.columns, name):
			t.answers.fault(number, line, "the column %s stands here twice: keep one of them", name)
		default:
			t.columns[i] = name
		}
	}
	for _, name := range []string{"quantity", "value"} {
		if !slices.Contains(t.columns, name) {
			t.columns = []string{}
			t.answers.fault(number, line, "no column is called %s: begin with a line that names the columns, such as student,problem,quantity,value", name)
			return
		}
	}
}

// row reads one answer. A row without a value is an answer that is missing.
func (t *tableReader) row(number int, line string, cells []string) {
	p, e := &Paper{Attempt: 1, Line: number}, Entry{Line: number}
	for i, cell := range cells {
		if err := set(p, &e, t.columns[i], cell); err != nil {
			t.answers.fault(number, line, "%v", err)
			return
		}
	}
	if e.Quantity == "" {
		t.answers.fault(number, line, "the cell of quantity is empty: write what the value is of, such as Cy")
		return
	}
	if e.Value != "" {
		p.Entries = []Entry{e}
	}
	if t.last != nil && t.last.key() == p.key() {
		t.last.Entries = append(t.last.Entries, p.Entries...)
		return
	}
	t.last = p
	t.answers.Papers = append(t.answers.Papers, p)
}

// set puts a cell in its place. Where a problem is named by a code, it is one.
func set(p *Paper, e *Entry, column, cell string) error {
	switch {
	case column == "quantity":
		e.Quantity = cell
	case column == "value":
		e.Value = strings.TrimPrefix(cell, "'")
	case column == "time":
		e.Time = cell
	case column != "" && cell != "":
		if err := heads[column](p, cell); err != nil {
			return fmt.Errorf("in the column %s: %w", column, err)
		}
	case column == "student":
		return fmt.Errorf("the cell of student is empty")
	}
	return nil
}
