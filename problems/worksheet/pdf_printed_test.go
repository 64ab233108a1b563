package worksheet

import (
	"bytes"
	"fmt"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf16"

	"unpin/statics/figure/paper"
)

// TestPrinted holds where everything stands on printed pages to the files in testdata/printed: read from the document's own
// streams, one line of type a line, with its height from the head of the page, the place of
// each word in points, and the font (Regular, Bold, Italic, or BI for both) and size where they change; + is what stands lower. Figures are stood in for by blank
// ones, since what is in them is not this package's.
func TestPrinted(t *testing.T) {
	t.Parallel()
	for _, path := range []string{"examples/canopy.yaml", "solutions/letters.yaml", "solutions/ring.yaml", "solutions/unstable.yaml", "solutions/uneven.yaml", "solutions/sleeve.yaml"} {
		p, s := solveFile(t, filepath.Join(testdata, path))
		d := newDocument(p, s, false)
		d.pictures = true
		d.solution(Options{})
		doc := newPrint("", A4)
		doc.SetCompression(false)
		c := newComposer(doc, d, A4)
		c.sheets = blankSheets(d)
		c.draw(c.setAll())
		numberPages(doc, A4)
		var out bytes.Buffer
		if err := doc.Output(&out); err != nil {
			t.Fatal(err)
		}
		same(t, filepath.Join("testdata", "printed", p.Name+".txt"), printedLines(t, out.Bytes()))
	}
}

// blankSheets are figures of different sizes that hold nothing but a mark at their origin.
func blankSheets(d *document) map[int]paper.Sheet {
	sheets := map[int]paper.Sheet{}
	for i, b := range d.list {
		if b.kind == picturePassage || b.kind == sketchPassage {
			n := float64(len(sheets))
			sheet := paper.Sheet{Title: b.text, Width: 150 + 10*n, Height: 90 + 5*n}
			sheet.Origin.X, sheet.Origin.Y = 20+n, 70+2*n
			sheet.Marks = []paper.Mark{{Path: []paper.Place{sheet.Origin}, Text: []paper.Run{{Text: fmt.Sprint("[", i, "]")}}, Size: 6}}
			sheets[i] = sheet
		}
	}
	return sheets
}

var (
	streams = regexp.MustCompile(`(?s)/Filter|stream\n(.*?)\nendstream`)
	types   = regexp.MustCompile(`(?s)BT ([\d.]+) ([\d.]+) Td \((.*?)\) Tj ET|BT /F(\w+) ([\d.]+) Tf ET|([\d.]+) ([\d.]+) m ([\d.]+) ([\d.]+) l S`)
	escapes = strings.NewReplacer(`\\`, `\`, `\(`, `(`, `\)`, `)`, `\r`, "\r")
)

// printedLines lists the lines of type and the rules of a document that is not compressed.
func printedLines(t *testing.T, pdf []byte) string {
	t.Helper()
	var b strings.Builder
	fonts := map[string]string{}
	pages := 0
	for _, m := range streams.FindAllSubmatch(pdf, -1) {
		if !bytes.Contains(m[1], []byte("BT ")) || !bytes.Contains(m[1], []byte(" Tj ET")) {
			continue
		}
		pages++
		fmt.Fprintf(&b, "page %d", pages)
		font, shown, line := "", "", -1000.0
		for _, k := range types.FindAllSubmatch(m[1], -1) {
			switch {
			case len(k[4]) > 0:
				name := string(k[4])
				if fonts[name] == "" {
					fonts[name] = []string{"R", "B", "I", "S", "BI", "?"}[min(len(fonts), 5)]
				}
				font = fonts[name] + strings.TrimSuffix(string(k[5]), ".00")
			case len(k[6]) > 0:
				line = -1000
				fmt.Fprintf(&b, "\n%6.1f rule %.0f to %.0f", A4.Height-points(k[7]), points(k[6]), points(k[8]))
			default:
				drop := A4.Height - points(k[2]) - line
				if drop < -0.3 || drop > 3 {
					line += drop
					drop, shown = 0, ""
					fmt.Fprintf(&b, "\n%6.1f", line)
				}
				if font != shown {
					fmt.Fprintf(&b, " {%s}", font)
					shown = font
				}
				if drop > 0.3 {
					fmt.Fprintf(&b, " +%.1f", drop)
				}
				fmt.Fprintf(&b, " %.0f:%s", points(k[1]), fromUTF16(k[3]))
			}
		}
		b.WriteString("\n")
	}
	if pages == 0 {
		t.Fatal("the document has no page with type")
	}
	return b.String()
}

// points is a length in a document's stream.
func points(text []byte) float64 {
	x, _ := strconv.ParseFloat(string(text), 64)
	return x
}

// fromUTF16 is the text of a string of a document.
func fromUTF16(escaped []byte) string {
	data := escapes.Replace(string(escaped))
	var units []uint16
	for i := 0; i+1 < len(data); i += 2 {
		units = append(units, uint16(data[i])<<8|uint16(data[i+1]))
	}
	return string(utf16.Decode(units))
}
