package exact

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
)

// maxDigits bounds each part of a number that is read.
const maxDigits = 40

// Parse reads a number as it is typed: an optional sign (+, - or −), then
// digits with at most one decimal point, or one whole number over another.
// Each part has at most 40 digits.
func Parse(s string) (Num, error) {
	body, negative := cutSign(s)
	read := parseDecimal
	if strings.Contains(body, "/") {
		read = parseFraction
	}
	r, err := read(body)
	if err != nil {
		return Num{}, fmt.Errorf("%s is not a number such as 12.5 or 20/3: %w", quote(s), err)
	}
	if negative {
		r.Neg(r)
	}
	return fraction(newRatio(r)), nil
}

// MustParse is Parse for tests and tables of constants. It panics on an error.
func MustParse(s string) Num {
	n, err := Parse(s)
	if err != nil {
		panic(err)
	}
	return n
}

func cutSign(s string) (body string, negative bool) {
	for _, minus := range []string{"-", "−"} {
		if body, ok := strings.CutPrefix(s, minus); ok {
			return body, true
		}
	}
	return strings.TrimPrefix(s, "+"), false
}

func parseDecimal(s string) (*big.Rat, error) {
	whole, fraction, _ := strings.Cut(s, ".")
	if whole+fraction == "" {
		return nil, errors.New("it has no digits")
	}
	for _, part := range []string{whole, fraction} {
		if err := checkDigits(part); err != nil {
			return nil, err
		}
	}
	m, _ := new(big.Int).SetString(whole+fraction, 10)
	return new(big.Rat).SetFrac(m, pow10(len(fraction)).rat().Num()), nil
}

func parseFraction(s string) (*big.Rat, error) {
	over, under, _ := strings.Cut(s, "/")
	for _, part := range []string{over, under} {
		if part == "" {
			return nil, errors.New("a fraction is one whole number over another")
		}
		if err := checkDigits(part); err != nil {
			return nil, err
		}
	}
	n, _ := new(big.Int).SetString(over, 10)
	d, _ := new(big.Int).SetString(under, 10)
	if d.Sign() == 0 {
		return nil, ErrDivideByZero
	}
	return new(big.Rat).SetFrac(n, d), nil
}

// checkDigits accepts up to 40 digits, and none.
func checkDigits(part string) error {
	if len(part) > maxDigits {
		return fmt.Errorf("more than %d digits", maxDigits)
	}
	for _, c := range part {
		if c < '0' || c > '9' {
			return fmt.Errorf("%q is no digit", c)
		}
	}
	return nil
}

// quote is s in quotes, cut short when long.
func quote(s string) string {
	if r := []rune(s[:min(len(s), 200)]); len(r) > 30 {
		return fmt.Sprintf("%q…", string(r[:30]))
	}
	return fmt.Sprintf("%q", s)
}

// String is a in full: "7", "20/3", "1/2 + 3*sqrt(2)/4 - sqrt(3)".
func (a Num) String() string {
	if text, ok := a.textWord(); ok {
		return text
	}
	if a.IsRational() {
		return a.r().rat().RatString()
	}
	var b strings.Builder
	for i, t := range a.terms() {
		text := t.String()
		size, negative := strings.CutPrefix(text, "-")
		switch {
		case i == 0:
			b.WriteString(text)
		case negative:
			b.WriteString(" - " + size)
		default:
			b.WriteString(" + " + size)
		}
	}
	return b.String()
}

// String is the root alone: "-20/3", "sqrt(2)", "-5*sqrt(2)/2".
func (t root) String() string {
	q := t.q.rat()
	if t.isRational() {
		return q.RatString()
	}
	factor, under := q.Num().String()+"*", ""
	switch factor {
	case "1*":
		factor = ""
	case "-1*":
		factor = "-"
	}
	if !q.IsInt() {
		under = "/" + q.Denom().String()
	}
	return factor + "sqrt(" + t.n.String() + ")" + under
}
