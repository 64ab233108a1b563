package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A system is the equations of a question: for each sum the factors of its unknowns, and the rest.
type system struct {
	factors [][]exact.Num
	rests   []exact.Num
	asked   int // which of the unknowns is asked for
	answer  exact.Num
}

// system is the question's equations without a slip; false if they do not give the unknowns.
func (q Question) system() (*system, bool) {
	y := &system{asked: statics.None}
	for i, f := range q.Gives {
		if f == q.Force {
			y.asked = i
		}
	}
	if y.asked == statics.None || len(q.Gives) != len(q.Sums) {
		return nil, false
	}
	for _, s := range q.Sums {
		factors := make([]exact.Num, len(q.Gives))
		var rest exact.Num
		for _, t := range s.Terms() {
			i := q.unknownAt(t)
			if i == statics.None {
				rest = rest.Add(t.Amount(q.Values))
			} else {
				factors[i] = factors[i].Add(t.Value())
			}
		}
		y.factors, y.rests = append(y.factors, factors), append(y.rests, rest)
	}
	x, ok := solve(y.factors, y.rests, y.asked)
	y.answer = x
	return y, ok
}

// unknownAt is which of the unknowns a term holds, or None.
func (q Question) unknownAt(t statics.Term) int {
	for i, f := range q.Gives {
		if t.Force == f {
			return i
		}
	}
	return statics.None
}

// changed is the answer after a change; false where it has none.
func (y *system) changed(s *setting, c change) (exact.Num, bool) {
	if c.given != nil {
		return *c.given, true
	}
	x, ok := y.answer, true
	if len(c.terms)+len(c.stray) > 0 {
		x, ok = y.resolved(s, c)
	}
	if ok && !c.times.IsZero() {
		x = x.Mul(c.times)
	}
	return x, ok
}

// resolved solves the equations anew with the terms of a change.
func (y *system) resolved(s *setting, c change) (exact.Num, bool) {
	factors := append([][]exact.Num(nil), y.factors...)
	rests := append([]exact.Num(nil), y.rests...)
	factors[s.n] = append([]exact.Num(nil), factors[s.n]...)
	put := func(t statics.Term, sign int64) {
		if i := s.question.unknownAt(t); i != statics.None {
			factors[s.n][i] = factors[s.n][i].Add(t.Value().Mul(exact.Int(sign)))
			return
		}
		rests[s.n] = rests[s.n].Add(s.amount(t).Mul(exact.Int(sign)))
	}
	for i, t := range c.terms {
		put(s.sum.Terms()[i], -1)
		put(t, 1)
	}
	for _, t := range c.stray {
		put(t, 1)
	}
	return solve(factors, rests, y.asked)
}

// solve is unknown number asked of Σ factor·x + rest = 0; false where the equations do not give all unknowns.
func solve(factors [][]exact.Num, rests []exact.Num, asked int) (exact.Num, bool) {
	x, ok := statics.SolveEquations(factors, rests)
	if !ok {
		return exact.Num{}, false
	}
	return x[asked], true
}

// over is a ÷ b, and 0 for b = 0, by which no caller divides unchecked.
func over(a, b exact.Num) exact.Num {
	x, err := a.Quo(b)
	if err != nil {
		return exact.Num{}
	}
	return x
}
