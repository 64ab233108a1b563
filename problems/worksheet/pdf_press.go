package worksheet

import (
	"io"
	"iter"

	"codeberg.org/go-pdf/fpdf"
)

// A Press makes the pages of papers for a PDF, from as many goroutines at once as it is made for. It measures in documents of its
// own, in which nothing is drawn: the same paper has the same pages whoever makes them.
type Press struct {
	o        PaperOptions
	measures chan *fpdf.Fpdf
}

// NewPress is a press at which so many can work at once.
func NewPress(o PaperOptions, atOnce int) *Press {
	p := &Press{o, make(chan *fpdf.Fpdf, atOnce)}
	for range atOnce {
		p.measures <- nil // made when it is needed
	}
	return p
}

// Pages are the pages of a paper, made and not yet drawn.
type Pages struct {
	printing
	tasks []pressed
}

// Pages makes the pages of a paper.
func (p *Press) Pages(paper Paper) Pages {
	measure := <-p.measures
	if measure == nil {
		measure = newPrint("", A4)
	}
	defer func() { p.measures <- measure }()
	made := Pages{printing: printing{measure, p.o, paper.settled()}}
	for _, t := range made.Tasks {
		made.tasks = append(made.tasks, made.press(t))
	}
	return made
}

// PagesPDF writes the pages of papers as PapersPDF does.
func PagesPDF(w io.Writer, all iter.Seq[Pages]) error { return drawn(all).Output(w) }

// drawn is the document of pages.
func drawn(all iter.Seq[Pages]) *fpdf.Fpdf {
	var doc *fpdf.Fpdf
	for p := range all {
		if doc == nil {
			doc = newPrint(p.Title, p.Size)
		}
		p.write(doc)
	}
	if doc == nil {
		doc = newPrint("", A4)
		doc.AddPage()
	}
	return doc
}
