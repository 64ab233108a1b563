package figure_test

import (
	"math"
	"path/filepath"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// TestApart: in a frame taken apart every pin force stands twice, with one name and opposite senses, well apart; every
// reaction once; every member once, as long as it is and turned as it is.
func TestApart(t *testing.T) {
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		a := d.Cut(t)
		s := figure.OfParts(a, nil, figure.Options{Style: d.Style})
		size := extentOf(s)
		for _, f := range a.Forces {
			if f.Couple {
				continue
			}
			var found []figure.Arrow
			for _, k := range s.Arrows {
				if k.Text == f.Name {
					found = append(found, k)
				}
			}
			want := 2
			if f.By == statics.None {
				want = 1
			}
			if len(found) != want {
				t.Errorf("%s: %s is drawn %d times", filepath.Base(file), f.Name, len(found))
				continue
			}
			if want == 2 && !opposite(found[0], found[1], size/20) {
				t.Errorf("%s: %s is %+v", filepath.Base(file), f.Name, found)
			}
		}
		if len(s.Strokes) != len(a.Frame.Members) {
			t.Errorf("%s: %d members", filepath.Base(file), len(s.Strokes))
		}
	}
}

func opposite(a, b figure.Arrow, apart float64) bool {
	return a.Toward.X == -b.Toward.X && a.Toward.Y == -b.Toward.Y && math.Hypot(a.At.X-b.At.X, a.At.Y-b.At.Y) > apart
}

// extentOf is the longer side of the rectangle around a scene's members.
func extentOf(s figure.Scene) float64 {
	low, high := figure.Position{X: math.Inf(1), Y: math.Inf(1)}, figure.Position{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, k := range s.Strokes {
		for _, p := range [2]figure.Position{k.From, k.To} {
			low = figure.Position{X: min(low.X, p.X), Y: min(low.Y, p.Y)}
			high = figure.Position{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
		}
	}
	return max(high.X-low.X, high.Y-low.Y)
}
