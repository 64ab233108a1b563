package worksheet

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/figure"
)

// The size of a figure that stands alone, in points: as wide as the text of an A4 page, and half as tall as that page.
const (
	figureWide = 470
	figureTall = 420
)

// SVG is the figure of the frame as given, with its description in words, as an SVG image.
func SVG(p *problems.Problem, s *statics.Solution) []byte {
	d := newDocument(p, s, Options{})
	o := figure.Options{Style: d.st}
	scene := figure.Given(&s.Frame, o)
	scene.Title = oneLine(p.Title)
	return figure.SVG(figure.Paper(scene, figureWide, figureTall), figure.Describe(s.Assembly, o))
}
