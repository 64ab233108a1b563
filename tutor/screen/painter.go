package screen

import (
	"strconv"
	"strings"
)

// A painter keeps what stands on a terminal, and writes only the lines that change.
type painter struct {
	lines []string
}

// forget is for when it is not known what stands there.
func (p *painter) forget() { p.lines = nil }

// paint is what brings a view, one line a row, onto the terminal; nothing where it stands there already.
func (p *painter) paint(view string) string {
	if view == "" {
		return ""
	}
	lines := strings.Split(view, "\n")
	var b strings.Builder
	if len(lines) != len(p.lines) {
		b.WriteString("\x1b[2J") // erase all
		p.lines = make([]string, len(lines))
	}
	for y, line := range lines {
		if line == p.lines[y] {
			continue
		}
		b.WriteString("\x1b[" + strconv.Itoa(y+1) + "H") // to the start of the row
		short := strings.TrimRight(line, " ")
		b.WriteString(short)
		if len(short) < len(line) {
			b.WriteString("\x1b[K") // erase the rest of the row
		}
	}
	p.lines = lines
	return b.String()
}
