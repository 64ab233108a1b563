package worksheet

import (
	"fmt"
	"html"
	"strings"
)

// HTML is the worked solution as one page that needs nothing besides itself: no script, no other file. Its figures are
// drawings in it, with a title and a description; it follows the reader's choice of light and dark, fits narrow windows and
// prints. It is well-formed XML too. Of several solutions each has its heading and a link from the head of the page. It heeds
// Only. The same solution gives the same bytes.
func HTML(all []Solved, o Options) string {
	documents := written(all, Options{Only: o.Only}, true)
	w := &web{level: 1}
	w.head(titleOf(all), webStyle, "Skip to the solution")
	if len(documents) > 1 {
		w.level = 2
		w.line("<h1>" + escape(titleOf(all)) + "</h1>")
		var links []string
		for i, d := range documents {
			links = append(links, link(articleID(i), escape(oneLine(d.p.Title))))
		}
		w.contents("Solutions", links)
	}
	for i, d := range documents {
		w.article(d, i)
	}
	w.line("</main>\n<footer><p>" + untagged + "</p></footer>\n</body>\n</html>")
	return w.String()
}

// untagged says on the page which of the documents is for whom: the library that writes PDF knows no tags.
const untagged = "For a screen reader take this page: the same solution as PDF is not tagged."

// A web is a page for a browser in the writing. What is open is closed from the inside out.
type web struct {
	strings.Builder
	level   int // of the heading of an article
	number  int // of the article, from 0
	d       *document
	names   typesetter
	binder  *page
	gallery gallery
	figures int
	open    []opened
	last    string // the label of the item before, with the blanks around it
}

// An opened is an element that is not closed yet; what a group holds is told by its name.
type opened struct {
	depth     opening
	name, end string
}

// An opening is how deep an element stands; the deeper closes before the other.
type opening int

const (
	sectionOpening opening = iota
	blockOpening           // a step, a free body, a member
	groupOpening           // a list, lines of mathematics, figures side by side
)

func (w *web) line(text string) { w.WriteString(text + "\n") }

// begin opens an element, and closes what stands as deep or deeper.
func (w *web) begin(depth opening, start, end string) {
	w.shut(depth)
	w.line(start)
	w.open = append(w.open, opened{depth: depth, end: end})
}

// group opens a group of a kind.
func (w *web) group(name, start, end string) {
	w.begin(groupOpening, start, end)
	w.open[len(w.open)-1].name = name
}

// shut closes what stands as deep as that, or deeper.
func (w *web) shut(depth opening) {
	for n := len(w.open) - 1; n >= 0 && w.open[n].depth >= depth; n-- {
		w.line(w.open[n].end)
		w.open = w.open[:n]
	}
	w.last = ""
}

// inGroup reports whether a group of that kind is open, and closes any other.
func (w *web) inGroup(name string) bool {
	if n := len(w.open) - 1; n >= 0 && w.open[n].name == name {
		return true
	}
	w.shut(groupOpening)
	return false
}

// head is all before the first article, with the words of the link that skips what stands before it.
func (w *web) head(title, style, skip string) {
	w.line("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>")
	w.line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<meta name=\"color-scheme\" content=\"light dark\"/>")
	w.line("<title>" + escape(title) + "</title>\n<style>" + style + "</style>\n</head>\n<body>")
	w.line(`<a class="skip" href="#` + articleID(0) + `">` + skip + `</a>` + "\n<main>")
}

// contents are links to what stands on the page.
func (w *web) contents(label string, links []string) {
	w.line(`<nav aria-label="` + label + `"><ul>`)
	for _, l := range links {
		w.line("<li>" + l + "</li>")
	}
	w.line("</ul></nav>")
}

func link(to, text string) string { return `<a href="#` + to + `">` + text + "</a>" }

// articleID is where the solution of problem i stands, from 0.
func articleID(i int) string { return fmt.Sprintf("problem-%d", i+1) }

// id is the place of something in the article.
func (w *web) id(name string) string {
	return fmt.Sprintf("%s-%s", articleID(w.number), strings.ReplaceAll(strings.ToLower(name), " ", "-"))
}

// article writes the solution of problem i.
func (w *web) article(d *document, i int) {
	w.d, w.number, w.figures = d, i, 0
	w.names, w.binder = d.typesetter(), &page{units: d.unitNames()}
	w.gallery = newGallery(d)
	w.line(`<article id="` + articleID(i) + `">`)
	headed := false
	for k, b := range d.list {
		if b.kind == sectionPassage && !headed {
			headed = true
			w.sections(d)
		}
		w.set(k, b)
	}
	w.shut(sectionOpening)
	w.line("</article>")
}

// sections links to the sections of the article.
func (w *web) sections(d *document) {
	var links []string
	for _, b := range d.list {
		if b.kind == sectionPassage {
			links = append(links, link(w.id(b.text), w.typeset(b.text, "NVM")))
		}
	}
	if len(links) > 1 {
		w.contents("Sections of "+escape(oneLine(d.p.Title)), links)
	}
}

// set writes passage i.
func (w *web) set(i int, b passage) {
	if names := w.names; b.told {
		w.names = names.inWords(b.text)
		defer func() { w.names = names }()
	}
	text := w.typeset(b.text, b.letters)
	switch b.kind {
	case titlePassage:
		w.heading(0, "", escape(b.text))
	case sectionPassage:
		w.begin(sectionOpening, `<section aria-labelledby="`+w.id(b.text)+`">`, "</section>")
		w.heading(1, w.id(b.text), w.typeset(b.text, "NVM"))
	case subheadPassage:
		w.begin(blockOpening, `<div class="block">`, "</div>")
		w.heading(2, w.blockID(i), strings.TrimSuffix(text, "."))
	case stepPassage:
		w.begin(blockOpening, `<div class="block">`, "</div>")
		w.heading(2, "", escape(strings.TrimSpace(b.label))+" "+text)
	case gapPassage:
		w.shut(blockOpening)
	case itemPassage:
		w.item(b.label, text)
	case equationPassage, resultPassage:
		w.maths(b)
	case tablePassage:
		if !b.table.hasBoxes() {
			b.table = b.table.compact()
		}
		w.table(i, b.table)
	case picturePassage:
		w.picture(i)
	case roomPassage:
		w.room(b.rows)
	case sketchPassage:
		w.sketch(i)
	default:
		w.shut(groupOpening)
		w.line("<p>" + strings.TrimSpace(w.typeset(strings.TrimSpace(b.label), "")+" "+text) + "</p>")
	}
}

// heading writes a heading so much beneath that of the article.
func (w *web) heading(beneath int, id, text string) {
	if id != "" {
		id = ` id="` + id + `"`
	}
	level := w.level + beneath
	w.line(fmt.Sprintf("<h%d%s>%s</h%d>", level, id, text, level))
}

// blockID is the place of the heading of a block.
func (w *web) blockID(i int) string { return w.id(fmt.Sprint("block ", i)) }

// maths writes a line of mathematics; what comes out of it is strong.
func (w *web) maths(b passage) {
	if !w.inGroup("maths") {
		w.group("maths", `<div class="maths">`, "</div>")
	}
	text := w.typeset(strings.TrimSpace(b.label), mathLetters)
	if text != "" {
		text += " "
	}
	if b.kind == resultPassage {
		w.line("<p><strong>" + text + w.typeset(b.text, "") + "</strong></p>")
		return
	}
	w.line("<p>" + text + w.typeset(b.text, mathLetters) + "</p>")
}

// typeset is a text with symbols set: quantities in italics, with what stands low beneath them.
func (w *web) typeset(text, letters string) string {
	var b strings.Builder
	text = strings.ReplaceAll(text, "   ", "\u2003 ")
	for i, word := range strings.Split(w.binder.bind(printable(text)), " ") {
		if i > 0 {
			b.WriteByte(' ')
		}
		low := false
		for _, r := range w.names.runsOf(word, "", letters) {
			if r.index != low {
				b.WriteString(map[bool]string{true: "<sub>", false: "</sub>"}[r.index])
				low = r.index
			}
			if r.style == "I" {
				b.WriteString("<var>" + escape(r.text) + "</var>")
				continue
			}
			b.WriteString(escape(r.text))
		}
		if low {
			b.WriteString("</sub>")
		}
	}
	return blanked(b.String())
}

// escape is a text none of whose signs HTML takes for its own.
func escape(text string) string { return html.EscapeString(printable(text)) }
