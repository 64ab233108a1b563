package variant

import (
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
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
	mostStudents = 20_000
	mostIDLength = 64

	mostNameLength = 120
)

// prints are the ways in which a sheet can be printed.
var prints = []string{"", "a4", "letter", "large", "text"}

// rosterColumns are the columns that mean something, and how each is read into a student. The error says what is wrong with a cell.
var rosterColumns = map[string]func(s *Student, cell string) error{
	"id":      readID,
	"name":    func(s *Student, cell string) error { return readWords(&s.Name, cell, "name", mostNameLength) },
	"group":   func(s *Student, cell string) error { return readWords(&s.Group, cell, "group", mostIDLength) },
	"extra":   readExtra,
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
	r := rosterReader{seen: map[string]int{}, roster: &Roster{}}
	r.tableReader = &tableReader{
		name: name, known: slices.Sorted(maps.Keys(rosterColumns)), needs: []string{"id"}, like: "id,name,group",
		rows: "students", most: mostStudents, take: r.student,
	}
	if err := r.read(from); err != nil {
		return nil, err
	}
	r.roster.Ignored = r.ignored
	return r.roster, nil
}

// rosterReader is the work of reading a roster.
type rosterReader struct {
	*tableReader
	roster *Roster
	seen   map[string]int // the line of each id and attempt
}

// student reads one line.
func (r *rosterReader) student(line int, cells map[string]string) {
	_, good := cells["id"]
	s := Student{Attempt: 1}
	for _, name := range r.columns {
		cell, there := cells[name]
		if read := rosterColumns[name]; read != nil && there {
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

// readWords reads a text of so many characters at most.
func readWords(to *string, cell, what string, most int) error {
	if *to = cell; utf8.RuneCountInString(cell) > most {
		return fmt.Errorf("the %s has more than %d characters", what, most)
	}
	return nil
}

// readExtra reads how many per cent more time a student has.
func readExtra(s *Student, cell string) error {
	bare := strings.TrimSpace(strings.TrimSuffix(cell, "%"))
	if err := readWhole(&s.Extra, bare, "extra", 0, 400); err != nil {
		return fmt.Errorf("extra cannot be %q: it is how many per cent more time there is, a whole number from 0 to 400 such as 25", cell)
	}
	return nil
}

// readWhole reads a whole number between two bounds; an empty cell leaves what is there.
func readWhole(to *int, cell, what string, low, high int) error {
	if cell == "" {
		return nil
	}
	n, err := strconv.Atoi(cell)
	if err != nil || n < low || n > high {
		return fmt.Errorf("%s cannot be %q: it is a whole number from %d to %d", what, cell, low, high)
	}
	*to = n
	return nil
}
