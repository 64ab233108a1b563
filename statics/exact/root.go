package exact

import (
	"math/big"
	"slices"
)

// Bounds on the roots of one number and the pairs of terms of one product, and
// so on the work of one operation. Past them a result is rounded and marked.
const (
	maxRoots    = 128
	maxProducts = 4096
)

var one = big.NewInt(1) // read only

// root is q·√n, n ≥ 1. It never changes. In a Num q ≠ 0 and n > 1; while a
// product is worked out, n = 1 stands for a rational.
type root struct {
	q     rational
	n     *big.Int
	loose bool // n may hide the square of a prime above the trial divisors
}

func (s root) scale(k rational) root {
	s.q = s.q.mul(k)
	return s
}

// mul is s·t: √m·√n = g·√(m/g · n/g), g the greatest common divisor of m and
// n. The new radicand is squarefree if both were.
func (s root) mul(t root) root {
	q := s.q.mul(t.q)
	switch {
	case t.isRational():
		return root{q, s.n, s.loose}
	case s.isRational():
		return root{q, t.n, t.loose}
	case s.n.Cmp(t.n) == 0:
		return root{q: q.mul(wholeRatio(s.n)), n: one}
	}
	g, n := splitProduct(s.n, t.n)
	p := root{q.mul(wholeRatio(g)), n, s.loose || t.loose}
	if p.loose {
		return p.unhidden()
	}
	return p
}

// unhidden is s as a rational, if its radicand is a perfect square.
func (s root) unhidden() root {
	if r, ok := squareRoot(s.n); ok {
		return root{q: s.q.mul(wholeRatio(r)), n: one}
	}
	return s
}

// splitProduct writes m·n as g²·rest, g their greatest common divisor.
func splitProduct(m, n *big.Int) (g, rest *big.Int) {
	if m.IsInt64() && n.IsInt64() {
		w := gcdWord(m.Int64(), n.Int64())
		if rest, ok := mulWord(m.Int64()/w, n.Int64()/w); ok {
			return big.NewInt(w), big.NewInt(rest)
		}
	}
	g = new(big.Int).GCD(nil, nil, m, n)
	rest = new(big.Int).Quo(m, g)
	return g, rest.Mul(rest, new(big.Int).Quo(n, g))
}

func (s root) isRational() bool { return s.n.Cmp(one) == 0 }

// inClassOf is s written with the radicand of t, if the two are of one square
// class: √m = √(mn)/n · √n.
func (s root) inClassOf(t root) (root, bool) {
	if s.n.Cmp(t.n) == 0 {
		return s, true
	}
	if !s.loose && !t.loose {
		return s, false // two squarefree radicands
	}
	r, ok := squareRoot(new(big.Int).Mul(s.n, t.n))
	if !ok {
		return s, false
	}
	return root{s.q.mul(newRatio(new(big.Rat).SetFrac(r, t.n))), t.n, t.loose}, true
}

// terms is a as roots, its rational part among them.
func (a Num) terms() []root {
	if a.r().isZero() {
		return a.roots()
	}
	return append([]root{{q: a.r(), n: one}}, a.roots()...)
}

// withRoots is r plus the roots ts: one root to a square class, rational ones
// and zeros taken out.
func withRoots(r rational, ts []root, inexact bool) Num {
	slices.SortStableFunc(ts, func(s, t root) int { return s.n.Cmp(t.n) })
	loose := slices.ContainsFunc(ts, func(t root) bool { return t.loose })
	var roots []root
	for _, t := range ts {
		if t.isRational() {
			r = r.add(t.q)
		} else {
			roots = addRoot(roots, t, loose)
		}
	}
	roots = slices.DeleteFunc(roots, func(t root) bool { return t.q.isZero() })
	if len(roots) > maxRoots {
		return number(r, roots, inexact).Rounded(inexactDigits).MarkInexact()
	}
	return number(r, roots, inexact)
}

// addRoot adds t to the sum ts, sorted and with no radicand above that of t.
// Only where some are loose can radicands share a class and not be equal.
func addRoot(ts []root, t root, loose bool) []root {
	for i := len(ts) - 1; i >= 0; i-- {
		if same, ok := t.inClassOf(ts[i]); ok {
			ts[i].q = ts[i].q.add(same.q)
			return ts
		}
		if !loose {
			break
		}
	}
	return append(ts, t)
}
