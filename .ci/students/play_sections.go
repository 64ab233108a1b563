package main

import (
	"math"
)

// place finds where along a member a question's cut is: the printed distance is rounded, and before and after lie beside it.
func (p *play) place(a asked) (*member, float64) {
	m := p.t.frame.member(a.member)
	x := a.x
	var marks []float64
	for _, u := range p.t.unpin.Members {
		if u.Name == a.member {
			for _, pc := range u.Pieces {
				marks = append(marks, fraction(pc.From), fraction(pc.Until))
			}
		}
	}
	for _, mark := range marks {
		if math.Abs(mark-x) < 1e-4 {
			x = mark
		}
	}
	switch {
	case a.after == "after" || x == 0:
		x += 1e-9
	case a.after == "before" || math.Abs(x-m.length) < 1e-4:
		x -= 1e-9
	}
	return m, x
}

// section is a question for N, V or M at a cut.
func (p *play) section(a asked) error {
	m, x := p.place(a)
	defer p.keep(a.what+m.name, x, len(p.accepted))
	truth := p.t.cut(m, x, a.what, true).total(p.t.values)
	reach := p.reach(m, x, a.what)
	var guesses []guess
	bare := p.t.cut(m, x, a.what, true).idle(p.t.values) || p.t.cut(m, x, a.what, false).idle(p.t.values)
	for _, start := range []bool{true, false} {
		if !bare && p.simpler(m, x, a.what, start) {
			guesses = append(guesses, p.t.sectionGuesses(section{m, x, a.what, start}, p.own)...)
		}
	}
	if bare && a.what == "M" && (x < 1e-6 || x > m.length-1e-6) {
		guesses = append(guesses, guess{kind: "section: moment where there can be none", value: p.largestMoment(m)})
	}
	hidden := func(v float64) bool { return reach.holds(v) || math.Abs(v) > 1e5 }
	for _, g := range p.pick(guesses, hidden) {
		moved, err := p.wrongValue(g, guesses)
		if err != nil || moved {
			if moved {
				p.tally.outside()
			}
			return err
		}
	}
	if !bare { // there one sentence is true of every wrong value
		if moved, err := p.randomValue(truth, reach); err != nil || moved {
			return err
		}
	}
	if moved, err := p.beyond(truth, reach); err != nil || moved {
		return err
	}
	return p.right(p.honest(m, x, a.what, truth))
}

// simpler tells the side of a cut that a student would keep: the one with no more terms than the other.
func (p *play) simpler(m *member, x float64, what string, start bool) bool {
	return len(p.t.cut(m, x, what, start).terms) <= len(p.t.cut(m, x, what, !start).terms)
}

func (p *play) largestMoment(m *member) float64 {
	best := 0.0
	for i := range 11 {
		if v := p.t.cut(m, m.length*(0.01+0.098*float64(i)), "M", true).total(p.t.values); math.Abs(v) > math.Abs(best) {
			best = v
		}
	}
	return best
}

// randomValue types a number that comes of nothing.
func (p *play) randomValue(truth float64, reach reach) (bool, error) {
	if p.level != "values" || !p.randoms {
		return false, nil
	}
	size := largest(truth, reach.width(), 1)
	for range 20 {
		v := rounded((2*p.r.Float64()-1)*2*size, 3)
		if !reach.holds(v) && differ(math.Abs(v), math.Abs(truth)) && !zero(v) {
			return p.wrong("random number", figures(v, 3), nil, nil)
		}
	}
	return false, nil
}

// beyond types values that lie outside of what rounding can reach, near it and further off; none may be accepted.
func (p *play) beyond(truth float64, reach reach) (bool, error) {
	if p.level != "values" || !p.randoms {
		return false, nil
	}
	size := largest(truth, reach.width(), 0.05)
	tries := []float64{truth + size*0.1, truth - size*0.1, truth * 1.02, truth * 0.97, truth + reach.width()*1.3, truth - reach.width()*1.3, 0.5, -0.5, -truth}
	p.r.Shuffle(len(tries), func(i, j int) { tries[i], tries[j] = tries[j], tries[i] })
	n := 0
	for _, v := range tries {
		if s := figures(v, 3); n < 2 && !reach.holds(value(s)) && !zero(v) {
			n++
			moved, err := p.wrong("beyond rounding", s, nil, nil)
			if moved {
				p.tally.outside()
			}
			if err != nil || moved {
				return moved, err
			}
		}
	}
	return false, nil
}

// honest works N, V or M out from the simpler side with the student's own forces, each product rounded.
func (p *play) honest(m *member, x float64, what string, truth float64) string {
	if p.t.cut(m, x, what, true).idle(p.t.values) || p.t.cut(m, x, what, false).idle(p.t.values) {
		return "0"
	}
	start := p.r.IntN(2) == 0
	if p.r.IntN(3) > 0 {
		start = p.simpler(m, x, what, true)
	}
	n := p.figures
	switch p.r.IntN(3) {
	case 0:
		return figures(truth, n)
	case 1:
		return figures(p.t.cut(m, x, what, start).total(p.own), n)
	}
	sum, terms := 0.0, p.t.cut(m, x, what, start).terms
	for _, t := range terms {
		force := t.part
		if t.u != nil {
			force *= p.own[t.u.name]
		}
		sum += rounded(rounded(force, n)*rounded(t.arm, n+1), n)
	}
	if len(terms) == 0 || math.Abs(sum) < 1e-6 {
		return "0"
	}
	return figures(sum, n)
}

// passedCut is a value of N, V or M that the student has had accepted.
type passedCut struct{ x, value float64 }

// keep notes what was accepted for a cut, if anything was since n lines.
func (p *play) keep(what string, x float64, n int) {
	if len(p.accepted) > n && p.accepted[n] != "tell" {
		p.cuts[what] = append(p.cuts[what], passedCut{x, value(p.accepted[n])})
	}
}
