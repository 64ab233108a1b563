package worksheet

import (
	"bytes"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
)

// A Writing is a document of headings, paragraphs and tables that somebody else composes, to be printed as solutions are.
type Writing struct {
	d *document
}

// NewWriting is a document with nothing in it but its title.
func NewWriting(title string) *Writing {
	p := &problems.Problem{Title: notation.Visible(title)}
	w := &Writing{newDocument(p, &statics.Solution{Assembly: &statics.Assembly{Frame: statics.Frame{}}}, false)}
	w.d.title(p.Title)
	return w
}

// Section adds a heading.
func (w *Writing) Section(text string) { w.d.section(notation.Visible(text)) }

// Say adds a paragraph.
func (w *Writing) Say(text string) { w.d.prose(notation.Visible(text)) }

// Equate adds a line of mathematics.
func (w *Writing) Equate(text string) { w.d.equate("", notation.Visible(text)) }

// Table adds a table: the heads of its columns, how each is aligned (l or r), and its rows.
func (w *Writing) Table(head []string, align string, rows [][]string) {
	t := table{head: head, align: align}
	for _, row := range rows {
		cells := make([]string, len(row))
		for i, c := range row {
			cells[i] = notation.Visible(c)
		}
		t.add(cells...)
	}
	w.d.tabulate(0, t)
}

// PDF is the document in print. The same document gives the same bytes.
func (w *Writing) PDF(size PaperSize) ([]byte, error) {
	doc := newPrint(w.d.p.Title, size)
	c := newComposer(doc, w.d, size)
	c.draw(c.compose(1))
	numberPages(doc, size)
	var out bytes.Buffer
	err := doc.Output(&out)
	return out.Bytes(), err
}
