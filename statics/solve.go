package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A Solution is a frame counted and, if determinate, solved.
type Solution struct {
	*Assembly
	Count    Count
	Values   []exact.Num // of each force; nil unless determinate
	Plan     []Step
	Diagrams []Diagram // of each member
	reduced  *reduced  // where two-force members are used at once: what it was made from; else nil
}

// Solve cuts a frame, counts, and, if it is determinate, finds every force, a plan and the internal forces. The error
// is that of Cut; a frame that is not determinate is no error.
func Solve(f Frame) (*Solution, error) {
	s, err := SolveForces(f)
	if err == nil {
		s.Complete()
	}
	return s, err
}

// SolveForces is Solve without the plan and the internal forces, which take most of its time.
func SolveForces(f Frame) (*Solution, error) {
	a, err := Cut(f)
	if err != nil {
		return nil, err
	}
	s := &Solution{Assembly: a}
	count, sums := a.count()
	if s.Count = count; count.Determinacy() == Determinate {
		s.Values = a.forces(sums)
	}
	return s, nil
}

// Complete adds the plan and the internal forces to what SolveForces found.
func (s *Solution) Complete() {
	if s.Values != nil {
		s.Plan, s.Diagrams = s.plan(s.Values), s.diagrams(s.Values)
	}
}

// forces is the value of each force, from the sums of all bodies in triangular form: all of them hold (S8). The sums hold multipliers of
// directions as they are given; a value is that of the force along the unit vector.
func (a *Assembly) forces(sums *elimination) []exact.Num {
	values := sums.solve()
	for i := range a.Forces {
		if f := &a.Forces[i]; !f.Couple {
			values[i] = values[i].Mul(f.Along.Length())
		}
	}
	return values
}

// Unchecked lists the steps of the plan, by their places, that need a check and that no closing check catches.
func (s *Solution) Unchecked() []int {
	var none []int
	for n := range s.Plan {
		caught := func(step Step) bool { return slices.Contains(step.Catches, n) }
		if s.Plan[n].needsCheck(s.Assembly, s.Values) && !slices.ContainsFunc(s.Plan, caught) {
			none = append(none, n)
		}
	}
	return none
}
