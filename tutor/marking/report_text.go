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
	if err != nil {
		return wording.Counted(r.Papers, "paper") + "."
	}
	return fmt.Sprintf("%s, %s %% of the marks.", wording.Counted(r.Papers, "paper"), share.Places(0))
}

// notes say what is not told, and why.
func (r *Report) notes() []string {
	var all []string
	if len(r.Few) > 0 {
		all = append(all, fmt.Sprintf("Nothing is told of %s: there are fewer than %s papers.", notation.List(r.Few), wording.Count(Few)))
	}
	if r.Unread > 0 {
		all = append(all, fmt.Sprintf("%s could not be read.", wording.Counted(r.Unread, "answer")))
	}
	for _, s := range r.Suspects {
		all = append(all, fmt.Sprintf("Look at the true value of %s in %s: it is %s, and %d of the %d best papers have %s.", s.Quantity, s.Problem, s.Expected, s.Times, s.Of, s.Given))
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
		for _, t := range r.Topics {
			line("  %-40s %s of the papers", t.words(), percentOf(t.Papers, r.Papers))
		}
	}
	if len(r.Mistakes) > 0 {
		line("\nThe commonest mistakes")
		for _, m := range r.Mistakes[:min(len(r.Mistakes), mostTold)] {
			line("  %s of %s, %s, at %s: %s", percentOf(m.Papers, m.Of), wording.Counted(m.Of, "paper"), m.Problem, m.where(), m.Slip.Says)
			if e := m.example(); e != "" {
				line("    %s", e)
			}
		}
	}
	for _, p := range r.problems() {
		line("\n%s: %s, %s", p, wording.Counted(r.byProblem[p].papers, "paper"), r.average(p))
		line("  %-36s %6s %8s %15s %8s", "", "right", "carried", "trouble begins", "missing")
		for _, i := range r.Items {
			if i.Problem == p {
				line("  %-36s %6s %8s %15s %8s", i.Quantity, percentOf(i.Right, i.Papers), percentOf(i.Carried, i.Papers), percentOf(i.Begins, i.Papers), percentOf(i.Blank, i.Papers))
			}
		}
	}
	if len(r.Students) > 0 {
		line("\nPapers")
		for _, s := range r.Students {
			line("  %s", s.text())
		}
	}
	return text.String()
}

// example is a wrong value of the class and what it leaves, for the board; empty where the marks do not tell.
func (m Mistake) example() string {
	if m.Example.Leaves == "" {
		return ""
	}
	return fmt.Sprintf("As in %s = %s (%s): with it, %s.", m.Example.Quantity, m.Example.Given, wording.Counted(m.Example.Papers, "paper"), m.Example.Leaves)
}

// text is a student's standing in one line.
func (s Standing) text() string {
	text := fmt.Sprintf("%s: %s", strings.TrimSpace(s.Student+" "+s.Problem), s.marks())
	if len(s.Begins) > 0 {
		text += ", trouble begins at " + s.begins()
	}
	return text
}

// begins are the values in which the trouble began; of many, some.
func (s Standing) begins() string {
	return Mistake{Quantities: s.Begins}.where()
}

// CSV is a report as a table, a row for each value and each mistake.
func (r *Report) CSV() []byte {
	rows := [][]string{{"problem", "quantity", "papers", "right", "carried", "begins", "missing", "slip", "times"}}
	for _, i := range r.Items {
		row := []string{i.Problem, i.Quantity}
		for _, n := range []int{i.Papers, i.Right, i.Carried, i.Begins, i.Blank} {
			row = append(row, fmt.Sprint(n))
		}
		rows = append(rows, append(row, "", ""))
		for _, m := range r.Mistakes {
			if n := m.At[i.Quantity]; m.Problem == i.Problem && n > 0 {
				rows = append(rows, []string{i.Problem, i.Quantity, fmt.Sprint(m.Of), "", "", "", "", m.Slip.ID, fmt.Sprint(n)})
			}
		}
	}
	return variant.WriteCSV(rows)
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
	if len(m.Quantities) <= most {
		return notation.List(m.Quantities)
	}
	return fmt.Sprintf("%s and %d others", strings.Join(m.Quantities[:most-1], ", "), len(m.Quantities)-most+1)
}
