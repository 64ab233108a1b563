package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A Question is what a student was asked: a force that one sum gives, or several solved together.
type Question struct {
	Assembly *statics.Assembly
	Sums     []statics.Sum
	Gives    []int // the unknowns of the sums, as many as there are sums
	Force    int   // the one that is asked for
	// Values of all forces, the unknown ones included: exact, or those that the student found.
	Values []exact.Num
	// Known tells which forces were known before; those alone can have been put in with a value.
	Known     func(force int) bool
	Customary bool // the units are feet and pounds, not metres and newtons
	Written   bool // the student has written all terms, and they are right
}

// A Candidate is a slip that may have been made, and the value to which it leads.
type Candidate struct {
	Slip  *Slip
	Value exact.Num
	Giver Giver
}

// A Giver is what a changed term comes from: an unknown force or a load, by its index, the other being None. Both are
// None where the slip is in no single term.
type Giver struct{ Force, Load int }

// nobody is the giver where a slip is in no single term.
var nobody = Giver{statics.None, statics.None}

// Candidates lists the values that single slips lead to, in rising order; the right value is among them where a slip
// makes no difference. It is empty if the sums do not give the unknowns.
func (q Question) Candidates() []Candidate {
	system, ok := q.system()
	if !ok {
		return nil
	}
	var all []Candidate
	for n := range q.Sums {
		all = append(all, system.candidates(&setting{site: site{q.Assembly, q.Sums[n]}, question: q, n: n, right: system.answer})...)
	}
	sortCandidates(all)
	return all
}

// Value is what the sums give for the force without a slip, with the question's values; 0 if they do not give it.
func (q Question) Value() exact.Num {
	y, ok := q.system()
	if !ok {
		return exact.Num{}
	}
	return y.answer
}

// candidates lists those of one sum.
func (y *system) candidates(s *setting) []Candidate {
	var all []Candidate
	met := map[matter][]exact.Num{} // values of the candidates so far
	for _, row := range inOrder {
		if s.question.Written && !row.afterTerms() {
			continue
		}
		for _, c := range row.find(s) {
			v, ok := y.changed(s, c)
			m := matter{c.giver, row.About}
			if ok && !(row.General && slices.ContainsFunc(met[m], v.Equal)) {
				all, met[m] = append(all, Candidate{row, v, c.giver}), append(met[m], v)
			}
		}
	}
	return all
}

// afterTerms reports whether a slip can still be made once all terms are written and right.
func (s *Slip) afterTerms() bool { return s.Group == Algebra && s.About != Size }

// A matter is what a candidate is about: one aspect of the terms of one giver. Two candidates about the same matter that
// come to the same value make the same change.
type matter struct {
	giver Giver
	about Aspect
}

// sortCandidates puts candidates in rising order of value, and in the order of the catalogue where they are equal.
func sortCandidates(all []Candidate) {
	slices.SortStableFunc(all, func(a, b Candidate) int { return a.Value.Cmp(b.Value) })
}
