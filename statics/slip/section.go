package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A Section is a question for N, V or M at a place along a member whose part has no ring there.
type Section struct {
	Solution  *statics.Solution
	Member    int
	Station   statics.Station
	Quantity  statics.Quantity
	Side      statics.KeptSide // the piece whose sum is written: from the start of the member, or to its end
	Values    []exact.Num      // of all forces: exact or the student's own
	Customary bool
}

// Candidates lists the values that single slips lead to, as Question.Candidates does.
func (c Section) Candidates() []Candidate {
	// Units and figures of the data are looked for on one piece: on both, too many numbers would fit.
	return c.candidates(func(row *Slip) bool {
		return !row.Slight && !row.InSteps && (c.Side != statics.ToEnd || row.Group != Algebra)
	})
}

// Excluded is nothing: no sum stands on the page.
func (c Section) Excluded() []Candidate { return nil }

// Unlikely lists the values of the slips that hardly anyone makes at a section, as Candidates does.
func (c Section) Unlikely() []Candidate {
	return c.candidates(func(row *Slip) bool { return row.InSteps })
}

// candidates lists those of the slips that are wanted.
func (c Section) candidates(want func(*Slip) bool) []Candidate {
	q, k := c.question()
	y, ok := q.system()
	if !ok {
		return nil
	}
	all := y.list(&setting{site: site{q.Assembly, q.Sums[0]}, question: q, right: y.answer, cut: k}, want)
	sortCandidates(all)
	return all
}

// Erred lists the ways to a wrong value that a worked sum of the kept piece can show: the sum as a slip of choosing or measuring leaves it. What
// says nothing of the sum is not among them, as Question.Erred has it.
func (c Section) Erred() []Erred {
	q, k := c.question()
	q.Written = true
	y, ok := q.system()
	if !ok {
		return nil
	}
	all := y.erred(&setting{site: site{q.Assembly, q.Sums[0]}, question: q, right: y.answer, cut: k}, false)
	return slices.DeleteFunc(all, func(e Erred) bool {
		return e.Slip.InSteps || slices.ContainsFunc(e.Terms, func(t statics.Term) bool { return t.Force == statics.None && t.Action == statics.None })
	})
}

// Slight is empty: no sum stands on the page.
func (c Section) Slight() []Candidate { return nil }

// Value is what the forces on the kept side of the section give for the quantity.
func (c Section) Value() exact.Num {
	q, _ := c.question()
	y, _ := q.system()
	return y.answer
}

// Sum is the sum of all that acts on the starting side, as one of an assembly of its own, in which the quantity is the
// last force, named by its letter. Its body is the part; what does not act on the starting side has no term.
func (c Section) Sum() (*statics.Assembly, statics.Sum) {
	q, _ := c.question()
	return q.Assembly, q.Sums[0]
}

// question is the sum of the kept piece, in which the quantity is the only unknown: a force numbered after all others.
func (c Section) question() (Question, *cut) {
	k := c.keep()
	a, sum := k.kept.Sum(c.Quantity)
	own := len(a.Forces) - 1
	return Question{
		Assembly:  a,
		Sums:      []statics.Sum{sum},
		Gives:     []int{own},
		Force:     own,
		Values:    append(slices.Clone(c.Values), exact.Num{}),
		Known:     func(force int) bool { return force != own },
		Customary: c.Customary,
	}, k
}
