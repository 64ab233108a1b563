package worksheet

import (
	"io"
	"iter"
	"strings"
)

// PapersMarkdown writes papers as Markdown, one after the other. There is no room to work in, since a page on a screen has none.
// With a folder, the path from the document to it, figures are images in files there, which come back, and there are outlines and
// axes to draw on; without one they are drawings in characters, and what is given is told in words besides. It heeds Key and Full.
func PapersMarkdown(w io.Writer, papers iter.Seq[Paper], o PaperOptions, folder string) ([]Picture, error) {
	m := &markdown{under: "#"}
	if folder != "" {
		m.album = &album{folder: folder, used: map[string]int{}}
	}
	for p := range papers {
		m.paper(p.settled(), o)
		if _, err := io.WriteString(w, strings.TrimLeft(m.String(), "\n")); err != nil {
			return nil, err
		}
		m.Reset()
		m.line("")
	}
	if m.album == nil {
		return nil, nil
	}
	return m.album.pictures, nil
}

// paper writes one paper.
func (m *markdown) paper(p Paper, o PaperOptions) {
	m.apart("# " + escaped(p.title(o)))
	m.apart(escaped(p.Caution))
	for _, line := range []string{p.Course, p.who(o)} {
		if line != "" {
			m.apart(escaped(line))
		}
	}
	for _, t := range p.Tasks {
		d := documentOf(t, o, medium{pictures: true, lists: m.album == nil})
		if m.album != nil {
			m.album.begin(d)
		}
		if text := strings.Trim(t.name()+". "+t.code(), ". "); text != "" {
			m.apart("**" + escaped(text) + "**")
		}
		for i, b := range d.list {
			m.set(i, b)
		}
		m.fence("")
	}
}

// sketch writes picture i to draw on, where there are images.
func (m *markdown) sketch(i int, b passage) {
	if m.album != nil {
		m.apart("*" + escaped(strings.TrimSuffix(b.text, ".")) + ":*")
		m.apart(m.album.add(i))
	}
}
