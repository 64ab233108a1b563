package paper_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"io"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
	"unpin/statics/figure/paper"
)

var update = flag.Bool("update", false, "rewrite the images in testdata")

// papers are sizes of figures on paper in points: a column, a page's width, a page.
var papers = [][2]float64{{200, 160}, {340, 240}, {470, 320}, {470, 700}}

// TestPaper lays every scene of every test file out at every size. No label is lost, none touches another, and all that is
// drawn lies on the sheet.
func TestPaper(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "../testdata") {
		d, _, _ := figuretest.Load(t, file)
		for name, s := range d.Scenes(t, false) {
			for _, size := range papers {
				if fault := checkSheet(s, paper.Layout(s, size[0], size[1])); fault != "" {
					t.Errorf("%s, %s at %v: %s", filepath.Base(file), name, size, fault)
				}
			}
		}
	}
}

// checkSheet reports what is wrong with a sheet, or nothing.
func checkSheet(s figure.Scene, sheet paper.Sheet) string {
	if err := sheet.Check(); err != nil {
		return err.Error()
	}
	count := map[string]int{}
	for _, m := range sheet.Marks {
		text := ""
		for _, r := range m.Text {
			text += r.Text
		}
		count[text]++
	}
	for text, n := range figuretest.Texts(s) {
		if found := count[printed(s, text)] + drawnSlope(count, printed(s, text)); found < n {
			return "the label " + text + " is lost"
		}
	}
	return ""
}

// drawnSlope is how often a label stands without the slope in it, which a triangle shows.
func drawnSlope(count map[string]int, text string) int {
	slope := slopeInLabel.FindStringSubmatch(text)
	if slope == nil || count[slope[1]] == 0 || count[slope[2]] == 0 {
		return 0
	}
	return count[strings.Replace(text, slope[0], "", 1)]
}

var slopeInLabel = regexp.MustCompile(` (\d+):(\d+)`)

// printed is a label as it stands in print, without its kinds of type.
func printed(s figure.Scene, text string) string {
	first, rest, cut := strings.Cut(text, " ")
	if name, ok := s.Names[first]; ok {
		first = name.Letter + name.Index
		if cut {
			return first + " " + rest
		}
		return first
	}
	return text
}

// TestPaperFits: where there is room for the labels, the sheet is no larger than asked for, and fills one side.
func TestPaperFits(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "../testdata") {
		d, _, _ := figuretest.Load(t, file)
		for name, s := range d.Scenes(t, false) {
			sheet := paper.Layout(s, 470, 700)
			if s.IsApart() && !sheet.Fits {
				continue // its parts are drawn one by one
			}
			if sheet.Width > 477 || sheet.Height > 707 {
				t.Errorf("%s, %s is %.0f × %.0f points", filepath.Base(file), name, sheet.Width, sheet.Height)
			}
			if filled := max(sheet.Width/470, sheet.Height/700); filled < 0.9 && len(s.Strokes) > 0 {
				t.Errorf("%s, %s fills %.2f of the paper", filepath.Base(file), name, filled)
			}
		}
	}
}

// TestPaperIsTrue: what is not stretched is to one scale, and angles are true.
func TestPaperIsTrue(t *testing.T) {
	for _, file := range figuretest.Files(t, "../testdata") {
		d, _, _ := figuretest.Load(t, file)
		s := figure.OfFrame(&d.Frame, figure.Options{Style: d.Style})
		sheet := paper.Layout(s, 470, 320)
		if sheet.Stretched {
			continue
		}
		scale := 0.0
		for i, m := range members(sheet) {
			k := s.Strokes[i]
			dx, dy := m.Path[1].X-m.Path[0].X, m.Path[0].Y-m.Path[1].Y
			x, y := k.To.X-k.From.X, k.To.Y-k.From.Y
			if i == 0 {
				scale = math.Hypot(dx, dy) / math.Hypot(x, y)
			}
			if math.Abs(dx-scale*x) > 0.3 || math.Abs(dy-scale*y) > 0.3 {
				t.Errorf("%s: member %d runs by (%.2f, %.2f), not (%.2f, %.2f)", filepath.Base(file), i, dx, dy, scale*x, scale*y)
			}
		}
	}
}

// members are the heaviest lines of a sheet with two ends, in order.
func members(s paper.Sheet) []paper.Mark {
	var list []paper.Mark
	for _, m := range s.Marks {
		if m.Weight == 2.6 && len(m.Path) == 2 && !m.Closed {
			list = append(list, m)
		}
	}
	return list
}

// TestSheetCheckFinds: the check of a sheet sees each fault it is there for.
func TestSheetCheckFinds(t *testing.T) {
	d, _, _ := figuretest.Load(t, filepath.Join("..", "testdata", "portal.txt"))
	fresh := func() (s paper.Sheet, text int) {
		s = paper.Layout(figure.OfFrame(&d.Frame, figure.Options{Style: d.Style}), 420, 300)
		return s, slices.IndexFunc(s.Marks, func(m paper.Mark) bool { return len(m.Text) > 0 })
	}
	for name, spoil := range map[string]func(s *paper.Sheet, text int){
		"a line off":  func(s *paper.Sheet, text int) { s.Marks[0].Path[0].X = -1 },
		"a text off":  func(s *paper.Sheet, text int) { s.Marks[text].Path[0].X = 1 },
		"a collision": func(s *paper.Sheet, text int) { s.Marks = append(s.Marks, s.Marks[text]) },
	} {
		s, text := fresh()
		if err := s.Check(); err != nil {
			t.Fatal(err)
		}
		if spoil(&s, text); s.Check() == nil {
			t.Errorf("%s is not seen", name)
		}
	}
}

// TestSVG: every scene is well-formed XML that says what it shows, and comes out the same again.
func TestSVG(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "../testdata") {
		d, _, _ := figuretest.Load(t, file)
		for name, s := range d.Scenes(t, false) {
			words := []string{"A & B <joined>.", "No more."}
			image := paper.SVG(paper.Layout(s, 420, 300), words)
			if again := paper.SVG(paper.Layout(s, 420, 300), words); !bytes.Equal(image, again) {
				t.Errorf("%s, %s comes out in two ways", file, name)
			}
			title, desc, err := readSVG(image)
			if err != nil || title != s.Title || desc != strings.Join(words, "\n") {
				t.Errorf("%s, %s: title %q, description %q, %v", file, name, title, desc, err)
			}
		}
	}
}

// TestImages holds the images in testdata, which were looked at in colour and in grey; a change to them must be looked at
// too.
func TestImages(t *testing.T) {
	for _, name := range []string{"portal", "gable", "wind", "slots"} {
		d, _, _ := figuretest.Load(t, filepath.Join("..", "testdata", name+".txt"))
		o := figure.Options{Style: d.Style}
		got := paper.SVG(paper.Layout(figure.OfFrame(&d.Frame, o), 420, 300), figure.Describe(d.Cut(t), o))
		file := filepath.Join("testdata", name+".svg")
		if *update {
			if err := os.WriteFile(file, got, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if want, err := os.ReadFile(file); err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s differs (%v)", file, err)
		}
	}
}

// readSVG reads all of an image and gives its title and description.
func readSVG(image []byte) (title, desc string, err error) {
	in := xml.NewDecoder(bytes.NewReader(image))
	var inside string
	for {
		token, err := in.Token()
		if errors.Is(err, io.EOF) {
			return title, desc, nil
		}
		if err != nil {
			return title, desc, err
		}
		switch k := token.(type) {
		case xml.StartElement:
			inside = k.Name.Local
		case xml.EndElement:
			inside = ""
		case xml.CharData:
			switch inside {
			case "title":
				title += string(k)
			case "desc":
				desc += string(k)
			}
		}
	}
}

func BenchmarkPaper(b *testing.B) {
	for _, name := range []string{"portal", "gable", "compound", "storeys", "tower"} {
		d, _, _ := figuretest.Load(b, filepath.Join("..", "testdata", name+".txt"))
		s := figure.OfFrame(&d.Frame, figure.Options{Style: d.Style})
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				paper.SVG(paper.Layout(s, 470, 320), nil)
			}
		})
	}
}
