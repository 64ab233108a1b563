package slip

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// An Erred is one way to a wrong value, whole: the slip, the sum as it leaves it, and what that gives for the force asked for.
type Erred struct {
	Written
	Value exact.Num
	// Solving tells that the sum was written right, and that the slip came in solving it: Sum is then what was solved.
	Solving bool
}

// Erred lists the ways to a wrong value that a worked solution can show, for a question of one sum: the sum as a slip of choosing
// or measuring leaves it, or the right sum and a slip in solving it. What says nothing of the sum, as a value guessed, and what lies
// in how a right value is reported, are not among them; nor is a number miscopied.
func (q Question) Erred() []Erred {
	if len(q.Sums) != 1 {
		return nil
	}
	var all []Erred
	for _, solving := range []bool{false, true} {
		q.Stands, q.Written = solving, !solving
		y, ok := q.system()
		if !ok {
			return nil
		}
		s := &setting{site: site{q.Assembly, q.Sums[0]}, question: q, right: y.answer}
		all = append(all, y.erred(s, solving)...)
	}
	return all
}

// erred lists those of the sum, or else those of solving it.
func (y *system) erred(s *setting, solving bool) []Erred {
	var all []Erred
	for _, row := range inOrder() {
		if row.Slight || !row.shows(solving) {
			continue
		}
		for _, c := range row.find(s) {
			v, ok := y.changed(s, c)
			if !ok || c.given != nil || v.Equal(y.answer) || !solving && len(c.terms)+len(c.stray) == 0 {
				continue
			}
			e := Erred{Written: c.written(row, s.sum), Value: v, Solving: solving}
			if !(row.General && slices.ContainsFunc(all, e.alike)) {
				all = append(all, e)
			}
		}
	}
	return all
}

// shows reports whether a worked solution can show a slip: in a sum, or else in solving it.
func (s *Slip) shows(solving bool) bool {
	if solving {
		return s.Needs == Multiplying || s.Needs == Moving || s.Needs == Dividing
	}
	return s.Needs < Copying
}

// InWorking reports whether a worked solution of the forces can show a slip, in a sum or in solving it; or one of N, V and M, in the sum of a
// kept piece.
func (s *Slip) InWorking() bool {
	if s.Group == Internal {
		return s.About != Answer && s.shows(false)
	}
	return !s.Slight && (s.shows(false) || s.shows(true))
}

// alike reports whether another way is about the same of the same giver, and comes to the same.
func (e Erred) alike(other Erred) bool {
	return e.Giver == other.Giver && e.Slip.About == other.Slip.About && e.Value.Equal(other.Value)
}

// SameTerms reports whether two sums have the same terms that count, in whatever order.
func SameTerms(a, b statics.Sum) bool {
	every := func(t statics.Term) bool { return t.Sign != 0 }
	left := counting(b, every)
	for _, t := range counting(a, every) {
		i := slices.IndexFunc(left, t.Same)
		if i < 0 {
			return false
		}
		left = slices.Delete(left, i, i+1)
	}
	return len(left) == 0
}
