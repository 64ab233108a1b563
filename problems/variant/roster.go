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

// A Student is a line of a roster.
type Student struct {
	ID      string
	Name    string
	Group   string
	Extra   int    // per cent more time
	Print   string // a4, letter, large, text; empty where nothing is said
	Attempt int    // from 1
}

// A Roster is who takes part.
type Roster struct {
	Students []Student
	Ignored  []string // columns that mean nothing here
}

// Wishes are a copy for each student.
func (r *Roster) Wishes() []Wish {
	all := make([]Wish, len(r.Students))
	for i, s := range r.Students {
		all[i] = Wish{s.ID, s.Attempt}
	}
	return all
}

// The bounds of a roster: no class is larger, and no id longer.
const (
	mostStudents   = 20_000
	mostIDLength   = 64
	mostRosterSize = 8 << 20
)

// prints are the ways in which a sheet can be printed.
var prints = []string{"", "a4", "letter", "large", "text"}

// rosterColumns are the columns that mean something, and how each is read into a student. The error says what is wrong with a cell.
var rosterColumns = map[string]func(s *Student, cell string) error{
	"id":      readID,
	"name":    func(s *Student, cell string) error { s.Name = cell; return nil },
	"group":   func(s *Student, cell string) error { s.Group = cell; return nil },
	"extra":   func(s *Student, cell string) error { return readWhole(&s.Extra, cell, "extra", 0, 400) },
	"attempt": func(s *Student, cell string) error { return readWhole(&s.Attempt, cell, "attempt", 1, 1000) },
	"print": func(s *Student, cell string) error {
		if s.Print = strings.ToLower(cell); !slices.Contains(prints, s.Print) {
			return fmt.Errorf("print cannot be %q: write a4, letter, large or text, or leave it empty", cell)
		}
		return nil
	},
}

// ReadRoster reads a roster that is called name: CSV whose first line names the columns, id among them, parted by commas,
// semicolons or tabs. All faults are told at once, each with its line.
func ReadRoster(name string, from io.Reader) (*Roster, error) {
	data, err := io.ReadAll(io.LimitReader(from, mostRosterSize+1))
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read: %w", name, err)
	}
	if len(data) > mostRosterSize {
		return nil, fmt.Errorf("%s has more than %d MiB: see whether this is the file you meant", name, mostRosterSize>>20)
	}
	r := rosterReader{name: name, seen: map[string]int{}, roster: &Roster{}}
	r.read(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.TrimPrefix(string(data), "\ufeff")))
	if len(r.faults) > 0 {
		return nil, errors.Join(r.faults...)
	}
	return r.roster, nil
}

// rosterReader is the work of reading a roster.
type rosterReader struct {
	name    string
	roster  *Roster
	columns []string       // the known name of each column, or "" for one that means nothing
	seen    map[string]int // the line of each id and attempt
	faults  []error
}

// mostFaults bounds the faults that are told.
const mostFaults = 20

func (r *rosterReader) fault(line int, format string, args ...any) {
	if len(r.faults) < mostFaults {
		r.faults = append(r.faults, fmt.Errorf("%s:%d: %s", notation.Visible(r.name), line, fmt.Sprintf(format, args...)))
	}
}

func (r *rosterReader) read(text string) {
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
			r.student(line, cells)
		}
		if len(r.columns) == 0 || len(r.roster.Students) > mostStudents {
			break
		}
	}
	if len(r.roster.Students) > mostStudents {
		r.fault(1, "there are more than %d students", mostStudents)
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

// finish finds a roster without students at fault.
func (r *rosterReader) finish() {
	if r.columns == nil {
		r.fault(1, "the file is empty: begin with a line that names the columns, such as id,name,group")
	} else if len(r.roster.Students) == 0 && len(r.faults) == 0 {
		r.fault(1, "no students are listed after the line of columns")
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
func (r *rosterReader) header(line int, cells []string) {
	r.columns = make([]string, len(cells))
	for i, cell := range cells {
		name := strings.ToLower(strings.TrimSpace(cell))
		switch {
		case rosterColumns[name] == nil:
			if name != "" {
				r.roster.Ignored = append(r.roster.Ignored, strings.TrimSpace(cell))
			}
		case slices.Contains(r.columns, name):
			r.fault(line, "the column %s stands here twice: keep one of them", name)
		default:
			r.columns[i] = name
		}
	}
	if !slices.Contains(r.columns, "id") {
		r.columns = []string{}
		r.fault(line, "no column is called id: begin with a line that names the columns, such as id,name,group")
	}
}

// student reads one line. A line without any text is passed over.
func (r *rosterReader) student(line int, cells []string) {
	if strings.TrimSpace(strings.Join(cells, "")) == "" {
		return
	}
	s, good := Student{Attempt: 1}, true
	if len(cells) > len(r.columns) {
		r.fault(line, "there are %d cells and %d columns: a name with a comma goes in quotation marks", len(cells), len(r.columns))
		return
	}
	for i, name := range r.columns {
		cell := ""
		if i < len(cells) {
			cell = strings.TrimSpace(BareCell(strings.TrimSpace(cells[i])))
		}
		if strings.ContainsFunc(cell, notation.Hidden) {
			r.fault(line, "a character that is not seen stands in the cell of %s", name)
			good = false
		} else if read := rosterColumns[name]; read != nil {
			if err := read(&s, cell); err != nil {
				r.fault(line, "%v", err)
				good = false
			}
		}
	}
	key := s.ID + "\x00" + strconv.Itoa(s.Attempt)
	if earlier, twice := r.seen[key]; twice && good {
		r.fault(line, "the student %s stands on line %d already: keep one of the two, or give each an attempt of its own", s.ID, earlier)
		return
	}
	r.seen[key] = line
	r.roster.Students = append(r.roster.Students, s)
}

// readID reads what a student is called in every list.
func readID(s *Student, cell string) error {
	switch s.ID = cell; {
	case cell == "":
		return errors.New("the student has no id")
	case utf8.RuneCountInString(cell) > mostIDLength:
		return fmt.Errorf("the id has more than %d characters", mostIDLength)
	}
	return nil
}

// readWhole reads a whole number between two bounds; an empty cell leaves what is there.
func readWhole(to *int, cell, what string, low, high int) error {
	if cell == "" {
		return nil
	}
	n, err := strconv.Atoi(strings.TrimSuffix(cell, "%"))
	if err != nil || n < low || n > high {
		return fmt.Errorf("%s cannot be %q: it is a whole number from %d to %d", what, cell, low, high)
	}
	*to = n
	return nil
}
