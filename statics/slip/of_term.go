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
	q.Known, q.Stands = func(int) bool { return true }, false
	q.Values = make([]exact.Num, len(q.Assembly.Forces))
	for f := range q.Values {
		q.Values[f] = one
	}
	s := &setting{site: site{q.Assembly, q.Sums[n]}, question: q, n: n}
	var all []Altered
	for _, row := range inOrder {
		if row.About == Presence || row.About == Answer || row.Needs == Multiplying {
			continue // these do not change a term that is there, or its product alone
		}
		for _, c := range row.find(s) {
			t, changed := c.terms[i]
			a := Altered{row, t}
			if changed && t.Sign != 0 && len(c.stray) == 0 && c.giver != nobody && !slices.ContainsFunc(all, a.shown) {
				all = append(all, a)
			}
		}
	}
	return all
}

// shown reports whether b makes the same of the term, and is the same slip or describes it better.
func (a Altered) shown(b Altered) bool {
	return (a.Slip == b.Slip || a.Slip.General && !b.Slip.Aside) &&
		a.Term.Sign == b.Term.Sign && a.Term.Size.Equal(b.Term.Size) && a.Term.Arm.Equal(b.Term.Arm)
}
