package variant

import (
	"bytes"
	"encoding/csv"
	"strings"
)

// A spreadsheet runs a cell that begins with one of these signs as a formula.
const runs = "=+@\t"

// runnable reports whether a spreadsheet would run a cell: it begins with one of the signs, or with - and no digit.
func runnable(cell string) bool {
	if cell == "" {
		return false
	}
	digit := len(cell) > 1 && (cell[1] >= '0' && cell[1] <= '9' || cell[1] == '.')
	return strings.ContainsAny(cell[:1], runs) || cell[0] == '-' && !digit
}

// SafeCell is a cell that no spreadsheet runs: with an apostrophe before it where one would. BareCell takes it off.
func SafeCell(cell string) string {
	if runnable(strings.TrimLeft(cell, "'")) {
		return "'" + cell
	}
	return cell
}

// BareCell is the cell that SafeCell has made safe.
func BareCell(cell string) string {
	if strings.HasPrefix(cell, "'") && runnable(strings.TrimLeft(cell, "'")) {
		return cell[1:]
	}
	return cell
}

// WriteCSV writes rows of cells, each made safe.
func WriteCSV(rows [][]string) []byte {
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	for _, row := range rows {
		safe := make([]string, len(row))
		for i, cell := range row {
			safe[i] = SafeCell(cell)
		}
		if w.Write(safe) != nil {
			break // cannot happen: a buffer takes all
		}
	}
	w.Flush()
	return out.Bytes()
}
