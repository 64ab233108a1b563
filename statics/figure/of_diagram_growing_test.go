package figure_test

import (
	"math"
	"path/filepath"
	"reflect"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// TestGrowing draws every internal force of every drawing stretch by stretch: each alone reaches from its start to its
// end and has the values that the whole has there, and all together are the whole.
func TestGrowing(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		s, o := d.Solution(t), figure.Options{Style: d.Style}
		for _, q := range []figure.InternalForce{figure.AxialForce, figure.ShearForce, figure.BendingMoment} {
			whole := map[int]figure.Growth{}
			for m, g := range s.Diagrams {
				all := make([]bool, len(g.Stretches))
				for i := range all {
					all[i] = true
					one := figure.Growth{Stretches: make([]bool, len(g.Stretches))}
					one.Stretches[i] = true
					checkStretch(t, filepath.Base(file), g, i, figure.OfDiagramSoFar(s, q, map[int]figure.Growth{m: one}, o))
				}
				whole[m] = figure.Growth{Stretches: all, Places: g.Stations()}
			}
			if got, want := figure.OfDiagramSoFar(s, q, whole, o).Curves, figure.OfDiagram(s, q, nil, o).Curves; !reflect.DeepEqual(got, want) {
				t.Errorf("%s: %s in stretches is %+v, as a whole %+v", filepath.Base(file), q.Letter(), got, want)
			}
		}
	}
}

// checkStretch holds the scene of stretch i alone against its ends: a curve over it, or a 0 in its middle.
func checkStretch(t *testing.T, file string, g statics.Diagram, i int, scene figure.Scene) {
	p := g.Stretches[i]
	if len(scene.Curves) == 0 {
		noughts := 0
		for _, n := range scene.Notes {
			if n.Role == figure.DiagramMark {
				noughts++
			}
		}
		if noughts != 1 {
			t.Errorf("%s: a stretch of nought has %+v", file, scene.Notes)
		}
		return
	}
	c := scene.Curves[0]
	long, want := math.Hypot(c.To.X-c.From.X, c.To.Y-c.From.Y), p.Until.Sub(p.From).Float()
	if len(scene.Curves) != 1 || math.Abs(long-want) > 1e-9*(1+want) || c.Ordinates[0].Along != 0 || c.Ordinates[len(c.Ordinates)-1].Along != 1 {
		t.Errorf("%s: a stretch %v long is %+v", file, want, scene.Curves)
	}
}

// TestPlaces: a value that is found alone is one stroke with its number, or a 0; one that a stretch reaches is not drawn
// twice.
func TestPlaces(t *testing.T) {
	d, _, _ := figuretest.Load(t, filepath.Join("testdata", "portal.txt"))
	s, o := d.Solution(t), figure.Options{Style: d.Style}
	g := s.Diagrams[0]
	first := g.Stations()[0]
	alone := figure.OfDiagramSoFar(s, figure.ShearForce, map[int]figure.Growth{0: {Places: []statics.Station{first}}}, o)
	if len(alone.Curves) != 1 || alone.Curves[0].From != alone.Curves[0].To || len(alone.Curves[0].Values) != 1 {
		t.Errorf("a place alone has %+v", alone.Curves)
	}
	stretches := make([]bool, len(g.Stretches))
	stretches[0] = true
	both := figure.OfDiagramSoFar(s, figure.ShearForce, map[int]figure.Growth{0: {Stretches: stretches, Places: []statics.Station{first}}}, o)
	if len(both.Curves) != 1 || both.Curves[0].From == both.Curves[0].To {
		t.Errorf("a place in a stretch has %+v", both.Curves)
	}
	if none := figure.OfDiagramSoFar(s, figure.ShearForce, nil, o); len(none.Curves) > 0 || len(none.Legend) != 2 {
		t.Errorf("nothing found has %+v", none)
	}
}

// TestPlacesAtAJump: where V jumps at the end of a stretch that is drawn, the value just before belongs to the stretch, and
// that just after is a stroke of its own.
func TestPlacesAtAJump(t *testing.T) {
	d, _, _ := figuretest.Load(t, filepath.Join("testdata", "portal.txt"))
	s, o := d.Solution(t), figure.Options{Style: d.Style}
	for side, want := range map[statics.Side]int{statics.Before: 1, statics.After: 2} {
		for _, st := range s.Diagrams[1].Stations() {
			if st.Side != side || !st.At.Equal(s.Diagrams[1].Stretches[0].Until) {
				continue
			}
			found := map[int]figure.Growth{1: {Stretches: []bool{true}, Places: []statics.Station{st}}}
			if got := len(figure.OfDiagramSoFar(s, figure.ShearForce, found, o).Curves); got != want {
				t.Errorf("side %v of the jump: %d curves, not %d", side, got, want)
			}
			want = -1
		}
		if want > 0 {
			t.Errorf("no place on side %v of the jump", side)
		}
	}
}
