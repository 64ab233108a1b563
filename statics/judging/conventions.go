package judging

import (
	"strings"

	"unpin/statics/notation"
)

// What is typed is by the conventions of the style, as what is printed is; a Typed value has the signs of package statics.

// decimalComma is a comma between two digits.
var decimalComma = notation.Pattern(`(\d),(\d)`)

// Decimals is a line with points for decimal commas, where the style prints these: what it prints it reads, also before
// three digits, which are asked about elsewhere. Places in the line stay what they are.
func (j Judge) Decimals(line string) string {
	if j.Style.Decimal == notation.DecimalComma {
		return decimalComma().ReplaceAllString(line, "$1.$2")
	}
	return line
}

// turned is a typed shear force by the signs of package statics.
func (j Judge) turned(v Typed) Typed {
	v.Value, v.Written = j.Style.Shear.Value(v.Value), j.Style.Shear.Value(v.Written)
	return v
}

// The signs of areas where V is positive clockwise, and where it is positive counter-clockwise.
const (
	areasClockwise        = "Positive shear adds its area to the moment, and negative shear subtracts it"
	areasCounterClockwise = "Negative shear adds its area to the moment, and positive shear subtracts it"
)

// inStyle is what a slip says, by the sense in which V counts.
func (j Judge) inStyle(says string) string {
	if j.Style.Shear == notation.CounterClockwiseShear {
		return strings.Replace(says, areasClockwise, areasCounterClockwise, 1)
	}
	return says
}
