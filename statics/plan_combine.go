package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A ledger holds the sums that a plan used. They are as many as the forces and give them one after the other, so any other
// sum of the frame is Σ λ·(used sum), and combine finds the factors λ: the force that was given last can only come from its own
// step's sum, which is taken off, and so on (S17).
//
// Forces are known here by columns: that which is given last has column 0.
type ledger struct {
	p      *planner
	column []int       // of each force
	rows   []row       // the used sums in the order of the plan
	step   []int       // of each used sum
	first  []int       // by column, the first sum of the step that gives it
	rest   []exact.Num // by column, what is still to be made up; all zero between calls
	used   [][]*Sum    // by the first body of their free bodies, the used sums
}

func newLedger(p *planner) *ledger {
	forces := len(p.a.Forces)
	l := &ledger{p: p, column: make([]int, forces), first: make([]int, forces), rest: make([]exact.Num, forces)}
	l.used = make([][]*Sum, p.a.Bodies())
	for n := range p.steps {
		if p.steps[n].Relation {
			continue
		}
		for _, i := range p.steps[n].Gives {
			forces--
			l.column[i], l.first[forces] = forces, len(l.step)
		}
		for range p.steps[n].Sums {
			l.step = append(l.step, n)
		}
	}
	l.rows = make([]row, 0, len(l.step))
	for n := range p.steps {
		if p.steps[n].Relation {
			continue
		}
		for k := range p.steps[n].Sums {
			s := &p.steps[n].Sums[k]
			l.used[s.Body[0]] = append(l.used[s.Body[0]], s)
			l.rows = append(l.rows, l.row(s.Body, p.a.facesOf(s.Body), &spec{s.Moment, s.Along, s.About, s.Centre}))
		}
	}
	return l
}

// row is a sum of a free body on which these forces act from outside, each column with its factor.
func (l *ledger) row(b FreeBody, faces []int, s *spec) row {
	r := row{entries: make([]entry, 0, len(faces))}
	for _, i := range faces {
		k := l.p.factor(s, i)
		if k.IsZero() {
			continue
		}
		if sign, _ := l.p.a.Facing(b, i); sign < 0 {
			k = k.Neg()
		}
		r.entries = append(r.entries, entry{l.column[i], k})
	}
	slices.SortFunc(r.entries, func(x, y entry) int { return x.col - y.col })
	return r
}

// combine gives the factors λ of a sum: entries by the number of the used sum.
func (l *ledger) combine(r row) row {
	var q queue
	for _, e := range r.entries {
		l.rest[e.col] = e.k
		q.push(queued{e.col, e.col})
	}
	var factors row
	for len(q) > 0 {
		col := q.pop().item
		if l.rest[col].IsZero() {
			continue
		}
		for k, factor := range l.factors(col) {
			if n := l.first[col] + k; !factor.IsZero() {
				l.takeOff(factor, l.rows[n], &q)
				factors.entries = append(factors.entries, entry{n, factor})
			}
		}
	}
	slices.SortFunc(factors.entries, func(x, y entry) int { return x.col - y.col })
	return factors
}

// takeOff takes a multiple of a used sum from what is still to be made up.
func (l *ledger) takeOff(factor exact.Num, r row, q *queue) {
	for _, e := range r.entries {
		if l.rest[e.col].IsZero() {
			q.push(queued{e.col, e.col})
		}
		l.rest[e.col] = l.rest[e.col].Sub(factor.Mul(e.k))
	}
}

// factors finds how often each sum of the step that gives a column must be taken off so that nothing is left of what the
// step gives.
func (l *ledger) factors(col int) []exact.Num {
	n := l.first[col]
	gives := l.p.steps[l.step[n]].Gives
	if len(gives) == 1 {
		return []exact.Num{over(l.rest[col], l.rows[n].coef(col))}
	}
	factors, rests := make([][]exact.Num, len(gives)), make([]exact.Num, len(gives))
	for g, i := range gives {
		c := l.column[i]
		for k := range gives {
			factors[g] = append(factors[g], l.rows[n+k].coef(c))
		}
		rests[g] = l.rest[c].Neg()
	}
	found, ok := SolveEquations(factors, rests)
	if !ok {
		panic("internal error: sums solved together depend on each other")
	}
	return found
}

// without is r − f·s, where f may be zero.
func (r row) without(f exact.Num, s row) row {
	if f.IsZero() {
		return r
	}
	return r.minus(f, s, nil)
}
