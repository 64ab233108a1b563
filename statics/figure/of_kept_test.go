package figure_test

import (
	"math"
	"path/filepath"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// TestKeptBalance cuts every member of the test frames at every critical point and reads the pieces on both sides, all
// values drawn, as a student would: each is in equilibrium.
func TestKeptBalance(t *testing.T) {
	t.Parallel()
	pieces := 0
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		if d.Style.Units.Letters() {
			continue
		}
		d.Style.Figures = 12
		s, known := d.Solution(t), d.Values(t)
		for _, g := range s.Diagrams {
			for i, at := range g.Stations() {
				for side := statics.FromStart; side <= statics.Between; side++ {
					k := figure.Section{Kept: statics.Kept{Solution: s, Member: g.Member, At: at, Side: side}, Found: everything}
					if side == statics.Between {
						if i == 0 || g.Withheld {
							continue
						}
						k.Other = g.Stations()[0]
					}
					scene := figure.OfKept(k, known, figure.Options{Style: d.Style})
					p, size := read(t, atTheirPlaces(scene, k))
					if worst := max(math.Abs(p.x), math.Abs(p.y), math.Abs(p.turn)); worst > 1e-6*size {
						t.Errorf("%s, %s: it does not balance: %+v", filepath.Base(file), scene.Title, p)
					}
					pieces++
				}
			}
		}
	}
	if pieces < 300 {
		t.Errorf("only %d pieces", pieces)
	}
}

var everything = []statics.Quantity{statics.AxialForce, statics.ShearForce, statics.BendingMoment}

// atTheirPlaces is the scene with what acts at a cut moved to where the cut is, of those that are drawn a little off.
func atTheirPlaces(scene figure.Scene, k figure.Section) figure.Scene {
	cuts := []statics.Station{k.At}
	if k.Side == statics.Between {
		cuts = append(cuts, k.Other)
	}
	for i, a := range scene.Arrows {
		if !strings.HasPrefix(a.Text, "N ") && !strings.HasPrefix(a.Text, "V ") {
			continue
		}
		least := math.Inf(1)
		for _, cut := range cuts {
			p := k.Solution.Frame.Along(k.Member, cut.At)
			at := figure.Position{X: p.X.Float(), Y: p.Y.Float()}
			if off := math.Hypot(at.X-a.At.X, at.Y-a.At.Y); off < least {
				least, scene.Arrows[i].At = off, at
			}
		}
	}
	return scene
}
