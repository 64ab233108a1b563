package worksheet

import (
	"fmt"
	"io"
	"iter"
	"strings"

	"unpin/statics/notation"
)

// PapersHTML writes papers as one page for a browser that needs nothing besides itself and is meant to be printed: each problem
// begins on a page of its own, and the heading stands again on every page that it takes. It heeds Key and Full.
func PapersHTML(w io.Writer, papers iter.Seq[Paper], o PaperOptions) error {
	page := &web{level: 1}
	for p := range papers {
		p = p.settled()
		if page.Len() == 0 {
			page.head(p.Title, webStyle+paperStyle, "Skip to the first problem")
			page.line("<h1>" + escape(p.title(o)) + "</h1>")
			page.level = 2
			page.number = -1
		}
		for _, t := range p.Tasks {
			page.task(p, t, o)
		}
		if _, err := io.WriteString(w, page.String()); err != nil {
			return err
		}
		page.Reset()
		page.WriteString("\n")
	}
	if page.Len() == 0 {
		page.head("", webStyle, "")
	}
	page.line("</main>\n</body>\n</html>")
	_, err := io.WriteString(w, page.String())
	return err
}

// title is the title of a sheet or a key.
func (p Paper) title(o PaperOptions) string {
	if o.Key {
		return "Key: " + p.Title
	}
	return p.Title
}

// task writes a problem of a paper in a frame that has its head and foot on every printed page.
func (w *web) task(p Paper, t Task, o PaperOptions) {
	d := documentOf(t, o, medium{pictures: true})
	w.d, w.figures = d, 0
	w.number++
	w.names, w.binder = d.typesetter(), &page{units: d.unitNames()}
	w.gallery = newGallery(d)
	large := ""
	if p.Large {
		large = ` class="large"`
	}
	w.line(`<article id="` + articleID(w.number) + `"` + large + `>`)
	w.line(`<table role="presentation" class="frame"><thead><tr><td>`)
	w.line(`<div class="head"><b>` + escape(p.title(o)) + "</b><span>" + escape(t.name()) + "</span><span>" + escape(p.Course) + "</span><span>" + escape(t.code()) + "</span><span>" +
		blanked(escape(p.who(o))) + "</span></div>")
	w.line(`</td></tr></thead><tfoot><tr><td><p class="foot">` + escape(p.Caution) + `</p></td></tr></tfoot><tbody><tr><td>`)
	for k, b := range d.list {
		w.set(k, b)
	}
	w.shut(sectionOpening)
	w.line("</td></tr></tbody></table>\n</article>")
}

// room leaves rows free to work in.
func (w *web) room(rows int) {
	w.shut(groupOpening)
	w.line(fmt.Sprintf(`<div class="room" style="height: %dmm"></div>`, 5*rows))
}

// sketch writes picture i to draw on, beside others.
func (w *web) sketch(i int) {
	b := w.d.list[i]
	kind := "outlines"
	if b.axes {
		kind = "axes"
	}
	if !w.inGroup(kind) {
		w.group(kind, `<div class="`+kind+`">`, "</div>")
	}
	w.line("<figure>")
	w.Write(w.gallery.image(i))
	w.line("<figcaption>" + escape(strings.TrimSuffix(b.text, ".")) + "</figcaption>\n</figure>")
}

// blankRuns are blanks to write on.
var blankRuns = notation.Pattern(`_{3,}`)

// blanked is a text with its blanks as lines to write on, which are told to who hears them.
func blanked(text string) string {
	return blankRuns().ReplaceAllStringFunc(text, func(run string) string {
		return fmt.Sprintf(`<span class="blank" style="min-width: %dch"><span class="heard">blank</span></span>`, len(run)*3/4)
	})
}

// paperStyle is how papers look besides.
const paperStyle = `
.frame { border: 0; width: 100%; }
.frame > * > tr > td { padding: 0; }
.frame > thead { display: table-header-group; }
.frame > tfoot { display: table-footer-group; }
.head { display: grid; grid-template-columns: 1fr max-content; gap: 0.1rem 1rem; padding-bottom: 0.4rem; margin-bottom: 0.6rem; border-bottom: 2px solid var(--ink); }
.head > :nth-child(even) { text-align: right; }
.foot { font-size: 0.85rem; color: var(--faint); }
.room { margin: 0.5rem 0; background: radial-gradient(circle at 1px 1px, #8c8c8c 0.6px, transparent 0.8px) 0 0 / 5mm 5mm; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.large { font-size: 18pt; }
.large figure svg { width: 100%; max-height: 140mm; }
.large h2, .large h3, .large h4 { font-size: 1.2em; }
.large thead th, .large figcaption, .large .foot { font-size: 0.9em; }
.blank { display: inline-block; border-bottom: 1px solid var(--ink); }
.box + td { padding-left: 0.6rem; }
.box { min-width: 5rem; height: 1.7rem; border: 1px solid var(--ink); }
.outlines, .axes { display: flex; flex-wrap: wrap; gap: 0.5rem 1rem; }
.outlines figure { padding: 12mm; border: 1px dotted var(--rule); margin: 0; }
.axes figure { margin: 0.3rem 0; }
@media print {
  .box, td, th { break-inside: avoid; }
  .room { break-inside: auto; }
  main > h1 { display: none; }
}
`
