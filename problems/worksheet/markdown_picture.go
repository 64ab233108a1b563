package worksheet

import (
	"fmt"
	"net/url"
	"strings"

	"unpin/statics/figure"
	"unpin/statics/figure/cells"
)

// A Picture is an SVG image that a document links to: the name of its file, and what is in it.
type Picture struct {
	Name string
	SVG  []byte
}

// MarkdownWithPictures is Markdown whose figures are images in files beside it, linked with all that their description says
// in place of what cannot be seen. Folder is the path from the document to the folder of the files.
func MarkdownWithPictures(all []Solved, o Options, folder string) (string, []Picture) {
	album := &album{folder: folder, used: map[string]int{}}
	text := setMarkdown(all, o, album)
	return text, album.pictures
}

// An album gathers the images of a Markdown document.
type album struct {
	folder   string
	pictures []Picture
	used     map[string]int // how many problems have had that name
	name     string         // of the files of the document in hand,
	figures  int            // and how many it has
	gallery  gallery
}

// begin turns to the next document.
func (a *album) begin(d *document) {
	name := fileName(d.p.Name)
	if a.used[name]++; a.used[name] > 1 {
		name = fmt.Sprintf("%s-%d", name, a.used[name])
	}
	a.name, a.figures, a.gallery = name, 0, newGallery(d)
}

// add makes a file of figure i, and returns the link to it.
func (a *album) add(i int) string {
	a.figures++
	p := Picture{Name: fmt.Sprintf("%s.%d.svg", a.name, a.figures), SVG: a.gallery.image(i)}
	a.pictures = append(a.pictures, p)
	path := p.Name
	if a.folder != "" {
		path = strings.TrimSuffix(a.folder, "/") + "/" + path
	}
	b := a.gallery.d.list[i]
	said := strings.TrimSuffix(b.text, ".") + ". " + strings.Join(b.words, " ")
	return fmt.Sprintf("![%s](%s)", escaped(said), (&url.URL{Path: path}).EscapedPath())
}

// fileName is a name of a problem with which a file can begin anywhere.
func fileName(name string) string {
	name = strings.Map(func(r rune) rune {
		if isLetter(r) && r != '.' && r != '+' && r != '\'' || r == '-' {
			return r
		}
		return '-'
	}, name)
	if name = strings.Trim(name, "-"); name == "" {
		return "figure"
	}
	return name
}

// Sizes of drawings in columns and rows: of a frame, a beam, and a frame taken apart.
const (
	drawingWide, drawingTall = 84, 27
	beamTall                 = 17
	apartWide, apartTall     = 108, 36
)

// picture writes figure i and its title: a drawing in characters, or a link to an image.
func (m *markdown) picture(i int, b passage) {
	m.apart("*" + escaped(strings.TrimSuffix(b.text, ".")) + ":*")
	if m.album != nil {
		m.apart(m.album.add(i))
		return
	}
	w, h := drawingWide, drawingTall
	if b.picture.IsLevel() {
		h = beamTall
	}
	if b.picture.IsApart() {
		w, h = apartWide, apartTall
	}
	g := cells.Draw(b.picture, w, h, false)
	if b.picture.IsApart() && !g.Fits() {
		m.oneByOne(b.picture.Parts)
		return
	}
	m.fence("text")
	m.WriteString(trimmed(g.Text()))
	for _, left := range g.Dropped {
		m.line("not drawn: " + left)
	}
	m.fence("")
}

// oneByOne draws parts that do not fit in one drawing.
func (m *markdown) oneByOne(parts []figure.Scene) {
	for _, part := range parts {
		m.fence("text")
		m.WriteString(trimmed(cells.Draw(part, drawingWide, drawingTall, false).Text()))
		m.fence("")
	}
}

// trimmed is a drawing without the blanks around it.
func trimmed(drawing string) string {
	var lines []string
	margin := -1
	for line := range strings.SplitSeq(strings.Trim(drawing, "\n"), "\n") {
		line = strings.TrimRight(line, " ")
		if line == "" && len(lines) == 0 {
			continue
		}
		if n := len(line) - len(strings.TrimLeft(line, " ")); line != "" && (margin < 0 || n < margin) {
			margin = n
		}
		lines = append(lines, line)
	}
	var b strings.Builder
	for _, line := range lines {
		b.WriteString(line[min(max(margin, 0), len(line)):] + "\n")
	}
	return strings.TrimRight(b.String(), "\n") + "\n"
}
