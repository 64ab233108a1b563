package worksheet

import (
	"fmt"
	"strings"

	"codeberg.org/go-pdf/fpdf"

	"unpin/statics/figure/paper"
	"unpin/statics/wording"
)

// Sizes of a printed page, in points.
const (
	sideMargin  = 62.0
	headMargin  = 60.0
	footMargin  = 64.0
	bodySize    = 10.0
	lineHeight  = 13.6
	titleSize   = 17.0
	sectionSize = 12.5
	noteSize    = 8.5
	indexScale  = 0.72
	indexFall   = 0.2
	stepIndent  = 22.0
	mathsIndent = 40.0
	mathsHang   = 14.0 // of the lines after the first
	labelGap    = 10.0 // between the labels of a list and its texts
	shortList   = 7    // items
)

// A strip is a slice of a page as wide as its text: a line, a row of a table, a figure.
type strip struct {
	above  float64 // room before it, but at the head of a page
	height float64
	with   bool    // it stays on the page of the next one
	again  []strip // the head of its table, which stands above it again at the head of a page
	room   bool    // it is a row of a room, of which there may be more
	draw   func(y float64)
}

// A composer makes strips of passages, and pages of strips.
type composer struct {
	doc     *fpdf.Fpdf
	d       *document
	size    PaperSize
	names   typesetter
	page    *page // binds numbers to their units
	strips  []strip
	last    passageKind
	figures int
	sheets  map[int]paper.Sheet // of the figures among the passages
	indent  float64             // of the list in hand,
	left    int                 // how many items it has left,
	short   bool                // and whether it is short
	broken  int                 // a strip that begins a page in any case, or 0
	inset   float64             // of the table in hand
	tight   bool                // tables are tight, long ones stand in two halves side by side, and figures have no captions
	top     float64             // of the text
	foot    float64             // what is kept free beneath it
}

func newComposer(doc *fpdf.Fpdf, d *document, size PaperSize) *composer {
	return &composer{doc: doc, d: d, size: size, names: d.typesetter(), page: &page{units: d.unitNames()}, last: titlePassage, top: headMargin, foot: footMargin}
}

// wide is the width of the text.
func (c *composer) wide() float64 { return c.size.Width - 2*sideMargin }

// compose makes pages of the document. Size is the share of their usual height that its figures may have.
func (c *composer) compose(size float64) [][]placed {
	c.sheets = c.sheetsOf(size)
	return c.setAll()
}

// setAll makes pages of all passages; their figures are laid out.
func (c *composer) setAll() [][]placed {
	c.strips, c.last, c.figures = nil, titlePassage, 0
	var s stepStrips
	for i, b := range c.d.list {
		if !c.inStep(i) {
			c.keepStep(s)
			s = stepStrips{begun: len(c.strips), whole: b.whole}
		}
		if b.around {
			s.around = len(c.strips)
		}
		c.set(i)
	}
	c.keepStep(s)
	return c.pages()
}

// stepStrips are the strips of the step in hand.
type stepStrips struct {
	begun  int  // the first
	around int  // the first of another way to do the same, or 0
	whole  bool // it stays on one page even if it takes most of that
}

// inStep reports whether passage i goes on with a step that began before it.
func (c *composer) inStep(i int) bool {
	switch c.d.list[i].kind {
	case reasonPassage, equationPassage, resultPassage, roomPassage:
		return true
	case tablePassage: // of the terms of a sum
		return i > 0 && (c.inStep(i-1) || c.d.list[i-1].kind == stepPassage)
	}
	return false
}

// wholeStep is the share of a page that a step may take which is kept on one.
const wholeStep = 0.5

// keepStep keeps the strips of a step on one page, if they do not take too much of it. Sums solved together stay whole with
// what comes of them, and so does another way to do the same.
func (c *composer) keepStep(s stepStrips) {
	if c.last == resultPassage || c.last == equationPassage {
		c.strips = halfPage(c.strips, s.begun, wholeStep*c.tall())
	}
	end := len(c.strips)
	switch {
	case c.last != equationPassage && c.last != resultPassage && !s.whole:
	case c.tallOf(s.begun, end) <= wholeStep*c.tall():
		c.keep(s.begun, end)
	case s.around > 0:
		c.keep(s.begun, s.around)
		c.keep(s.around, end)
	case s.whole:
		c.keep(s.begun, end)
	}
}

// tallOf is the height of the strips from one to before another.
func (c *composer) tallOf(from, until int) float64 {
	tall := 0.0
	for _, s := range c.strips[from:until] {
		tall += s.above + s.height
	}
	return tall
}

// keep keeps these strips on one page, if a page has room for them.
func (c *composer) keep(from, until int) {
	if c.tallOf(from, until) > c.tall() {
		return
	}
	for i := from; i < until-1; i++ {
		c.strips[i].with = true
	}
	if until > from {
		c.strips[until-1].with = false
	}
}

// set makes strips of passage i.
func (c *composer) set(i int) {
	b := c.d.list[i]
	text, label := b.text, strings.TrimSpace(b.label)
	if names := c.names; b.told || b.kind == titlePassage {
		c.names = names.inWords(text)
		defer func() { c.names = names }()
	}
	switch b.kind {
	case gapPassage:
		return
	case titlePassage:
		c.paragraph(lineStyle{size: titleSize, style: "B", above: 0}, "", text)
	case sectionPassage:
		c.paragraph(lineStyle{size: sectionSize, style: "B", above: 16, with: true}, "", text)
	case subheadPassage:
		c.paragraph(lineStyle{size: bodySize, style: "B", above: 8, with: true}, "", text)
	case itemPassage:
		c.item(i)
	case stepPassage:
		c.paragraph(lineStyle{size: bodySize, style: "B", above: 9, indent: stepIndent, with: true}, label, text)
	case reasonPassage:
		closing := i > 0 && c.d.list[i-1].kind == gapPassage && !c.isMaths(i+1) // what is said after the last step stays with that
		if closing && len(c.strips) > 0 {
			c.strips[len(c.strips)-1].with = true
		}
		c.paragraph(lineStyle{size: bodySize, above: 1, indent: stepIndent, with: !closing}, label, text)
	case equationPassage, resultPassage:
		c.equation(i)
	case tablePassage:
		if b.table.hasBoxes() {
			c.boxes(b.table)
		} else {
			c.inset = 0
			if c.inStep(i) {
				c.inset = stepIndent
			}
			c.table(b.table.compact(), c.isMaths(i+1) || i+1 < len(c.d.list) && c.inStep(i) && c.inStep(i+1))
		}
	case picturePassage:
		c.picture(i)
	case roomPassage:
		c.room(b.rows)
	case sketchPassage:
		c.sketch(i)
	default:
		c.paragraph(lineStyle{size: bodySize, above: 5, with: b.leads, letters: b.letters}, label, text)
	}
	c.last = b.kind
}

// item sets an item of a list, the labels in a column of their own. A short list stays on one page.
func (c *composer) item(i int) {
	above := 1.0
	if c.last != itemPassage {
		above = 4
		c.indent, c.left = 0, 0
		for k := i; k < len(c.d.list) && c.d.list[k].kind == itemPassage; k++ {
			label := c.words(itemLabel(c.d.list[k]), lineStyle{size: bodySize, style: "B"})
			c.indent = max(c.indent, lineWide(label, bodySize)+labelGap)
			c.left++
		}
		c.short = c.left <= shortList
	}
	c.left--
	c.paragraph(lineStyle{size: bodySize, above: above, indent: c.indent, with: c.short && c.left > 0, letters: c.d.list[i].letters}, itemLabel(c.d.list[i]), c.d.list[i].text)
}

// itemLabel is the label of an item without what lays out a text.
func itemLabel(b passage) string { return strings.TrimSuffix(strings.TrimSpace(b.label), ":") }

// equation sets a line of mathematics; what comes out of it is bold.
func (c *composer) equation(i int) {
	b := c.d.list[i]
	s := lineStyle{size: bodySize, above: 1, indent: mathsIndent, letters: mathLetters, hang: mathsHang}
	if b.kind == resultPassage {
		s.style, s.letters = "B", ""
	}
	if c.last != equationPassage && c.last != resultPassage {
		s.above = 4
	}
	if strings.Contains(b.text, valueBlank) {
		s.above = blankAbove
	}
	s.with = c.isMaths(i + 1)
	c.paragraph(s, "", strings.TrimSpace(b.label+b.text))
}

// isMaths reports whether passage i is a line of mathematics.
func (c *composer) isMaths(i int) bool {
	return i < len(c.d.list) && (c.d.list[i].kind == equationPassage || c.d.list[i].kind == resultPassage)
}

// A placed is a strip at its height on a page.
type placed struct {
	strip
	y     float64
	index int // among the strips; −1 of the head of a table that stands again
}

// pages breaks the strips into pages.
func (c *composer) pages() [][]placed {
	pages := [][]placed{nil}
	y, foot := c.top, c.size.Height-c.foot
	put := func(s strip, index int) {
		last := len(pages) - 1
		if len(pages[last]) > 0 {
			y += s.above
		}
		pages[last] = append(pages[last], placed{s, y, index})
		y += s.height
	}
	for i, s := range c.strips {
		starts := i == 0 || !c.strips[i-1].with
		need := c.together(i)
		if y > c.top && (i == c.broken || starts && y+need > foot && need < foot-c.top || y+s.above+s.height > foot) {
			pages, y = append(pages, nil), c.top
			for _, h := range s.again {
				put(h, -1)
			}
		}
		put(s, i)
	}
	return pages
}

// together is the height of strip i and those that it stays with.
func (c *composer) together(i int) float64 {
	need := 0.0
	for k := i; k < len(c.strips); k++ {
		need += c.strips[k].above + c.strips[k].height
		if !c.strips[k].with {
			break
		}
	}
	return need
}

// draw draws pages, with the title and the caution at the foot of each.
func (c *composer) draw(pages [][]placed) {
	title := printable(oneLine(c.d.p.Title))
	for _, page := range pages {
		c.doc.AddPage()
		for _, s := range page {
			s.strip.draw(s.y)
		}
		c.doc.SetTextColor(footInk, footInk, footInk)
		c.doc.SetFont(family, "", noteSize)
		y := c.size.Height - footMargin/2
		c.doc.Text(sideMargin, y, c.cutTo(title, c.wide()-numberWide))
		c.doc.Text(sideMargin, y+noteSize*1.3, wording.Caution)
	}
}

// The grey of the foot of a page, and the room that the number takes there, in points.
const (
	footInk    = 0x50
	numberWide = 60.0
)

// numberPages writes the number at the foot of each page.
func numberPages(doc *fpdf.Fpdf, size PaperSize) {
	n := doc.PageCount()
	for i := 1; i <= n; i++ {
		doc.SetPage(i)
		doc.SetTextColor(footInk, footInk, footInk)
		doc.SetFont(family, "", noteSize)
		number := fmt.Sprintf("%d / %d", i, n)
		doc.Text(size.Width-sideMargin-doc.GetStringWidth(number), size.Height-footMargin/2, number)
	}
}

// cutTo is as much of a text as is no wider than that.
func (c *composer) cutTo(text string, wide float64) string {
	if c.doc.GetStringWidth(text) <= wide {
		return text
	}
	short := []rune(text)
	for len(short) > 0 && c.doc.GetStringWidth(string(short)+"…") > wide {
		short = short[:len(short)-1]
	}
	return string(short) + "…"
}
