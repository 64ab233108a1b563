package screen

import (
	"reflect"
	"slices"

	"unpin/statics/figure"
	"unpin/statics/figure/cells"
)

// A picture is a scene drawn for one place.
type picture struct {
	grid  cells.Grid
	scene figure.Scene
	w, h  int
	ascii bool
}

// A gallery keeps the pictures drawn last, the latest first, so that a scene is drawn again only if it shows something
// else, and looking back and forth draws nothing.
type gallery []*picture

// mostPictures is how many a gallery keeps.
const mostPictures = 12

// picture is the scene drawn in w × h cells.
func (g *gallery) picture(s figure.Scene, w, h int, ascii bool) *picture {
	w, h = max(w, 1), max(h, 1)
	i := slices.IndexFunc(*g, func(p *picture) bool {
		return p.w == w && p.h == h && p.ascii == ascii && reflect.DeepEqual(p.scene, s)
	})
	if i < 0 {
		*g = append(*g, &picture{cells.Draw(s, w, h, ascii), s, w, h, ascii})
		i = len(*g) - 1
	}
	p := (*g)[i]
	*g = slices.Insert(slices.Delete(*g, i, i+1), 0, p)
	*g = (*g)[:min(len(*g), mostPictures)]
	return p
}

// whole reports whether nothing was left out of the picture.
func (p *picture) whole() bool { return !p.grid.Clipped && len(p.grid.Dropped) == 0 }

// misleads reports whether arrows or supports have no place in the picture, so that it shows another frame.
func (p *picture) misleads() bool { return len(p.grid.Lost) > 0 }

// key is what tells the signs of a diagram where it has no room beneath: as much of it as has room is its title then.
func (p *picture) key() string {
	if !p.keyed() {
		return ""
	}
	return p.scene.Legend[0]
}

// keyed reports whether the picture leaves out the lines beneath the figure.
func (p *picture) keyed() bool {
	return len(p.scene.Legend) > 0 && slices.Contains(p.grid.Dropped, p.scene.Legend[0])
}

// someLabels is what a picture lacks that leaves out labels or arrows.
const someLabels = "all of it"

// lacks says what a picture leaves out, or nothing: dimensions, or also labels and arrows.
func (p *picture) lacks() string {
	word := ""
	if p.grid.Clipped {
		return someLabels
	}
	for _, text := range p.grid.Dropped {
		switch {
		case slices.Contains(p.scene.Legend, text):
		case slices.ContainsFunc(p.scene.Dimensions, func(d figure.Dimension) bool { return d.Meaning == text }):
			word = "dimensions"
		default:
			return someLabels
		}
	}
	return word
}

// put copies the figure into a place.
func (p *picture) put(onto *page, in rect) {
	if p == nil {
		return
	}
	g := p.grid
	for y := 0; y < min(in.h, g.Height); y++ {
		for x, c := range g.Row(y)[:min(in.w, g.Width)] {
			r := c.Rune
			if r == 0 {
				r = ' '
			}
			if at := (in.y+y)*onto.w + in.x + x; in.y+y < onto.h && in.x+x < onto.w {
				onto.cells[at] = cell{r, inkOf(c.Look)}
			}
		}
	}
}
