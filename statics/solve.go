package statics

import "unpin/statics/exact"

// A Verdict says what a count and a rank come to.
type Verdict int

// The verdicts.
const (
	Determinate Verdict = iota
	Indeterminate
	Unstable
	IndeterminateUnstable
)

// A Count compares unknowns with sums.
type Count struct {
	Unknowns int  // of the plain count: reactions, pin forces
	Sums     int  // 3 a part, 2 a pin that is a body
	Rank     int  // independent sums
	Inner    int  // unknowns hidden in rings of parts, which the verdict leaves out
	Inexact  bool // the rank rests on an angle outside the exact set
}

// Degree is the number of unknowns beyond what equilibrium can give.
func (c Count) Degree() int { return c.Unknowns - c.Rank }

// Motions is the number of independent ways the frame can move.
func (c Count) Motions() int { return c.Sums - c.Rank }

// Verdict is determinate when unknowns, sums and rank are equal.
func (c Count) Verdict() Verdict {
	switch {
	case c.Degree() > 0 && c.Motions() > 0:
		return IndeterminateUnstable
	case c.Degree() > 0:
		return Indeterminate
	case c.Motions() > 0:
		return Unstable
	}
	return Determinate
}

// String is the verdict in words: "determinate", "indeterminate", "unstable" or "indeterminate, unstable".
func (v Verdict) String() string {
	return [...]string{"determinate", "indeterminate", "unstable", "indeterminate, unstable"}[v]
}

// A Choice says why a step comes where it does.
type Choice int

// The reasons for a step's place.
const (
	StayOnBody     Choice = iota // the body in hand still has a sum with one unknown
	FewestUnknowns               // of the bodies with such a sum, this one has the fewest unknowns left
	WholeFrame                   // no part has such a sum, the whole has
	SeveralParts                 // neither has, this group of bodies has
	SolvedTogether               // no sum at all has one unknown: the smallest set that must be solved together
	KeptRelation                 // two unknowns are left; kept until one is known
	RelationUsed                 // a relation kept earlier has now one unknown
	ClosingCheck                 // an unused sum that checks the work
	SplitForce                   // a force was split so that the sum holds only one part of it
)

// A Step is one move of a plan: a free body and a sum of it (several where they must be solved together), and what
// comes out.
type Step struct {
	Sums     []Sum
	Gives    []int // forces
	Why      Choice
	Left     int // unknowns left on the body before this step
	Relation bool
	Check    bool
}

// A Solution is a frame counted and, if determinate, solved.
type Solution struct {
	*Assembly
	Count    Count
	Values   []exact.Num // of each force; nil unless determinate
	Plan     []Step
	Diagrams []Diagram // of each member
}

// A Diagram is the internal forces along one member, by the distance x from its start.
type Diagram struct {
	Member   int
	Length   exact.Num
	Pieces   []Piece
	Withheld bool // the member lies on a ring of its part: equilibrium alone does not give N, V, M
}

// A Piece is a stretch of a member over which N, V and M are single polynomials in x (lowest power first). N is
// positive in tension, dM/dx = V.
type Piece struct {
	From, Until exact.Num
	N, V, M     exact.Poly
}
