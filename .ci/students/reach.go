package main

import "math"

// reach is where a value of N, V or M can come to lie by honest work: from either side, or along areas, with the true forces
// or the student's own, when each ratio, force, arm, product and the result is rounded to three figures.
type reach struct{ spans [][2]float64 }

func (r *reach) span(mid, by float64) { r.spans = append(r.spans, [2]float64{mid - by, mid + by}) }

func (r reach) holds(v float64) bool {
	for _, s := range r.spans {
		slack := 1e-9 * math.Max(1, math.Abs(v))
		if v >= s[0]-slack && v <= s[1]+slack {
			return true
		}
	}
	return false
}

// width is the furthest that a span goes from its middle.
func (r reach) width() float64 {
	w := 0.0
	for _, s := range r.spans {
		w = math.Max(w, (s[1]-s[0])/2)
	}
	return w
}

func (p *play) reach(m *member, x float64, what string) reach {
	var r reach
	for _, start := range []bool{true, false} {
		e := p.t.cut(m, x, what, start)
		if e.idle(p.t.values) { // nothing acts on that piece: only 0 is right
			return reach{spans: [][2]float64{{0, 0}}}
		}
		for _, forces := range []map[string]float64{p.t.values, p.own} {
			mid := e.total(forces)
			by := 0.0
			for _, t := range e.terms {
				by += drift(t, forces)
			}
			r.span(mid, by+finalUnit(mid, by))
		}
	}
	p.alongAreas(m, x, what, &r)
	return r
}

// finalUnit is half a unit in the third figure of the largest value that a sum can come to.
func finalUnit(mid, by float64) float64 {
	return math.Max(halfUnit(math.Abs(mid)+by, 3), halfUnit(mid, 3))
}

// drift is how far one term can come out from the truth: each number in it rounded to three figures, and the product.
func drift(t *term, forces map[string]float64) float64 {
	force := t.part
	rel := 0.0
	if t.u != nil {
		force *= forces[t.u.name]
		if !zero(forces[t.u.name]) {
			rel += halfUnit(forces[t.u.name], 3) / math.Abs(forces[t.u.name])
		}
	}
	product := force * t.arm
	for _, n := range []float64{force, t.arm, ratioOf(t)} {
		if !zero(n) {
			rel += halfUnit(n, 3) / math.Abs(n)
		}
	}
	if t.sh != nil && t.sh.shape != "couple" && t.sh.size() > 0 {
		rel += halfUnit(t.sh.size(), 3) / t.sh.size()
	}
	return math.Abs(product)*rel + halfUnit(product, 3)
}

// ratioOf is the sine or cosine in a term.
func ratioOf(t *term) float64 {
	if t.axis == 'c' || zero(t.whole) {
		return 1
	}
	return t.part / t.whole
}

// alongAreas: on from a cut before, whether its values are the true ones or those that the student had accepted, by what lies
// between: the area of V, and the loads there.
func (p *play) alongAreas(m *member, x float64, what string, r *reach) {
	var marks []float64
	for _, u := range p.t.unpin.Members {
		if u.Name == m.name {
			for _, pc := range u.Pieces {
				marks = append(marks, fraction(pc.From)-1e-9, fraction(pc.From)+1e-9)
			}
		}
	}
	for _, c := range append(p.cuts[what+m.name], p.cuts["V"+m.name]...) {
		marks = append(marks, c.x)
	}
	for _, from := range marks {
		if from < x-1e-6 && from > 0 {
			p.stretch(m, from, x, what, r)
		}
	}
}

// stretch adds what can be reached from one cut.
func (p *play) stretch(m *member, from, x float64, what string, r *reach) {
	at := func(x float64, what string) float64 { return p.t.cut(m, x, what, true).total(p.t.values) }
	by := 0.0
	for _, t := range p.between(m, from, x, what) {
		by += drift(t, p.t.values)
	}
	change := at(x, what) - at(from, what)
	for _, start := range p.held(m, from, what, at(from, what)) {
		if what != "M" {
			d := by + 2*halfUnit(start, 3) // as a value and as a product
			r.span(start+change, d+finalUnit(start+change, d))
			continue
		}
		shear := at(from, "V")
		for _, v := range p.held(m, from, "V", shear) {
			d := by + 2*halfUnit(start, 3) + halfUnit(v, 3)*(x-from) + halfUnit(v*(x-from), 3)
			mid := start + change + (v-shear)*(x-from)
			r.span(mid, d+finalUnit(mid, d))
		}
	}
}

// held lists the values that may stand at a cut: the true one, and one accepted there.
func (p *play) held(m *member, x float64, what string, truth float64) []float64 {
	all := []float64{truth}
	for _, c := range p.cuts[what+m.name] {
		if math.Abs(c.x-x) < 1e-12 {
			all = append(all, c.value)
		}
	}
	return all
}

// between gives the terms of the loads on a stretch of a member, about its end.
func (p *play) between(m *member, from, x float64, what string) []*term {
	e := p.t.cut(m, x, what, true)
	e.terms = nil
	for _, l := range p.t.frame.loads {
		if l.m != m || (l.kind == "point" || l.kind == "couple") && (l.s < from || l.s > x) {
			continue
		}
		shares := l.whole()
		if l.kind == "uniform" || l.kind == "ramp" {
			shares = l.shares(from, x)
		}
		for _, sh := range shares {
			e.act(nil, sh, sh.force, sh.at, sh.couple, sh.shape == "couple")
		}
	}
	return e.terms
}
