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
			line("  %-40s %s of the papers", t.Name, percentOf(t.Papers, r.Papers))
		}
	}
	if len(r.Mistakes) > 0 {
		line("\nThe commonest mistakes")
		for _, m := range r.Mistakes[:min(len(r.Mistakes), mostTold)] {
			line("  %s of %s, %s, at %s: %s", percentOf(m.Papers, m.Of), wording.Counted(m.Of, "paper"), m.Problem, m.where(), m.Slip.Says)
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
	return text.String()
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

// where are the values at which a mistake was made; of many, some.
func (m Mistake) where() string {
	const most = 4
	if len(m.Quantities) <= most {
		return notation.List(m.Quantities)
	}
	return fmt.Sprintf("%s and %d others", strings.Join(m.Quantities[:most-1], ", "), len(m.Quantities)-most+1)
}
