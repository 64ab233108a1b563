package marking

import (
	"fmt"
	"strings"

	"unpin/problems/worksheet"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A Feedback is the page of one student: the marks of each problem, a reason for each that was lost, and the sums that the
// student's values violate, with the student's own numbers in them.
type Feedback struct {
	Results []*Result
	Tell    bool // the true values
}

// Text is the page as text.
func (f Feedback) Text() string {
	var text strings.Builder
	text.WriteString(wording.Caution + "\n")
	for _, r := range f.Results {
		text.WriteString("\n" + r.Text(f.Tell))
	}
	return notation.VisibleLines(text.String())
}

// HTML is the page for a browser, which needs nothing else.
func (f Feedback) HTML() string {
	p := newPage("Marks of " + f.student())
	for _, r := range f.Results {
		p.put("<h2>%s: %s of %s marks</h2>", r.problem(), Points(r.Got), Points(r.Of))
		p.open(r.problem()+": each answer", "value", asTyped, "marks", "what became of it")
		for _, row := range r.table(f.Tell) {
			p.put("<tr><th scope=\"row\">%s</th><td>%s</td><td class=\"cell\">%s</td><td class=\"reason\">%s</td></tr>", row[0], row[1], row[3], row[2])
		}
		p.end()
		for _, said := range r.remarks() {
			p.put("<p>%s</p>", said)
		}
		for _, s := range r.sums() {
			p.put("<p class=\"board\">%s<br>%s<br>With your numbers: %s</p>", s.title, s.symbols, s.numbers)
		}
		if len(r.Working) > 0 {
			p.WriteString("<details>\n<summary>The working, line by line</summary>\n<ul>\n")
			for _, said := range r.Working {
				p.put("<li>%s</li>", said)
			}
			p.WriteString("</ul>\n</details>\n")
		}
	}
	return p.close()
}

// PDF is the page in print.
func (f Feedback) PDF() ([]byte, error) {
	w := worksheet.NewWriting("Marks of " + f.student())
	for _, r := range f.Results {
		w.Section(fmt.Sprintf("%s: %s of %s marks", r.problem(), Points(r.Got), Points(r.Of)))
		w.Table([]string{"value", asTyped, "marks", "what became of it"}, "llrl", columns(r.table(f.Tell), 0, 1, 3, 2))
		for _, said := range r.remarks() {
			w.Say(said)
		}
		for _, s := range r.sums() {
			w.Say(s.title)
			w.Equate(s.symbols)
			w.Equate(s.numbers)
		}
		for _, said := range r.Working {
			w.Say("Working: " + said)
		}
	}
	return w.PDF(worksheet.A4)
}

// columns are the rows of a table with some of their cells, in another order.
func columns(rows [][]string, which ...int) [][]string {
	var all [][]string
	for _, row := range rows {
		var cells []string
		for _, i := range which {
			cells = append(cells, row[i])
		}
		all = append(all, cells)
	}
	return all
}

func (f Feedback) student() string {
	if len(f.Results) == 0 || f.Results[0].Paper.Student == "" {
		return "a paper"
	}
	return f.Results[0].Paper.Student
}

// problem names the problem of a paper.
func (r *Result) problem() string {
	name := r.Marker.Title
	if r.Paper.Code != "" {
		name += ", " + r.Paper.Code
	}
	if r.Paper.Attempt > 1 {
		name += fmt.Sprintf(", attempt %d", r.Paper.Attempt)
	}
	return name
}

// table is a row for each value and each part of the working: its name, what was given, what became of it, and its marks.
func (r *Result) table(tell bool) [][]string {
	var all [][]string
	for _, a := range r.Answers {
		text := r.verdictText(a, tell)
		if tell && a.Asked && a.Verdict != Right {
			text += "; it is " + r.Marker.judge.Style.Result(r.Marker.shownValue(a), a.Item.Dim)
		}
		marks := ""
		if a.Asked && !a.Of.IsZero() {
			marks = Points(a.Got) + " of " + Points(a.Of)
		}
		all = append(all, []string{a.Name, a.Given, text, marks})
	}
	for _, p := range r.Parts {
		text := words[p.Verdict()]
		if note := p.note(); note != "" {
			text += ": " + note
		}
		all = append(all, []string{p.Name(), p.Given, text, Points(p.Got) + " of " + Points(p.Of)})
	}
	return all
}

// remarks are what is to be said of a paper beside its values.
func (r *Result) remarks() []string {
	var all []string
	for _, text := range unreadText(r.Unread) {
		all = append(all, "Unread, "+text+".")
	}
	return append(all, r.Story()...)
}
