package slip

import (
	"cmp"
	"iter"
	"maps"
	"math"
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
	// Stands tells that the sums stand on the page, printed or written and found right: what is left is to solve them.
	Stands bool
	// Written tells that the terms are written down, so that each shape of a load may be altered by itself.
	Written bool
}

// A Candidate is a slip that may have been made, and the value to which it leads.
type Candidate struct {
	Slip  *Slip
	Value exact.Num
	Giver Giver
	Sum   int   // which of the question's sums it changes
	Terms []int // the terms of that sum which it changes or leaves out, rising
	Whole bool  // a typed value agrees only if it equals Value: its figures are written so
}

// A Giver is what a changed term comes from: an unknown force or a load, by its index, the other being None. Both are
// None where the slip is in no single term.
type Giver struct{ Force, Load int }

// nobody is the giver where a slip is in no single term.
var nobody = Giver{statics.None, statics.None}

// Candidates lists the values that single slips lead to, in rising order; the right value is among them where a slip
// makes no difference. Where the sums stand on the page, only slips in what is left to do are among them. It is empty if
// the sums do not give the unknowns.
func (q Question) Candidates() []Candidate {
	return q.candidates(q.usual)
}

// usual reports whether a slip is one that Candidates lists.
func (q Question) usual(row *Slip) bool { return !row.Slight && (!q.Stands || row.Needs.Remains()) }

// Each goes through what Candidates lists, but for slips that alter the answer alone where these are not wanted, in the order of the
// catalogue, until look says no. The terms of a candidate are not told.
func (q Question) Each(reported bool, look func(Candidate) bool) {
	system, ok := q.system()
	if !ok {
		return
	}
	want := func(row *Slip) bool { return q.usual(row) && (reported || row.Needs != Reporting) }
	for n := range q.Sums {
		s := &setting{site: site{q.Assembly, q.Sums[n]}, question: q, n: n, right: system.answer}
		for c := range system.candidates(s, want) {
			if !look(c.Candidate) {
				return
			}
		}
	}
}

// Sorted puts candidates in the order of Candidates.
func Sorted(all []Candidate) []Candidate {
	sortCandidates(all)
	return all
}

// Slight lists the values that slight slips lead to, as Candidates does.
func (q Question) Slight() []Candidate {
	return q.candidates(func(row *Slip) bool { return row.Slight })
}

// Excluded lists the values that the other slips would lead to, as Candidates does: those that cannot have been made
// where the sums stand on the page.
func (q Question) Excluded() []Candidate {
	return q.candidates(func(row *Slip) bool { return q.Stands && !row.Needs.Remains() })
}

// candidates lists those of the slips that are wanted.
func (q Question) candidates(want func(*Slip) bool) []Candidate {
	system, ok := q.system()
	if !ok {
		return nil
	}
	var all []Candidate
	for n := range q.Sums {
		s := &setting{site: site{q.Assembly, q.Sums[n]}, question: q, n: n, right: system.answer}
		all = append(all, system.list(s, want)...)
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

// A changedBy is a candidate with the change that leads to it.
type changedBy struct {
	Candidate
	change change
}

// list lists those of one sum, of the slips that are wanted.
func (y *system) list(s *setting, want func(*Slip) bool) []Candidate {
	var all []Candidate
	for c := range y.candidates(s, want) {
		c.Terms = slices.Sorted(maps.Keys(c.change.terms))
		all = append(all, c.Candidate)
	}
	return all
}

// candidates goes through those of one sum, of the slips that are wanted, without their terms.
func (y *system) candidates(s *setting, want func(*Slip) bool) iter.Seq[changedBy] {
	return func(yield func(changedBy) bool) {
		met := map[matter][]exact.Num{} // values of the candidates so far
		for _, row := range inOrder() {
			if !want(row) {
				continue
			}
			for _, c := range row.find(s) {
				v, ok := y.changed(s, c)
				m := matter{c.giver, row.About}
				if !ok || row.General && slices.ContainsFunc(met[m], v.Equal) {
					continue
				}
				if !yield(changedBy{Candidate{Slip: row, Value: v, Giver: c.giver, Sum: s.n, Whole: c.whole}, c}) {
					return
				}
				if !row.Aside {
					met[m] = append(met[m], v)
				}
			}
		}
	}
}

// A matter is what a candidate is about: one aspect of the terms of one giver. Two candidates about the same matter that
// come to the same value make the same change.
type matter struct {
	giver Giver
	about Aspect
}

// sortCandidates puts candidates in rising order of value, and in the order of the catalogue where they are equal. Nearly all are told
// apart by whole numbers, which are compared in no time; comparing roots takes long.
func sortCandidates(all []Candidate) {
	type ranked struct {
		floor int64
		Candidate
	}
	order := make([]ranked, len(all))
	for i, c := range all {
		order[i] = ranked{finely(c.Value), c}
	}
	slices.SortStableFunc(order, func(a, b ranked) int {
		if a.floor != b.floor {
			return cmp.Compare(a.floor, b.floor)
		}
		return a.Value.Cmp(b.Value)
	})
	for i, r := range order {
		all[i] = r.Candidate
	}
}

// fine is the step by which most values differ, as its inverse.
var fine = exact.Int(1 << 20)

// finely is the whole number of fine steps in a value, or the greatest or least number there is: of two values the greater never has less.
func finely(x exact.Num) int64 {
	n := x.Mul(fine).Floor()
	switch {
	case n.IsInt64():
		return n.Int64()
	case n.Sign() < 0:
		return math.MinInt64
	}
	return math.MaxInt64
}
