package worksheet

import (
	"fmt"
	"io"
	"strings"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// An AnswersPart is the answers of all copies of one problem.
type AnswersPart struct {
	problems.Solved
	Number int    // on the paper, from 1; 0 prints none
	Points string // may be empty
	Copies []CopyAnswers
}

// AnswersPDF is the table of answers as a PDF document, the problems one after the other.
func AnswersPDF(w io.Writer, h Heading, parts []AnswersPart, size PaperSize) error {
	doc := newPrint("Answers: "+h.Title, size)
	for _, part := range parts {
		c := newComposer(doc, answersPage(h, part), size)
		c.tight = true
		c.draw(c.press())
	}
	numberPages(doc, size)
	return doc.Output(w)
}

// AnswersMarkdown is the same as Markdown.
func AnswersMarkdown(w io.Writer, h Heading, parts []AnswersPart) error {
	m := &markdown{}
	for _, part := range parts {
		for i, b := range answersPage(h, part).list {
			m.set(i, b)
		}
		m.fence("")
	}
	_, err := io.WriteString(w, notation.VisibleLines(strings.TrimLeft(m.String(), "\n")))
	return err
}

// answersPage is the table of one problem: what the letters of mistakes mean, and a row for each answer of each copy. Copies
// with the same numbers stand together.
func answersPage(h Heading, part AnswersPart) *document {
	p := *part.Problem
	p.Title = strings.TrimSpace(oneLine(h.Title))
	if p.Title == "" {
		p.Title = part.Problem.Title
	}
	d := newDocument(&p, part.Solution, false)
	d.title(oneLine("Answers: " + d.p.Title))
	d.blank()
	d.prose(wording.Caution)
	d.section(oneLine(notation.VisibleLines(strings.TrimPrefix(Task{Number: part.Number, Points: part.Points}.name()+": "+part.Problem.Name, ": "))))
	d.prose("Values have the signs and figures of the sheets. Behind each stand the wrong values that are likeliest, with a letter for the mistake that leads there; " +
		"the mistakes are those of the catalogue, found from the terms of the sum that gives the value.")
	groups := grouped(part.Copies)
	marks := lettered(groups)
	for _, id := range marks.ids {
		d.item(marks.of[id], mistakeText(id))
	}
	t := table{align: "lllrllll", head: []string{"code", "student", "quantity", "value", "acts", "wrong", "", ""}, heard: []string{"code", "student", "quantity", "value", "acts", "wrong 1", "wrong 2", "wrong 3"}}
	for _, g := range groups {
		addGroup(&t, g, marks)
	}
	d.tabulate(0, t.withoutEmpty())
	return d
}

// grouped puts copies with the same numbers together, in the order of the first of each.
func grouped(all []CopyAnswers) [][]CopyAnswers {
	var groups [][]CopyAnswers
	places := map[string]int{}
	for _, c := range all {
		key := fmt.Sprint(c.Answers)
		at, there := places[key]
		if !there {
			at = len(groups)
			places[key] = at
			groups = append(groups, nil)
		}
		groups[at] = append(groups[at], c)
	}
	return groups
}

// A lettering is a letter for each mistake.
type lettering struct {
	ids []string // in the order of their letters
	of  map[string]string
}

// lettered gives letters to the mistakes of all answers.
func lettered(groups [][]CopyAnswers) lettering {
	l := lettering{of: map[string]string{}}
	for _, g := range groups {
		for _, a := range g[0].Answers {
			for _, w := range a.Wrong {
				for _, id := range w.lettered() {
					if l.of[id] == "" {
						l.of[id] = letterOf(len(l.ids))
						l.ids = append(l.ids, id)
					}
				}
			}
		}
	}
	return l
}

// mostLetters is how many mistakes are told of one wrong value on paper; the CSV has them all.
const mostLetters = 3

// lettered are the mistakes of which a wrong value has the letters.
func (w WrongAnswer) lettered() []string { return w.Slips[:min(len(w.Slips), mostLetters)] }

// letterOf is a, b … z, aa, ab …
func letterOf(n int) string {
	if n < 26 {
		return string(rune('a' + n))
	}
	return letterOf(n/26-1) + string(rune('a'+n%26))
}

// mistakeText says what a mistake is: its name, and the principle that it goes against.
func mistakeText(id string) string {
	var says []string
	for one := range strings.SplitSeq(id, "+") {
		if s := slip.ByID(one); s != nil {
			says = append(says, s.Principle())
		}
	}
	return mistakeName(id) + ": " + strings.Join(says, "; ") + "."
}

// mistakeName names a mistake, or two that only together lead to a value.
func mistakeName(id string) string {
	var names []string
	for one := range strings.SplitSeq(id, "+") {
		if s := slip.ByID(one); s != nil {
			names = append(names, s.Kind())
		}
	}
	return notation.List(names)
}

// addGroup adds the rows of copies with the same numbers: their codes and students run down beside the answers.
func addGroup(t *table, g []CopyAnswers, marks lettering) {
	for i := range max(len(g), len(g[0].Answers)) {
		row := make([]string, 8)
		if i < len(g) {
			row[0], row[1] = orDash(g[i].Code), oneLine(notation.VisibleLines(g[i].Student))
		}
		if i < len(g[0].Answers) {
			a := g[0].Answers[i]
			row[2], row[3], row[4] = a.Name, strings.TrimSpace(a.Right+" "+a.Unit), shortTurns.Replace(a.Acts)
			for k, w := range a.Wrong {
				row[5+k] = w.Value + " " + marks.text(w)
			}
		}
		t.add(row...)
	}
}

// shortTurns are the words of problem files for the turns of couples.
var shortTurns = strings.NewReplacer("counter-clockwise", "ccw", "clockwise", "cw")

// orDash is a text, or a dash in place of none.
func orDash(text string) string {
	if text == "" {
		return "–"
	}
	return text
}

// text is the letters of the mistakes behind a wrong value; of more than are told, with an ellipsis.
func (l lettering) text(w WrongAnswer) string {
	var letters []string
	for _, id := range w.lettered() {
		letters = append(letters, l.of[id])
	}
	if len(letters) < len(w.Slips) {
		letters = append(letters, "…")
	}
	return strings.Join(letters, "/")
}
