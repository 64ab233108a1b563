package figure_test

import (
	"path/filepath"
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/figure"
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
	for _, file := range drawingFiles(t) {
		d, _, _ := load(t, file)
		a := d.cut(t)
		o := figure.Options{Style: d.style}
		whole := figure.FreeBody(a, a.Whole(), nil, o)
		for _, f := range a.Forces {
			if f.By == statics.None || f.Couple {
				continue
			}
			on, ok1 := arrowOf(figure.FreeBody(a, statics.FreeBody{f.On}, nil, o), f.Name)
			by, ok2 := arrowOf(figure.FreeBody(a, statics.FreeBody{f.By}, nil, o), f.Name)
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
	for _, file := range drawingFiles(t) {
		d, _, _ := load(t, file)
		for name, s := range d.scenes(t, false) {
			for _, a := range s.Arrows {
				side := a.Toward
				if !a.Pull {
					side = figure.Vector{X: -side.X, Y: -side.Y}
				}
				for _, k := range s.Strokes {
					if a.Beside == (figure.Vector{}) && leaves(k, a.At, side) {
						t.Errorf("%s, %s: the arrow %q lies on a member", filepath.Base(file), name, a.Text)
					}
				}
			}
		}
	}
}

// leaves reports whether a stroke ends at a point and runs in that direction from it.
func leaves(k figure.Stroke, at figure.Point, side figure.Vector) bool {
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

// TestEmphasis: what is lit or faded is so in every cell of its arrow and its label, and nothing else is.
func TestEmphasis(t *testing.T) {
	d, _, _ := load(t, filepath.Join("testdata", "portal.txt"))
	a := d.cut(t)
	index := func(name string) int {
		return slices.IndexFunc(a.Forces, func(f statics.Force) bool { return f.Name == name })
	}
	o := figure.Options{Style: d.style, LitForces: []int{index("Cy")}, FadedForces: []int{index("Bx")}, LitLoads: []int{1}}
	body := slices.IndexFunc(a.Parts, func(p statics.Part) bool { return p.Name == "BC" })
	g := figure.Cells(figure.FreeBody(a, statics.FreeBody{body}, nil, o), 80, 24, false)
	want := map[string]figure.Emphasis{"Cy": figure.Lit, "Bx": figure.Faded, "30 kN": figure.Lit, "Cx": figure.Plain, "15 kN on BC": figure.Plain}
	found := 0
	for _, l := range g.Labels {
		if e, ok := want[l.Text]; ok {
			found++
			if l.Emphasis != e {
				t.Errorf("label %s has emphasis %d", l.Text, l.Emphasis)
			}
		}
	}
	if found != len(want) {
		t.Errorf("%d of %d labels found", found, len(want))
	}
	heads := map[rune]figure.Emphasis{'▷': figure.Plain, '◁': figure.Faded, '△': figure.Lit, '▽': figure.Plain}
	for _, c := range g.Cells {
		if e, ok := heads[c.Rune]; ok && c.Role == figure.UnknownForce && c.Emphasis != e {
			t.Errorf("the head %c has emphasis %d", c.Rune, c.Emphasis)
		}
	}
}

// TestCheckFinds: the check of a grid sees each fault it is there for.
func TestCheckFinds(t *testing.T) {
	d, _, _ := load(t, filepath.Join("testdata", "portal.txt"))
	fresh := func() figure.Grid {
		return figure.Cells(figure.Given(&d.frame, figure.Options{Style: d.style}), 80, 24, false)
	}
	for name, spoil := range map[string]func(*figure.Grid){
		"size":        func(g *figure.Grid) { g.Cells = g.Cells[1:] },
		"outside":     func(g *figure.Grid) { g.Labels[0].Col = 79 },
		"overwritten": func(g *figure.Grid) { g.Cells[g.Labels[0].Row*80+g.Labels[0].Col].Rune = '━' },
		"collision":   func(g *figure.Grid) { g.Labels = append(g.Labels, g.Labels[0]) },
	} {
		g := fresh()
		if err := g.Check(); err != nil {
			t.Fatal(err)
		}
		if spoil(&g); g.Check() == nil {
			t.Errorf("a fault of %s is not seen", name)
		}
	}
}
