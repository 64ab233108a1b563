package worksheet

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/figure/paper"
	"unpin/statics/wording"
)

// The size of a figure that stands alone, in points: as wide as the text of an A4 page, and half as tall as that page.
const (
	figureWide = 470
	figureTall = 420
)

// Figures are the names of the figures of a problem: the frame as given; the whole cut from its supports; its bodies apart,
// with the unknowns and with all forces as they act; the internal forces; and how a frame moves that nothing holds.
var Figures = []string{"given", "whole", "bodies", "forces", "N", "V", "M", "motion"}

// SVG is a figure, with its description in words, as an SVG image. A frame that has no such figure gives an error that says
// so.
func SVG(p *problems.Problem, s *statics.Solution, name string) ([]byte, error) {
	d := drawing{newDocument(p, s, false)}
	d.pictures = true
	if many := len(d.Parts); many > mostDrawn && (name == "bodies" || name == "forces") {
		return nil, fmt.Errorf("the frame has %d parts, and beyond %d there is %w of all apart: --step N draws the free body of step N", many, mostDrawn, ErrNoFigure)
	}
	switch name {
	case "given":
		d.given()
	case "bodies":
		d.together(false)
	case "motion":
		d.motions()
	default:
		if s.Values != nil {
			d.solved(name)
		}
	}
	switch {
	case len(d.list) == 0 && name == "motion":
		return nil, fmt.Errorf("the frame cannot move, and has %w", ErrNoFigure)
	case len(d.list) == 0:
		return nil, errUnsolved
	}
	return d.svg(), nil
}

// ErrNoFigure is in the errors that say that a frame has not the figure asked for.
var ErrNoFigure = errors.New("no such figure")

// errUnsolved says that a figure shows what only a determinate frame has.
var errUnsolved = fmt.Errorf("the frame is not determinate and has %w; unpin inspect tells why", ErrNoFigure)

// StepSVG is the figure of a step of the plan, from 1: its free body, what counts in its sum, and the arms. Of sums solved
// together it is the first. The plan of a determinate frame must have that step.
func StepSVG(p *problems.Problem, s *statics.Solution, step int) ([]byte, error) {
	if s.Values == nil {
		return nil, errUnsolved
	}
	d := drawing{newDocument(p, s, false)}
	d.pictures = true
	known := map[int]exact.Num{}
	before := s.KnownBefore(step - 1)
	for i := range s.Forces {
		if v, ok := before(i); ok {
			known[i] = v
		}
	}
	o := d.options()
	o.LitForces = s.Plan[step-1].Gives
	sum := s.Plan[step-1].Sums[0]
	d.draw(figure.OfSum(s.Assembly, sum, known, o), figure.DescribeSum(s.Assembly, sum, known, o))
	d.list[0].text = "Step " + strconv.Itoa(step) + ", " + d.list[0].text
	return d.svg(), nil
}

// drawing draws the figures of a document, where its format has any.
type drawing struct{ *document }

// svg is the first figure of the document as an image.
func (d drawing) svg() []byte {
	b := d.list[0]
	b.picture.Title = oneLine(d.p.Title) + ": " + strings.TrimSuffix(b.text, ".")
	tall := float64(figureTall)
	if b.picture.IsApart() {
		tall = max(tall, min(arrowTall*float64(b.picture.CountArrows()), bodiesMost))
	}
	sheet := paper.Layout(b.picture, figureWide, tall)
	for size := 1.2; !sheet.Fits && size < 3; size *= 1.2 { // an image may be as large as it must
		sheet = paper.Layout(b.picture, figureWide*size, max(tall, bodiesMost)*size)
	}
	return paper.SVG(sheet, append(slices.Clone(b.words), wording.Caution)) // it leaves the document that says so
}

// solved draws a figure that only a determinate frame has.
func (d drawing) solved(name string) {
	switch name {
	case "whole":
		known := map[int]exact.Num{}
		for i, v := range d.Values {
			known[i] = v
		}
		d.draw(figure.OfBody(d.Assembly, d.Whole(), known, d.options()), figure.DescribeBody(d.Assembly, d.Whole(), known, d.options()))
	case "forces":
		d.together(true)
	case "N":
		d.quantity(figure.AxialForce)
	case "V":
		d.quantity(figure.ShearForce)
	case "M":
		d.quantity(figure.BendingMoment)
	}
}

// options are the conventions of the problem as figures keep them.
func (d drawing) options() figure.Options {
	return figure.Options{Style: d.st}
}

// given draws the frame.
func (d drawing) given() {
	if !d.pictures {
		return
	}
	d.draw(figure.OfFrame(&d.Frame, d.options()), figure.Describe(d.Assembly, d.options()))
}

// mostDrawn is the number of parts beyond which a document leaves its figures out: on a page that of the frame could not be
// read, and those of the free bodies would fill hundreds. No figure shows more parts apart either.
const mostDrawn = 60

// leaveOut leaves the figures of a large frame out, and says how to have them.
func (d drawing) leaveOut() {
	if d.pictures && len(d.Parts) > mostDrawn {
		d.pictures = false
		d.blank()
		d.prose(fmt.Sprintf("The frame has %d parts, and beyond %d a document has no figures, since they could not be read on a page. "+
			"As images of their own they are drawn by unpin solve with --as svg and --figure given, whole, N, V or M, and by --step N, "+
			"the free body of step N.", len(d.Parts), mostDrawn))
	}
}

// mostApart is the number of parts that are drawn apart in one figure; of more, each has its own.
const mostApart = 4

// bodies draws all free bodies with their unknowns in the senses taken, or, if solved, with all forces as they act: in one
// figure, or, where there are many or they do not fit, each in its own.
func (d drawing) bodies(solved bool) {
	if !d.pictures {
		return
	}
	scene, words := d.apart(solved)
	if len(d.Parts) <= mostApart && paper.Layout(scene, figureWide, bodiesMost).Fits {
		d.draw(scene, slices.Concat(words...))
		return
	}
	way := ", unknowns positive"
	if solved {
		way = ", all forces as they act"
	}
	_, beside := room{wide: figureWide}.besideBy(scene.Parts, 1)
	for i, part := range scene.Parts {
		part.Title = strings.TrimSuffix(part.Title, ".") + way
		d.draw(part, words[i])
		d.list[len(d.list)-1].beside = beside
	}
}

// apart is the scene of all free bodies in one, and of each what it shows in words.
func (d drawing) apart(solved bool) (figure.Scene, [][]string) {
	var known map[int]exact.Num
	title := "The free bodies, each unknown in the sense taken as positive"
	if solved {
		title = "All forces as they act"
		known = map[int]exact.Num{}
		for i, v := range d.Values {
			known[i] = v
		}
	}
	scene := figure.OfParts(d.Assembly, known, d.options())
	scene.Title = title
	var words [][]string
	for b := range d.Bodies() {
		words = append(words, figure.DescribeBody(d.Assembly, statics.FreeBody{b}, known, d.options()))
	}
	return scene, words
}

// together draws all free bodies in one figure, however large.
func (d drawing) together(solved bool) {
	scene, words := d.apart(solved)
	d.draw(scene, slices.Concat(words...))
}

// internal draws N, V and M, and says which of them are zero in every member.
func (d drawing) internal() {
	if !d.pictures {
		return
	}
	var zero []string
	for _, q := range []figure.InternalForce{figure.AxialForce, figure.ShearForce, figure.BendingMoment} {
		if d.isZero(q) {
			zero = append(zero, q.Letter())
		}
	}
	if len(zero) > 0 {
		d.prose(strings.Join(zero, " = ") + " = 0 in every member.")
		d.symbolic("NVM")
	}
	for _, q := range []figure.InternalForce{figure.AxialForce, figure.ShearForce, figure.BendingMoment} {
		if !d.isZero(q) {
			d.quantity(q)
		}
	}
}

// isZero reports whether a quantity is zero in all of the frame.
func (d drawing) isZero(q figure.InternalForce) bool {
	for _, g := range d.Diagrams {
		if g.Withheld {
			return false
		}
		for _, p := range g.Stretches {
			for _, k := range [...]exact.Poly{p.N, p.V, p.M}[q] {
				if !k.IsZero() {
					return false
				}
			}
		}
	}
	return true
}

func (d drawing) quantity(q figure.InternalForce) {
	if d.pictures {
		d.draw(figure.OfDiagram(d.Solution, q, nil, d.options()), figure.DescribeDiagram(d.Solution, q, d.options()))
	}
}

// motions draws the ways in which the frame can move.
func (d drawing) motions() {
	if !d.pictures {
		return
	}
	r := refusal(d)
	for _, m := range d.Motions() {
		var words []string
		for _, text := range r.motionTexts(m) {
			words = append(words, wording.Sentence(text))
		}
		d.draw(figure.OfMotion(d.Assembly, m, d.options()), words)
	}
}
