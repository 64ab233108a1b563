package cells_test

import (
	"flag"
	"testing"

	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

// TestNeverFalse holds every figure of the library, and of frames with crossing bars, rings, slots, sleeves and pins of many
// parts, and of the published cases, to the rules of figuretest in cells, at four sizes of a screen: of those that fit. No head may be
// overwritten. A plain run takes each at one size.
func TestNeverFalse(t *testing.T) {
	t.Parallel()
	for i, k := range figuretest.OfProblems(t, false, "../testdata/frames/*.yaml", published) {
		for n, size := range [][2]int{{60, 18}, {80, 24}, {100, 30}, {140, 45}} {
			if !*whole && (i+n)%4 > 0 || testing.Short() && (i+n)%12 > 0 {
				continue
			}
			g := cells.Draw(k.Scene, size[0], size[1], false)
			if !g.Fits() {
				continue
			}
			for _, fault := range append(figuretest.Cells.Violations(g.Drawn), figuretest.LostHeads(g.Drawn, func(c, r int) rune { return g.Row(r)[c].Rune })...) {
				t.Errorf("%s at %d × %d: %s", k.Name, size[0], size[1], fault)
			}
		}
	}
}

const published = "../../../testdata/cases/published.json"

// whole asks for all of what a plain run takes a sample of.
var whole = flag.Bool("whole", false, "hold all figures to the rules, not a sample")
