package worksheet

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// TestHTML holds pages for a browser to files, but for what their figures draw: a whole one, one of a frame that can move, and
// one with two problems.
func TestHTML(t *testing.T) {
	t.Parallel()
	canopy, solved := solveFile(t, filepath.Join(testdata, "examples", "canopy.yaml"))
	loose, refused := solveFile(t, filepath.Join(own, "unstable.yaml"))
	ways, loosely := solveFile(t, filepath.Join(own, "four-pins.yaml"))
	slot, slid := solveFile(t, filepath.Join(own, "strut.yaml"))
	for name, page := range map[string]string{
		"canopy":    HTML(One(canopy, solved), Options{}),
		"unstable":  HTML(One(loose, refused), Options{}),
		"four-pins": HTML(One(ways, loosely), Options{}),
		"two":       HTML([]Solved{{canopy, solved}, {slot, slid}}, Options{Only: []string{"results", "sums"}}),
	} {
		same(t, filepath.Join("testdata", "pages", name+".html"), drawings.ReplaceAllString(page, "<svg/>"))
	}
}

var drawings = regexp.MustCompile(`(?s)<svg .*?</svg>`)

// TestPagesAreSound reads every page strictly as XML and holds it to what a reader with any browser needs: headings in order,
// one of the first level, links that lead somewhere, heads of tables that say what they are the heads of, figures with a title
// and a description, and nothing that comes from elsewhere. Every word of the text solution stands in it, in the same order.
func TestPagesAreSound(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		page := HTML(One(p, s), Options{})
		if again := HTML(One(p, s), Options{}); again != page {
			t.Error("the page is another when written again")
		}
		read := readPage(t, page)
		read.check(t)
		got := wordsOf(read.text.String())
		for _, word := range wordsOf(Text(One(p, s), Options{Width: 1000})) {
			if strings.Trim(word, "=-") == "" { // the rule beneath a heading, or a sign that stands alone
				continue
			}
			at := slices.Index(got, word)
			if at < 0 {
				t.Fatalf("%q of the text is not on the page where it should be, before %.200q", word, strings.Join(got, " "))
			}
			got = got[at+1:]
		}
	})
}

// wordsOf are the words and numbers of a text, without full stops, and the brackets and colons that a page has no need of.
func wordsOf(text string) []string {
	words := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" \n\u00a0\u2003[]:", r) })
	for i, word := range words {
		words[i] = strings.ReplaceAll(strings.TrimSuffix(word, "."), "_", "") // F_BD is set with BD low
	}
	return words
}

// A pageRead is what was found on a page.
type pageRead struct {
	levels   []int
	ids      []string
	links    []string
	elements map[string]int
	noScope  int
	entries  int // of the list in hand
	foreign  []string
	text     strings.Builder // without figures and links
}

// readPage reads a page as strict XML.
func readPage(t *testing.T, page string) *pageRead {
	t.Helper()
	read := &pageRead{elements: map[string]int{}}
	body, isPage := strings.CutPrefix(page, "<!DOCTYPE html>\n<html lang=\"en\">\n")
	if !isPage {
		t.Fatalf("the page begins with %.60q", page)
	}
	d := xml.NewDecoder(strings.NewReader("<html>" + body))
	quiet := 0 // how many elements are open whose text is no text of the page
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return read
		}
		if err != nil {
			t.Fatalf("the page is not well-formed: %v", err)
		}
		switch k := token.(type) {
		case xml.StartElement:
			read.start(k)
			if quietly[k.Name.Local] {
				quiet++
			}
		case xml.EndElement:
			if quietly[k.Name.Local] {
				quiet--
			}
			if !inLine[k.Name.Local] {
				read.text.WriteString(" ")
			}
		case xml.CharData:
			if quiet == 0 {
				read.text.Write(k)
			}
		}
	}
}

var (
	quietly = map[string]bool{"head": true, "svg": true, "nav": true, "figcaption": true}
	inLine  = map[string]bool{"var": true, "sub": true, "strong": true, "b": true}
)

func (p *pageRead) start(e xml.StartElement) {
	name := e.Name.Local
	p.elements[name]++
	if len(name) == 2 && name[0] == 'h' && name[1] >= '1' && name[1] <= '6' {
		p.levels = append(p.levels, int(name[1]-'0'))
	}
	switch name {
	case "ol":
		p.entries = 0
	case "li":
		p.entries++
		fmt.Fprint(&p.text, p.entries, " ")
	}
	scope := ""
	for _, a := range e.Attr {
		switch a.Name.Local {
		case "id":
			p.ids = append(p.ids, a.Value)
		case "href":
			p.links = append(p.links, strings.TrimPrefix(a.Value, "#"))
		case "aria-labelledby":
			p.links = append(p.links, a.Value)
		case "src", "data", "onclick", "onload":
			p.foreign = append(p.foreign, a.Value)
		case "scope":
			scope = a.Value
		}
	}
	if name == "th" && scope != "col" && scope != "row" {
		p.noScope++
	}
}

func (p *pageRead) check(t *testing.T) {
	t.Helper()
	for i, level := range p.levels {
		if i == 0 && level != 1 || i > 0 && (level == 1 || level > p.levels[i-1]+1) {
			t.Errorf("heading %d has level %d after %v", i+1, level, p.levels[:i])
		}
	}
	for i, id := range p.ids {
		if slices.Contains(p.ids[:i], id) {
			t.Errorf("two things have the id %q", id)
		}
	}
	for _, to := range p.links {
		if !slices.Contains(p.ids, to) {
			t.Errorf("a link leads to %q, which is not there", to)
		}
	}
	if p.noScope > 0 || len(p.foreign) > 0 || p.elements["script"]+p.elements["link"]+p.elements["img"] > 0 {
		t.Errorf("%d heads without scope, from elsewhere %q, elements %v", p.noScope, p.foreign, p.elements)
	}
	if n := p.elements["svg"]; n == 0 || p.elements["desc"] != n || p.elements["title"] != n+1 || p.elements["figure"] != n {
		t.Errorf("%v figures", p.elements)
	}
}

// TestPageEscapes: what a problem says is shown as it is written, and does nothing.
func TestPageEscapes(t *testing.T) {
	p, s := solve(t, "marks", []byte("title: '<script>alert(1)</script> & \"b\"'\nunits: kN m\njoints: {A: [0, 0], B: [1, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n"))
	page := HTML(One(p, s), Options{})
	readPage(t, page).check(t)
	if want := "<h1>&lt;script&gt;alert(1)&lt;/script&gt; &amp; &#34;b&#34;</h1>"; !strings.Contains(page, want) {
		t.Errorf("the page has no %s", want)
	}
}

// wideFigure is a figure of a page: what holds it, and how wide it is in points.
var wideFigure = regexp.MustCompile(`(?:style="--least: ([0-9]+)pt">\n)?<svg [^>]*width="([0-9.]+)pt"`)

// TestFiguresStayLegible holds that the letters of a figure, which are 9 points of its own size, are no less than 10 pixels (3/4
// point each) in the narrowest of windows, 320 pixels with margins of 16: a figure that would have to shrink more keeps a width.
func TestFiguresStayLegible(t *testing.T) {
	t.Parallel()
	held := 0
	for _, name := range []string{"riding-hall", "quarry-derrick", "jetty-deck"} {
		p, ok := problems.Library(name)
		if !ok {
			t.Fatal(name)
		}
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatal(err)
		}
		for _, found := range wideFigure.FindAllStringSubmatch(HTML(One(p, s), Options{}), -1) {
			wide, _ := strconv.ParseFloat(found[2], 64)
			shown := min(wide, (320-2*16)*0.75)
			if found[1] != "" {
				least, _ := strconv.ParseFloat(found[1], 64)
				shown = max(shown, least)
				held++
			}
			if pixels := 9 / 0.75 * shown / wide; pixels < 10 {
				t.Errorf("%s: letters of %.1f pixels in a figure of %.0f points", name, pixels, wide)
			}
		}
	}
	if held < 3 {
		t.Errorf("only %d figures keep a width", held)
	}
}
