package statics

import (
	"slices"
	"sync"

	"unpin/statics/exact"
)

// A Sum is one equilibrium equation of a free body: its terms add up to zero.
type Sum struct {
	Body   FreeBody
	Moment bool
	Along  Vector // force sum: the direction, positive; unscaled
	About  Point  // moment sum: the centre; counter-clockwise is positive
	Centre int    // the joint at About, or None
	terms  *terms // nil if there are none
}

// terms are those of a sum of an assembly, written when they are read first: of most sums of a plan never, in a large frame.
type terms struct {
	of  *Assembly
	do  sync.Once
	all []Term
}

// Terms lists the terms of a sum: unknown forces first, in order, then the actions of loads. The list is to be read only.
func (s Sum) Terms() []Term {
	t := s.terms
	if t == nil {
		return nil
	}
	if t.of != nil {
		t.do.Do(func() { t.all = t.of.write(s) })
	}
	return t.all
}

// With is the sum with these terms in place of its own.
func (s Sum) With(all []Term) Sum {
	s.terms = &terms{all: all}
	return s
}

// A Component says which part of a force a term is about.
type Component int

// The components of a force.
const (
	WholeForce Component = iota // all of it (in a force sum: its share along the sum's direction)
	Horizontal
	Vertical
	TurnOnly // a couple
)

// An Absence says why a force that acts on the body adds nothing to a sum.
type Absence int

// The reasons for a term to count or to be absent.
const (
	Counts        Absence = iota
	ThroughCentre         // its line passes through the centre
	InsideBody            // both its faces are inside the cut
	SquareTo              // it acts perpendicular to the direction
	NoPush                // a couple has no part in a force sum
)

// A Term is one product in a sum: sign × size × arm. Size and arm are never negative. A force that acts on the body but
// adds nothing is a term too, with sign 0 and the reason.
type Term struct {
	Force  int // the unknown, or None
	Action int // index into Assembly.Actions, or None
	What   Component
	Size   exact.Num // a load's component; for an unknown the share of its value, 1 or say 3/5
	Arm    exact.Num // 1 in a force sum and for a couple
	Sign   int       // +1, −1, or 0 if it is absent
	Why    Absence
	At     Point  // where it acts
	Toward Vector // the direction of this component, unscaled, as it acts on the body when the value is positive; zero for a couple
}

// Value is the term's signed product: for a load its whole contribution, for an unknown the factor of its value.
func (t Term) Value() exact.Num {
	v := t.Size.Mul(t.Arm)
	if t.Sign < 0 {
		return v.Neg()
	}
	if t.Sign == 0 {
		return exact.Num{}
	}
	return v
}

// Same reports whether two terms are the same product of the same force or load.
func (t Term) Same(o Term) bool {
	return t.Force == o.Force && t.Action == o.Action && t.Sign == o.Sign && t.Size.Equal(o.Size) && t.Arm.Equal(o.Arm)
}

// Same reports whether two sums are of the same free body, about the same centre or along the same line.
func (s Sum) Same(o Sum) bool {
	if !slices.Equal(s.Body, o.Body) || s.Moment != o.Moment {
		return false
	}
	if s.Moment {
		return s.About.Equal(o.About)
	}
	return s.Along.Cross(o.Along).IsZero()
}

// Again is a sum of this assembly made anew as a sum of another with the same bodies.
func (s Sum) Again(a *Assembly) Sum {
	if s.Moment {
		return a.MomentSum(s.Body, s.About)
	}
	return a.ForceSum(s.Body, s.Along)
}

// Factor is what the value of force i is multiplied by in the sum.
func (s Sum) Factor(i int) exact.Num {
	var k exact.Num
	for _, t := range s.Terms() {
		if t.Force == i {
			k = k.Add(t.Value())
		}
	}
	return k
}

// Unknowns lists the forces that count in the sum and whose values are not known.
func (s Sum) Unknowns(known func(force int) bool) []int {
	var left []int
	for _, t := range s.Terms() {
		if t.Force != None && t.Why == Counts && !known(t.Force) && !slices.Contains(left, t.Force) {
			left = append(left, t.Force)
		}
	}
	return left
}

// Residual is what the sum comes to when the forces have these values: zero in equilibrium.
func (s Sum) Residual(values []exact.Num) exact.Num {
	var r exact.Num
	for _, t := range s.Terms() {
		r = r.Add(t.Amount(values))
	}
	return r
}

// Amount is what the term adds up to when the forces have these values.
func (t Term) Amount(values []exact.Num) exact.Num {
	if t.Force == None {
		return t.Value()
	}
	return t.Value().Mul(values[t.Force])
}
