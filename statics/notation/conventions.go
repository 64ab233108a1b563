package notation

import (
	"strings"

	"unpin/statics/exact"
)

// Conventions are what a course settles by convention: what counts as positive, where curves are drawn, how numbers are
// printed. Whatever speaks or draws is handed one, made where a problem is read. The zero value holds where a problem file
// says nothing. Forces and the couples of supports keep their own positive senses under all conventions.
type Conventions struct {
	Figures  int         // significant figures of a result, 3 to 8; 0 is 3
	Moments  MomentTurn  // the turn that counts as positive in ΣM
	Shear    ShearTurn   // the turn that a positive shear force gives a piece of the member
	Side     MomentSide  // the side of the member on which M is drawn
	Decimal  DecimalSign // the decimal sign that is printed
	TwoForce TwoForceUse // whether two-force members are used at once
}

// A MomentTurn is the turn that counts as positive in a sum of moments.
type MomentTurn int

// The turns of moments.
const (
	CounterClockwiseMoments MomentTurn = iota
	ClockwiseMoments
)

// String is the word of a problem file: "ccw" or "cw".
func (t MomentTurn) String() string { return momentWords[t][0] }

// Positive is the turn as a sense.
func (t MomentTurn) Positive() Sense {
	if t == ClockwiseMoments {
		return Clockwise
	}
	return CounterClockwise
}

// Sign turns the sign of a moment that is positive counter-clockwise into that of the convention.
func (t MomentTurn) Sign(sign int) int {
	if t == ClockwiseMoments {
		return -sign
	}
	return sign
}

// Value turns a moment that is positive counter-clockwise into that of the convention.
func (t MomentTurn) Value(m exact.Num) exact.Num {
	if t == ClockwiseMoments {
		return m.Neg()
	}
	return m
}

// A ShearTurn is the turn that a positive shear force gives a piece of the member.
type ShearTurn int

// The turns of shear forces.
const (
	ClockwiseShear ShearTurn = iota
	CounterClockwiseShear
)

// String is the word of a problem file: "clockwise" or "counter-clockwise".
func (t ShearTurn) String() string { return shearWords[t][0] }

// Value turns a shear force of package statics, which is positive where it turns a piece clockwise, into that of the
// convention, and back.
func (t ShearTurn) Value(v exact.Num) exact.Num {
	if t == CounterClockwiseShear {
		return v.Neg()
	}
	return v
}

// A MomentSide is the side of a member on which its bending moment is drawn.
type MomentSide int

// The sides of a member.
const (
	TensionSide MomentSide = iota
	CompressionSide
)

// String is the word of a problem file: "tension" or "compression".
func (s MomentSide) String() string { return momentSides[s][0] }

// A DecimalSign is the decimal sign that is printed; both are read.
type DecimalSign int

// The decimal signs.
const (
	DecimalPoint DecimalSign = iota
	DecimalComma
)

// String is the word of a problem file: "point" or "comma".
func (s DecimalSign) String() string { return decimalWords[s][0] }

// In puts the decimal sign into a text of numbers that have points.
func (s DecimalSign) In(text string) string {
	if s == DecimalComma {
		return strings.ReplaceAll(text, ".", ",")
	}
	return text
}

// Between is what separates two numbers, so that a decimal comma is not taken for it.
func (s DecimalSign) Between() string {
	if s == DecimalComma {
		return "; "
	}
	return ", "
}

// A TwoForceUse says how two-force members are treated.
type TwoForceUse int

// The uses of two-force members.
const (
	TwoForcePlain    TwoForceUse = iota // they are parts like all others
	TwoForceShortcut                    // each has one force along its line, at once
)

// String is the word of a problem file: "plain" or "shortcut".
func (u TwoForceUse) String() string { return twoForceWords[u][0] }

// figures is the number of significant figures of a result.
func (c Conventions) figures() int {
	if c.Figures <= 0 {
		return LeastFigures
	}
	return c.Figures
}
