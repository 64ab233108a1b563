package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A Written sum is what a slip makes of a sum that is written down.
type Written struct {
	Slip  *Slip
	Giver Giver
	Sum   statics.Sum
	Terms []statics.Term // those that it changed and left in, and those that it added
}

// OfSum lists what single slips make of a sum, with the forces by name, or for those that a value is given for, with that
// value put in. Slips in how an answer is taken from the terms are not among them.
func OfSum(a *statics.Assembly, sum statics.Sum, value map[int]exact.Num, customary bool) []Written {
	q := Question{Assembly: a, Sums: []statics.Sum{sum}, Force: len(a.Forces), Customary: customary, Written: true}
	q.Known = func(int) bool { return true }
	for f := range a.Forces {
		v, given := value[f]
		if !given {
			v = one
		}
		q.Values = append(q.Values, v)
	}
	s := &setting{site: site{a, sum}, question: q}
	var all []Written
	for _, row := range inOrder() {
		if row.About == Answer {
			continue
		}
		for _, c := range row.find(s) {
			if len(c.terms)+len(c.stray) > 0 {
				all = append(all, c.written(row, sum))
			}
		}
	}
	return all
}

// written is a sum after a change, without the terms that are left out.
func (c change) written(row *Slip, s statics.Sum) Written {
	w := Written{Slip: row, Giver: c.giver}
	var terms []statics.Term
	for i, t := range s.Terms() {
		other, changed := c.terms[i]
		switch {
		case !changed:
			terms = append(terms, t)
		case other.Sign != 0:
			terms, w.Terms = append(terms, other), append(w.Terms, other)
		}
	}
	for _, t := range c.stray {
		if t.Sign != 0 {
			terms, w.Terms = append(terms, t), append(w.Terms, t)
		}
	}
	w.Sum = s.With(terms)
	return w
}
