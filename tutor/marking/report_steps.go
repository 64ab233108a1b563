package marking

import (
	"cmp"
	"slices"

	"unpin/problems"
	"unpin/statics/notation"
)

// A StepReport is what became of one step in a class: what gives a force, or a diagram along a member with all its values.
type StepReport struct {
	Problem, Name string
	Papers        int
	Right         int // papers in which all values of it that were given are right
	Carried       int // some follow from earlier ones, and none is worse
	Begins        int // the trouble begins in it, or in the working that leads to it
	Blank         int // none was given
	// Working is, of the body, the method and the terms, in how many papers it is right, of those that show it.
	Working [3]Count
}

// A Count is how many papers of how many.
type Count struct{ Papers, Of int }

// alongForm are the names of values along a member, and zeroForm those of places where V is zero.
var (
	alongForm = notation.Pattern(`^(?:max |shape )?([NVM])\(([^,)]+)[,)]`)
	zeroForm  = notation.Pattern(`^x of V = 0 in (\S+) from `)
)

// stepOfRow is the step that a row of marks belongs to: a force, or N, V or M along a member.
func stepOfRow(quantity string) string {
	if _, force, ok := partOf(quantity); ok {
		return cmp.Or(force, "check")
	}
	if m := alongForm().FindStringSubmatch(quantity); m != nil {
		return m[1] + " along " + m[2]
	}
	if m := zeroForm().FindStringSubmatch(quantity); m != nil {
		return "V along " + m[1]
	}
	return quantity
}

// standing is how one paper stands at one step.
type standing struct {
	right, carried, begins, valued bool
	shows, done                    [3]bool // parts of the working
}

// stepKey is a step of a paper.
type stepKey struct{ paper, problem, step string }

// step counts a row into the step that it belongs to.
func (c *counting) step(r markRow) {
	key := stepKey{r.paper, r.problem, stepOfRow(r.quantity)}
	s := c.steps[key]
	if s == nil {
		s = &standing{}
		c.steps[key] = s
		if at := [2]string{r.problem, key.step}; !c.known[at] {
			c.known[at] = true
			c.Steps = append(c.Steps, StepReport{Problem: r.problem, Name: key.step})
		}
	}
	if kind, force, ok := partOf(r.quantity); ok && force != "" {
		k := slices.Index(problems.SchemeParts, kind)
		s.shows[k], s.done[k] = true, r.verdict == Right
		return
	}
	s.valued = true
	switch r.verdict {
	case Right, Rounded:
		s.right = true
	case Carried:
		s.carried, s.begins = true, s.begins || r.from == ownSum
	case Missing:
	default:
		s.begins = true
	}
}

// countSteps counts papers by steps, in the order in which these stand in the marks.
func (c *counting) countSteps() {
	at := map[[2]string]*StepReport{}
	for i := range c.Steps {
		at[[2]string{c.Steps[i].Problem, c.Steps[i].Name}] = &c.Steps[i]
	}
	for key, s := range c.steps {
		r := at[[2]string{key.problem, key.step}]
		for k, shows := range s.shows {
			if shows {
				r.Working[k].Of++
			}
			if s.done[k] {
				r.Working[k].Papers++
			}
		}
		if !s.valued {
			continue
		}
		r.Papers++
		switch {
		case s.begins:
			r.Begins++
		case s.carried:
			r.Carried++
		case s.right:
			r.Right++
		default:
			r.Blank++
		}
	}
	c.Steps = slices.DeleteFunc(c.Steps, func(s StepReport) bool { return c.few(s.Problem) })
	slices.SortStableFunc(c.Steps, func(a, b StepReport) int { return cmp.Compare(a.Problem, b.Problem) })
}

// few reports whether a problem has so few papers that nothing is told of it.
func (c *counting) few(problem string) bool {
	return c.anonymous && c.byProblem[problem].papers < Few
}
