package paper

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// SVG writes a sheet as an SVG image (Scalable Vector Graphics 1.1), a document of its own that is its size in points. Its
// title is the sheet's; words describe it for a reader who cannot see it. The same sheet and words give the same bytes.
func SVG(s Sheet, words []string) []byte {
	w := &svg{}
	w.Grow(usualMark * (len(s.Marks) + 4))
	wide, tall := decimal(s.Width), decimal(s.Height)
	fmt.Fprintf(w, "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"%spt\" height=\"%spt\" viewBox=\"0 0 %s %s\"", wide, tall, wide, tall)
	w.WriteString(" font-family=\"" + faces + "\" fill=\"none\" stroke-linejoin=\"round\" xml:space=\"preserve\">\n")
	w.element("title", s.Title)
	w.element("desc", strings.Join(words, "\n"))
	fmt.Fprintf(w, "<rect width=\"%s\" height=\"%s\" fill=\"%s\"/>\n", wide, tall, white.hex())
	for _, m := range s.Marks {
		w.mark(m)
	}
	w.WriteString("</svg>\n")
	return []byte(w.String())
}

// usualMark is about how many bytes a mark takes.
const usualMark = 110

// faces are the faces of type, the one measured with first.
const faces = "DejaVu Sans, Verdana, Arial, Helvetica, sans-serif"

// An svg is an image in the writing.
type svg struct{ strings.Builder }

// element writes an element that holds a text.
func (w *svg) element(name, text string) {
	if text != "" {
		w.WriteString("<" + name + ">")
		w.text(text)
		w.WriteString("</" + name + ">\n")
	}
}

// text writes a text, with all that XML does not allow replaced.
func (w *svg) text(s string) {
	_ = xml.EscapeText(w, []byte(s)) // a Builder takes everything
}

func (w *svg) mark(m Mark) {
	switch {
	case len(m.Text) > 0:
		w.letters(m)
	case m.Radius > 0:
		fmt.Fprintf(w, "<circle cx=\"%s\" cy=\"%s\" r=\"%s\"%s/>\n", decimal(m.Path[0].X), decimal(m.Path[0].Y), decimal(m.Radius), paint(m))
	default:
		fmt.Fprintf(w, "<path d=\"%s\"%s/>\n", outline(m), paint(m))
	}
}

// outline is the path of a mark.
func outline(m Mark) string {
	var b strings.Builder
	b.Grow(16 * len(m.Path))
	for i, at := range m.Path {
		b.WriteString([...]string{"M", " L"}[min(i, 1)])
		b.WriteString(decimal(at.X))
		b.WriteByte(' ')
		b.WriteString(decimal(at.Y))
	}
	if m.Closed {
		b.WriteString(" Z")
	}
	return b.String()
}

// paint is how a mark is drawn, as attributes.
func paint(m Mark) string {
	text := ""
	if m.Fill != NoInk {
		text += " fill=\"" + m.Fill.hex() + "\""
	}
	if m.Line != NoInk && m.Weight > 0 {
		text += " stroke=\"" + m.Line.hex() + "\" stroke-width=\"" + decimal(m.Weight) + "\""
	}
	if m.Round {
		text += " stroke-linecap=\"round\""
	}
	if m.Dashed {
		text += fmt.Sprintf(" stroke-dasharray=\"%s %s\"", decimal(dash[0]), decimal(dash[1]))
	}
	return text
}

// letters writes a text, its middle at its place.
func (w *svg) letters(m Mark) {
	fmt.Fprintf(w, "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"middle\" fill=\"%s\">", decimal(m.Path[0].X), decimal(m.Path[0].Y), decimal(m.Size), m.Line.hex())
	low := false
	for _, r := range m.Text {
		kind := typeAttributes(r, m.Size)
		if r.Index != low {
			low = r.Index
			kind += " dy=\"" + decimal(map[bool]float64{true: 1, false: -1}[low]*indexDrop*m.Size) + "\""
		}
		if kind == "" {
			w.text(r.Text)
			continue
		}
		w.WriteString("<tspan" + kind + ">")
		w.text(r.Text)
		w.WriteString("</tspan>")
	}
	w.WriteString("</text>\n")
}

// typeAttributes is the kind of type of a run, as attributes.
func typeAttributes(r Run, size float64) string {
	kind := ""
	if r.Italic {
		kind += " font-style=\"italic\""
	}
	if r.Under {
		kind += " text-decoration=\"underline\""
	}
	if r.Bold {
		kind += " font-weight=\"bold\""
	}
	if r.Index {
		kind += " font-size=\"" + decimal(size*indexSize) + "\""
	}
	return kind
}

// decimal is a length to a hundredth of a point.
func decimal(x float64) string {
	n := int64(math.Round(x * 100))
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	text := sign + strconv.FormatInt(n/100, 10)
	switch part := n % 100; {
	case part == 0:
		return text
	case part%10 == 0:
		return text + "." + string(rune('0'+part/10))
	case part < 10:
		return text + ".0" + string(rune('0'+part))
	default:
		return text + "." + strconv.FormatInt(part, 10)
	}
}
