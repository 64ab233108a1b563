package paper_test

import (
	"fmt"
	"strings"
	"testing"

	"unpin/statics/figure/figuretest"
	"unpin/statics/figure/paper"
)

// TestPieces lays out each thing that a scene may hold by itself and lists the marks of the sheet.
func TestPieces(t *testing.T) {
	t.Parallel()
	var names []string
	text := map[string]string{}
	for _, p := range figuretest.Pieces() {
		sheet := paper.Layout(p.Scene, 200, 150)
		if err := sheet.Check(); err != nil {
			t.Errorf("%s: %v", p.Name, err)
		}
		names = append(names, p.Name)
		text[p.Name] = marks(sheet)
	}
	figuretest.Golden(t, "testdata/pieces.txt", *update, names, text)
}

// marks lists the marks of a sheet, one a line: a text as in print, where a slash parts kinds of type; else the places, from
// the frame's lower left corner, y upward, and how they are drawn.
func marks(s paper.Sheet) string {
	var b strings.Builder
	for _, m := range s.Marks {
		for i, at := range m.Path {
			fmt.Fprintf(&b, "%s%.0f,%.0f", strings.Repeat(" ", min(i, 1)), at.X-s.Origin.X, s.Origin.Y-at.Y)
		}
		b.WriteString(manner(m) + "\n")
	}
	return b.String()
}

// manner is how a mark is drawn.
func manner(m paper.Mark) string {
	if len(m.Text) > 0 {
		var runs []string
		for _, r := range m.Text {
			kind := ""
			for _, k := range []struct {
				is   bool
				name string
			}{{r.Italic, "i"}, {r.Bold, "b"}, {r.Index, "x"}, {r.Under, "u"}} {
				if k.is {
					kind += k.name
				}
			}
			runs = append(runs, strings.TrimPrefix(kind+":"+r.Text, ":"))
		}
		return fmt.Sprintf(" %q %06x", strings.Join(runs, "/"), m.Line)
	}
	text := ""
	if m.Radius > 0 {
		text += fmt.Sprintf(" radius %.1f", m.Radius)
	}
	if m.Closed {
		text += " closed"
	}
	if m.Line != paper.NoInk && m.Weight > 0 {
		text += fmt.Sprintf(" line %06x %.1f", m.Line, m.Weight)
	}
	if m.Dashed {
		text += " dashed"
	}
	if m.Fill != paper.NoInk {
		text += fmt.Sprintf(" fill %06x", m.Fill)
	}
	return text
}
