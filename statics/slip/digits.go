package slip

import (
	"strings"

	"unpin/statics/exact"
)

// What becomes of the figures of a number that is copied or written down. No number here is negative.

// most is with how many figures a number stands on the page at most.
const most = 5

// inFull is a decimal of at most five figures as it stands on the page; empty for any other number.
func inFull(n exact.Num) string {
	text := n.Decimal(6)
	if n.Terminates() && len(figures(text)) <= most {
		return text
	}
	return ""
}

// onPage is a number as it stands on the page, if need be rounded to five figures.
func onPage(n exact.Num) string {
	if text := inFull(n); text != "" {
		return text
	}
	return n.Figures(most)
}

// answersSwapped lists what comes of a number, which keeps its sign, by exchanging two neighbouring figures: as it stands on
// the page, and as it is written with three and with four figures. The zeros at the end of these are exchanged as well, or
// passed over.
func answersSwapped(right exact.Num, zeros bool) []exact.Num {
	if right.IsZero() {
		return nil
	}
	size := right.Abs()
	var swapped []exact.Num
	below := size.Sub(size.Mul(hair())) // by which a tie is rounded down
	for _, text := range []string{inFull(size), size.Figures(3), size.Figures(4), below.Figures(3), below.Figures(4)} {
		if !zeros && strings.Contains(text, ".") {
			text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
		}
		swapped = append(swapped, digitsSwapped(text)...)
	}
	var all []exact.Num
	for _, v := range distinct(swapped) {
		if right.Sign() < 0 {
			v = v.Neg()
		}
		all = append(all, v)
	}
	return all
}

// digitsSwapped lists the numbers that come of a written one by exchanging two neighbouring figures. Of 9.0 that makes no 0.9: the
// figures stay, and what moves is the decimal point.
func digitsSwapped(text string) []exact.Num {
	var all []exact.Num
	for i := range text {
		j := i + 1
		if j < len(text) && text[j] == '.' {
			j++
		}
		if text[i] == '.' || j >= len(text) || text[i] == text[j] {
			continue
		}
		other := []byte(text)
		if other[i], other[j] = text[j], text[i]; figures(string(other)) != figures(text) {
			all = append(all, read(string(other))...)
		}
	}
	return distinct(all)
}

// figureOff lists the numbers that come of a written one when one of its first two figures is one too high or too low.
func figureOff(text string) []exact.Num {
	var all []exact.Num
	for i, seen := 0, 0; i < len(text) && seen < 2; i++ {
		if text[i] == '.' || seen == 0 && text[i] == '0' {
			continue
		}
		seen++
		for _, by := range []int{1, -1} {
			if c := int(text[i]) + by; c <= '9' && (c > '0' || c == '0' && seen == 2) {
				all = append(all, read(text[:i]+string(rune(c))+text[i+1:])...)
			}
		}
	}
	return distinct(all)
}

// figures are those of a written number from its first to its last that is no zero.
func figures(text string) string { return strings.Trim(strings.ReplaceAll(text, ".", ""), "0") }

// read reads a number that was written anew; one of too many figures is none.
func read(text string) []exact.Num {
	n, err := exact.Parse(text)
	if err != nil {
		return nil
	}
	return []exact.Num{n}
}
