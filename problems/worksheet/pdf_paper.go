package worksheet

import (
	"fmt"
	"io"
	"iter"

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
	var doc *fpdf.Fpdf
	for p := range papers {
		p = p.settled()
		if doc == nil {
			doc = newPrint(p.Title, p.Size)
		}
		printing{doc, o, p}.write()
	}
	if doc == nil {
		doc = newPrint("", A4)
		doc.AddPage()
	}
	return doc
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
	codeSize   = 44.0 // of the code to be read by a machine
	largePrint = 1.8
	largeSide  = 34.0 // the margins of large print on the page
)

// A pressed task is one whose pages are made.
type pressed struct {
	task  Task
	c     *composer
	pages [][]placed
}

// write makes all pages of the paper, so that their number is known, and draws them.
func (p printing) write() {
	var all []pressed
	of := 0
	for _, t := range p.Tasks {
		one := p.press(t)
		all = append(all, one)
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
	c := newComposer(p.doc, documentOf(t, p.o, medium{pictures: true}), p.size())
	c.top, c.foot = paperTop, paperFoot
	if p.o.Key {
		return pressed{t, c, c.press()}
	}
	c.compose(1)
	return pressed{t, c, c.filled()}
}

// size is the size of a page in the measures of the composer, which large print makes larger.
func (p printing) size() PaperSize {
	if !p.Large {
		return p.Size
	}
	return PaperSize{p.Size.Name, (p.Size.Width-2*largeSide)/largePrint + 2*sideMargin, p.Size.Height / largePrint}
}

// page draws a page.
func (p printing) page(one pressed, strips []placed, n, of int) {
	p.doc.AddPageFormat("P", fpdf.SizeType{Wd: p.Size.Width, Ht: p.Size.Height})
	if p.Large {
		p.doc.TransformBegin()
		defer p.doc.TransformEnd()
		p.doc.Transform(fpdf.TransformMatrix{A: largePrint, D: largePrint, E: largeSide - sideMargin*largePrint, F: p.Size.Height * (1 - largePrint)})
	}
	p.head(one, n, of)
	for _, s := range strips {
		s.strip.draw(s.y)
	}
	c := one.c
	p.doc.SetTextColor(footInk, footInk, footInk)
	p.doc.SetFont(family, "", noteSize)
	p.doc.Text(sideMargin, c.size.Height-paperFoot/2, c.cutTo(printable(p.Caution), c.wide()))
}

// head draws the head of a page: the title and the course, who writes it, the problem, the code of the copy, and the page.
func (p printing) head(one pressed, n, of int) {
	c := one.c
	wide := c.wide()
	if code, err := DrawnCode(one.task.Code, codeSize); err == nil && one.task.Code != "" {
		wide -= codeSize + 6
		paper.DrawPDF(p.doc, code, sideMargin+wide+6, 28, figureFamily)
	}
	c.line(sideMargin, 38, wide, lineStyle{size: bodySize, style: "B"}, p.title(p.o), fmt.Sprintf("Page %d of %d", n, of))
	c.line(sideMargin, 52, wide, lineStyle{size: noteSize + 0.5}, p.Course, one.task.code())
	name, id := p.blanks()
	c.line(sideMargin, 68, wide, lineStyle{size: bodySize}, "Name "+name+"   Id "+id, one.task.name())
	p.doc.SetDrawColor(0, 0, 0)
	p.doc.SetLineWidth(outerRule)
	p.doc.Line(sideMargin, 76, sideMargin+c.wide(), 76)
}

// line writes a text at the left end of a line and one at its right end, which is kept whole.
func (c *composer) line(x, base, wide float64, s lineStyle, left, right string) {
	c.doc.SetTextColor(0, 0, 0)
	c.doc.SetFont(family, s.style, s.size)
	right = printable(right)
	room := c.doc.GetStringWidth(right)
	c.doc.Text(x+wide-room, base, right)
	c.doc.Text(x, base, c.cutTo(printable(left), wide-room-cellGap))
}

// filled are the pages of the composed strips, the last room grown so that it fills what is left of the last page.
func (c *composer) filled() [][]placed {
	pages := c.pages()
	last := pages[len(pages)-1]
	end := last[len(last)-1]
	more := int((c.size.Height - c.foot - end.y - end.height) / dotRow)
	at := len(c.strips) - 1
	for at >= 0 && !c.strips[at].room {
		at--
	}
	if at < 0 || more < 1 {
		return pages
	}
	whole := c.strips
	grown := append([]strip{}, whole[:at]...)
	for range more {
		grown = append(grown, strip{height: dotRow, room: true, draw: c.dots})
	}
	c.strips = append(grown, whole[at:]...)
	if fuller := c.pages(); len(fuller) == len(pages) {
		return fuller
	}
	c.strips = whole
	return pages
}

// spare is a page of nothing but room.
func (c *composer) spare() []placed {
	var all []placed
	for y := c.top; y+dotRow < c.size.Height-c.foot; y += dotRow {
		all = append(all, placed{strip: strip{height: dotRow, draw: c.dots}, y: y, index: -1})
	}
	return all
}
