package worksheet

import (
	"bytes"
	"fmt"
	"io"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
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

// TestPapersPrinted holds where everything stands on the pages of sheets and a key to the files in testdata/printed, as TestPrinted
// does for solutions.
func TestPapersPrinted(t *testing.T) {
	t.Parallel()
	for _, k := range []struct {
		name, file string
		level      Level
		key        bool
	}{
		{"sheet-values", "solutions/letters.yaml", ValuesLevel, false}, {"sheet-terms", "examples/canopy.yaml", TermsLevel, false},
		{"sheet-plan", "solutions/ring.yaml", PlanLevel, false}, {"sheet-blank", "examples/canopy.yaml", BlankLevel, false}, {"key", "examples/canopy.yaml", ValuesLevel, true},
	} {
		task := taskOf(t, filepath.Join(testdata, k.file), k.level)
		doc := newPrint("", A4)
		doc.SetCompression(false)
		p := printing{doc, PaperOptions{Key: k.key}, Paper{Heading: week, Tasks: []Task{task}}.settled()}
		c := paperComposer{newComposer(doc, documentOf(p.Tasks[0], p.o, medium{pictures: true}), A4)}
		c.top, c.foot, c.sheets = paperTop, paperFoot, blankSheets(c.d)
		c.setAll()
		pages := c.filled()
		for n, page := range pages {
			p.page(pressed{task: task, c: c}, page, n+1, len(pages))
		}
		var out bytes.Buffer
		if err := doc.Output(&out); err != nil {
			t.Fatal(err)
		}
		same(t, filepath.Join("testdata", "printed", k.name+".txt"), printedLines(t, out.Bytes()))
	}
}

// TestSheetsKeepToTheirPages: on A4, Letter and in large print nothing reaches into the foot of a page, no page ends with what stays
// with the next, no figure is wider than the page, every strip fits a page, and the pages lose none of it.
func TestSheetsKeepToTheirPages(t *testing.T) {
	t.Parallel()
	n, crowded := 0, 0
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		n++
		task := Task{Solved: problems.Solved{Problem: p, Solution: s}, Number: 1, Level: Level(n % len(Levels))}
		paper := Paper{Heading: week, Tasks: []Task{task}, Size: []PaperSize{A4, Letter}[n%2], Large: n%3 == 0}.settled()
		one := printing{newPrint("", paper.Size), PaperOptions{Key: n%5 == 0}, paper}.press(paper.Tasks[0])
		c := one.c
		placed := 0
		for i, page := range one.pages {
			last := page[len(page)-1]
			first := last.index
			for first > 0 && c.strips[first-1].with {
				first--
			}
			if last.with && c.together(first) <= c.tall() { // what is taller than a page goes on on the next
				t.Errorf("page %d ends with what stays with the next", i+1)
			}
			for _, k := range page {
				if k.index >= 0 {
					placed++
				}
				if k.y+k.height > c.size.Height-c.foot+0.01 || k.y < c.top {
					t.Errorf("a strip of page %d stands from %.0f to %.0f", i+1, k.y, k.y+k.height)
				}
			}
		}
		if placed != len(c.strips) {
			t.Errorf("%d of %d strips stand on the pages", placed, len(c.strips))
		}
		for _, k := range c.sheets {
			if k.Width > c.wide()+0.01 {
				t.Errorf("a figure is %.0f points wide, of %.0f", k.Width, c.wide())
			}
			if err := k.Check(); err != nil && k.Fits {
				t.Error(err)
			}
		}
		crowded += c.crowded()
	})
	t.Logf("%d crowded figures on %d sheets", crowded, n)
}

// TestNothingHiddenInPapers: what people write into a heading is shown, whatever is in it.
func TestNothingHiddenInPapers(t *testing.T) {
	const bad = "a\x1b[31m\u202e\u200b\x00\u2028b\x9b<i>&|\n# c"
	task := taskOf(t, filepath.Join(testdata, "examples", "canopy.yaml"), ValuesLevel)
	problem := *task.Problem
	problem.Title, problem.Text = bad, bad
	task.Problem, task.Points, task.Code = &problem, bad, bad
	papers := slices.Values([]Paper{{Heading: Heading{Title: bad, Course: bad, Student: bad, Name: bad, Caution: bad}, Tasks: []Task{task}}})
	for _, o := range []PaperOptions{{}, {Key: true}} {
		var page, markdown, text strings.Builder
		if err := PapersHTML(&page, papers, o); err != nil {
			t.Fatal(err)
		}
		readPage(t, page.String()).check(t)
		if _, err := PapersMarkdown(&markdown, papers, o, ""); err != nil {
			t.Fatal(err)
		}
		if err := PapersText(&text, papers, o); err != nil {
			t.Fatal(err)
		}
		for _, written := range []string{page.String(), markdown.String(), text.String()} {
			if notation.VisibleLines(written) != written {
				t.Errorf("hidden characters in\n%q", written)
			}
		}
		if strings.Contains(markdown.String(), "\n# c") || strings.Contains(page.String(), "<i>") {
			t.Error("a text of the heading is taken for a sign of the format")
		}
		if err := PapersPDF(io.Discard, papers, o); err != nil {
			t.Error(err)
		}
	}
}
