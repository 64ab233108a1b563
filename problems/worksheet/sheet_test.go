package worksheet

import (
	"bytes"
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
)

// taskOf is what a problem of a file asks for, at a level.
func taskOf(t testing.TB, path string, level Level) Task {
	t.Helper()
	p, s := solveFile(t, path)
	solved := problems.Solved{Problem: p, Solution: s}
	task := Task{Solved: solved, Number: 2, Points: "10", Code: "K7M2PX4D", Level: level}
	if s.Values == nil {
		return task
	}
	items, err := solved.Asked(p.Find)
	if err != nil {
		t.Fatal(err)
	}
	task.Items = items
	return task
}

// week is the heading of papers in tests.
var week = Heading{Title: "Statics, week 5", Course: "Structural mechanics 1", Student: "s017", Name: "Ida Holm"}

// pagesOf are the pages of papers as lines of type.
func pagesOf(t testing.TB, o PaperOptions, papers ...Paper) []string {
	t.Helper()
	doc := printPapers(slices.Values(papers), o)
	doc.SetCompression(false)
	var out bytes.Buffer
	if err := doc.Output(&out); err != nil {
		t.Fatal(err)
	}
	lines := printedLines(t.(*testing.T), out.Bytes())
	return regexp.MustCompile(`(?m)^page \d+$`).Split(lines, -1)[1:]
}

// wordsOn are the texts on a page of printedLines, without where they stand.
func wordsOn(page string) string {
	page = fontMarks.ReplaceAllString(page, " ")
	return strings.Join(strings.Fields(placeMarks.ReplaceAllString(page, " ")), " ")
}

var (
	fontMarks  = regexp.MustCompile(`(?m)^ *[\d.]+| \{\w+\.?\d*\}| \+[\d.]+`)
	placeMarks = regexp.MustCompile(` \d+:`)
)

// TestSheetPages: on every page of every level stand the title, the name, the id, the code, the problem and the page; the number
// of pages is told rightly and even where both sides are printed; and the caution is at the foot.
func TestSheetPages(t *testing.T) {
	t.Parallel()
	for i, name := range []string{"examples/canopy.yaml", "solutions/letters.yaml", "solutions/ring.yaml", "solutions/strut.yaml"} {
		size := []PaperSize{A4, Letter}[i%2]
		task := taskOf(t, filepath.Join(testdata, name), Level(i))
		pages := pagesOf(t, PaperOptions{Duplex: true}, Paper{Heading: week, Tasks: []Task{task, task}, Size: size})
		if len(pages)%2 != 0 {
			t.Errorf("%s at %s has %d pages", name, Levels[i], len(pages))
		}
		for n, page := range pages {
			words := wordsOn(page)
			for _, want := range []string{"Statics, week 5", "Structural mechanics 1", "Name Ida Holm", "Id s017", "Code K7M2PX4D", "Problem 2, 10 points",
				fmt.Sprintf("Page %d of %d", n+1, len(pages)), "licensed engineer"} {
				if !strings.Contains(words, want) {
					t.Errorf("%q is not on page %d of %s at %s:\n%s", want, n+1, name, Levels[i], words)
				}
			}
		}
	}
}

// TestPaperFormats holds papers in HTML, Markdown and plain text to files, one level each, and the page to what every reader needs.
func TestPaperFormats(t *testing.T) {
	t.Parallel()
	for level := range Levels {
		task := taskOf(t, filepath.Join(testdata, "examples", "canopy.yaml"), Level(level))
		paper := slices.Values([]Paper{{Heading: week, Tasks: []Task{task}}})
		for _, o := range []PaperOptions{{}, {Key: true}} {
			name := "canopy-" + Levels[level]
			if o.Key {
				if level > 0 {
					continue
				}
				name = "canopy-key"
			}
			var page, markdown, text strings.Builder
			if err := PapersHTML(&page, paper, o); err != nil {
				t.Fatal(err)
			}
			if _, err := PapersMarkdown(&markdown, paper, o, ""); err != nil {
				t.Fatal(err)
			}
			if err := PapersText(&text, paper, o); err != nil {
				t.Fatal(err)
			}
			readPage(t, page.String()).check(t)
			same(t, filepath.Join("testdata", "papers", name+".html"), drawings.ReplaceAllString(page.String(), "<svg/>"))
			same(t, filepath.Join("testdata", "papers", name+".md"), markdown.String())
			same(t, filepath.Join("testdata", "papers", name+".txt"), text.String())
		}
	}
}
