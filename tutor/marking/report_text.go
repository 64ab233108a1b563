package marking

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems/variant"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// mostTold bounds the mistakes that a page tells.
const mostTold = 12

// problems are those that are told of, in order.
func (r *Report) problems() []string {
	var all []string
	for _, i := range r.Items {
		if !slices.Contains(all, i.Problem) {
			all = append(all, i.Problem)
		}
	}
	return all
}

// average is what a problem came to on the whole.
func (r *Report) average(problem string) string {
	s := r.byProblem[problem]
	share, err := s.got.Mul(exact.Int(100)).Quo(s.of)
	if err != nil {
		return "no marks"
	}
	return share.Places(0) + " % of the marks"
}

// head is the first sentence of a report.
func (r *Report) head() string {
	share, err := r.Got.Mul(exact.Int(100)).Quo(r.Of)
	if err != nil || r.hidden(r.Papers) {
		return wording.Counted(r.Papers, "paper") + "."
	}
	return fmt.Sprintf("%s, %s %% of the marks.", wording.Counted(r.Papers, "paper"), share.Places(0))
}

// notes say what the words of the tables mean, and what is not told, and why.
func (r *Report) notes() []string {
	all := []string{"Right is a step of which all that was given is right; carried, if it follows from earlier values that are not right. Else the trouble begins there."}
	if len(r.Few) > 0 {
		all = append(all, fmt.Sprintf("Nothing is told of %s: there are fewer than %s papers.", notation.List(r.Few), wording.Count(Few)))
	}
	if r.Unread > 0 {
		all = append(all, fmt.Sprintf("%s could not be read.", wording.Counted(r.Unread, "answer")))
	}
	if r.anonymous {
		all = append(all, fmt.Sprintf("No student is named. Where it says few there are fewer than %s papers; mistakes in so few are left out.", wording.Count(Few)))
	}
	for _, s := range r.Suspects {
		all = append(all, s.says())
	}
	return all
}

// Text is a report as text.
func (r *Report) Text() string {
	var text strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&text, format+"\n", args...) }
	line("%s", r.head())
	for _, n := range r.notes() {
		line("%s", n)
	}
	if len(r.Topics) > 0 {
		line("\nTo teach again")
	}
	for _, t := range r.Topics {
		line("  %s of the papers: %s", percentOf(t.Papers, r.Papers), t.words())
		if t.Says != "" {
			line("    %s", t.Says)
		}
	}
	if len(r.Mistakes) > 0 {
		line("\nThe commonest mistakes")
	}
	for _, m := range r.told() {
		line("  %s", m.says())
		for _, e := range m.example() {
			line("    %s", e)
		}
	}
	for _, p := range r.problems() {
		line("\n%s", r.title(p))
		line("\n%s", strings.Join(r.stepTable(p).lines(r.share), "\n"))
		if t := r.mistakeMap(p); len(t.rows) > 0 {
			line("\n  %s\n%s\n  %s", wording.Capital(t.title), strings.Join(t.lines(r.number), "\n"), strings.Join(t.notes, "; "))
		}
	}
	for _, p := range r.problems() {
		if t := r.itemTable(p); len(t.rows) > 0 {
			line("\n%s: %s\n%s", p, t.title, strings.Join(t.lines(r.share), "\n"))
		}
	}
	if len(r.Students) > 0 {
		line("\nPapers, %s", unrounded)
	}
	for _, s := range r.Students {
		line("  %s", s.text())
	}
	return text.String()
}

// title names a problem with how many papers it has and what they got.
func (r *Report) title(problem string) string {
	return fmt.Sprintf("%s: %s, %s", problem, wording.Counted(r.byProblem[problem].papers, "paper"), r.average(problem))
}

// told are the mistakes that a page tells.
func (r *Report) told() []Mistake { return r.Mistakes[:min(len(r.Mistakes), mostTold)] }

// says is how common a mistake is, where it was made, and the principle that it goes against.
func (m Mistake) says() string {
	return fmt.Sprintf("%d of %s (%s), %s, at %s: %s", m.Papers, wording.Counted(m.Of, "paper"), percentOf(m.Papers, m.Of), m.Problem, m.where(), m.Slip.Says)
}

// example is a wrong value of the class and what it leaves, or an equation, for the board, line by line; none where the marks do not tell.
func (m Mistake) example() []string {
	e := m.Example
	if _, force, part := partOf(e.Quantity); part {
		return []string{fmt.Sprintf("For the board, an equation for %s, as typed (%s):", force, wording.Counted(e.Papers, "paper")), e.Given}
	}
	if e.Leaves == "" {
		return nil
	}
	of := fmt.Sprintf("%s typed as %q (%s)", e.Quantity, e.Given, wording.Counted(e.Papers, "paper"))
	if e.Numbers == "" {
		return []string{fmt.Sprintf("For the board, %s: with it, %s.", of, e.Leaves)}
	}
	sum, _, _ := strings.Cut(e.Leaves, comesOut)
	return []string{"For the board, " + of + ": " + sum + ",", e.Symbols, "and with it " + e.Numbers + "."}
}

// text is a student's standing in one line.
func (s Standing) text() string {
	text := fmt.Sprintf("%s: %s", strings.TrimSpace(s.Student+" "+s.Problem), s.marks())
	if len(s.Begins) > 0 {
		text += ", trouble begins at " + s.begins()
	}
	return text
}

// unrounded is what there is to know of marks that were added up from their items.
const unrounded = "marks before they are rounded by the scheme"

// begins are the values in which the trouble began; of many, some.
func (s Standing) begins() string {
	return Mistake{Steps: s.Begins}.where()
}

// CSV is a report as a table: a row for each step, for each value and for each mistake at a step.
func (r *Report) CSV() []byte {
	rows := [][]string{{"problem", "step", "quantity", "papers", "right", "carried", "begins", "missing", "body", "method", "terms", "slip", "times"}}
	cells := func(problem, step, quantity string, papers int, counts ...int) {
		row := []string{problem, step, quantity, fmt.Sprint(papers)}
		for _, n := range counts {
			row = append(row, r.counted(n))
		}
		rows = append(rows, append(row, make([]string, len(rows[0])-len(row))...))
	}
	for _, s := range r.Steps {
		cells(s.Problem, s.Name, "", s.Papers, s.Right, s.Carried, s.Begins, s.Blank)
		for k, w := range s.Working {
			if w.Of > 0 {
				rows[len(rows)-1][8+k] = r.counted(w.Papers)
			}
		}
		for _, m := range r.Mistakes {
			if n := m.At[s.Name]; m.Problem == s.Problem && n > 0 {
				cells(s.Problem, s.Name, "", m.Of)
				row := rows[len(rows)-1]
				row[len(row)-2], row[len(row)-1] = m.Slip.ID, r.counted(n)
			}
		}
	}
	for _, i := range r.Items {
		cells(i.Problem, stepOfRow(i.Quantity), i.Quantity, i.Papers, i.Right, i.Carried, i.Begins, i.Blank)
	}
	return variant.WriteCSV(rows)
}

// counted is a number of papers, or that they are few.
func (r *Report) counted(n int) string {
	if r.hidden(n) {
		return fewWord
	}
	return fmt.Sprint(n)
}

// topicWords say what a group of mistakes is about, to who teaches.
var topicWords = map[string]string{
	"body": "what belongs to a free body", "connection": "what a support or a pin can transmit", "pin pair": "opposite forces at a pin", "moment": "moments and arms",
	"component": "components of inclined forces", "distributed load": "distributed loads", "algebra": "solving, signs and figures", "section": "N, V and M",
}

func (t Topic) words() string {
	if w := topicWords[t.Name]; w != "" {
		return w
	}
	return t.Name
}

// where are the values at which a mistake was made; of many, some.
func (m Mistake) where() string {
	const most = 4
	if len(m.Steps) <= most {
		return notation.List(m.Steps)
	}
	return fmt.Sprintf("%s and %d others", strings.Join(m.Steps[:most-1], ", "), len(m.Steps)-most+1)
}
