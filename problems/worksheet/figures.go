package worksheet

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
)

// The size of a figure that stands alone, in points: as wide as the text of an A4 page, and half as tall as that page.
const (
	figureWide = 470
	figureTall = 420
)

// SVG is the figure of the frame as given, with its description in words, as an SVG image.
func SVG(p *problems.Problem, s *statics.Solution) []byte {
	d := newDocument(p, s, false)
	scene := figure.Given(&s.Frame, d.figureOptions())
	scene.Title = oneLine(p.Title)
	return figure.SVG(figure.Paper(scene, figureWide, figureTall), figure.Describe(s.Assembly, d.figureOptions()))
}

// figureOptions are the conventions of the problem as figures keep them.
func (d *document) figureOptions() figure.Options {
	return figure.Options{Style: d.st, ShearReversed: d.flipsShear(), CompressionSide: d.p.Ask.Side == "compression"}
}

// drawGiven draws the frame.
func (d *document) drawGiven() {
	if !d.pictures {
		return
	}
	d.draw(figure.Given(&d.Frame, d.figureOptions()), figure.Describe(d.Assembly, d.figureOptions()))
}

// drawBodies draws all free bodies with their unknowns in the senses taken, or, if solved, with all forces as they act.
func (d *document) drawBodies(solved bool) {
	if !d.pictures {
		return
	}
	var known map[int]exact.Num
	title := "The free bodies, each unknown in the sense taken as positive"
	if solved {
		title = "All forces as they act"
		known = map[int]exact.Num{}
		for i, v := range d.Values {
			known[i] = v
		}
	}
	scene := figure.Exploded(d.Assembly, known, d.figureOptions())
	scene.Title = title
	var words []string
	for b := range d.Bodies() {
		words = append(words, figure.DescribeBody(d.Assembly, statics.FreeBody{b}, known, d.figureOptions())...)
	}
	d.draw(scene, words)
}

// drawInternal draws N, V and M.
func (d *document) drawInternal() {
	if !d.pictures {
		return
	}
	for _, q := range []figure.Quantity{figure.AxialForce, figure.ShearForce, figure.BendingMoment} {
		d.draw(figure.Internal(d.Solution, q, nil, d.figureOptions()), figure.DescribeInternal(d.Solution, q, d.figureOptions()))
	}
}
