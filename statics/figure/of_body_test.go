package figure_test

import (
	"path/filepath"
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// arrowOf is the arrow of a scene whose label begins with a force's name.
func arrowOf(s figure.Scene, name string) (figure.Arrow, bool) {
	i := slices.IndexFunc(s.Arrows, func(a figure.Arrow) bool { return a.Text == name })
	if i < 0 {
		return figure.Arrow{}, false
	}
	return s.Arrows[i], true
}

// TestFaces: a pin force stands on both parts with the same name at the same place and the opposite sense, and neither
// arrow stands in the whole.
func TestFaces(t *testing.T) {
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		a := d.Cut(t)
		o := figure.Options{Style: d.Style}
		whole := figure.OfBody(a, a.Whole(), nil, o)
		for _, f := range a.Forces {
			if f.By == statics.None || f.Couple {
				continue
			}
			on, ok1 := arrowOf(figure.OfBody(a, statics.FreeBody{f.On}, nil, o), f.Name)
			by, ok2 := arrowOf(figure.OfBody(a, statics.FreeBody{f.By}, nil, o), f.Name)
			if !ok1 || !ok2 || on.At != by.At || on.Toward.X != -by.Toward.X || on.Toward.Y != -by.Toward.Y {
				t.Errorf("%s: %s is %+v on one part and %+v on the other", filepath.Base(file), f.Name, on, by)
			}
			if _, inside := arrowOf(whole, f.Name); inside {
				t.Errorf("%s: %s is drawn on the whole", filepath.Base(file), f.Name)
			}
		}
	}
}

// TestNoArrowCrossesItsMember: no arrow of any scene lies on a member that leaves its point.
func TestNoArrowCrossesItsMember(t *testing.T) {
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		for name, s := range d.Scenes(t, false) {
			for _, a := range s.Arrows {
				side := a.Toward
				if !a.Pull {
					side = figure.Direction{X: -side.X, Y: -side.Y}
				}
				for _, k := range s.Strokes {
					if a.Beside == (figure.Direction{}) && leaves(k, a.At, side) {
						t.Errorf("%s, %s: the arrow %q lies on a member", filepath.Base(file), name, a.Text)
					}
				}
			}
		}
	}
}

// leaves reports whether a stroke ends at a point and runs in that direction from it.
func leaves(k figure.Stroke, at figure.Position, side figure.Direction) bool {
	switch at {
	case k.To:
		k.From, k.To = k.To, k.From
	case k.From:
	default:
		return false
	}
	x, y := k.To.X-k.From.X, k.To.Y-k.From.Y
	cross, dot := x*side.Y-y*side.X, x*side.X+y*side.Y
	return dot > 0 && cross*cross < 1e-12*dot*dot
}

func BenchmarkFreeBody(b *testing.B) {
	d, _, _ := figuretest.Load(b, filepath.Join("testdata", "compound.txt"))
	a := d.Cut(b)
	for b.Loop() {
		figure.OfBody(a, a.Whole(), nil, figure.Options{Style: d.Style})
	}
}
