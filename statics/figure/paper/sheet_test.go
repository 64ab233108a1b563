package paper_test

import (
	"math"
	"slices"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
	"unpin/statics/figure/paper"
)

// TestOneScale: N, V and M of a frame stand to one scale, the least of what each would have alone.
func TestOneScale(t *testing.T) {
	t.Parallel()
	for _, frame := range []string{"portal", "gable", "wind"} {
		d, _, _ := figuretest.Load(t, "../testdata/"+frame+".txt")
		var scenes []figure.Scene
		alone := math.Inf(1)
		for _, letter := range []string{"N", "V", "M"} {
			s := d.Diagram(t, letter, figure.Options{Style: d.Style})
			scenes = append(scenes, s)
			alone = min(alone, long(paper.Layout(s, 300, 150)))
		}
		for i, sheet := range paper.LayoutAll(scenes, 300, 150) {
			if got := long(sheet); math.Abs(got-alone) > 0.3 {
				t.Errorf("%s: the first member of diagram %d is %.1f points long, not %.1f", frame, i+1, got, alone)
			}
			if err := sheet.Check(); err != nil {
				t.Errorf("%s: %v", frame, err)
			}
		}
	}
}

// long is the length of the first member on a sheet.
func long(s paper.Sheet) float64 {
	m := members(s)[0]
	return math.Hypot(m.Path[1].X-m.Path[0].X, m.Path[1].Y-m.Path[0].Y)
}

// TestScaled: a sheet three times as large has every place, size, radius and weight three times as large, and leaves the
// one it came from as it was.
func TestScaled(t *testing.T) {
	t.Parallel()
	d, _, _ := figuretest.Load(t, "../testdata/slots.txt")
	scene := figure.OfFrame(&d.Frame, figure.Options{Style: d.Style})
	s, before := paper.Layout(scene, 300, 200), paper.Layout(scene, 300, 200)
	large := s.Scaled(3)
	near := func(name string, got, want float64) {
		t.Helper()
		if math.Abs(got-3*want) > 1e-9 {
			t.Errorf("%s is %v, not three times %v", name, got, want)
		}
	}
	near("width", large.Width, s.Width)
	near("height", large.Height, s.Height)
	near("x of the origin", large.Origin.X, s.Origin.X)
	near("y of the origin", large.Origin.Y, s.Origin.Y)
	for i, m := range large.Marks {
		near("radius", m.Radius, s.Marks[i].Radius)
		near("size", m.Size, s.Marks[i].Size)
		near("weight", m.Weight, s.Marks[i].Weight)
		for k, at := range m.Path {
			near("x", at.X, s.Marks[i].Path[k].X)
			near("y", at.Y, s.Marks[i].Path[k].Y)
		}
		if !slices.Equal(s.Marks[i].Path, before.Marks[i].Path) {
			t.Errorf("mark %d has moved on the sheet itself", i)
		}
	}
	if s.Origin.X <= 0 || s.Origin.Y <= 0 || s.Origin.Y >= s.Height {
		t.Errorf("the origin %v lies off the sheet", s.Origin)
	}
}

// TestOrigin: the origin is where the frame's lower left corner lies.
func TestOrigin(t *testing.T) {
	t.Parallel()
	for _, p := range figuretest.Pieces() {
		s := paper.Layout(p.Scene, 300, 200)
		if s.Stretched || len(p.Scene.Guides) > 0 || p.Name == "members that cross" {
			continue
		}
		if at := members(s)[0].Path[0]; math.Hypot(at.X-s.Origin.X, at.Y-s.Origin.Y) > 1e-9 {
			t.Errorf("%s: the first member begins at %v, not at the origin %v", p.Name, at, s.Origin)
		}
	}
}
