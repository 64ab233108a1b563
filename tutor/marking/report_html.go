package marking

import (
	"fmt"
	"html"
	"slices"
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
td.cell { text-align: right; }
th.name { white-space: nowrap; }
td:has(.bar) { white-space: nowrap; }
.wide { overflow-x: auto; }
.bar { display: inline-block; height: .7rem; background: var(--bar); vertical-align: middle; margin-right: .4rem; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
td.cell { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
@media (prefers-color-scheme: dark) { :root { --bar: #7db7e0; --shade: 125, 183, 224; } }
@media print { body { max-width: none; margin: 0; font-size: .8rem; } th, td { padding: .15rem .35rem; } h2 { break-after: avoid; } tr { break-inside: avoid; } .wide { overflow: visible; } }
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
		p.put("<h2>%s: %s, %s</h2>", problem, wording.Counted(r.byProblem[problem].papers, "paper"), r.average(problem))
		r.itemTable(p, problem)
		r.heatMap(p, problem)
	}
	r.studentTable(p)
	return p.close()
}

// bar is a share as a bar with its number.
func bar(n, of int) string {
	if of == 0 {
		return ""
	}
	return fmt.Sprintf(`<span class="bar" style="width:calc(%d * .06rem)"></span>%s`, (100*n+of/2)/of, percentOf(n, of))
}

func (r *Report) topicTable(p *page) {
	if len(r.Topics) == 0 {
		return
	}
	p.put("<table>\n<caption>To teach again: papers with a mistake of the kind</caption>\n<thead><tr><th scope=\"col\">kind</th><th scope=\"col\">papers</th></tr></thead>\n<tbody>")
	for _, t := range r.Topics {
		p.put("<tr><th scope=\"row\">%s</th><td class=\"words\">", t.words())
		p.WriteString(bar(t.Papers, r.Papers) + "</td></tr>\n")
	}
	p.put("</tbody>\n</table>")
}

func (r *Report) mistakeTable(p *page) {
	if len(r.Mistakes) == 0 {
		return
	}
	p.put("<div class=\"wide\" tabindex=\"0\">\n<table>\n<caption>The commonest mistakes</caption>\n<thead><tr><th scope=\"col\">value</th><th scope=\"col\">papers</th><th scope=\"col\">what to say</th></tr></thead>\n<tbody>")
	for _, m := range r.Mistakes[:min(len(r.Mistakes), mostTold)] {
		p.put("<tr><th scope=\"row\">%s, %s</th><td class=\"words\">", m.Problem, m.where())
		p.WriteString(bar(m.Papers, m.Of))
		p.put("</td><td class=\"words\">%s</td></tr>", strings.TrimSpace(m.Slip.Says+" "+m.example()))
	}
	p.put("</tbody>\n</table>\n</div>")
}

func (r *Report) itemTable(p *page, problem string) {
	p.put("<div class=\"wide\" tabindex=\"0\">\n<table>\n<caption>%s: what became of each value</caption>\n<thead><tr><th scope=\"col\">value</th><th scope=\"col\">right</th><th scope=\"col\">carried</th><th scope=\"col\">trouble begins</th><th scope=\"col\">missing</th></tr></thead>\n<tbody>", problem)
	for _, i := range r.Items {
		if i.Problem != problem {
			continue
		}
		p.put("<tr><th scope=\"row\" class=\"name\">%s</th>", i.Quantity)
		for _, n := range []int{i.Right, i.Carried, i.Begins, i.Blank} {
			p.WriteString("<td class=\"words\">" + bar(n, i.Papers) + "</td>")
		}
		p.WriteString("</tr>\n")
	}
	p.put("</tbody>\n</table>\n</div>")
}

// heatMap is a table of values and mistakes: how many papers have which.
func (r *Report) heatMap(p *page, problem string) {
	var slips, items []string
	times := map[[2]string]int{}
	most := 0
	for _, m := range r.Mistakes {
		if m.Problem != problem {
			continue
		}
		if !contains(slips, m.Slip.ID) {
			slips = append(slips, m.Slip.ID)
		}
		for quantity, n := range m.At {
			times[[2]string{quantity, m.Slip.ID}] = n
			most = max(most, n)
		}
	}
	for _, i := range r.Items {
		named := slices.ContainsFunc(slips[:min(len(slips), mostTold)], func(s string) bool { return times[[2]string{i.Quantity, s}] > 0 })
		if i.Problem == problem && named {
			items = append(items, i.Quantity)
		}
	}
	if slips = slips[:min(len(slips), mostTold)]; len(slips) == 0 {
		return
	}
	p.put("<div class=\"wide\" tabindex=\"0\">\n<table>\n<caption>%s: papers by value and mistake</caption>\n<thead><tr><th scope=\"col\">value</th>", problem)
	for _, s := range slips {
		p.put("<th scope=\"col\">%s</th>", strings.ReplaceAll(s, "-", " "))
	}
	p.put("</tr></thead>\n<tbody>")
	for _, i := range items {
		p.put("<tr><th scope=\"row\" class=\"name\">%s</th>", i)
		for _, s := range slips {
			n := times[[2]string{i, s}]
			shown := ""
			if n > 0 {
				shown = fmt.Sprint(n)
			}
			fmt.Fprintf(p, "<td class=\"cell\" style=\"background:rgba(var(--shade),%d%%)\">%s</td>", 60*n/most, shown)
		}
		p.WriteString("</tr>\n")
	}
	p.put("</tbody>\n</table>\n</div>")
}

func (r *Report) studentTable(p *page) {
	if len(r.Students) == 0 {
		return
	}
	p.put("<h2>Papers</h2>\n<div class=\"wide\" tabindex=\"0\">\n<table>\n<thead><tr><th scope=\"col\">student</th><th scope=\"col\">problem</th><th scope=\"col\">marks</th><th scope=\"col\">trouble begins at</th></tr></thead>\n<tbody>")
	for _, s := range r.Students {
		p.put("<tr><th scope=\"row\">%s</th><td>%s</td><td class=\"cell\">%s</td><td>%s</td></tr>", s.Student, s.Problem, s.marks(), s.begins())
	}
	p.put("</tbody>\n</table>\n</div>")
}
