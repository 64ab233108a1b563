package worksheet

import (
	"strings"

	"unpin/statics/figure/paper"
)

// A gallery is the figures of a document as images for a page on a screen.
type gallery struct {
	d      *document
	sheets map[int]paper.Sheet
}

// webRoom is the room of figures on a page for a browser, in points.
var webRoom = room{wide: 520, tallest: 640}

func newGallery(d *document) gallery { return gallery{d, webRoom.sheetsOf(d.list, 1)} }

// image is figure i among the passages of the document, with its title and its description.
func (g gallery) image(i int) []byte {
	return paper.SVG(g.sheet(i), g.d.list[i].words)
}

// sheet is that of figure i with its title, as wide as it is shown.
func (g gallery) sheet(i int) paper.Sheet {
	b := g.d.list[i]
	sheet := g.sheets[i]
	if b.pictureKind() == levelPicture {
		sheet = g.levelled(sheet)
	}
	sheet.Title = oneLine(g.d.p.Title) + ": " + strings.TrimSuffix(b.text, ".")
	return sheet
}

// levelled is the sheet of a beam made as wide as all beams of the document need to stand beneath one another.
func (g gallery) levelled(s paper.Sheet) paper.Sheet {
	left, right := 0.0, 0.0
	for k, other := range g.sheets {
		if g.d.list[k].pictureKind() == levelPicture {
			left, right = max(left, other.Origin.X), max(right, other.Width-other.Origin.X)
		}
	}
	return s.Moved(left-s.Origin.X, left+right)
}
