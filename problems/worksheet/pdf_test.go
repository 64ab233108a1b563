package worksheet

import (
	"bytes"
	"math"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/figure/paper"
)

// TestPDF prints every problem: without an error, and no longer than a reader expects.
func TestPDF(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		document, err := PDF(One(p, s), Options{Paper: A4})
		if err != nil || !bytes.HasPrefix(document, []byte("%PDF-1.")) || !bytes.HasSuffix(bytes.TrimSpace(document), []byte("%%EOF")) {
			t.Fatalf("no document: %v", err)
		}
		pages := bytes.Count(document, []byte("/Type /Page\n"))
		if most := 3 + 3*len(s.Frame.Members); pages < 1 || pages > most {
			t.Errorf("%d pages", pages)
		}
	})
}

// TestPrintedTwice: a document comes out the same again, and on the other paper as large as that.
func TestPrintedTwice(t *testing.T) {
	t.Parallel()
	for _, path := range glob(t, filepath.Join(testdata, "examples", "*.yaml")) {
		p, s := solveFile(t, path)
		first, _ := PDF(One(p, s), Options{Paper: A4})
		if again, _ := PDF(One(p, s), Options{Paper: A4}); !bytes.Equal(first, again) {
			t.Errorf("%s is another when printed again", p.Name)
		}
		if letter, err := PDF(One(p, s), Options{Paper: Letter}); err != nil || !bytes.Contains(letter, []byte("/MediaBox [0 0 612.00 792.00]")) {
			t.Errorf("%s is not on Letter: %v", p.Name, err)
		}
	}
}

// composed is a document made into strips.
func composed(p *problems.Problem, s *statics.Solution, size PaperSize) *composer {
	d := newDocument(p, s, false)
	d.pictures = true
	d.solution(Options{})
	doc := newPrint("", size)
	c := newComposer(doc, d, size)
	c.compose(1)
	return c
}

// TestStrips: every strip fits a page, and so does what must stay together.
func TestStrips(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		c := composed(p, s, Letter)
		room, together := Letter.Height-headMargin-footMargin, 0.0
		for i, k := range c.strips {
			together += k.above + k.height
			if together > room {
				t.Errorf("strip %d is %.0f points tall, together %.0f, of %.0f", i, k.height, together, room)
			}
			if !k.with {
				together = 0
			}
		}
	})
}

// TestPages: on both papers nothing reaches into the foot of a page, no page ends with a heading or cuts what stays together,
// and no figure is wider than the text.
func TestPages(t *testing.T) {
	t.Parallel()
	pages := 0
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		for _, size := range []PaperSize{A4, Letter} {
			c := composed(p, s, size)
			for n, page := range c.pages() {
				pages++
				last := page[len(page)-1]
				if last.with {
					t.Errorf("page %d of %s ends with what stays with the next", n+1, size.Name)
				}
				if last.y+last.height > size.Height-footMargin+0.01 {
					t.Errorf("page %d of %s reaches into its foot", n+1, size.Name)
				}
			}
			for _, k := range c.sheets {
				if k.Width > c.wide()+0.01 {
					t.Errorf("a figure of %s is %.0f points wide", size.Name, k.Width)
				}
			}
		}
	})
	t.Logf("%d pages", pages)
}

// TestTallFigures: the figures of a tall frame fit a page together with the heading above them.
func TestTallFigures(t *testing.T) {
	p, s := solveFile(t, filepath.Join("testdata", "tall.yaml"))
	c := composed(p, s, Letter)
	for i := range c.strips {
		if need := c.together(i); need > c.tall() {
			t.Fatalf("what stays with strip %d is %.0f points tall, of %.0f", i, need, c.tall())
		}
	}
}

// TestLongTable: a table too long for its page goes on on the next beneath its head.
func TestLongTable(t *testing.T) {
	p, s := solveFile(t, filepath.Join(testdata, "examples", "canopy.yaml"))
	c := composed(p, s, A4)
	c.strips = nil
	long := table{align: "lr", head: []string{"x [m]", "M [kN·m]"}}
	for range 70 {
		long.add("1", "2")
	}
	c.table(long, false)
	pages := c.pages()
	if len(pages) != 2 || len(pages[1]) < 5 || pages[1][0].y != headMargin {
		t.Fatalf("%d pages", len(pages))
	}
	heads := 0
	for _, k := range pages[1][:3] {
		if k.again == nil {
			heads++
		}
	}
	if heads != 3 || pages[1][3].again == nil {
		t.Errorf("the head has %d of its three strips again", heads)
	}
}

// TestSetLines: lines are no wider than asked for, and lose no word.
func TestSetLines(t *testing.T) {
	p, s := solveFile(t, filepath.Join(testdata, "examples", "canopy.yaml"))
	c := composed(p, s, A4)
	text := "Take ΣM about C: Ay·6 − 4·6·3 = 0, so Cy.CDE and " + strings.Repeat("long", 40) + " come out, and Bx = 12.5 kN."
	for _, wide := range []float64{30, 80, 200, 470} {
		style := lineStyle{size: bodySize}
		got := ""
		for _, line := range c.lines(c.words(text, style), wide, style) {
			if w := lineWide(line, bodySize); w > wide+0.01 {
				t.Errorf("a line is %.1f wide, not %.1f", w, wide)
			}
			for _, word := range line {
				for _, r := range word.runs {
					got += r.text
				}
			}
		}
		want := strings.ReplaceAll(text, " ", "")
		if strings.ReplaceAll(strings.ReplaceAll(got, " ", ""), string(bound), "") != want {
			t.Errorf("at %.0f the lines are %q", wide, got)
		}
	}
}

// TestSymbols sets words in type: i is italic, an underscore before what is small and low.
func TestSymbols(t *testing.T) {
	p, s := solveFile(t, filepath.Join(testdata, "examples", "shelter.yaml"))
	c := composed(p, s, A4)
	for _, k := range []struct{ word, want string }{
		{"Ay", "i(A)_(y)"}, {"(Ay,", "(i(A)_(y),"}, {"−Ay·6", "−i(A)_(y)·6"}, {"Pay", "Pay"}, {"ΣFx", "Σi(F)_(x)"}, {"A", "A"},
		{"Ays", "Ays"}, {"12.5x²", "12.5i(x)²"}, {"M", "i(M)"}, {"ΣM", "Σi(M)"}, {"ΣMs", "ΣMs"}, {"MN", "MN"},
	} {
		got := ""
		for _, r := range c.names.runsOf(k.word, "", mathLetters) {
			text := r.text
			if r.index {
				text = "_(" + text + ")"
			} else if r.style == "I" {
				text = "i(" + text + ")"
			}
			got += text
		}
		if got != k.want {
			t.Errorf("%s is set as %s, not %s", k.word, got, k.want)
		}
	}
}

// TestBoldSymbols: a symbol is italic in bold type too, and so is the letter of an axis beneath it, but not the name of a joint.
func TestBoldSymbols(t *testing.T) {
	p, s := solveFile(t, filepath.Join(testdata, "examples", "shelter.yaml"))
	c := composed(p, s, A4)
	for word, want := range map[string]string{"Ay": "A/BI y/BI", "ΣFx": "Σ/B F/BI x/BI", "A": "A/B", "RE": "R/BI E/B"} {
		var got []string
		for _, r := range c.names.runsOf(word, "B", "") {
			got = append(got, r.text+"/"+r.style)
		}
		if strings.Join(got, " ") != want && !(word == "RE" && len(got) == 1) { // a name only where there is such a roller
			t.Errorf("%s is set as %v, not %s", word, got, want)
		}
	}
}

// TestNothingAstray: in documents of frames whose forces are crowded, every force stands at what it acts on: within the 26 points
// that an arc around its point may take, unless another of the same point stands between, as read off where arrows were drawn.
func TestNothingAstray(t *testing.T) {
	t.Parallel()
	const most = 26
	apart := func(a, b figure.Position) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }
	arrows := 0
	for _, name := range []string{"20-orchard-gate", "29-painters-trestle", "32-fly-loft", "40-quarry-derrick", "48-boatyard-crane"} {
		p, s := solveFile(t, filepath.Join("..", "library", name+".yaml"))
		c := composed(p, s, A4)
		c.compose(1)
		for _, sheet := range c.sheets {
			for i, d := range sheet.Drawn {
				if d.Kind != figure.DrawnArrow || d.At != d.Hub {
					continue
				}
				arrows++
				far, between := min(apart(d.From, d.At), apart(d.To, d.At)), false
				for k, o := range sheet.Drawn {
					between = between || k != i && o.Kind == figure.DrawnArrow && o.At == d.At && min(apart(o.From, o.At), apart(o.To, o.At)) < far
				}
				if far > most && !between {
					t.Errorf("%s, %s: %s stands %.0f points off its point", name, sheet.Title, d.Text, far)
				}
			}
		}
	}
	if arrows < 150 {
		t.Errorf("only %d arrows", arrows)
	}
}

// TestLastRemark: what no check catches is said on the page of the last check.
func TestLastRemark(t *testing.T) {
	p, s := solveFile(t, filepath.Join("..", "library", "09-ferry-ramp.yaml"))
	c := composed(p, s, A4)
	n := 0
	for i, b := range c.d.list {
		if b.kind != reasonPassage || !strings.HasPrefix(b.text, "No check catches") {
			continue
		}
		n++
		c.strips, c.last = nil, titlePassage
		c.set(i - 2)
		before := len(c.strips)
		c.set(i)
		if !c.strips[before-1].with || c.strips[len(c.strips)-1].with {
			t.Errorf("it stays with the check: %v; with what follows: %v", c.strips[before-1].with, c.strips[len(c.strips)-1].with)
		}
	}
	if n != 1 {
		t.Errorf("%d such remarks", n)
	}
}

// TestAuthorsWords: in what the author of a problem wrote, By is a word where a sentence begins with it, and else a force at B.
func TestAuthorsWords(t *testing.T) {
	file := func(text string) []byte {
		return []byte("title: By the mill\ntext: " + text + "\nunits: kN m\njoints: {A: [0, 0], B: [2, 0], C: [4, 0]}\nmembers: [AB, BC]\npins: [B]\n" +
			"supports: {A: fixed, C: {roller: up}}\nloads: [{point: 4, to: down, on: BC, at: 1}]\n")
	}
	for text, force := range map[string]bool{"Two beams meet. By noon they are loaded.": false, "Find By and Bx.": true} {
		p, s := solve(t, "authors", file(text))
		page := HTML(One(p, s), Options{Only: []string{"given"}})
		if got := strings.Contains(page, "Find <var>B</var>"); got != force {
			t.Errorf("%q: a force is set: %v", text, got)
		}
		if !force && !strings.Contains(page, "By noon") {
			t.Errorf("%q is not there as written", text)
		}
		c := composed(p, s, A4)
		if _, ok := c.names.inWords(text)["By"]; ok != force {
			t.Errorf("%q: By is a force: %v", text, ok)
		}
	}
}

// TestPrintable: nothing reaches the font that it could stumble over.
func TestPrintable(t *testing.T) {
	title := "Bad \xff bytes, 𝕏, 🙂, \x00 and \u202e"
	p, s := solve(t, "odd", []byte("title: odd\nunits: kN m\njoints: {A: [0, 0], B: [1, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n"))
	p.Title, p.Text = title, title
	if _, err := PDF(One(p, s), Options{Paper: A4}); err != nil {
		t.Error(err)
	}
	for _, r := range printable(title) {
		if r > 0xffff || r < ' ' {
			t.Errorf("%q is left", r)
		}
	}
}

func BenchmarkPDF(b *testing.B) {
	for _, name := range []string{"01-jetty-deck", "21-sawmill-portal", "29-painters-trestle"} {
		p, s := solveFile(b, filepath.Join("..", "library", name+".yaml"))
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if _, err := PDF(One(p, s), Options{Paper: A4}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// TestFiguresFitTheFont: no label of a figure is wider in the font of the PDF than the layout reckons with.
func TestFiguresFitTheFont(t *testing.T) {
	t.Parallel()
	for _, path := range libraryFiles(t) {
		p, s := solveFile(t, path)
		c := composed(p, s, A4)
		for _, b := range c.d.list {
			for _, m := range paper.Layout(b.picture, 400, 300).Marks {
				wide, room := 0.0, 0.5
				for _, r := range m.Text {
					style, size := "", m.Size
					switch {
					case r.Bold:
						style = "B"
					case r.Italic:
						style = "I"
					}
					if r.Index {
						size *= indexScale
					}
					c.doc.SetFont(figureFamily, style, size)
					wide += c.doc.GetStringWidth(r.Text)
					room += r.Width(m.Size)
				}
				if wide > room {
					t.Errorf("%s: %v is %.1f wide, not %.1f", p.Name, m.Text, wide, room)
				}
			}
		}
	}
}

// TestWideTable: a table that is wider than its page, however its columns are, is pressed until it fits, and no column beneath its
// longest word.
func TestWideTable(t *testing.T) {
	p, s := solveFile(t, filepath.Join(testdata, "examples", "canopy.yaml"))
	c := composed(p, s, A4)
	rapid.Check(t, func(t *rapid.T) {
		least := rapid.SliceOfN(rapid.Float64Range(5, 40), 2, 9).Draw(t, "least")
		widths := make([]float64, len(least))
		for i := range widths {
			widths[i] = least[i] + rapid.Float64Range(0, 300).Draw(t, "more")
		}
		squeeze(widths, least, c.cellGap(), c.wide()-c.inset)
		total := -c.cellGap()
		for i, w := range widths {
			if total += w + c.cellGap(); w < least[i]-0.001 {
				t.Fatalf("column %d is %.1f wide, its longest word %.1f", i, w, least[i])
			}
		}
		if total > c.wide()-c.inset+0.001 {
			t.Fatalf("%.1f wide on %.1f: %.1f", total, c.wide()-c.inset, widths)
		}
	})
}
