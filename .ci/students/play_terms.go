package main

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
)

var (
	stepLine = regexp.MustCompile(`^Step (\d+) of \d+`)
	numbers  = regexp.MustCompile(`\d+(?:\.\d+)?`)
	onMember = regexp.MustCompile(`\bon ([A-Z])([A-Z])\b`)
)

// bench is the step in hand at the levels where terms are typed: its sums, and where in them the questions are.
type bench struct {
	sums []*equation
	at   int // which sum
	last int // number of the last term asked for
}

// follow notes a new step that the page announces.
func (p *play) follow() {
	for _, line := range p.page {
		if m := stepLine.FindStringSubmatch(line); m != nil && p.level == "terms" {
			var n int
			_, _ = fmt.Sscan(m[1], &n)
			p.bench = bench{}
			for _, s := range p.t.unpin.Plan[n-1].sums() {
				p.bench.sums = append(p.bench.sums, p.t.equation(s))
			}
		}
	}
	if p.level == "plan" {
		p.takeUp()
	}
}

// takeUp finds the chosen sums that a page begins to ask about, by its words for body and sum.
func (p *play) takeUp() {
	body := ""
	var now []*equation
	for _, line := range p.page {
		if b, ok := strings.CutPrefix(line, "Free body: "); ok {
			body = b
		}
		if s, ok := strings.CutPrefix(line, "Sum: "); ok {
			for _, e := range p.chosen {
				if e.said(body, s) {
					now = append(now, e)
					break
				}
			}
		}
	}
	if len(now) > 0 {
		p.bench = bench{sums: now}
	}
}

// said tells whether words name this sum.
func (e *equation) said(body, sum string) bool {
	n := 0
	for name, i := range e.t.partOf {
		if regexp.MustCompile(`\b` + regexp.QuoteMeta(name) + `(\W|$)`).MatchString(body) {
			if !e.parts[i] {
				return false
			}
			n++
		}
	}
	if n != len(e.parts) && !strings.Contains(body, "whole") || strings.Contains(body, "whole") && len(e.parts) != e.t.frame.parts {
		return false
	}
	switch {
	case e.moment:
		for name, j := range e.t.frame.joints {
			if near(j.x, e.about.x, 1) && near(j.y, e.about.y, 1) {
				return strings.Contains(sum, "about "+name)
			}
		}
		return strings.Contains(sum, "about (") || strings.Contains(sum, "about the point")
	case zero(e.along.y):
		return strings.Contains(sum, "horizontal")
	case zero(e.along.x):
		return strings.Contains(sum, "vertical")
	}
	return strings.Contains(sum, "along")
}

// findTerm finds our own term for the one that the page names.
func (p *play) findTerm(a asked) *term {
	if a.term < p.bench.last {
		p.bench.at++
	}
	p.bench.last = a.term
	if p.bench.at >= len(p.bench.sums) {
		return nil
	}
	e := p.bench.sums[p.bench.at]
	words := ""
	for _, line := range p.page {
		if w, ok := strings.CutPrefix(line, "Term: "); ok {
			words = strings.TrimSuffix(w, ".")
		}
	}
	var fit []*term
	for _, t := range e.terms {
		if termFits(t, words) {
			fit = append(fit, t)
		}
	}
	if len(fit) == 2 && fit[0].sh == fit[1].sh { // both components as one force with its own arm
		moment := fit[0].size() + fit[1].size()
		return &term{sh: fit[0].sh, axis: 'n', at: fit[0].at, force: fit[0].force, part: fit[0].whole, arm: moment / fit[0].whole, whole: fit[0].whole}
	}
	if len(fit) != 1 {
		return nil
	}
	return fit[0]
}

func termFits(t *term, words string) bool {
	switch {
	case strings.Contains(words, "horizontal component") && t.axis != 'x' && (t.axis != 'f' || len(words) == 0):
		return false
	case strings.Contains(words, "vertical component") && t.axis != 'y':
		return false
	}
	if t.u != nil {
		return words == t.u.name || strings.HasSuffix(words, " of "+t.u.name)
	}
	l := t.sh.l
	on := onMember.FindStringSubmatch(words)
	if on == nil || on[1]+on[2] != l.m.name && on[2]+on[1] != l.m.name {
		return false
	}
	size := t.sh.w
	if t.sh.shape == "couple" {
		size = math.Abs(l.size)
	}
	if (t.sh.shape == "triangle") != (strings.Contains(words, "triang") || strings.Contains(words, " to ")) {
		return false
	}
	for _, n := range numbers.FindAllString(words, -1) {
		if near(value(n), size, size) {
			return true
		}
	}
	return false
}

// term is a question for a force, an arm, a sign or a couple of one term.
func (p *play) term(a asked) error {
	t := p.findTerm(a)
	if t == nil {
		p.tally.lost(p.question + " " + strings.Join(p.page, " / "))
		p.accepted = append(p.accepted, "tell")
		_, err := p.say("tell")
		return err
	}
	if a.what == "sign" {
		return p.signOf(t)
	}
	truth := math.Abs(t.arm)
	if a.what != "arm" {
		truth = math.Abs(t.part)
	}
	guesses := p.misread(a, t)
	for _, s := range swaps(figures(truth, 3)) {
		guesses = append(guesses, guess{kind: "figures of a number exchanged", value: value(s), text: s})
	}
	guesses = append(guesses, guess{kind: "place of the decimal point", value: truth * 10})
	hidden := func(v float64) bool { return math.Abs(v-truth) < 0.012*truth || zero(v) }
	for _, g := range p.pick(guesses, hidden) {
		if moved, err := p.wrongValue(g, guesses); err != nil || moved {
			return err
		}
	}
	if p.randoms {
		for range 20 {
			v := rounded(truth*(0.1+3*p.r.Float64()), 3)
			if !hidden(v) {
				if moved, err := p.wrong("random number", figures(v, 3), nil, nil); err != nil || moved {
					return err
				}
				break
			}
		}
	}
	return p.right(figures(truth, p.figures))
}

// misread gives wrong forces or arms for one term: those of the alterations that touch the one and leave the other.
func (p *play) misread(a asked, t *term) []guess {
	var all []guess
	for _, alt := range p.bench.sums[p.bench.at].alterations(p.own) {
		to := alt.swap[t]
		if to == nil || alt.kind == "value of another force" {
			continue
		}
		part, arm := differ(math.Abs(to.part), math.Abs(t.part)), differ(math.Abs(to.arm), math.Abs(t.arm))
		switch {
		case a.what == "arm" && arm && !part:
			all = append(all, guess{kind: alt.kind, value: math.Abs(to.arm)})
		case a.what != "arm" && part && !arm:
			all = append(all, guess{kind: alt.kind, value: math.Abs(to.part)})
		}
	}
	return all
}

func (p *play) signOf(t *term) error {
	own, other := "+", "-"
	if t.size() < 0 {
		own, other = "-", "+"
	}
	if p.per > 0 && p.r.IntN(3) == 0 {
		kind := "turned load"
		switch {
		case t.u != nil && t.u.other >= 0:
			kind = "turned pin force"
		case t.u != nil:
			kind = "turned reaction"
		case t.axis == 'c':
			kind = "turned couple"
		case p.bench.sums[p.bench.at].both(t):
			kind = "turned component"
		}
		if moved, err := p.wrong(kind, other, nil, nil); err != nil || moved {
			return err
		}
	}
	return p.right(own)
}

// choose answers the question for a free body and a sum with the next of the plan.
func (p *play) choose() error {
	for p.next < len(p.order) {
		s := p.order[p.next]
		p.next++
		line := sumText(p.t, s)
		page, err := p.say(line)
		if err != nil {
			return err
		}
		p.accepted = append(p.accepted, line)
		if strings.HasPrefix(first(page), "right") {
			p.chosen = append(p.chosen, p.t.equation(s))
			return nil
		}
		p.tally.lost("sum refused: " + line + ": " + first(page) + " " + p.t.path)
	}
	p.accepted = append(p.accepted, "tell")
	_, err := p.say("tell")
	return err
}

// planned lists the sums of the plan, each once, in their order.
func (t *task) planned() []planSum {
	var all []planSum
	seen := map[string]bool{}
	for _, s := range t.unpin.Plan {
		if s.Check {
			continue
		}
		for _, sum := range s.sums() {
			if text := sumText(t, sum); !seen[text] {
				seen[text] = true
				all = append(all, sum)
			}
		}
	}
	return all
}

func sumText(t *task, s planSum) string {
	body := strings.Join(s.Parts, " + ")
	if len(s.Parts) == t.frame.parts && t.frame.parts > 1 {
		body = "whole"
	}
	switch {
	case s.Sum == "moment":
		at := vec{fraction(s.About[0]), fraction(s.About[1])}
		for name, j := range t.frame.joints {
			if near(j.x, at.x, 1) && near(j.y, at.y, 1) {
				return body + " M " + name
			}
		}
		return fmt.Sprintf("%s M (%s, %s)", body, s.About[0], s.About[1])
	case slices.Equal(s.Along, []string{"1", "0"}):
		return body + " x"
	case slices.Equal(s.Along, []string{"0", "1"}):
		return body + " y"
	}
	return fmt.Sprintf("%s F along [%s, %s]", body, s.Along[0], s.Along[1])
}

// text writes a sum as a student would: force times arm, names for forces that are not numbers.
func (e *equation) text(known map[string]float64) string {
	var b strings.Builder
	for i, t := range e.terms {
		s := " + "
		if t.size() < 0 {
			s = " - "
		}
		if i == 0 {
			s = strings.TrimSpace(strings.Replace(s, "+", "", 1))
		}
		var factors []string
		if c := math.Abs(t.part); t.u == nil || differ(c, 1) {
			factors = append(factors, figures(c, 4))
		}
		if t.u != nil {
			factors = append(factors, t.u.name)
		}
		if arm := math.Abs(t.arm); t.axis == 'x' || t.axis == 'y' || differ(arm, 1) {
			factors = append(factors, figures(math.Abs(t.arm), 4))
		}
		b.WriteString(s + strings.Join(factors, "*"))
	}
	if b.Len() == 0 {
		return "0 = 0"
	}
	return b.String() + " = 0"
}

// equation is a question for a whole sum: mistaken ones first, then the true one.
func (p *play) equation() error {
	if len(p.chosen) == 0 {
		p.accepted = append(p.accepted, "tell")
		_, err := p.say("tell")
		return err
	}
	e := p.chosen[len(p.chosen)-1]
	byKind := map[string][]alteration{}
	for _, a := range e.alterations(p.own) {
		if a.kind != "value of another force" && e.matters(a, p.own) && !vanishes(a) {
			byKind[a.kind] = append(byKind[a.kind], a)
		}
	}
	kinds := sorted(byKind)
	p.r.Shuffle(len(kinds), func(i, j int) { kinds[i], kinds[j] = kinds[j], kinds[i] })
	slices.SortStableFunc(kinds, func(a, b string) int { return p.tally.typed(p.level, a) - p.tally.typed(p.level, b) })
	for _, k := range kinds[:min(len(kinds), p.per)] {
		a := byKind[k][p.r.IntN(len(byKind[k]))]
		if moved, err := p.wrong(k, e.apply(a).text(p.own), p.about(e, a, p.own), nil); err != nil || moved {
			return err
		}
	}
	return p.right(e.text(p.own))
}

// vanishes tells alterations after which a term is no longer there to be seen, other than those that leave it out.
func vanishes(a alteration) bool {
	if strings.HasPrefix(a.kind, "left out") {
		return false
	}
	for _, to := range a.swap {
		if to == nil && len(a.stray) == 0 || to != nil && zero(to.size()) {
			return true
		}
	}
	return false
}

// matters tells whether a sum is altered by more than rounding.
func (e *equation) matters(a alteration, known map[string]float64) bool {
	most, change := 0.0, map[string]float64{}
	name := func(t *term) string {
		if _, ok := known[t.name()]; ok {
			return ""
		}
		return t.name()
	}
	for _, t := range e.terms {
		most = math.Max(most, math.Abs(t.worth(known)))
		change[name(t)] -= t.worth(known)
	}
	for _, t := range e.apply(a).terms {
		change[name(t)] += t.worth(known)
	}
	alone := true // an unknown that is zero in any form
	for _, t := range e.terms {
		alone = alone && (name(t) != "" || zero(t.worth(known)))
	}
	if alone && len(change) <= 2 {
		return false
	}
	for name, c := range change {
		scale := most
		if name != "" {
			scale = 1
		}
		if math.Abs(c) > 0.02*scale {
			return true
		}
	}
	return false
}
