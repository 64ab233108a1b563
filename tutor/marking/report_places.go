package marking

import (
	"fmt"
	"strings"
)

// Places gives the values along members a name that all papers of a problem share. Copies have other lengths, so that M(BC, 2) of one paper
// is M(BC, 2.4) of another: where papers differ so, a value is called by its place in the order of the answers.
type places struct {
	differ map[problemStep]bool
	shared map[[2]string]bool // by problem and quantity: all papers have it
	rows   map[paperStep]int  // so many were named by now
}

type (
	problemStep struct{ problem, step string }
	paperStep   struct{ paper, problem, step string }
)

// placesOf finds the steps whose places differ: no paper has only names that all papers have.
func placesOf(rows []markRow) places {
	p := places{map[problemStep]bool{}, map[[2]string]bool{}, map[paperStep]int{}}
	of := map[paperStep]int{}
	papers, least := map[problemStep]int{}, map[problemStep]int{}
	have := map[problemStep]map[string]int{}
	for _, r := range rows {
		step := stepOfRow(r.quantity)
		if step == r.quantity || r.verdict == "unread" {
			continue
		}
		at := problemStep{r.problem, step}
		if have[at] == nil {
			have[at] = map[string]int{}
		}
		have[at][r.quantity]++
		of[paperStep{r.paper, r.problem, step}]++
	}
	for key, n := range of {
		at := problemStep{key.problem, key.step}
		if papers[at]++; papers[at] == 1 || n < least[at] {
			least[at] = n
		}
	}
	for at, names := range have {
		shared := 0
		for name, n := range names {
			if n == papers[at] {
				shared, p.shared[[2]string{at.problem, name}] = shared+1, true
			}
		}
		p.differ[at] = shared < least[at]
	}
	return p
}

// name is what the value of a row is called.
func (p places) name(r markRow) string {
	step := stepOfRow(r.quantity)
	if !p.differ[problemStep{r.problem, step}] {
		return r.quantity
	}
	key := paperStep{r.paper, r.problem, step}
	if p.rows[key]++; p.shared[[2]string{r.problem, r.quantity}] {
		return r.quantity
	}
	letter, member, _ := strings.Cut(step, " along ")
	return fmt.Sprintf("%s(%s, place %d)", letter, member, p.rows[key])
}

// anyDiffer reports whether values of a problem are called by their places.
func (r *Report) anyDiffer(problem string) bool {
	for at, differ := range r.places.differ {
		if differ && at.problem == problem {
			return true
		}
	}
	return false
}
