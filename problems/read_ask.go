package problems

import (
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
	for _, name := range notation.ConventionNames() {
		switch v := values[name]; {
		case v == nil:
		case name == "figures":
			c.Figures = r.whole(v, name, notation.LeastFigures, notation.MostFigures)
		default:
			r.convention(v, name)
		}
	}
	if v := values["find"]; v != nil {
		if r.problem.Find = texts(v.items); len(r.problem.Find) == 0 {
			r.fault(v.at, "find asks for nothing", "Name what is to be found: [reactions, pins, diagrams], or take find out.")
		}
	}
}

// convention settles a convention by its word, which the table of fields has let pass.
func (r *shapeReader) convention(n *node, name string) {
	if err := r.problem.Conventions.Set(name, n.text); err != nil {
		r.fault(n.at, err.Error(), "Write one of its words.")
	}
}
