package variant

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"unpin/statics/notation"
)

// ListName is the file in which it stands who has what.
const ListName = "variants.csv"

// List is who has what of one problem, as CSV: student, attempt, code, the digest of the problem, and for each change what it is.
func List(m *Maker, copies []Copy) []byte {
	head := []string{"student", "attempt", "code", "digest"}
	for _, c := range m.changes {
		head = append(head, c.Name)
	}
	rows, digest := [][]string{head}, Digest(m.problem)
	for _, c := range copies {
		row := []string{c.Student, fmt.Sprint(c.Attempt), c.Code, digest}
		rows = append(rows, append(row, m.Numbers(c.Draw)...))
	}
	return WriteCSV(rows)
}

// List is who has what of several problems, as CSV with a line for each copy: student, attempt, problem, code, the digest of the
// problem, and what changed in it, as "h: 3; w: 8".
func (b Batch) List(all []Handout) []byte {
	rows := [][]string{{"student", "attempt", "problem", "code", "digest", "numbers"}}
	digests := make([]string, len(b))
	for i, l := range b {
		digests[i] = Digest(l.problem)
	}
	for _, h := range all {
		for i, own := range h.Copies {
			var numbers []string
			for k, n := range b[i].Numbers(own.Draw) {
				numbers = append(numbers, b[i].changes[k].Name+": "+n)
			}
			rows = append(rows, []string{own.Student, fmt.Sprint(own.Attempt), notation.Visible(b[i].problem.Name), own.Code, digests[i], strings.Join(numbers, "; ")})
		}
	}
	return WriteCSV(rows)
}

// A Listed copy is a line of the list of who has what.
type Listed struct {
	Student string
	Attempt int
	Problem string // empty in the list of a single problem
	Code    string
	Digest  string // of the problem when the copy was made
	Line    int    // of the file
}

// mostListed is how many copies a list can have.
const mostListed = mostStudents * MostPlaces

// ReadList reads a list that is called name, as List writes it. All faults are told at once, each with its line.
func ReadList(name string, from io.Reader) ([]Listed, error) {
	var all []Listed
	r := &tableReader{
		name: name, known: []string{"student", "attempt", "problem", "code", "digest"}, needs: []string{"student", "code", "digest"},
		like: "student,attempt,code,digest", rows: "copies", most: mostListed,
	}
	r.take = func(line int, cells map[string]string) {
		l := Listed{Student: cells["student"], Attempt: 1, Problem: cells["problem"], Code: cells["code"], Digest: cells["digest"], Line: line}
		if cell := cells["attempt"]; cell != "" {
			n, err := strconv.Atoi(cell)
			if err != nil || n < 1 {
				r.fault(line, "attempt cannot be %q: it is a whole number from 1", cell)
			}
			l.Attempt = n
		}
		if l.Student == "" || l.Code == "" {
			r.fault(line, "the line names no student, or no code")
		}
		all = append(all, l)
	}
	if err := r.read(from); err != nil {
		return nil, err
	}
	return all, nil
}

// Handed are the copies of a list, as they were made. What is wrong is told by lines: a code that is none of the batch's, a
// problem that has changed since, a student who lacks a problem.
func (b Batch) Handed(name string, list []Listed) ([]Handout, error) {
	r := &tableReader{name: name}
	type key struct {
		student string
		attempt int
	}
	places := map[key]int{}
	lines := map[key]int{}
	var all []Handout
	changed := make([]bool, len(b))
	for _, l := range list {
		at, draw, err := b.Decode(l.Code)
		if err != nil {
			r.fault(l.Line, "%v", err)
			continue
		}
		if now := Digest(b[at].problem); now != l.Digest {
			if !changed[at] {
				r.fault(l.Line, "the problem %s has changed since this list was made: put its file back as it was, or make new copies", b[at].problem.Name)
			}
			changed[at] = true
			continue
		}
		k := key{l.Student, l.Attempt}
		i, there := places[k]
		if !there {
			i = len(all)
			places[k], lines[k] = i, l.Line
			all = append(all, Handout{Student: Student{ID: l.Student, Attempt: l.Attempt}, Copies: make([]Copy, len(b))})
		}
		if all[i].Copies[at].Code != "" {
			r.fault(l.Line, "%s has a copy of %s already", l.Student, b[at].problem.Name)
		}
		all[i].Copies[at] = Copy{Student: l.Student, Attempt: l.Attempt, Draw: draw, Code: b[at].Source.Code(draw)}
	}
	for _, h := range all {
		k := key{h.Student.ID, h.Student.Attempt}
		if lack := slices.IndexFunc(h.Copies, func(c Copy) bool { return c.Code == "" }); lack >= 0 && !changed[lack] && len(r.faults) == 0 {
			r.fault(lines[k], "%s has no copy of %s", h.Student.ID, b[lack].problem.Name)
		}
	}
	return all, errors.Join(r.faults...)
}
