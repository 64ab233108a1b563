package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A ledger holds the sums that a plan used. They are as many as the forces and give them one after the other, so any other
// sum of the frame is Σ λ·(used sum), and strands finds the factors λ: the force that was given last can only come from its own
// step's sum, which is taken off, and so on (S17).
//
// Forces are known here by columns: that which is given last has column 0.
type ledger struct {
	p      *planner
	column []int    // of each force
	rows   []row    // the used sums in the order of the plan
	step   []int    // of each used sum
	first  []int    // by column, the first sum of the step that gives it
	rest   []wrench // by column, what is still to be made up; all zero between calls
	open   marks    // the columns of which something may be left

	woven    []strand // used again and again
	found    []wrench
	caught   marks
	listed   []check
	markRoom marks
}

func newLedger(p *planner) *ledger {
	forces := len(p.a.Forces)
	l := &ledger{p: p, column: make([]int, forces), first: make([]int, forces), rest: make([]wrench, forces), open: newMarks(forces),
		woven: make([]strand, 0, forces), caught: newMarks(len(p.steps)), listed: make([]check, 0, 16)}
	l.step, l.rows = make([]int, 0, forces), make([]row, 0, forces)
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
	room := make([]entry, 0, 4*len(l.step))
	for n := range p.steps {
		if p.steps[n].Relation {
			continue
		}
		for k := range p.steps[n].Sums {
			s := &p.steps[n].Sums[k]
			r := l.row(s, room)
			l.rows, room = append(l.rows, r), r.entries[len(r.entries):]
		}
	}
	return l
}

// row is a used sum, each column with its factor. Its entries take their place from the room if they fit.
func (l *ledger) row(s *Sum, room []entry) row {
	faces, spec := l.p.a.facesOf(s.Body), s.spec(l.p.a)
	if cap(room) < len(faces) {
		room = make([]entry, 0, max(len(faces), 4*len(l.step)))
	}
	r := row{entries: room[:0]}
	for _, i := range faces {
		if l.p.a.countsForce(&spec, i) {
			r.entries = append(r.entries, entry{l.column[i], l.p.factorOn(s.Body, &spec, i)})
		}
	}
	slices.SortFunc(r.entries, func(x, y entry) int { return x.col - y.col })
	return r
}

// A strand is how often a used sum is in the sums of a free body along x and y and of moments about the origin.
type strand struct {
	sum int
	in  wrench
}

// counts reports whether it is in the sum along x or y or of moments about a point. Most products are zero.
func (s *strand) counts(sum *spec) bool {
	x, y, k := &s.in[0], &s.in[1], s.in[2]
	switch {
	case sum.moment:
		if !x.IsZero() && !sum.to.Y.IsZero() {
			k = k.Add(sum.to.Y.Mul(*x))
		}
		if !y.IsZero() && !sum.to.X.IsZero() {
			k = k.Sub(sum.to.X.Mul(*y))
		}
		return !k.IsZero()
	case sum.slope == alongX:
		return !x.IsZero()
	}
	return !y.IsZero()
}

// strands are all that the sums of a free body are made of, in the order of the plan. The list is good until the next call.
func (l *ledger) strands(v *view) []strand {
	for _, i := range v.faces {
		f := &l.p.a.Forces[i]
		w, col := f.effect(Vector(l.p.a.Frame.Joints[f.Joint].At)), l.column[i]
		if sign, _ := l.p.a.Facing(v.FreeBody, i); sign < 0 {
			w = w.neg()
		}
		l.rest[col] = w
		l.open.set(col)
	}
	all := l.woven[:0]
	for col := l.open.next(0); col != None; col = l.open.next(col) {
		if l.open.clear(col); l.rest[col].isZero() {
			continue
		}
		n := l.first[col]
		for k, in := range slices.Backward(l.factors(col)) {
			if !in.isZero() {
				l.takeOff(&in, l.rows[n+k])
				all = append(all, strand{n + k, in})
			}
		}
	}
	slices.Reverse(all)
	l.woven = all
	return all
}

// takeOff takes a multiple of a used sum from what is still to be made up.
func (l *ledger) takeOff(factor *wrench, r row) {
	for i := range r.entries {
		e := &r.entries[i]
		l.open.set(e.col)
		for k := range factor {
			if !factor[k].IsZero() {
				l.rest[e.col][k] = l.rest[e.col][k].Sub(factor[k].Mul(e.k))
			}
		}
	}
}

// factors finds how often each sum of the step that gives a column must be taken off so that nothing is left of what the
// step gives. The list is good until the next call.
func (l *ledger) factors(col int) []wrench {
	n := l.first[col]
	gives := l.p.steps[l.step[n]].Gives
	found := l.found[:0]
	if len(gives) == 1 {
		own := l.rows[n].entries[0].k // all other forces in the sum were given before
		x := &l.rest[col]
		l.found = append(found, wrench{over(x[0], own), over(x[1], own), over(x[2], own)})
		return l.found
	}
	for range gives {
		found = append(found, wrench{})
	}
	l.found = found
	if len(gives) == 2 {
		l.two(gives, n)
		return found
	}
	for k := range l.rest[col] {
		for g, x := range l.together(gives, n, k) {
			found[g][k] = x
		}
	}
	return found
}

// two is factors for two sums that were solved together.
func (l *ledger) two(gives []int, n int) {
	c, d := l.column[gives[0]], l.column[gives[1]]
	factors := [2][2]exact.Num{{l.rows[n].coef(c), l.rows[n+1].coef(c)}, {l.rows[n].coef(d), l.rows[n+1].coef(d)}}
	for k := range l.rest[c] {
		x, ok := solveTwo(factors, [2]exact.Num{l.rest[c][k], l.rest[d][k]})
		if !ok {
			panic("internal error: sums solved together depend on each other")
		}
		l.found[0][k], l.found[1][k] = x[0], x[1]
	}
}

// together is factors for more sums that were solved together, of the sum k of a free body.
func (l *ledger) together(gives []int, n, k int) []exact.Num {
	factors, rests := make([][]exact.Num, len(gives)), make([]exact.Num, len(gives))
	for g, i := range gives {
		c := l.column[i]
		for k := range gives {
			factors[g] = append(factors[g], l.rows[n+k].coef(c))
		}
		rests[g] = l.rest[c][k].Neg()
	}
	found, ok := SolveEquations(factors, rests)
	if !ok {
		panic("internal error: sums solved together depend on each other")
	}
	return found
}
