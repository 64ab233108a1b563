package variant

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"unpin/statics/notation"
)

// mostTableSize bounds the bytes of a table.
const mostTableSize = 8 << 20

// A tableReader reads CSV whose first line names the columns, parted by commas, semicolons or tabs, with line ends of any
// kind. All faults are told at once, each with its line.
type tableReader struct {
	name  string                                  // of the file
	known []string                                // the columns that mean something
	needs []string                                // those of them that must be there
	like  string                                  // a first line, to show what would be right
	rows  string                                  // what the lines are, for people: "students"
	most  int                                     // lines at most
	take  func(line int, cells map[string]string) // a cell that is at fault is not among them

	columns []string // the known name of each column, or "" for one that means nothing
	ignored []string // the columns that mean nothing here
	taken   int
	faults  []error
}

// mostFaults bounds the faults that are told.
const mostFaults = 20

func (r *tableReader) fault(line int, format string, args ...any) {
	if len(r.faults) < mostFaults {
		r.faults = append(r.faults, fmt.Errorf("%s:%d: %s", notation.Visible(r.name), line, fmt.Sprintf(format, args...)))
	}
}

// read reads all of it.
func (r *tableReader) read(from io.Reader) error {
	data, err := io.ReadAll(io.LimitReader(from, mostTableSize+1))
	if err != nil {
		return fmt.Errorf("%s cannot be read: %w", notation.Visible(r.name), err)
	}
	if len(data) > mostTableSize {
		return fmt.Errorf("%s has more than %d MiB: see whether this is the file you meant", notation.Visible(r.name), mostTableSize>>20)
	}
	r.lines(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.TrimPrefix(string(data), "\ufeff")))
	return errors.Join(r.faults...)
}

func (r *tableReader) lines(text string) {
	if !utf8.ValidString(text) {
		r.fault(1+strings.Count(text[:invalidAt(text)], "\n"), "this is no UTF-8 text: save the file as CSV in UTF-8")
		return
	}
	lines := csv.NewReader(strings.NewReader(text))
	lines.Comma, lines.FieldsPerRecord = separator(text), -1
	for {
		cells, err := lines.Read()
		var syntax *csv.ParseError
		switch {
		case errors.Is(err, io.EOF):
			r.finish()
			return
		case errors.As(err, &syntax):
			r.fault(syntax.StartLine, "a quotation mark is not where a cell begins and ends: write a cell with quotation marks as \"so \"\"called\"\"\"")
			return
		case err != nil:
			r.fault(1, "%v", err)
			return
		}
		line, _ := lines.FieldPos(0)
		if r.columns == nil {
			r.header(line, cells)
		} else {
			r.row(line, cells)
		}
		if len(r.columns) == 0 || r.taken > r.most {
			break
		}
	}
	if r.taken > r.most {
		r.fault(1, "there are more than %d %s", r.most, r.rows)
	}
}

// invalidAt is the place of the first byte that is no UTF-8.
func invalidAt(text string) int {
	for i, c := range text {
		if c == utf8.RuneError {
			if _, size := utf8.DecodeRuneInString(text[i:]); size == 1 {
				return i
			}
		}
	}
	return 0
}

// finish finds a table without rows at fault.
func (r *tableReader) finish() {
	if r.columns == nil {
		r.fault(1, "the file is empty: begin with a line that names the columns, such as %s", r.like)
	} else if r.taken == 0 && len(r.faults) == 0 {
		r.fault(1, "no %s are listed after the line of columns", r.rows)
	}
}

// separator is what parts the cells of a first line: of comma, semicolon and tab the most frequent.
func separator(text string) rune {
	first, _, _ := strings.Cut(strings.TrimLeft(text, "\n"), "\n")
	best := ','
	for _, c := range ";\t" {
		if strings.Count(first, string(c)) > strings.Count(first, string(best)) {
			best = c
		}
	}
	return best
}

// header reads the names of the columns.
func (r *tableReader) header(line int, cells []string) {
	r.columns = make([]string, len(cells))
	for i, cell := range cells {
		name := strings.ToLower(strings.TrimSpace(cell))
		switch {
		case !slices.Contains(r.known, name):
			if name != "" {
				r.ignored = append(r.ignored, strings.TrimSpace(cell))
			}
		case slices.Contains(r.columns, name):
			r.fault(line, "the column %s stands here twice: keep one of them", name)
		default:
			r.columns[i] = name
		}
	}
	for _, name := range r.needs {
		if !slices.Contains(r.columns, name) {
			r.fault(line, "no column is called %s%s: begin with a line that names the columns, such as %s", name, headings(cells), r.like)
			r.columns = []string{}
			return
		}
	}
}

// headings says which columns there are, as they are written, where it is not one that is needed.
func headings(cells []string) string {
	if len(cells) == 1 && strings.ContainsAny(strings.TrimSpace(cells[0]), " |") {
		return ", and nothing parts the cells (commas, semicolons or tabs do)"
	}
	var names []string
	for _, cell := range cells {
		if cell = strings.TrimSpace(cell); cell != "" && len(names) < 8 {
			names = append(names, strconv.Quote(cell))
		}
	}
	switch len(names) {
	case 0:
		return ""
	case 1:
		return " (there is " + names[0] + ")"
	}
	return " (there are " + strings.Join(names, ", ") + ")"
}

// row reads one line. A line without any text is passed over.
func (r *tableReader) row(line int, cells []string) {
	if strings.TrimSpace(strings.Join(cells, "")) == "" {
		return
	}
	if len(cells) > len(r.columns) {
		r.fault(line, "there are %d cells and %d columns: a name with a comma goes in quotation marks", len(cells), len(r.columns))
		return
	}
	named := map[string]string{}
	for i, name := range r.columns {
		cell := ""
		if i < len(cells) {
			cell = strings.TrimSpace(BareCell(strings.TrimSpace(cells[i])))
		}
		if strings.ContainsFunc(cell, notation.Hidden) {
			r.fault(line, "a character that is not seen stands in the cell of %s", name)
			continue
		}
		named[name] = cell
	}
	r.taken++
	r.take(line, named)
}
