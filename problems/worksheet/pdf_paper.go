package worksheet

import (
	"fmt"
	"io"
	"iter"
	"strings"

	"codeberg.org/go-pdf/fpdf"

	"unpin/statics/figure/paper"
)

// PapersPDF writes papers as one PDF document for the printer, each on pages of its own that are numbered by themselves, with the
// heading, the problem's number and the code of the copy on every page. Grey is enough to print it. It heeds all options.
func PapersPDF(w io.Writer, papers iter.Seq[Paper], o PaperOptions) error {
	return printPapers(papers, o).Output(w)
}

// printPapers is that document.
func printPapers(papers iter.Seq[Paper], o PaperOptions) *fpdf.Fpdf {
	press := NewPress(o, 1)
	return drawn(func(yield func(Pages) bool) {
		for p := range papers {
			if !yield(press.Pages(p)) {
				return
			}
		}
	})
}

// A printing prints one paper.
type printing struct {
	doc *fpdf.Fpdf
	o   PaperOptions
	Paper
}

// Sizes of the pages of a paper, in points, before large print makes them larger.
const (
	paperTop   = 92.0
	paperFoot  = 46.0
	headLine   = 14.5
	headGap    = 16.0 // between the rule beneath the head and the text
	codeSize   = 48.0 // of the code to be read by a machine
	largePrint = 1.8
	largeSide  = 34.0 // the margins of large print on the page
)

// A paperComposer makes the pages of one task.
type paperComposer struct{ *composer }

// A pressed task is one whose pages are made.
type pressed struct {
	task  Task
	code  paper.Sheet // of the copy, to be read by a machine; blank if there is none
	c     paperComposer
	scale float64 // of all on the page
	side  float64 // the margins, on the page
	pages [][]placed
}

// write draws all pages of the paper in a document.
func (p Pages) write(doc *fpdf.Fpdf) {
	p.doc = doc
	all, of := p.tasks, 0
	for _, one := range all {
		one.c.doc = doc
		of += len(one.pages)
	}
	spare := p.o.Duplex && of%2 == 1
	if spare {
		of++
	}
	n := 0
	for k, one := range all {
		for _, page := range one.pages {
			n++
			p.page(one, page, n, of)
		}
		if spare && k == len(all)-1 {
			p.page(one, one.c.spare(), of, of)
		}
	}
}

// press makes the pages of a task.
func (p printing) press(t Task) pressed {
	one := pressed{task: t, scale: 1, side: sideMargin}
	if p.Large {
		one.scale, one.side = largePrint, largeSide
	}
	c := paperComposer{newComposer(p.doc, documentOf(t, p.o, medium{pictures: true}), scaled(p.Size, one.scale, one.side))}
	c.top, c.foot = paperTop, paperFoot
	if p.Large {
		c.top += headLine
	}
	one.c = c
	if t.Code != "" {
		one.code, _ = DrawnCode(t.Code, codeSize) // one that cannot be drawn is printed all the same
	}
	switch {
	case p.o.Key && p.o.Full:
		one.pages = c.press()
	case p.o.Key:
		one.scale, one.pages = c.onOnePage(p.Size, one)
	case p.Large:
		one.pages = c.composed(0.75)
	default:
		one.pages = c.composed(1)
	}
	return one
}

// keyScales are those of a key, the largest that will do is taken: small print is at least 7 points.
var keyScales = [...]float64{1, 0.92, 0.87, 0.82}

// onOnePage are the pages of a key on paper of a size, and the scale of all on them: one page, if figures that can still be read make it
// one, or else a smaller scale with them, or those of beams side by side.
func (c paperComposer) onOnePage(size PaperSize, one pressed) (float64, [][]placed) {
	c.tight = true
	if one.scale > 1 { // large print stays large
		return one.scale, c.squeezed()
	}
	for _, beside := range [...]bool{false, true} {
		c.pair(beside)
		for _, k := range keyScales {
			c.size = scaled(size, k, one.side)
			if pages := c.squeezed(); len(pages) == 1 {
				return k, pages
			}
		}
	}
	c.size = scaled(size, one.scale, one.side)
	c.pair(false)
	return one.scale, c.squeezed()
}

// pair sets the figures of beams two by two, or one beneath another.
func (c paperComposer) pair(beside bool) {
	for i, b := range c.d.list {
		c.d.list[i].paired = beside && b.kind == picturePassage && kindOf(b.picture) == levelPicture
	}
}

// squeezed are the pages of a key with its figures as small as they must be for one page and can be read, or else as they usually are.
func (c paperComposer) squeezed() [][]placed {
	const usual = 0.8
	pages := c.compose(usual)
	crowded := c.crowded()
	if len(pages) == 1 {
		return pages
	}
	for _, size := range []float64{0.7, 0.6, 0.5} {
		pages = c.compose(size)
		if c.crowded() > crowded {
			break
		}
		if len(pages) == 1 {
			return pages
		}
	}
	return c.compose(usual)
}

// crowded is how many figures are too small to be to scale or for their labels.
func (c paperComposer) crowded() int {
	n := 0
	for _, s := range c.sheets {
		if s.Stretched || !s.Fits {
			n++
		}
	}
	return n
}

// openPage is the share of a page that is left free before a figure, from which on a smaller one is tried.
const openPage = 0.3

// composed are the pages of a sheet: with smaller figures where they would leave the first page half empty, or but a little on the
// last one, if they can still be read and cost no page.
func (c paperComposer) composed(size float64) [][]placed {
	pages := c.compose(size)
	if len(pages) == 1 || !c.isOpen(pages[0]) && !c.isStub(pages) {
		return c.filled()
	}
	crowded := c.crowded()
	for _, smaller := range [...]float64{0.85, 0.75, 0.65, 0.55} {
		if fewer := c.compose(size * smaller); c.crowded() <= crowded && len(fewer) <= len(pages) && (len(fewer) < len(pages) || c.isOpen(pages[0]) && !c.isOpen(fewer[0])) {
			return c.filled()
		}
	}
	c.compose(size)
	return c.filled()
}

// isOpen reports whether much of a page is left free.
func (c paperComposer) isOpen(page []placed) bool {
	last := page[len(page)-1]
	return last.y+last.height <= c.size.Height-c.foot-openPage*c.tall()
}

// scaled is the size of a page in the measures of a composer, all of which is scaled on the page between margins.
func scaled(size PaperSize, scale, side float64) PaperSize {
	return PaperSize{size.Name, (size.Width-2*side)/scale + 2*sideMargin, size.Height / scale}
}

// page draws a page.
func (p printing) page(one pressed, strips []placed, n, of int) {
	p.doc.AddPageFormat("P", fpdf.SizeType{Wd: p.Size.Width, Ht: p.Size.Height})
	if one.scale != 1 {
		p.doc.TransformBegin()
		defer p.doc.TransformEnd()
		p.doc.Transform(fpdf.TransformMatrix{A: one.scale, D: one.scale, E: one.side - sideMargin*one.scale, F: p.Size.Height * (1 - one.scale)})
	}
	p.head(one, n, of)
	for _, s := range strips {
		s.strip.draw(s.y)
	}
	one.c.footing(p.Caution)
}

// footing sets the caution at the foot of a page, over as many lines as it takes.
func (c paperComposer) footing(caution string) {
	s := lineStyle{size: noteSize}
	for i, line := range c.lines(c.words(caution, s), c.wide(), s) {
		c.write(line, sideMargin, c.size.Height-paperFoot*0.6+float64(i)*s.leading(), s.size)
	}
}

// squares draws a code, whose marks are rectangles, at a place. It is filled in one go: drawn mark by mark it would be half of
// what a page holds.
func (p printing) squares(code paper.Sheet, x, y float64) {
	var all strings.Builder
	all.WriteString("0 g\n")
	for _, m := range code.Marks {
		from, until := m.Path[0], m.Path[2]
		fmt.Fprintf(&all, "%.2f %.2f %.2f %.2f re\n", x+from.X, p.Size.Height-y-until.Y, until.X-from.X, until.Y-from.Y)
	}
	p.doc.RawWriteStr(all.String() + "f")
}

// head draws the head of a page: the title and the course, who writes it, the problem, the code of the copy, and the page.
func (p printing) head(one pressed, n, of int) {
	c := one.c
	wide := c.wide()
	if len(one.code.Marks) > 0 {
		wide -= codeSize + 6
		p.squares(one.code, sideMargin+wide+6, 28)
	}
	for i, k := range p.headLines(one.task, n, of) {
		s := lineStyle{size: bodySize}
		if i == 0 {
			s.style = "B"
		}
		c.line(38+headLine*float64(i), wide, s, k[0], k[1])
	}
	p.doc.SetDrawColor(0, 0, 0)
	p.doc.SetLineWidth(outerRule)
	p.doc.Line(sideMargin, c.top-headGap, sideMargin+c.wide(), c.top-headGap)
}

// headLines are the lines of the head of a page, what stands at their left and at their right end. In large print there is no room
// for the problem beside the name.
func (p printing) headLines(t Task, n, of int) [][2]string {
	lines := [][2]string{{p.title(p.o), fmt.Sprintf("Page %d of %d", n, of)}, {p.Course, t.code()}, {p.who(p.o), t.name()}}
	if p.Large {
		lines = append(lines[:2], [2]string{t.name()}, [2]string{p.who(p.o)})
	}
	return lines
}

// line writes a text at the left end of a line and one at its right end, which is kept whole.
func (c paperComposer) line(base, wide float64, s lineStyle, left, right string) {
	c.doc.SetTextColor(0, 0, 0)
	c.doc.SetFont(family, s.style, s.size)
	right = printable(right)
	room := c.doc.GetStringWidth(right)
	c.doc.Text(sideMargin+wide-room, base, right)
	c.doc.Text(sideMargin, base, c.cutTo(printable(left), wide-room-cellGap))
}

// spare is a page of nothing but room.
func (c paperComposer) spare() []placed {
	var all []placed
	for y := c.top; y+dotRow < c.size.Height-c.foot; y += dotRow {
		all = append(all, placed{strip: strip{height: dotRow, draw: c.dots}, y: y, index: -1})
	}
	return all
}
