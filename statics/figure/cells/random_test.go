package cells_test

import (
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

// TestRandomFrames draws frames of every kind, sound or not, at any size: never a panic, always the exact size, and no
// label lost, cut off or overwritten. What fits is held to the rules of figuretest.
func TestRandomFrames(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		ascii := rapid.Bool().Draw(t, "ascii")
		scenes := figuretest.RandomScenes(t, ascii)
		w, h := rapid.IntRange(1, 140).Draw(t, "w"), rapid.IntRange(1, 50).Draw(t, "h")
		for _, s := range scenes {
			g := cells.Draw(s, w, h, ascii)
			if fault := checkGrid(s, g, w, h, ascii); fault != "" {
				t.Fatalf("%d × %d: %s\n%s", w, h, fault, g.Text())
			}
			if !g.Fits() {
				continue
			}
			if faults := figuretest.Cells.InAnyFrame(g.Drawn); len(faults) > 0 {
				t.Fatalf("%d × %d: %v\n%s", w, h, faults, g.Text())
			}
		}
	})
}
