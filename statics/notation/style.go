package notation

import (
	"math/big"
	"strings"

	"unpin/statics/exact"
)

// A Style says how sums, terms and values are written out in a text: in which conventions, units and form.
type Style struct {
	Conventions
	Units Units
	ASCII bool // no character beyond ASCII
}

// NewStyle is the style of a text in these conventions and units.
func NewStyle(c Conventions, u Units, ascii bool) Style {
	return Style{Conventions: c, Units: u, ASCII: ascii}
}

// fullFigures is the most significant digits with which a number of the problem is still written in full.
const fullFigures = 7

// Given is a number of the problem, or a length that follows from it, without its unit: in full if it ends within seven
// figures, else with one figure more than a result. With letters it is a multiple of the dimension's letters.
func (st Style) Given(n exact.Num, d Dimension) string {
	if st.Units.Letters() && d != Pure && d != Degrees {
		return st.sign(multiple(n, st.Units.Of(d), st.figures()+1))
	}
	return st.plain(n, st.figures()+1)
}

// IsFull reports whether Given leaves a number as it is.
func (st Style) IsFull(n exact.Num) bool {
	return n.Terminates() && significantDigits(n.Decimal(manyFigures)) <= max(fullFigures, st.figures()+1)
}

// manyFigures is more than any number of a problem has.
const manyFigures = 1000

// Among is a number that came out, in a line in which another is rounded: in full if it ends within two figures more than a
// result, else with one more.
func (st Style) Among(n exact.Num, d Dimension) string {
	if st.Units.Letters() && d != Pure && d != Degrees {
		return st.Given(n, d)
	}
	return st.within(n, st.figures()+2, st.figures()+1)
}

// WithUnit is Given with its unit.
func (st Style) WithUnit(n exact.Num, d Dimension) string {
	unit := st.UnitOf(d)
	if st.Units.Letters() || unit == "" {
		return st.Given(n, d)
	}
	return st.Given(n, d) + " " + unit
}

// Result is a result with its unit, to the style's figures: "15.3 kN", "3/8 P".
func (st Style) Result(n exact.Num, d Dimension) string {
	text := st.ResultNumber(n, d)
	if unit := st.UnitOf(d); unit != "" && !st.Units.Letters() {
		return text + " " + unit
	}
	return text
}

// ResultNumber is Result without its unit; with letters these stay.
func (st Style) ResultNumber(n exact.Num, d Dimension) string {
	if st.Units.Letters() && d != Pure && d != Degrees {
		return st.dressed(multiple(n, st.Units.Of(d), st.figures()))
	}
	return st.dressed(Number(n, st.figures()))
}

// UnitOf is the unit of a dimension.
func (st Style) UnitOf(d Dimension) string {
	if st.ASCII {
		return st.Units.ASCII(d)
	}
	return st.Units.Of(d)
}

// plain is n in full if that takes few figures, else rounded to the given number of them.
func (st Style) plain(n exact.Num, figures int) string {
	return st.within(n, max(fullFigures, figures), figures)
}

// within is n in full if that takes so many figures at most, else rounded to the given number of them.
func (st Style) within(n exact.Num, most, figures int) string {
	if n.Terminates() {
		if text := n.Decimal(max(fullFigures, figures)); significantDigits(text) <= most {
			return st.dressed(text)
		}
	}
	return st.dressed(n.Figures(figures))
}

// significantDigits counts the digits of a decimal from the first to the last that is not 0.
func significantDigits(s string) int {
	return len(strings.Trim(strings.ReplaceAll(strings.TrimPrefix(s, "-"), ".", ""), "0"))
}

// dressed puts the style's decimal sign and minus into a plain decimal.
func (st Style) dressed(s string) string {
	return st.sign(st.Decimal.In(s))
}

// sign puts the style's minus into s.
func (st Style) sign(s string) string {
	if st.ASCII {
		return s
	}
	return strings.ReplaceAll(s, "-", "−")
}

// smallDenominator is the largest denominator with which a coefficient is written as a fraction.
const smallDenominator = 99

// Coefficient is a pure factor such as a cosine: 0.8, 12/13, or rounded.
func (st Style) Coefficient(n exact.Num) string {
	if r, ok := n.Rat(); ok && !n.Terminates() && r.Denom().Cmp(big.NewInt(smallDenominator)) <= 0 {
		return st.sign(r.RatString())
	}
	return st.plain(n, st.figures()+1)
}

// Pair is two numbers as a point or a direction: "(8, 19.67)".
func (st Style) Pair(x, y exact.Num, d Dimension) string {
	return "(" + st.Given(x, d) + st.Decimal.Between() + st.Given(y, d) + ")"
}

// List joins words with commas and "and".
func List(words []string) string {
	switch n := len(words); n {
	case 0:
		return ""
	case 1:
		return words[0]
	default:
		return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
	}
}
