package cells

import (
	"fmt"
	"strings"

	"unpin/statics/figure"
)

// A Cell is one cell of a grid.
type Cell struct {
	Rune rune
	figure.Look
}

// A Grid is a figure in terminal cells.
type Grid struct {
	Width, Height int
	Cells         []Cell         // row by row
	Labels        []Label        // every label that stands in it, the key's among them
	Drawn         []figure.Drawn // where members, arrows, supports and labels stand, in columns and rows
	Dropped       []string       // labels and dimensions that stand nowhere in it, in words
	Lost          []string       // the arrows and supports among them: without them the figure tells something else
	Clipped       bool           // the grid is too small even for the bare frame, of which some is cut off
}

// Fits reports whether all of the scene stands in the grid. Of parts drawn apart that do not fit, single ones had better be
// drawn.
func (g Grid) Fits() bool { return !g.Clipped && len(g.Dropped) == 0 }

// Row is row r of the grid, from the top.
func (g Grid) Row(r int) []Cell { return g.Cells[r*g.Width : (r+1)*g.Width] }

// Text is the grid as lines of text, each of Width runes.
func (g Grid) Text() string {
	var b strings.Builder
	for r := range g.Height {
		if r > 0 {
			b.WriteByte('\n')
		}
		for _, c := range g.Row(r) {
			b.WriteRune(c.Rune)
		}
	}
	return b.String()
}

// Check reports the first thing that breaks the promises of a grid: its size, labels outside, labels overwritten, or
// two labels in one place. It looks at the cells alone, not at how they were filled.
func (g Grid) Check() error {
	if len(g.Cells) != g.Width*g.Height {
		return fmt.Errorf("the grid has %d cells, not %d × %d", len(g.Cells), g.Width, g.Height)
	}
	window := area{0, 0, g.Width - 1, g.Height - 1}
	for i, l := range g.Labels {
		if !window.contains(l.area()) {
			return fmt.Errorf("label %q at column %d, row %d leaves the %d × %d grid", l.Text, l.Col, l.Row, g.Width, g.Height)
		}
		for j, want := range []rune(l.Text) {
			if got := g.Row(l.Row)[l.Col+j].Rune; got != want {
				return fmt.Errorf("label %q at column %d, row %d is overwritten by %q", l.Text, l.Col, l.Row, got)
			}
		}
		for _, other := range g.Labels[:i] {
			if cols, rows := l.area().gap(other.area()); cols < 1 && rows < 0 {
				return fmt.Errorf("labels %q and %q collide in row %d", l.Text, other.Text, l.Row)
			}
		}
	}
	return nil
}
