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

	queue    queue // used again and again
	rooms    [3][]entry
	woven    []strand
	counting []int
	catches  []int
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
			spec := s.spec()
			l.used[s.Body[0]] = append(l.used[s.Body[0]], s)
			l.rows = append(l.rows, l.row(s.Body, p.a.facesOf(s.Body), &spec))
		}
	}
	return l
}

// row is a sum of a free body on which these forces act from outside, each column with its factor.
func (l *ledger) row(b FreeBody, faces []int, s *spec) row {
	r := row{entries: make([]entry, 0, len(faces))}
	for _, i := range faces {
		if k := l.factor(b, s, i); !k.IsZero() {
			r.entries = append(r.entries, entry{l.column[i], k})
		}
	}
	slices.SortFunc(r.entries, func(x, y entry) int { return x.col - y.col })
	return r
}

// factor is what force i is multiplied by in a sum of a free body on which it acts from outside.
func (l *ledger) factor(b FreeBody, s *spec, i int) exact.Num {
	k := l.p.factor(s, i)
	if sign, _ := l.p.a.Facing(b, i); sign < 0 {
		return k.Neg()
	}
	return k
}

// combine gives the factors λ of a sum of a free body: entries by the number of the used sum, in the room.
func (l *ledger) combine(v *view, s *spec, room []entry) []entry {
	q := &l.queue
	for _, i := range v.faces {
		if k := l.factor(v.FreeBody, s, i); !k.IsZero() {
			l.rest[l.column[i]] = k
			q.push(queued{l.column[i], l.column[i]})
		}
	}
	factors := room[:0]
	for len(*q) > 0 {
		col := q.pop().item
		if l.rest[col].IsZero() {
			continue
		}
		for k, factor := range l.factors(col) {
			if n := l.first[col] + k; !factor.IsZero() {
				l.takeOff(factor, l.rows[n])
				factors = append(factors, entry{n, factor})
			}
		}
	}
	slices.SortFunc(factors, func(x, y entry) int { return x.col - y.col })
	return factors
}

// takeOff takes a multiple of a used sum from what is still to be made up.
func (l *ledger) takeOff(factor exact.Num, r row) {
	for _, e := range r.entries {
		if l.rest[e.col].IsZero() {
			l.queue.push(queued{e.col, e.col})
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

// A strand is how often a used sum is in the sums of a free body along x and y and of moments about the origin.
type strand struct {
	sum         int
	x, y, about exact.Num
}

// at is how often it is in the sum of moments about a point. Most products are zero.
func (s *strand) at(p *Point) exact.Num {
	k := s.about
	if !s.x.IsZero() && !p.Y.IsZero() {
		k = k.Add(p.Y.Mul(s.x))
	}
	if !s.y.IsZero() && !p.X.IsZero() {
		k = k.Sub(p.X.Mul(s.y))
	}
	return k
}

// strands are all that the sums of a free body, of moments if it has them, are made of. The list is good until the next call.
func (l *ledger) strands(v *view) []strand {
	sums := []spec{{along: east, centre: None}, {along: north, centre: None}, {moment: true, centre: None}}
	if l.pinAlone(v) {
		sums = sums[:2]
	}
	var rows [3][]entry
	for n := range sums {
		l.rooms[n] = l.combine(v, &sums[n], l.rooms[n])
		rows[n] = l.rooms[n]
	}
	l.woven = weave(rows, l.woven[:0])
	return l.woven
}

// weave adds the strands of three sums along x and y and of moments to all.
func weave(rows [3][]entry, all []strand) []strand {
	for {
		next := None
		for _, r := range rows {
			if len(r) > 0 && (next == None || r[0].col < next) {
				next = r[0].col
			}
		}
		if next == None {
			return all
		}
		var k [3]exact.Num
		for n, r := range rows {
			if len(r) > 0 && r[0].col == next {
				k[n], rows[n] = r[0].k, r[1:]
			}
		}
		all = append(all, strand{next, k[0], k[1], k[2]})
	}
}
