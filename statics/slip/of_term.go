package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// An Altered term is what a slip makes of one term of a sum.
type Altered struct {
	Slip *Slip
	Term statics.Term
}

// OfTerm lists what slips make of term i of sum n, where it stays in the sum: the terms as they are written, with the
// names of the forces, so that it does not matter which of them are known. Slips of several givers' terms at once are not
// among them.
func (q Question) OfTerm(n, i int) []Altered {
	q.Known, q.Stands, q.Written = func(int) bool { return true }, false, true
	q.Values = make([]exact.Num, len(q.Assembly.Forces))
	for f := range q.Values {
		q.Values[f] = one
	}
	s := &setting{site: site{q.Assembly, q.Sums[n]}, question: q, n: n}
	var all []Altered
	for _, row := range inOrder() {
		if row.About == Presence || row.About == Answer || row.Slight || row.Needs == Multiplying {
			continue // these do not change a term that is there, or its product alone
		}
		for _, c := range row.find(s) {
			t, stays := s.stays(c, i)
			a := Altered{row, t}
			if stays && c.giver != nobody && !slices.ContainsFunc(all, a.shown) {
				all = append(all, a)
			}
		}
	}
	return all
}

// stays is what a change makes of term i where it stays in the sum. Of a force that is turned into another direction this
// is its component along the term.
func (s *setting) stays(c change, i int) (statics.Term, bool) {
	t, changed := c.terms[i]
	switch {
	case !changed:
		return t, false
	case len(c.stray) == 0:
		return t, t.Sign != 0
	}
	was := s.sum.Terms()[i]
	for _, other := range c.stray {
		if !isLoad(was) || other.Action != was.Action {
			continue
		}
		t = was
		if t.Size = other.Size; s.sum.Moment {
			t.Size = over(other.Size.Mul(other.Toward.Dot(was.Toward).Abs()), other.Toward.Length().Mul(was.Toward.Length()))
		}
		return t, !t.Size.IsZero()
	}
	return t, false
}

// shown reports whether b makes the same of the term, and is the same slip, or a general one as well.
func (a Altered) shown(b Altered) bool {
	return (a.Slip == b.Slip || a.Slip.General && b.Slip.General) &&
		a.Term.Sign == b.Term.Sign && a.Term.Size.Equal(b.Term.Size) && a.Term.Arm.Equal(b.Term.Arm)
}
