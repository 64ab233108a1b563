package tutor

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// findTask says what is to be done.
const findTask = "One line of this solution is wrong; all that follows is worked right from it. Find the line, name the rule that it breaks, and mend what it gives."

// drill is the exercise: the line, the rule, the value.
func (h *hunt) drill() *Drill {
	d := &Drill{about: h.about, form: FindMistake, task: findTask, ending: h.ending}
	if skill := problems.SkillOfSlip(h.erred.Slip.ID); skill != "" {
		d.skills = []string{skill}
	}
	d.page = litPage(d, h.written)
	d.scene = func() figure.Scene {
		if d.at == 0 {
			return figure.OfFrame(&h.about.problem.Frame, figure.Options{Style: h.about.problem.Style(!h.about.signs)})
		}
		return h.sumScene()
	}
	d.asks = []drillAsk{h.askLine(), h.askRule(), h.askValue()}
	return d.begun()
}

// litPage is the page of an exercise, on which the wrong line is lit once it is found.
func litPage(d *Drill, written func() (page []PageLine, wrong int)) func() []PageLine {
	return func() []PageLine {
		page, wrong := written()
		for i := range page {
			page[i].Lit = d.at > 0 && page[i].Number == wrong
		}
		return page
	}
}

// sumScene is the free body of the step with the mistake, with what is known by then.
func (h *hunt) sumScene() figure.Scene {
	s, before, known := h.about.solution.Plan[h.step].Sums[0], h.about.solution.KnownBefore(h.step), map[int]exact.Num{}
	for f := range h.about.solution.Forces {
		if v, ok := before(f); ok {
			known[f] = v
		}
	}
	return figure.OfSum(h.about.solution.Assembly, s, known, figure.Options{Style: h.about.problem.Style(!h.about.signs)})
}

// askLine asks for the line in which the mistake is.
func (h *hunt) askLine() drillAsk {
	page, wrong := h.written()
	return lineAsk(page, wrong, func() []string {
		in := fmt.Sprintf("the mistake is in step %d.", placeOf(h.about, h.step)+1)
		if check := h.check(); check != "" {
			return []string{check, in}
		}
		return []string{in}
	})
}

// lineAsk asks for the wrong line of a page.
func lineAsk(page []PageLine, wrong int, hints func() []string) drillAsk {
	last := page[len(page)-1].Number
	return drillAsk{
		name: "line", unit: "1 to " + strconv.Itoa(last),
		says: func() []string { return []string{"In which line is the mistake?"} },
		read: func(line string) (drillRuling, error) {
			at, err := numberOf(line, last)
			switch at++; {
			case err != nil:
				return drillRuling{}, err
			case at == wrong:
				return drillRuling{judging.Exact, "what follows is worked right from this line.", nil}, nil
			case at < wrong:
				return drillRuling{judging.Wrong, "that line is true: read on from there.", nil}, nil
			}
			return drillRuling{judging.Wrong, "that line follows from those before it: where does it begin to go wrong?", nil}, nil
		},
		hints: hints,
		told:  func() string { return fmt.Sprintf("the mistake is in line %d.", wrong) },
	}
}

// check is what a sum that was not used shows with the values as they stand, and which steps it tells of; nothing where none tells.
func (h *hunt) check() string {
	for _, step := range h.about.solution.Plan {
		if !step.Check || !slices.Contains(step.Catches, h.step) {
			continue
		}
		s := step.Sums[0]
		left, _, _ := strings.Cut(h.about.words().Added(s, h.values), "= 0")
		rest := s.Residual(h.values)
		if s.Moment {
			rest = h.about.problem.Conventions.Moments.Value(rest)
		}
		places, in := placesOf(h.about, step.Catches), "among"
		if len(places) == 1 {
			in = "in"
		}
		return fmt.Sprintf("a sum that was not used, %s, comes to %s= %s and not to 0: the mistake is %s %s.",
			h.about.words().BodyAndSum(s), left, h.about.style().Given(rest, notation.Force), in, wording.Steps(places))
	}
	return ""
}

// placesOf are the places of those steps of the plan that give something, as they are written.
func placesOf(m *matter, steps []int) []int {
	var all []int
	for _, i := range steps {
		if len(m.solution.Plan[i].Gives) > 0 {
			all = append(all, placeOf(m, i))
		}
	}
	return all
}

// askRule asks for the rule that the line breaks.
func (h *hunt) askRule() drillAsk {
	q := h.rules.ask("rule")
	q.hints = func() []string {
		return []string{map[bool]string{
			true:  "the sum is written as it should be; look at how it was solved.",
			false: "draw the free body of this step, and go through the sum term by term.",
		}[h.erred.Solving]}
	}
	return q
}

// askValue asks for what the step gives once the mistake is mended.
func (h *hunt) askValue() drillAsk {
	m, step := h.about, h.about.solution.Plan[h.step]
	b := bench{m, &sheet{about: m}}
	force := m.solution.Forces[h.force()]
	q := Question{Kind: ForceValue, Name: force.Name, Dim: notation.ForceDimension(force), Step: h.step, Force: h.force(), Member: statics.None, truth: m.solution.Values[h.force()]}
	c := b.judge().Force(judging.Step{Sums: step.Sums, Gives: step.Gives, Known: questionOf(h.about, h.step).Known, Stands: h.erred.Solving}, h.force())
	return drillAsk{
		name: force.Name, unit: m.problem.Units.ASCII(q.Dim),
		says: func() []string { return []string{"Mend it: what does this step give?", m.unknownText(h.force())} },
		read: func(line string) (drillRuling, error) {
			v, err := b.read(q, line)
			if err != nil {
				return drillRuling{}, err
			}
			return mended(c, v, h.erred.Value), nil
		},
		hints: func() []string {
			return []string{lowerFirst(h.erred.Slip.Says), "the sum should read: " + m.words().Symbols(step.Sums[0]) + "."}
		},
		told: func() string { return foundText(m, h.force(), q.truth) + "." },
	}
}

// mended judges a value typed for what was wrong, where a wrong one stands.
func mended(c *judging.Case, v judging.Typed, stands exact.Num) drillRuling {
	verdict := c.Verdict(v)
	switch {
	case verdict.Right():
		return drillRuling{verdict, "the line is mended.", nil}
	case v.Value.Equal(stands):
		return drillRuling{verdict, "that is the value that stands there: which is it once the rule is kept?", nil}
	}
	f := c.Find(verdict, v)
	return drillRuling{verdict, cmp.Or(f.Says, "write this sum anew, then solve it: what does it give?"), f.Slips}
}

// ending says how the line should read, and what becomes of what followed.
func (h *hunt) ending() []string {
	_, wrong := h.written()
	all := []string{fmt.Sprintf("Line %d broke a rule: %s.", wrong, lowerFirst(rule(h.erred.Slip)))}
	all = append(all, "It should read: "+h.should()+".")
	for _, later := range h.about.solution.Plan[h.step+1:] {
		for _, f := range later.Gives {
			if truth := h.about.solution.Values[f]; !truth.Equal(h.values[f]) {
				all = append(all, fmt.Sprintf("Carried on: %s, and not %s.", foundText(h.about, f, truth), h.about.style().WithUnit(h.values[f], notation.ForceDimension(h.about.solution.Forces[f]))))
			}
		}
	}
	return all
}

// should is the wrong line as it should read.
func (h *hunt) should() string {
	right := (&hunt{about: h.about, mishap: mishap{step: statics.None}, values: h.about.solution.Values}).stepTexts(h.step)
	stands := h.stepTexts(h.step)
	for n, text := range right {
		if n >= len(stands) || text != stands[n] {
			return text
		}
	}
	return right[len(right)-1]
}

// lowerFirst is a sentence within a sentence.
func lowerFirst(s string) string { return strings.ToLower(s[:1]) + s[1:] }
