package main

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
)

// play is one lesson worked by a student who makes mistakes before each right answer.
type play struct {
	*lesson
	t        *task
	r        *rand.Rand
	tally    *tally
	figures  int
	cuts     map[string][]passedCut // N, V and M as accepted, by quantity and member
	own      map[string]float64     // forces as the student has them: true values rounded as typed
	accepted []string               // what was typed and went on: with these a miss can be made again
	printed  [][]product            // the sums on the page
	per      int                    // how many mistakes a question
	randoms  bool
	bench    bench
	program  *program
	since    int       // wrong lines at the question in hand
	side     string    // of the section in hand
	order    []planSum // the sums of the plan, to be chosen one after another
	next     int
	chosen   []*equation // chosen and not yet part of a step
}

// tried is one wrong line and what became of it.
type tried struct {
	level, kind, question, typed string
	reply                        string
	about                        []string
	sums                         []string
	file                         string
	side                         string   // of a section: the piece kept
	same                         []string // kinds that give the same number
	accepted                     []string
}

func (p *play) run() error {
	for p.question != "" && !strings.Contains(p.question, " again ") {
		if s := sums(p.page); len(s) > 0 {
			p.printed = s
		}
		p.follow()
		a := readQuestion(p.question)
		var err error
		switch _, isForce := p.t.values[a.what]; {
		case a.section && p.level != "values": // asked alike at every level
			return nil
		case a.section:
			err = p.section(a)
		case isForce:
			err = p.force(a)
		case a.what == "force" || a.what == "arm" || a.what == "sign" || a.what == "couple":
			err = p.term(a)
		case a.what == "sum":
			err = p.choose()
		case a.what == "equation":
			err = p.equation()
		default:
			p.tally.lost("question not worked here: " + a.what)
			p.accepted = append(p.accepted, "tell")
			_, err = p.say("tell")
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// wrong types a mistaken line and notes the answer; true if it was accepted, so that the lesson went on.
func (p *play) wrong(kind, line string, about, same []string) (bool, error) {
	q := p.question
	page, err := p.say(line)
	if err != nil {
		return false, err
	}
	if line := answer(page); strings.HasPrefix(line, "not yet") {
		p.since++
	}
	tr := &tried{level: p.level, kind: kind, question: q, typed: line, reply: answer(page), about: about, same: same, side: p.side, file: p.t.path, accepted: slices.Clone(p.accepted)}
	for _, s := range p.printed {
		for _, pr := range s {
			tr.sums = append(tr.sums, pr.text)
		}
	}
	moved := strings.HasPrefix(tr.reply, "right")
	if moved {
		p.accepted = append(p.accepted, line)
	}
	if !moved && p.since > 1 && p.tally.unmet(tr) { // a fresh lesson, since a reply may heed what was said before
		again, err := p.again(line)
		if err != nil {
			return false, err
		}
		tr.reply = again
	}
	p.tally.note(tr)
	return moved, nil
}

// again types the line in a lesson of its own, after what was accepted.
func (p *play) again(line string) (string, error) {
	l, err := p.program.begin(p.t.path, p.level)
	if err != nil {
		return "", err
	}
	defer l.end()
	for _, a := range p.accepted {
		if _, err := l.say(a); err != nil {
			return "", err
		}
	}
	page, err := l.say(line)
	return answer(page), err
}

// answer is the verdict of a page, with the lines that belong to it.
func answer(page []string) string {
	if len(page) == 0 {
		return ""
	}
	lines := []string{page[0]}
	for _, l := range page[1:] {
		if !strings.HasPrefix(l, "hint:") && !strings.HasPrefix(l, "Term:") && !strings.HasPrefix(l, "Step") && strings.HasPrefix(page[0], "not yet") {
			lines = append(lines, l)
		}
	}
	return strings.Join(lines, " / ")
}

// right types a true line; if it is refused that is noted, and told.
func (p *play) right(line string) error {
	q := p.question
	p.since = 0
	page, err := p.say(line)
	if err != nil {
		return err
	}
	p.tally.honest(strings.HasPrefix(first(page), "right"), &tried{level: p.level, kind: "true value", question: q, typed: line, reply: answer(page), file: p.t.path, accepted: slices.Clone(p.accepted)})
	if strings.HasPrefix(first(page), "right") {
		p.accepted = append(p.accepted, line)
		return nil
	}
	p.accepted = append(p.accepted, "tell")
	_, err = p.say("tell")
	return err
}

func first(page []string) string {
	if len(page) == 0 {
		return ""
	}
	return page[0]
}

// step finds the step of the plan that gives a force, as our own sums.
func (p *play) step(name string) ([]*equation, []string) {
	for _, s := range p.t.unpin.Plan {
		if !slices.Contains(s.Gives, name) {
			continue
		}
		var es []*equation
		for _, sum := range s.sums() {
			es = append(es, p.t.equation(sum))
		}
		return es, s.Gives
	}
	return nil, nil
}

// force is a question for the value of an unknown.
func (p *play) force(a asked) error {
	es, gives := p.step(a.what)
	truth := p.t.values[a.what]
	place := slices.Index(gives, a.what)
	if len(es) == len(gives) && place >= 0 {
		known := p.known(gives)
		guesses := p.handled(es, gives, place, known)
		guesses = append(guesses, p.setUp(es, gives, place, known)...)
		for _, g := range p.pick(guesses, func(v float64) bool { return p.hidden(es, gives, place, known, v) }) {
			moved, err := p.wrongValue(g, guesses)
			if err != nil || moved {
				p.own[a.what] = value(p.typed[len(p.typed)-1])
				return err
			}
		}
		if p.randoms {
			if moved, err := p.random(es, gives, place, known); err != nil || moved {
				p.own[a.what] = value(p.typed[len(p.typed)-1])
				return err
			}
		}
	}
	p.own[a.what] = rounded(truth, p.figures)
	return p.right(figures(truth, p.figures))
}

// wrongValue types a guess; all are the others that might have led to the same number.
func (p *play) wrongValue(g guess, all []guess) (bool, error) {
	typed := figures(g.value, p.wrongFigures())
	if g.text != "" {
		typed = g.text
	}
	var same []string
	for _, o := range all {
		if o.kind != g.kind && math.Abs(o.value-value(typed)) <= 6e-3*math.Abs(o.value)+1e-6 && !slices.Contains(same, o.kind) {
			same = append(same, o.kind)
		}
	}
	p.side = g.side
	return p.wrong(g.kind, typed, g.about, same)
}

func (p *play) wrongFigures() int { return 3 + p.r.IntN(2) }

// known are the student's own values of all forces but those sought.
func (p *play) known(sought []string) map[string]float64 {
	known := map[string]float64{}
	for name, v := range p.own {
		if !slices.Contains(sought, name) {
			known[name] = v
		}
	}
	return known
}

// rows gives the coefficients and rests of a step's sums.
func rows(es []*equation, gives []string, known map[string]float64) (k [][]float64, rest []float64, scale float64) {
	for _, e := range es {
		ki, ri, si := e.split(gives, known)
		k, rest, scale = append(k, ki), append(rest, ri), math.Max(scale, si)
	}
	return k, rest, scale
}

// setUp gives the values that come of mistakes in setting up one of the step's sums.
func (p *play) setUp(es []*equation, gives []string, place int, known map[string]float64) []guess {
	var all []guess
	for i, e := range es {
		for _, a := range e.alterations(known) {
			altered := slices.Clone(es)
			altered[i] = e.apply(a)
			k, rest, _ := rows(altered, gives, known)
			if v, ok := settle(k, rest); ok {
				all = append(all, guess{kind: a.kind, value: v[place], about: p.about(e, a, known)})
			}
		}
	}
	if len(es) == 1 {
		all = append(all, p.halves(es[0], gives)...)
	}
	return all
}

// halves: a vertical reaction taken as half of the vertical loads.
func (p *play) halves(e *equation, gives []string) []guess {
	total := 0.0
	for _, l := range p.t.frame.loads {
		if e.parts[l.part] && l.kind != "couple" {
			for _, sh := range l.whole() {
				total -= sh.force.y
			}
		}
	}
	if gives[0][len(gives[0])-1] != 'y' || !e.moment || zero(total) {
		return nil
	}
	return []guess{{kind: "load halved by habit", value: total / 2}}
}

// supplied tells the kinds of set-up that the printed sum turns into a mistake of handling.
func supplied(kind string) bool {
	return strings.HasPrefix(kind, "turned") || strings.HasPrefix(kind, "left out") || kind == "force without its arm" || kind == "value of another force"
}

// about names what an alteration changes: the printed products of those terms, and who gives them.
func (p *play) about(e *equation, a alteration, known map[string]float64) []string {
	var all []string
	for t := range a.swap {
		w, whole := t.worth(known), 0.0
		for _, o := range e.terms { // a force whose components are one product on the page
			if t.sh != nil && o.sh == t.sh {
				whole += o.worth(known)
			}
		}
		for _, s := range p.printed {
			for _, pr := range s {
				if math.Abs(pr.worth(known)-w) < 2e-3*math.Abs(w) || math.Abs(pr.worth(known)-whole) < 2e-3*math.Abs(whole) {
					all = append(all, pr.text)
				}
			}
		}
	}
	return append(all, a.names()...)
}

// handled gives the values that come of mistakes in working out the printed sums.
func (p *play) handled(es []*equation, gives []string, place int, known map[string]float64) []guess {
	k, rest, _ := rows(es, gives, known)
	truth, ok := settle(k, rest)
	if !ok {
		return nil
	}
	v := truth[place]
	var all []guess
	add := func(kind string, v float64, about ...string) {
		all = append(all, guess{kind: kind, value: v, about: about})
	}
	add("sign of the answer", -v)
	add("place of the decimal point", v*10)
	add("place of the decimal point", v/10)
	for _, s := range swaps(figures(v, p.figures)) {
		all = append(all, guess{kind: "figures of the answer exchanged", value: value(s), text: s})
	}
	if len(p.printed) != len(es) || p.level != "values" {
		return all
	}
	for i, sum := range p.printed {
		for _, h := range handlings(sum, gives, known) {
			r := slices.Clone(rest)
			r[i] += h.worth - sum[h.i].worth(known)
			if w, ok := settle(k, r); ok {
				add(h.kind, w[place], sum[h.i].text)
			}
		}
	}
	if len(es) > 1 {
		return all
	}
	if differ(math.Abs(k[0][0]), 1) {
		add("not divided", v*math.Abs(k[0][0]))
		for _, pr := range p.printed[0] {
			for _, f := range pr.factors {
				if d := fraction(f); !zero(d) && differ(d, math.Abs(k[0][0])) && differ(d, 1) {
					add("divided by another number", v*math.Abs(k[0][0])/d)
				}
			}
		}
	}
	return all
}

// hidden tells values that the sum itself bears out to one per cent of its largest term, or that are the answer as rounded.
func (p *play) hidden(es []*equation, gives []string, place int, known map[string]float64, v float64) bool {
	truth := p.t.values[gives[place]]
	if math.Abs(v-truth) <= math.Max(halfUnit(truth, 3)*1.01, 5e-3*math.Abs(truth)) || math.Abs(v) > 1e5 {
		return true
	}
	for _, k := range []map[string]float64{known, p.t.values} {
		fits := true
		for _, e := range es {
			c, rest, scale := e.split(gives, k)
			r, largest := rest, scale
			for i, name := range gives {
				w := p.t.values[name]
				if i == place {
					w = v
				}
				r += c[i] * w
				largest = math.Max(largest, math.Abs(c[i]*w))
			}
			fits = fits && math.Abs(r) <= 0.0101*largest
		}
		if fits {
			return true
		}
	}
	return false
}

// pick chooses guesses whose kinds were tried least, one a kind.
func (p *play) pick(all []guess, hidden func(float64) bool) []guess {
	byKind := map[string][]guess{}
	for _, g := range all {
		if !p.mayPick(g.kind) {
			continue
		}
		if !math.IsNaN(g.value) && !math.IsInf(g.value, 0) && !hidden(g.value) && !hidden(rounded(g.value, 3)) {
			byKind[g.kind] = append(byKind[g.kind], g)
		}
	}
	kinds := sorted(byKind)
	p.r.Shuffle(len(kinds), func(i, j int) { kinds[i], kinds[j] = kinds[j], kinds[i] })
	slices.SortStableFunc(kinds, func(a, b string) int { return p.tally.typed(p.level, a) - p.tally.typed(p.level, b) })
	var chosen []guess
	for _, k := range kinds[:min(len(kinds), p.per)] {
		chosen = append(chosen, byKind[k][p.r.IntN(len(byKind[k]))])
	}
	return chosen
}

// mayPick tells which kinds belong to a question: where the sum is printed its handling and what was set up before, but not what
// a mistake of handling stands for as well; at the other levels the terms are typed, so at the value only its handling is left.
func (p *play) mayPick(kind string) bool {
	if strings.HasPrefix(kind, sectionHead) || isTermQuestion(p.question) {
		return true
	}
	if p.level == "values" {
		return !supplied(kind)
	}
	return handlingKind(kind)
}

func isTermQuestion(q string) bool {
	return strings.HasPrefix(q, "force") || strings.HasPrefix(q, "arm") || strings.HasPrefix(q, "couple")
}

// random types a number that comes of nothing.
func (p *play) random(es []*equation, gives []string, place int, known map[string]float64) (bool, error) {
	_, _, scale := rows(es, gives, known)
	k, _, _ := rows(es, gives, known)
	size := scale / math.Max(math.Abs(k[min(place, len(k)-1)][place]), 0.2)
	for range 20 {
		v := rounded((2*p.r.Float64()-1)*1.5*size, 3)
		if truth := p.t.values[gives[place]]; !zero(v) && differ(math.Abs(v), math.Abs(truth)) && !p.hidden(es, gives, place, known, v) {
			return p.wrong("random number", figures(v, 3), nil, nil)
		}
	}
	return false, nil
}
