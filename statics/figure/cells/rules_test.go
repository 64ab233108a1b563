package cells_test

import (
	"strings"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

// TestNeverFalse holds every figure of the library, and of frames with crossing bars, rings, slots, sleeves and pins of many
// parts, to the rules of figuretest in cells, at four sizes of a screen: of those that fit. No head may be overwritten.
func TestNeverFalse(t *testing.T) {
	t.Parallel()
	for i, k := range figuretest.OfProblems(t, false, "../testdata/frames/*.yaml") {
		for n, size := range [][2]int{{60, 18}, {80, 24}, {100, 30}, {140, 45}} {
			if testing.Short() && (i+n)%6 > 0 {
				continue
			}
			g := cells.Draw(k.Scene, size[0], size[1], false)
			if !g.Fits() {
				continue
			}
			for _, fault := range append(figuretest.Cells.Violations(g.Drawn), lostHeads(g)...) {
				t.Errorf("%s at %d × %d: %s", k.Name, size[0], size[1], fault)
			}
		}
	}
}

// lostHeads are the arrows whose heads do not stand where they should.
func lostHeads(g cells.Grid) []string {
	var list []string
	for _, d := range g.Drawn {
		if d.Kind == figure.DrawnArrow && !strings.ContainsRune(heads, g.Row(int(d.To.Y + 0.5))[int(d.To.X+0.5)].Rune) {
			list = append(list, "the head of "+d.Text+" is lost")
		}
	}
	return list
}

const heads = "▼▲►◄∨∧<>↗↖↘↙"
