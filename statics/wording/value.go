package wording

import (
	"unicode/utf8"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// The sign of a value that rests on an angle without an exact cosine.
const inexactMark = "~"

// Mark is the mark of an inexact number, or nothing.
func Mark(n exact.Num) string {
	if n.Inexact() {
		return inexactMark
	}
	return ""
}

// Value is a result with its unit, marked if it is inexact: "15.3 kN", "3/8 P", "12.7~ kN". Zero has no unit.
func (w base) Value(n exact.Num, dim notation.Dimension) string {
	text := w.number(w.st.ResultNumber(n, dim)) + Mark(n)
	if unit := w.st.UnitOf(dim); !n.IsZero() && !w.st.Units.Letters() && unit != "" {
		text += " " + unit
	}
	return text
}

// The longest texts of an exact value that are worth showing.
const (
	longDecimal  = 12
	longExact    = 12
	valueFigures = 20 // that a decimal is looked at with
)

// manyFigures is more than any number of a problem has.
const manyFigures = 1000

// ShownInFull reports whether rounding to the figures of a result leaves n as it is.
func (w base) ShownInFull(n exact.Num) bool {
	return n.Terminates() && notation.Number(n, max(w.st.Figures, 1)) == n.Decimal(manyFigures)
}

// Exactly is the exact value where the result is rounded, without its unit: "46/3", "5√2/2"; empty where it says nothing
// new or would be too long.
func (w base) Exactly(n exact.Num, dim notation.Dimension) string {
	if n.Inexact() || w.st.Units.Letters() || w.ShownInFull(n) {
		return ""
	}
	text := n.String()
	if n.Terminates() {
		if decimal := n.Decimal(valueFigures); len(decimal) <= longDecimal {
			text = w.st.Decimal.In(decimal)
		}
	}
	if text = w.surd(text); utf8.RuneCountInString(text) <= longExact {
		return w.number(text)
	}
	return ""
}

// surd is an exact text with roots as they are printed, 5*sqrt(2)/2 as 5√2/2; without signs it stays as it is.
func (w base) surd(text string) string {
	if w.st.ASCII || w.spoken {
		return text
	}
	return notation.Pretty(notation.Roots(text))
}

// Cell is a result in a table, whose unit stands in the head.
func (w base) Cell(n exact.Num) string {
	if text := n.String(); w.st.Units.Letters() && len(text) <= longDecimal {
		return w.surd(text) + Mark(n)
	}
	return w.st.ResultNumber(n, notation.Pure) + Mark(n)
}

// InFull is a distance or coefficient without its unit, with more figures than a result.
func (w base) InFull(n exact.Num) string {
	if text := n.String(); w.st.Units.Letters() && len(text) <= longDecimal {
		return w.surd(text)
	}
	return w.st.Given(n, notation.Pure)
}
