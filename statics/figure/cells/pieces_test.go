package cells_test

import (
	"strings"
	"testing"

	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

// TestPieces draws each thing that a scene may hold by itself, and beside it in ASCII.
func TestPieces(t *testing.T) {
	t.Parallel()
	var names []string
	text := map[string]string{}
	for _, p := range figuretest.Pieces() {
		const w, h = 44, 15
		names = append(names, p.Name)
		drawn, ascii := cells.Draw(p.Scene, w, h, false), cells.Draw(p.Scene, w, h, true)
		for _, g := range []cells.Grid{drawn, ascii} {
			if err := g.Check(); err != nil || len(g.Dropped) > 0 || g.Clipped {
				t.Errorf("%s: %v, left out %q", p.Name, err, g.Dropped)
			}
		}
		text[p.Name] = abreast(drawn.Text(), ascii.Text())
	}
	figuretest.Golden(t, "testdata/pieces.txt", *update, names, text)
}

// abreast sets two grids side by side, without rows that are blank in both.
func abreast(a, b string) string {
	var lines []string
	right := strings.Split(b, "\n")
	for i, line := range strings.Split(a, "\n") {
		if line = strings.TrimRight(line+right[i], " "); line != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, "\n")
}
