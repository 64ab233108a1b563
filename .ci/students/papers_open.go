package main

import "slices"

// The ways in which a student may carry values on.
const (
	carryFigures  = "figures"  // each answer rounded to three figures, and used so
	carryFull     = "full"     // answers rounded on the page, and used in full
	carryProducts = "products" // each term rounded to three figures besides
)

// inThree is a sum with each term that has a value rounded to three figures.
func (e *equation) inThree(gives []string, known map[string]float64) *equation {
	c := *e
	c.terms = nil
	for _, t := range e.terms {
		if w := t.worth(known); !zero(w) && !slices.Contains(gives, t.name()) {
			t = t.changed(t.part*rounded(w, 3)/w, t.arm)
		}
		c.terms = append(c.terms, t)
	}
	return &c
}

// carried are the sums as a student works them out.
func (p *papersOf) carried(es []*equation, gives []string) []*equation {
	if p.carry != carryProducts {
		return es
	}
	var all []*equation
	for _, e := range es {
		all = append(all, e.inThree(gives, p.own))
	}
	return all
}

// keep notes a value as the student goes on with it.
func (p *papersOf) keep(name string, v float64) {
	if p.own[name] = rounded(v, 3); p.carry == carryFull {
		p.own[name] = v
	}
}

// open reports whether honest work in some order comes to all forces of a paper, to the third figure, once some are taken as they
// stand. Then the answers alone do not tell that there is a mistake besides.
func (p *papersOf) open(page map[string]float64, taken []string) bool {
	known := map[string]float64{}
	for _, n := range taken {
		known[n] = page[n]
	}
	steps := p.planWay()
	for _, e := range p.sums() {
		steps = append(steps, done{es: []*equation{e}})
	}
	for more := true; more; {
		more = false
		for _, d := range steps {
			if p.leads(d, known, page) {
				more = true
			}
		}
	}
	return len(known) == len(p.t.values)
}

// leads takes up what a step gives, if that is what stands on the page.
func (p *papersOf) leads(d done, known, page map[string]float64) bool {
	had := map[string]bool{}
	for n := range known {
		had[n] = true
	}
	var gives []string
	for _, e := range d.es {
		for _, n := range e.left(had) {
			if !slices.Contains(gives, n) {
				gives = append(gives, n)
			}
		}
	}
	if len(gives) == 0 || len(gives) != len(d.es) {
		return false
	}
	k, rest, _ := rows(d.es, gives, known)
	v, ok := settle(k, rest)
	if !ok {
		return false
	}
	for i, n := range gives {
		if rounded(v[i], 3) != page[n] {
			return false
		}
	}
	for _, n := range gives {
		known[n] = page[n]
	}
	return true
}

// hidden lists the mistakes that honest work from the others comes to as well.
func (p *papersOf) hidden(pa *paper) [][]string {
	page := map[string]float64{}
	for n := range p.t.values {
		for _, v := range pa.values {
			if v[0] == n {
				page[n] = value(v[1])
			}
		}
	}
	var all [][]string
	for i, f := range pa.faults {
		var others []string
		for j, o := range pa.faults {
			if j != i {
				others = append(others, o...)
			}
		}
		if p.open(page, others) {
			all = append(all, f)
		}
	}
	return all
}
