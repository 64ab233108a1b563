package marking

import (
	"fmt"
	"html"
	"strings"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// reportStyle is the look of the page: bars and the shades of the map are beside numbers, so that nothing is told by colour
// alone.
const reportStyle = `
:root { color-scheme: light dark; --line: #8a8f98; --bar: #2f6f9f; --shade: 47, 111, 159; }
body { font: 1rem/1.5 system-ui, sans-serif; max-width: 62rem; margin: 2rem auto; padding: 0 1rem; }
h1, h2 { line-height: 1.2; }
table { border-collapse: collapse; margin: 1rem 0; }
caption { text-align: left; font-weight: 600; padding-bottom: .3rem; }
th, td { border-bottom: 1px solid var(--line); padding: .2rem .6rem; text-align: left; vertical-align: top; }
td.cell { text-align: right; white-space: nowrap; }
td.reason { min-width: 13rem; }
th.name { white-space: nowrap; }
.wide th[scope=row] { position: sticky; left: 0; background: Canvas; }
.board { margin: .3rem 0; padding-left: .6rem; border-left: .2rem solid var(--line); }
summary { cursor: pointer; font-weight: 600; }
td:has(.bar) { white-space: nowrap; }
.wide { overflow-x: auto; }
.bar { display: inline-block; height: .7rem; background: var(--bar); vertical-align: middle; margin-right: .4rem; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
td.cell { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
@media (max-width: 40rem) { th, td { padding: .2rem .3rem; } td.reason { min-width: 9rem; } }
@media (prefers-color-scheme: dark) { :root { --bar: #7db7e0; --shade: 125, 183, 224; } }
@media print { body { max-width: none; margin: 0; font-size: .8rem; } th, td { padding: .15rem .35rem; } h2, caption, thead { break-after: avoid; } tr { break-inside: avoid; } .wide { overflow: visible; } details:not([open]) { display: none; } .wide th[scope=row] { position: static; background: none; } }
`

// page is an HTML page in the writing.
type page struct{ strings.Builder }

func (p *page) put(format string, args ...any) {
	safe := make([]any, len(args))
	for i, a := range args {
		if text, ok := a.(string); ok {
			a = html.EscapeString(notation.Visible(text))
		}
		safe[i] = a
	}
	fmt.Fprintf(p, format+"\n", safe...)
}

// newPage is a page with nothing in it but its title.
func newPage(title string) *page {
	p := &page{}
	p.WriteString("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
	p.put("<title>%s</title>", title)
	p.WriteString("<style>" + reportStyle + "</style>\n</head>\n<body>\n<main>\n")
	p.put("<h1>%s</h1>", title)
	return p
}

// close ends the page.
func (p *page) close() string {
	p.put("<p>%s</p>", wording.Caution)
	p.WriteString("</main>\n</body>\n</html>\n")
	return p.String()
}

// HTML is a report as a page that needs nothing else.
func (r *Report) HTML() string {
	p := newPage("What the class got wrong")
	p.put("<p>%s</p>", r.head())
	for _, n := range r.notes() {
		p.put("<p>%s</p>", n)
	}
	r.topicTable(p)
	r.mistakeTable(p)
	for _, problem := range r.problems() {
		p.put("<h2>%s</h2>", r.title(problem))
		r.barTable(p, problem+": "+stepsSay, r.stepTable(problem))
		r.heatMap(p, problem)
		if t := r.itemTable(problem); len(t.rows) > 0 {
			p.put("<details>\n<summary>%s</summary>", wording.Capital(t.title))
			r.barTable(p, problem+": "+t.title, t)
			p.put("</details>")
		}
	}
	r.studentTable(p)
	return p.close()
}

// stepsSay says what a table of steps shows.
const stepsSay = "what became of each step, per cent of the papers"

// open begins a table that may be wider than the page, with its heads.
func (p *page) open(caption string, heads ...string) {
	p.put("<div class=\"wide\" role=\"region\" aria-label=\"%s\" tabindex=\"0\">\n<table>\n<caption>%s</caption>\n<thead><tr>", caption, caption)
	for _, h := range heads {
		p.put("<th scope=\"col\">%s</th>", h)
	}
	p.WriteString("</tr></thead>\n<tbody>\n")
}

// end ends such a table.
func (p *page) end() { p.WriteString("</tbody>\n</table>\n</div>\n") }

// bar is a share as a bar with its number.
func (r *Report) bar(c Count) string {
	if c.Of == 0 {
		return ""
	}
	if r.hidden(c.Papers) {
		return fewWord
	}
	return fmt.Sprintf(`<span class="bar" style="width:calc(%d * .06rem)"></span>%s`, (100*c.Papers+c.Of/2)/c.Of, percentOf(c.Papers, c.Of))
}

func (r *Report) topicTable(p *page) {
	if len(r.Topics) == 0 {
		return
	}
	p.put("<h2>To teach again</h2>")
	p.open("Papers with a mistake of the kind, and what to say first", "kind", "papers", "say first")
	for _, t := range r.Topics {
		p.put("<tr><th scope=\"row\">%s</th><td>", t.words())
		p.WriteString(r.bar(Count{t.Papers, r.Papers}))
		p.put("</td><td class=\"reason\">%s</td></tr>", t.Says)
	}
	p.end()
}

func (r *Report) mistakeTable(p *page) {
	if len(r.Mistakes) == 0 {
		return
	}
	p.put("<h2>The commonest mistakes</h2>")
	p.open("Where they were made, what to say, and one of the class's own values for the board", "step", "papers", "what to say")
	for _, m := range r.told() {
		p.put("<tr><th scope=\"row\">%s, %s</th><td>", m.Problem, m.where())
		p.WriteString(r.bar(Count{m.Papers, m.Of}))
		p.put("</td><td class=\"reason\">%s", m.Slip.Says)
		for i, line := range m.example() {
			if i == 0 {
				p.put("<p class=\"board\">%s", line)
			} else {
				p.put("<br>%s", line)
			}
		}
		if len(m.example()) > 0 {
			p.WriteString("</p>")
		}
		p.WriteString("</td></tr>\n")
	}
	p.end()
}

// barTable is a table of shares.
func (r *Report) barTable(p *page, caption string, t shownTable) {
	p.open(caption, t.heads...)
	for _, row := range t.rows {
		p.put("<tr><th scope=\"row\" class=\"name\">%s</th>", row.name)
		for _, c := range row.cells {
			p.WriteString("<td>" + r.bar(c) + "</td>")
		}
		p.WriteString("</tr>\n")
	}
	p.end()
}

// heatMap is the map of mistakes by steps: the more papers, the darker a cell, beside its number.
func (r *Report) heatMap(p *page, problem string) {
	t := r.mistakeMap(problem)
	if len(t.rows) == 0 {
		return
	}
	heads, most := []string{"step"}, 1
	for _, note := range t.notes {
		_, name, _ := strings.Cut(note, ": ")
		heads = append(heads, name)
	}
	for _, row := range t.rows {
		for _, c := range row.cells {
			most = max(most, c.Papers)
		}
	}
	p.open(problem+": "+t.title, heads...)
	for _, row := range t.rows {
		p.put("<tr><th scope=\"row\" class=\"name\">%s</th>", row.name)
		for _, c := range row.cells {
			shade := 60 * c.Papers / most
			if r.hidden(c.Papers) {
				shade = 0
			}
			fmt.Fprintf(p, "<td class=\"cell\" style=\"background:rgba(var(--shade),%d%%)\">%s</td>", shade, r.number(c))
		}
		p.WriteString("</tr>\n")
	}
	p.end()
}

func (r *Report) studentTable(p *page) {
	if len(r.Students) == 0 {
		return
	}
	p.put("<h2>Papers</h2>")
	p.open("Marks of each paper, before they are rounded by the scheme, and where the trouble begins", "student", "problem", "marks", "trouble begins at")
	for _, s := range r.Students {
		p.put("<tr><th scope=\"row\">%s</th><td>%s</td><td class=\"cell\">%s</td><td>%s</td></tr>", s.Student, s.Problem, s.marks(), s.begins())
	}
	p.end()
}
