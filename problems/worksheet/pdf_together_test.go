package worksheet

import (
	"bytes"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
)

// places are what printedLines writes before each word.
var places = regexp.MustCompile(`\{[^}]*\} | \+\d\.\d| ?\d+:`)

// TestSumsTogetherOnOnePage reads printed pages: sums solved together stand on the page on which is what comes of them, on both
// papers, in each document that has such sums.
func TestSumsTogetherOnOnePage(t *testing.T) {
	t.Parallel()
	steps := 0
	for _, path := range slices.Concat(libraryFiles(t), glob(t, filepath.Join(testdata, "solutions", "*.yaml")), glob(t, filepath.Join("..", "..", "statics", "figure", "testdata", "frames", "*.yaml"))) {
		p, s := solveFile(t, path)
		if !slices.ContainsFunc(s.Plan, func(step statics.Step) bool { return len(step.Sums) > 1 }) {
			continue
		}
		for _, size := range []PaperSize{A4, Letter} {
			d := newDocument(p, s, false)
			d.pictures = true
			d.solution(Options{})
			doc := newPrint("", size)
			doc.SetCompression(false)
			c := newComposer(doc, d, size)
			c.draw(c.press())
			var out bytes.Buffer
			if err := doc.Output(&out); err != nil {
				t.Fatal(err)
			}
			text := places.ReplaceAllString(printedLines(t, out.Bytes()), " ")
			for n, page := range strings.Split(text, "page ")[1:] {
				page = strings.Join(strings.Fields(page), " ")
				begun, ended := strings.Count(page, "sums solved together"), strings.Count(page, "From these sums")
				if steps += begun; begun != ended {
					t.Errorf("%s, %s, page %d: %d times sums solved together, %d times what comes of them", p.Name, size.Name, n+1, begun, ended)
				}
			}
		}
	}
	if steps < 8 {
		t.Errorf("only %d such steps", steps)
	}
	t.Logf("%d steps", steps)
}
