package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// alongTask says what is to be done.
const alongTask = "One line of what is worked here for N, V and M along a member is wrong; all that follows is worked right from it. Find the line, name the rule that it breaks, and mend what it gives."

// written is what is worked, as it is read, and the number of the line in which the mistake is; 0 where it does not show.
func (h *cutHunt) written() (page []PageLine, wrong int) {
	number := 0
	page = append(page, PageLine{Text: "Found before: " + strings.Join(h.known(), ", ")})
	for i, r := range h.rows {
		page = append(page, PageLine{Text: fmt.Sprintf("%d. %s: %s", i+1, r.item.Name, h.keeps(r))})
		should := r.texts(h.about, r.sum)
		for n, text := range r.texts(h.about, r.written) {
			number++
			if wrong == 0 && i == h.item && (n >= len(should) || text != should[n]) {
				wrong = number
			}
			page = append(page, PageLine{Number: number, Text: text})
		}
	}
	return page, wrong
}

// known lists the forces that the sums speak of, with their values.
func (h *cutHunt) known() []string {
	var all []string
	for _, r := range h.rows {
		for _, t := range slices.Concat(r.sum.Terms(), r.written.Terms()) {
			if t.Force == statics.None || t.Force >= len(h.forces()) || t.Why != statics.Counts || t.Sign == 0 {
				continue
			}
			f := r.a.Forces[t.Force]
			text := f.Name + " = " + h.about.style().WithUnit(r.values[t.Force], notation.ForceDimension(f))
			if !slices.Contains(all, text) {
				all = append(all, text)
			}
		}
	}
	if all == nil {
		return []string{"nothing that these sums need"}
	}
	return all
}

// keeps says which piece is kept.
func (h *cutHunt) keeps(r cutRow) string {
	switch {
	case r.from == nil:
		return "keep the piece on the side of " + h.about.startOf(sectionQuestion(r.item))
	case r.from.At.Equal(r.item.Station.At):
		return "keep what lies between the cuts before and after " + problems.PlaceText(r.item.Station.At)
	}
	return "keep the stretch from " + problems.PlaceText(r.from.At) + " to " + problems.PlaceText(r.item.Station.At)
}

// texts are the lines of a value: the sum in symbols, if it speaks of forces, and with values; then what it gives.
func (r cutRow) texts(m *matter, s statics.Sum) []string {
	w := wording.New(r.a, m.style())
	numbers := w.Mistaken(s, r.sum, func(f int) (exact.Num, bool) { return r.values[f], f != r.own() })
	all := []string{numbers}
	if symbols := w.Mistaken(s, r.sum, nil); r.from == nil && symbols != numbers {
		all = []string{symbols, numbers}
	}
	return append(all, r.item.Quantity.Letter()+" = "+m.style().WithUnit(r.stands(), r.item.Dim))
}

// drill is the exercise: the line, the rule, the value.
func (h *cutHunt) drill() *Drill {
	d := &Drill{about: h.about, form: FindMistake, task: alongTask, ending: h.ending, skills: []string{problems.SkillOfSlip(h.erred.Slip.ID)}}
	d.page = litPage(d, h.written)
	d.scene = func() figure.Scene {
		o := figure.Options{Style: h.about.problem.Style(!h.about.signs)}
		if d.at == 0 {
			return figure.OfFrame(&h.about.problem.Frame, o)
		}
		return h.keptScene(o)
	}
	page, wrong := h.written()
	rule := h.rules.ask("rule")
	rule.hints = func() []string { return []string{"draw the piece that is kept, and go through the sum term by term."} }
	d.asks = []drillAsk{lineAsk(page, wrong, h.lineHints), rule, h.askValue()}
	return d.begun()
}

// lineHints point to the line.
func (h *cutHunt) lineHints() []string {
	return []string{
		"at each cut: what acts on the piece that is kept, and what does not?",
		"the mistake is in " + h.rows[h.item].item.Name + ".",
	}
}

// askValue asks for the value once the mistake is mended.
func (h *cutHunt) askValue() drillAsk {
	b := bench{h.about, &sheet{about: h.about}}
	r := h.rows[h.item]
	q := sectionQuestion(r.item)
	c := b.caseOf(q)
	return drillAsk{
		name: q.Name, unit: h.about.problem.Units.ASCII(q.Dim),
		says: func() []string {
			return []string{"Mend it: what is " + q.Name + "?", wording.Sentence(strings.TrimSuffix(h.about.sectionRule(q), "."))}
		},
		read: func(line string) (drillRuling, error) {
			v, err := b.read(q, line)
			if err != nil {
				return drillRuling{}, err
			}
			return mended(c, v, h.erred.Value), nil
		},
		hints: func() []string {
			return []string{lowerFirst(h.erred.Slip.Says), "the sum should read: " + wording.New(r.a, h.about.style()).Symbols(r.sum) + "."}
		},
		told: func() string { return h.about.truthText(q) + "." },
	}
}

// ending says how the line should read, and what becomes of what followed.
func (h *cutHunt) ending() []string {
	_, wrong := h.written()
	r := h.rows[h.item]
	should, stands := r.texts(h.about, r.sum), r.texts(h.about, r.written)
	all := []string{fmt.Sprintf("Line %d broke a rule: %s.", wrong, lowerFirst(rule(h.erred.Slip)))}
	for n, text := range should {
		if n >= len(stands) || text != stands[n] {
			all = append(all, "It should read: "+text+".")
			break
		}
	}
	all = append(all, wording.Sentence(h.about.truthText(sectionQuestion(r.item))))
	for _, later := range h.rows[h.item+1:] {
		if v := later.stands(); !v.Equal(later.item.Value) {
			all = append(all, "Carried on: "+h.about.truthText(sectionQuestion(later.item))+", and not "+h.about.style().WithUnit(v, later.item.Dim)+".")
		}
	}
	return all
}

// keptScene is the piece whose sum is wrong.
func (h *cutHunt) keptScene(o figure.Options) figure.Scene {
	item, known := h.rows[h.item].item, map[int]exact.Num{}
	for f, v := range h.forces() {
		known[f] = v
	}
	kept := statics.Kept{Solution: h.about.solution.Full(), Member: item.Member, At: item.Station}
	return figure.OfKept(figure.Section{Kept: kept, Lit: []statics.Quantity{item.Quantity}}, known, o)
}
