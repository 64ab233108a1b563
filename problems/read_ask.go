package problems

import (
	"fmt"
	"slices"

	"unpin/statics/notation"
)

// findWords are what may be found; all of it is, where a file does not say.
var findWords = []string{"reactions", "pins", "diagrams"}

// ask reads what is asked, and in which conventions.
func (r *shapeReader) ask(n *node) {
	c := &r.problem.Conventions
	c.Figures = notation.LeastFigures
	r.problem.Find = slices.Clone(findWords)
	if n == nil {
		return
	}
	values := r.fields(n, "ask", askFields)
	r.problem.Settled = r.conventions(values)
	r.problem.Conventions = r.problem.Settled.Over(*c)
	if v := values["find"]; v != nil {
		if r.problem.Find = texts(v.items); len(r.problem.Find) == 0 {
			r.fault(v.at, "find asks for nothing", "Name what is to be found: [reactions, pins, diagrams], or take find out.")
		}
	}
}

// conventions are those that the fields of ask settle.
func (r *shapeReader) conventions(values map[string]*node) (all notation.Preferences) {
	for _, name := range notation.ConventionNames() {
		v := values[name]
		if v == nil {
			continue
		}
		word := v.text
		if name == "figures" {
			word = fmt.Sprint(r.whole(v, name, notation.LeastFigures, notation.MostFigures))
			if word == "0" {
				continue // told already
			}
		}
		var c notation.Conventions
		if err := c.Set(name, word); err != nil { // which the table of fields has not let pass
			r.fault(v.at, err.Error(), "Write one of its words.")
			continue
		}
		all = append(all, notation.Preference{Name: name, Word: c.Word(name)})
	}
	return all
}
