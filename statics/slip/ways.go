package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

var (
	one, two = exact.Int(1), exact.Int(2)
	half     = over(one, two)
)

// without is a term that is left out.
func without(t statics.Term) statics.Term {
	t.Sign = 0
	return t
}

// turned is a term with its sign turned round.
func turned(t statics.Term) statics.Term {
	t.Sign = -t.Sign
	return t
}

// sized is a term with its size multiplied by r, which is not negative.
func sized(t statics.Term, r exact.Num) statics.Term {
	t.Size = t.Size.Mul(r)
	return t
}

// armed is a term with another arm.
func armed(t statics.Term, arm exact.Num) statics.Term {
	t.Arm = arm
	return t
}

// armedEach is a term with each of some arms, but zero.
func armedEach(t statics.Term, arms []exact.Num) []statics.Term {
	var all []statics.Term
	for _, arm := range distinct(arms) {
		all = append(all, armed(t, arm))
	}
	return all
}

// movedTo is a term of a moment sum with its arm and sign as if the force acted at p, or the centre were elsewhere.
func movedTo(t statics.Term, about, p statics.Point) statics.Term {
	turn := about.To(p).Cross(t.Toward)
	t.Arm, t.Sign, t.At = over(turn.Abs(), t.Toward.Length()), turn.Sign(), p
	return t
}

// pointing is a force of some size along a direction as one term of the sum.
func (s *site) pointing(t statics.Term, size exact.Num, along statics.Vector) statics.Term {
	t.What, t.Why, t.Toward, t.Arm = statics.WholeForce, statics.Counts, along, one
	if s.sum.Moment {
		t.Size = size
		return movedTo(t, s.sum.About, t.At)
	}
	share := along.Dot(s.sum.Along)
	t.Size = over(size.Mul(share.Abs()), along.Length().Mul(s.sum.Along.Length()))
	t.Sign = share.Sign()
	return t
}

// only is a list of one way.
func only(way func(statics.Term) statics.Term) func(statics.Term) []statics.Term {
	return func(t statics.Term) []statics.Term { return []statics.Term{way(t)} }
}

// slanting reports whether a direction lies along neither axis.
func slanting(v statics.Vector) bool { return !v.X.IsZero() && !v.Y.IsZero() }

// distinct is a list without zeros and repeated numbers.
func distinct(list []exact.Num) []exact.Num {
	var all []exact.Num
	for _, x := range list {
		if !x.IsZero() && !slices.ContainsFunc(all, x.Equal) {
			all = append(all, x)
		}
	}
	return all
}
