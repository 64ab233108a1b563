package tutor

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// written is the worked solution as it is read, and the number of the line in which the mistake is: the first of its step that reads
// otherwise than it should; 0 where none does.
func (h *hunt) written() (page []PageLine, wrong int) {
	number := 0
	for i, step := range h.about.solution.Plan {
		if len(step.Gives) == 0 {
			continue
		}
		page = append(page, PageLine{Text: h.heading(i, step)})
		stands, should := h.stepTexts(i), []string(nil)
		if i == h.step {
			should = (&hunt{about: h.about, mishap: mishap{step: statics.None}, values: h.about.solution.Values}).stepTexts(i)
		}
		for n, text := range stands {
			number++
			if wrong == 0 && i == h.step && (n >= len(should) || text != should[n]) {
				wrong = number
			}
			page = append(page, PageLine{Number: number, Text: text})
		}
	}
	return page, wrong
}

// heading says the free body and the sum of a step.
func (h *hunt) heading(i int, step statics.Step) string {
	if len(step.Sums) > 1 {
		return fmt.Sprintf("%d. %s sums solved together", placeOf(h.about, i)+1, wording.Capital(wording.Count(len(step.Sums))))
	}
	return fmt.Sprintf("%d. %s", placeOf(h.about, i)+1, wording.Capital(h.about.words().BodyAndSum(step.Sums[0])))
}

// placeOf is the place of step i of the plan among those that give something, which alone are written.
func placeOf(m *matter, i int) int {
	n := 0
	for _, step := range m.solution.Plan[:i] {
		if len(step.Gives) > 0 {
			n++
		}
	}
	return n
}

// stepTexts are the lines of a step: each sum in symbols, with the values found before, and gathered; then what it gives.
func (h *hunt) stepTexts(i int) []string {
	w, step, before := h.about.words(), h.about.solution.Plan[i], h.about.solution.KnownBefore(i)
	known := func(f int) (exact.Num, bool) { _, ok := before(f); return h.values[f], ok }
	var all []string
	add := func(text string) {
		if !slices.Contains(all, text) {
			all = append(all, text)
		}
	}
	for _, s := range step.Sums {
		stands := s
		if i == h.step && !h.erred.Solving {
			stands = h.erred.Sum
		}
		add(w.Mistaken(stands, s, nil))
		add(w.Mistaken(stands, s, known))
		gathered, values := stands, h.values
		switch {
		case i != h.step || !h.erred.Solving:
		case h.erred.Slip.Needs == slip.Dividing || len(h.erred.Terms) == 0 && len(h.erred.Sum.Terms()) == len(s.Terms()):
			values = h.about.solution.Values // what the unknown is divided by, or turned by, comes after
		default:
			gathered = h.erred.Sum
		}
		if len(step.Sums) > 1 || needsGathering(gathered, step.Gives) {
			add(w.Gathered(gathered, step.Gives, values))
		}
	}
	for _, f := range step.Gives {
		add(h.found(f))
	}
	return all
}

// needsGathering reports whether an unknown has a factor in a sum, so that more is to be done than to move terms.
func needsGathering(s statics.Sum, gives []int) bool {
	return slices.ContainsFunc(gives, func(f int) bool {
		k := s.Factor(f).Abs()
		return !k.IsZero() && !k.Equal(exact.Int(1))
	})
}

// found is a force as the worked solution has it.
func (h *hunt) found(f int) string { return foundText(h.about, f, h.values[f]) }

// foundText is a force with a value and what that means: "Cy = 3 kN: up on part CD, down on part BC".
func foundText(m *matter, f int, v exact.Num) string {
	if v.IsZero() {
		return m.solution.Forces[f].Name + " = 0"
	}
	text := m.solution.Forces[f].Name + " = " + m.style().WithUnit(v, notation.ForceDimension(m.solution.Forces[f]))
	if acts := m.words().Acts(f, v); acts != "" {
		text += ": " + acts
	}
	return text
}
