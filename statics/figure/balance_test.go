package figure_test

import (
	"math"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// pull is what acts in a figure: forces, and moment about the origin.
type pull struct{ x, y, turn float64 }

func (p *pull) add(at figure.Position, toward figure.Direction, size float64) {
	p.x += toward.X * size
	p.y += toward.Y * size
	p.turn += (at.X*toward.Y - at.Y*toward.X) * size
}

// TestBalance reads the solved free bodies as a student would, senses from the arrows and sizes from the labels, and
// finds each in equilibrium.
func TestBalance(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "testdata") {
		d, _, _ := figuretest.Load(t, file)
		if d.Style.Units.Letters() {
			continue
		}
		d.Style.Figures = 12
		for name, s := range d.Scenes(t, false) {
			if !strings.HasPrefix(name, "solved") {
				continue
			}
			for _, body := range append(s.Parts, s) { // what is drawn apart has nothing but its parts
				p, size := read(t, body)
				if worst := max(math.Abs(p.x), math.Abs(p.y), math.Abs(p.turn)); worst > 1e-6*size {
					t.Errorf("%s, %s, %s does not balance: %+v", filepath.Base(file), name, body.Title, p)
				}
			}
		}
	}
}

// read adds up what a scene shows, and how large its largest number is.
func read(t *testing.T, s figure.Scene) (p pull, size float64) {
	size = 1
	for _, a := range s.Arrows {
		v := number(t, a.Text)
		size = max(size, v*100)
		p.add(a.At, a.Toward, v)
	}
	for _, k := range s.Symbols {
		switch k.Kind {
		case figure.TurnLeft:
			p.turn += number(t, k.Text)
		case figure.TurnRight:
			p.turn -= number(t, k.Text)
		}
	}
	unit := greatest(t, s)
	for _, k := range s.Spreads {
		long := math.Hypot(k.To.X-k.From.X, k.To.Y-k.From.Y)
		first, last := k.First*unit*long/2, k.Last*unit*long/2 // two triangles, each nought at the far end; a
		// projection lies on the lines of action of what it stands for
		third := func(f float64) figure.Position {
			return figure.Position{X: k.From.X + (k.To.X-k.From.X)*f, Y: k.From.Y + (k.To.Y-k.From.Y)*f}
		}
		p.add(third(1.0/3), k.Toward, first)
		p.add(third(2.0/3), k.Toward, last)
	}
	return p, size
}

// greatest is the intensity that a spread load of 1 stands for, from the labels.
func greatest(t *testing.T, s figure.Scene) float64 {
	for _, k := range s.Spreads {
		switch {
		case k.MidText != "":
			return number(t, k.MidText) / math.Abs(k.First)
		case k.FirstText != "":
			return number(t, k.FirstText) / math.Abs(k.First)
		case k.LastText != "":
			return number(t, k.LastText) / math.Abs(k.Last)
		}
	}
	return 0
}

// number is the first number in a label.
func number(t *testing.T, label string) float64 {
	for _, word := range strings.Fields(label) {
		if v, err := strconv.ParseFloat(word, 64); err == nil {
			return v
		}
	}
	t.Errorf("no number in %q", label)
	return 0
}
