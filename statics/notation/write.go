package notation

import (
	"math/big"
	"strings"

	"unpin/statics/exact"
)

// Number is n rounded to so many significant figures, and without zeros that say nothing: 9.5 and 36 stay, 46/3 is 15.33
// with four. The sign is the ASCII hyphen.
func Number(n exact.Num, figures int) string {
	text := n.Figures(figures)
	if !n.Terminates() || !strings.Contains(text, ".") {
		return text
	}
	if short := n.Decimal(longestShown); trimZeros(text) == short {
		return short
	}
	return text
}

// longestShown is more figures than any number of a problem comes to.
const longestShown = 1000

// trimZeros takes off the zeros that end a decimal fraction.
func trimZeros(s string) string { return strings.TrimRight(strings.TrimRight(s, "0"), ".") }

// Value is Number with the unit of its dimension: "15.3 kN", "81 kN·m", "30°". In letters it is exact where that is short:
// "3/8 P", "PL/4", "-5/2 P".
func Value(n exact.Num, d Dimension, u Units, figures int) string {
	switch unit := u.Of(d); {
	case unit == "":
		return Number(n, figures)
	case d == Degrees:
		return Number(n, figures) + unit
	case u.Letters():
		return multiple(n, unit, figures)
	default:
		return Number(n, figures) + " " + unit
	}
}

// longMultiple is the most characters of an exact factor of letters.
const longMultiple = 20

// multiple is n times a letter or two.
func multiple(n exact.Num, letters string, figures int) string {
	r, ok := n.Rat()
	switch text := n.String(); {
	case n.IsZero():
		return "0"
	case ok && r.IsInt() && new(big.Int).Abs(r.Num()).Cmp(big.NewInt(1)) == 0:
		return strings.TrimSuffix(text, "1") + letters
	case len(text) > longMultiple && !(ok && r.IsInt()):
		return Number(n, figures) + " " + letters
	case ok && new(big.Int).Abs(r.Num()).Cmp(big.NewInt(1)) == 0 && !strings.Contains(letters, "/"):
		sign, over, _ := strings.Cut(text, "1/")
		return sign + letters + "/" + over
	case !ok && strings.Contains(text, " "):
		return "(" + text + ") " + letters
	default:
		return text + " " + letters
	}
}

// Pretty is s with its hyphens for minus turned into the sign −.
func Pretty(s string) string { return strings.ReplaceAll(s, "-", "−") }

// Roots is an exact text with its roots as they are printed: 5*sqrt(2)/2 is 5√2/2.
func Roots(text string) string {
	text = strings.ReplaceAll(text, "*sqrt(", "sqrt(")
	for {
		before, rest, found := strings.Cut(text, "sqrt(")
		if !found {
			return text
		}
		radicand, after, _ := strings.Cut(rest, ")")
		text = before + "√" + radicand + after
	}
}

// toASCII are the signs that ASCII replaces. The point of a unit becomes one that no number has, that of a product a star.
var toASCII = strings.NewReplacer("N·m", "N.m", "N·in", "N.in", "N·ft", "N.ft", "lb·m", "lb.m", "lb·in", "lb.in", "lb·ft", "lb.ft", "kip·m", "kip.m", "kip·in", "kip.in",
	"kip·ft", "kip.ft", "−", "-", "·", "*", "×", "*", "°", " deg", "√", "sqrt", "≤", "<=", "≥", ">=", "…", "...",
	"ΣM", "sum of moments", "ΣFx", "sum of horizontal forces", "ΣFy", "sum of vertical forces", "ΣF", "sum of forces")

// ASCII is s with the signs of this package in plain ASCII: kN·m is kN.m, 4·3 is 4*3, − is -, 30° is 30 deg, ΣM
// is sum of moments.
func ASCII(s string) string { return strings.TrimSpace(toASCII.Replace(s)) }
