package notation

import "unpin/statics/exact"

// A quantity is a value in the units of a problem, with its powers of force, length and angle.
type quantity struct {
	n      exact.Num
	powers [3]int
	plain  bool // no unit took part, nor a name
	free   bool // a name took part, so that the powers are not known
}

// times is n, with the powers of a·b^power.
func (a quantity) times(n exact.Num, b quantity, power int) quantity {
	q := quantity{n: n, powers: a.powers, plain: a.plain && b.plain, free: a.free || b.free}
	for i := range q.powers {
		q.powers[i] += power * b.powers[i]
	}
	return q
}

// yieldsTo reports whether a + b measures what b does: zero goes with anything, a plain number with a name, and a name
// with a unit.
func (a quantity) yieldsTo(b quantity) bool {
	switch {
	case a.plain:
		return b.plain || b.free || a.n.IsZero()
	case a.free:
		return !b.plain
	}
	return !b.plain && !b.free && a.powers == b.powers
}

// nameOf is what a number of these powers measures.
func nameOf(p [3]int) string {
	for d, q := range powers {
		if p == q {
			return Dimension(d).String()
		}
	}
	return "neither force, length nor moment"
}
