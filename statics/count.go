package statics

// count compares the unknowns with the sums of all bodies, brought to triangular form. What it comes to rests on the rank
// alone, so that it holds also for frames of the right number whose forces are badly placed (S7).
func (a *Assembly) count() (Count, *elimination) {
	rows, inexact := a.rows()
	e := eliminate(rows, len(a.Forces))
	c := Count{Unknowns: len(a.Forces), Sums: len(rows), Rank: e.rank(), Inexact: inexact}
	for i := range a.Parts {
		c.Inner += a.Parts[i].Inner
	}
	return c, e
}

// A Determinacy says what a count and a rank come to.
type Determinacy int

// What a count comes to.
const (
	Determinate Determinacy = iota
	Indeterminate
	Unstable
	IndeterminateUnstable
)

// A Count compares unknowns with sums.
type Count struct {
	Unknowns int  // of the plain count: reactions, pin forces
	Sums     int  // 3 a part, 2 a pin that is a body
	Rank     int  // independent sums
	Inner    int  // unknowns hidden in rings of parts, which Determinacy leaves out
	Inexact  bool // the rank rests on an angle outside the exact set
}

// Degree is the number of unknowns beyond what equilibrium can give.
func (c Count) Degree() int { return c.Unknowns - c.Rank }

// Motions is the number of independent ways the frame can move.
func (c Count) Motions() int { return c.Sums - c.Rank }

// Determinacy is determinate when unknowns, sums and rank are equal.
func (c Count) Determinacy() Determinacy {
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

// String is the determinacy in words: "determinate", "indeterminate", "unstable" or "indeterminate, unstable".
func (v Determinacy) String() string {
	return [...]string{"determinate", "indeterminate", "unstable", "indeterminate, unstable"}[v]
}
