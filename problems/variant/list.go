package variant

import "fmt"

// ListName is the file in which it stands who has what.
const ListName = "variants.csv"

// List is who has what, as CSV: student, attempt, code, the digest of the problem, and for each change what it is.
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
