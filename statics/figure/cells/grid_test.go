package cells_test

import (
	"path/filepath"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

// TestEmphasis: what is lit or faded is so in every cell of its arrow and its label, and nothing else is.
func TestEmphasis(t *testing.T) {
	d, _, _ := figuretest.Load(t, filepath.Join("..", "testdata", "portal.txt"))
	o := figure.Options{Style: d.Style, LitForces: []int{d.Force(t, "Cy")}, FadedForces: []int{d.Force(t, "Bx")}, LitLoads: []int{1}}
	g := cells.Draw(figure.OfBody(d.Cut(t), d.Body(t, "BC"), nil, o), 80, 24, false)
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
	d, _, _ := figuretest.Load(t, filepath.Join("..", "testdata", "portal.txt"))
	fresh := func() cells.Grid {
		return cells.Draw(figure.OfFrame(&d.Frame, figure.Options{Style: d.Style}), 80, 24, false)
	}
	for name, spoil := range map[string]func(*cells.Grid){
		"size":        func(g *cells.Grid) { g.Cells = g.Cells[1:] },
		"outside":     func(g *cells.Grid) { g.Labels[0].Col = 79 },
		"overwritten": func(g *cells.Grid) { g.Cells[g.Labels[0].Row*80+g.Labels[0].Col].Rune = '━' },
		"collision":   func(g *cells.Grid) { g.Labels = append(g.Labels, g.Labels[0]) },
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
