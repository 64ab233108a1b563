package marking

import (
	"fmt"

	"unpin/problems/worksheet"
	"unpin/statics/wording"
)

// PDF is a report in print.
func (r *Report) PDF() ([]byte, error) {
	w := worksheet.NewWriting("What the class got wrong")
	w.Say(r.head())
	for _, n := range r.notes() {
		w.Say(n)
	}
	if len(r.Topics) > 0 {
		w.Section("To teach again")
		var rows [][]string
		for _, t := range r.Topics {
			rows = append(rows, []string{percentOf(t.Papers, r.Papers), t.words()})
		}
		w.Table([]string{"papers", "kind of mistake"}, "rl", rows)
	}
	if len(r.Mistakes) > 0 {
		w.Section("The commonest mistakes")
		for _, m := range r.Mistakes[:min(len(r.Mistakes), mostTold)] {
			w.Say(fmt.Sprintf("%s of %s, %s, at %s: %s", percentOf(m.Papers, m.Of), wording.Counted(m.Of, "paper"), m.Problem, m.where(), m.Slip.Says))
			if e := m.example(); e != "" {
				w.Say(e)
			}
		}
	}
	for _, p := range r.problems() {
		w.Section(fmt.Sprintf("%s: %s, %s", p, wording.Counted(r.byProblem[p].papers, "paper"), r.average(p)))
		var rows [][]string
		for _, i := range r.Items {
			if i.Problem == p {
				rows = append(rows, []string{i.Quantity, percentOf(i.Right, i.Papers), percentOf(i.Carried, i.Papers), percentOf(i.Begins, i.Papers), percentOf(i.Blank, i.Papers)})
			}
		}
		w.Table([]string{"value", "right", "carried", "trouble begins", "missing"}, "lrrrr", rows)
	}
	if len(r.Students) > 0 {
		w.Section("Papers")
		var rows [][]string
		for _, s := range r.Students {
			rows = append(rows, []string{s.Student, s.Problem, s.marks(), s.begins()})
		}
		w.Table([]string{"student", "problem", "marks", "trouble begins at"}, "llrl", rows)
	}
	return w.PDF(worksheet.A4)
}
