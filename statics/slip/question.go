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
		all = append(all, system.candidates(&scene{Question: q, n: n, sum: q.Sums[n], right: system.answer})...)
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
func (y *system) candidates(s *scene) []Candidate {
	var all []Candidate
	for _, row := range inOrder {
		if s.Written && !row.afterTerms() {
			continue
		}
		for _, c := range row.find(s) {
			v, ok := y.changed(s, c)
			if n := (Candidate{row, v, c.giver}); ok && !(row.General && slices.ContainsFunc(all, n.same)) {
				all = append(all, n)
			}
		}
	}
	return all
}

// afterTerms reports whether a slip can still be made once all terms are written and right.
func (s *Slip) afterTerms() bool { return s.Group == Algebra && s.About != Size }

// same reports whether two candidates make the same change to the same term.
func (c Candidate) same(d Candidate) bool {
	return c.Giver == d.Giver && c.Slip.About == d.Slip.About && c.Value.Equal(d.Value)
}

// sortCandidates puts candidates in rising order of value, and in the order of the catalogue where they are equal.
func sortCandidates(all []Candidate) {
	slices.SortStableFunc(all, func(a, b Candidate) int { return a.Value.Cmp(b.Value) })
}

// A scene is one sum of a question, as the slips see it.
type scene struct {
	Question
	n     int
	sum   statics.Sum
	right exact.Num // the answer without a slip
	cut   *cut      // where the question is for N, V or M at a section
}

// A change is what a slip does to the sum of a scene, or at last to its answer.
type change struct {
	giver Giver
	terms map[int]statics.Term // what terms become, by index; one of sign 0 is left out
	stray []statics.Term       // terms that do not belong
	times exact.Num            // what the answer is multiplied by at last, unless 0
	given *exact.Num           // the answer itself, come to without the sum
}

// amount is what a term adds up to with the values of the question.
func (s *scene) amount(t statics.Term) exact.Num { return t.Amount(s.Values) }

// unknown reports whether a term is one of the unknowns' own.
func (s *scene) unknown(t statics.Term) bool {
	return t.Force != statics.None && !s.Known(t.Force)
}

// known lists the terms that count and have a known amount other than 0.
func (s *scene) known() []int {
	return s.where(func(t statics.Term) bool {
		return t.Why == statics.Counts && !s.unknown(t) && !s.amount(t).IsZero()
	})
}

// own lists the terms of the force that is asked for.
func (s *scene) own() []int {
	return s.where(func(t statics.Term) bool { return t.Why == statics.Counts && t.Force == s.Force })
}

// where lists the terms that a test holds for.
func (s *scene) where(test func(statics.Term) bool) []int {
	var all []int
	for i, t := range s.sum.Terms {
		if test(t) {
			all = append(all, i)
		}
	}
	return all
}

// giver is what a term comes from.
func (s *scene) giver(t statics.Term) Giver {
	if t.Action != statics.None {
		return Giver{statics.None, s.Assembly.Loads[t.Action].Load}
	}
	return Giver{t.Force, statics.None}
}

// action is the action of a term that comes from a load.
func (s *scene) action(t statics.Term) statics.Action { return s.Assembly.Loads[t.Action] }

// load is the load that a term comes from.
func (s *scene) load(t statics.Term) statics.Load { return s.Assembly.Frame.Loads[s.action(t).Load] }

// isLoad reports whether a term comes from a load.
func isLoad(t statics.Term) bool { return t.Action != statics.None }

// isCouple reports whether a term is a couple.
func isCouple(t statics.Term) bool { return t.What == statics.TurnOnly }
