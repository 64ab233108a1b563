package worksheet

import (
	"bytes"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"codeberg.org/go-fonts/dejavu/dejavusans"
	"codeberg.org/go-fonts/dejavu/dejavuserifcondensed"
)

// families are the faces of type that a style sheet or an image asks for first.
var families = regexp.MustCompile(`font-family="([^",]+)|font: [^"]*"([^"]+)"`)

// TestOneTypeface: an image, the figures of a page and those of a PDF are set in one typeface, and the text of a page and of a
// PDF in its sister with serifs. The names within the fonts that the PDF embeds are read here, since it gives them others.
func TestOneTypeface(t *testing.T) {
	p, s := solveFile(t, filepath.Join(testdata, "examples", "canopy.yaml"))
	image, err := SVG(p, s, "given")
	if err != nil {
		t.Fatal(err)
	}
	faces := func(text string) map[string]bool {
		all := map[string]bool{}
		for _, m := range families.FindAllStringSubmatch(text, -1) {
			all[m[1]+m[2]] = true
		}
		return all
	}
	if of := faces(string(image)); len(of) != 1 || !of["DejaVu Sans"] {
		t.Errorf("an image is set in %v", of)
	}
	if of := faces(HTML(One(p, s), Options{})); len(of) != 2 || !of["DejaVu Sans"] || !of["DejaVu Serif"] {
		t.Errorf("a page is set in %v", of)
	}
	if name := utf16Of("DejaVu Sans"); !bytes.Contains(dejavusans.TTF, name) {
		t.Error("the figures of a PDF are set in another face")
	}
	if name := utf16Of("DejaVu Serif"); !bytes.Contains(dejavuserifcondensed.TTF, name) {
		t.Error("the text of a PDF is set in another face")
	}
	document, err := PDF(One(p, s), Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range regexp.MustCompile(`/BaseFont /(\w+)`).FindAllSubmatch(document, -1) {
		if !regexp.MustCompile(`^utf8(` + family + `|` + figureFamily + `)(B|I|BI)?$`).Match(m[1]) {
			t.Errorf("a PDF has the font %s", m[1])
		}
	}
	if whole := len(dejavusans.TTF) + len(dejavuserifcondensed.TTF); len(document) > whole/4 {
		t.Errorf("a PDF of %d bytes; its fonts are cut to the signs in use, of two fonts with %d", len(document), whole)
	}
	if tagged, told := bytes.Contains(document, []byte("/StructTreeRoot")), strings.Contains(HTML(One(p, s), Options{}), untagged); tagged == told {
		t.Errorf("a PDF is tagged: %v; the page says that it is not: %v", tagged, told)
	}
}

// utf16Of is a text as the table of names of a font has it.
func utf16Of(text string) []byte {
	var b []byte
	for _, c := range []byte(text) {
		b = append(b, 0, c)
	}
	return b
}
