package worksheet

import (
	"bytes"
	"time"

	"codeberg.org/go-fonts/dejavu/dejavusans"
	"codeberg.org/go-fonts/dejavu/dejavusansbold"
	"codeberg.org/go-fonts/dejavu/dejavusansoblique"
	"codeberg.org/go-fonts/dejavu/dejavuserifcondensed"
	"codeberg.org/go-fonts/dejavu/dejavuserifcondensedbold"
	"codeberg.org/go-fonts/dejavu/dejavuserifcondensedbolditalic"
	"codeberg.org/go-fonts/dejavu/dejavuserifcondenseditalic"
	"codeberg.org/go-pdf/fpdf"
)

// A PaperSize is a format of paper, in points of 1/72 inch.
type PaperSize struct {
	Name          string
	Width, Height float64
}

// The formats of paper (ISO 216, ANSI/ASME Y14.1).
var (
	A4     = PaperSize{"a4", 595.28, 841.89}
	Letter = PaperSize{"letter", 612, 792}
)

// PDF is the worked solution with its figures as a PDF document. The same solution gives the same bytes: the document has
// no date but a fixed one, and its font is embedded. Each of several solutions begins on a page of its own. It heeds Only and
// Paper; no paper is A4.
func PDF(all []Solved, o Options) ([]byte, error) {
	if o.Paper == (PaperSize{}) {
		o.Paper = A4
	}
	documents := written(all, Options{Only: o.Only}, true)
	doc := newPrint(titleOf(all), o.Paper)
	for _, d := range documents {
		c := newComposer(doc, d, o.Paper)
		c.draw(c.press())
	}
	numberPages(doc, o.Paper)
	var out bytes.Buffer
	err := doc.Output(&out)
	return out.Bytes(), err
}

// titleOf is the title of a document with several solutions.
func titleOf(all []Solved) string {
	if len(all) == 1 {
		return oneLine(seen(all[0].Problem).Title)
	}
	return number(len(all)) + " solutions"
}

// family is the font of a printed document, in regular, bold, italic and both.
const family = "serif"

// figureFamily is that of its figures, the same as in SVG.
const figureFamily = "sans"

// printedOn is the date of every document, so that what is printed twice is the same twice.
var printedOn = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// newPrint is a document without pages.
func newPrint(title string, size PaperSize) *fpdf.Fpdf {
	doc := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt", Size: fpdf.SizeType{Wd: size.Width, Ht: size.Height}})
	doc.SetCatalogSort(true)
	doc.SetCreationDate(printedOn)
	doc.SetModificationDate(printedOn)
	doc.SetAutoPageBreak(false, 0)
	doc.SetTitle(printable(title), true)
	doc.SetCreator("unpin", true)
	doc.SetProducer("unpin", true)
	doc.SetLang("en")
	doc.AddUTF8FontFromBytes(family, "", dejavuserifcondensed.TTF)
	doc.AddUTF8FontFromBytes(family, "B", dejavuserifcondensedbold.TTF)
	doc.AddUTF8FontFromBytes(family, "I", dejavuserifcondenseditalic.TTF)
	doc.AddUTF8FontFromBytes(family, "BI", dejavuserifcondensedbolditalic.TTF)
	doc.AddUTF8FontFromBytes(figureFamily, "", dejavusans.TTF)
	doc.AddUTF8FontFromBytes(figureFamily, "B", dejavusansbold.TTF)
	doc.AddUTF8FontFromBytes(figureFamily, "I", dejavusansoblique.TTF)
	return doc
}
