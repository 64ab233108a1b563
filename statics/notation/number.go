package notation

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/exact"
)

// ReadNumber reads a number of a problem: a decimal, arithmetic on numbers and names, or a number with a unit, which is
// converted exactly. The value is in the units u. A unit must measure want; names are taken to measure what is wanted.
// Errors are *ReadError.
func ReadNumber(text string, names map[string]exact.Num, u Units, want Dimension) (exact.Num, error) {
	tokens, fault := lex(text)
	if fault != nil {
		return exact.Num{}, fault
	}
	known := func(name string) bool { _, ok := names[name]; return ok && !u.Reserved(name) }
	p := &parser{vocabulary: vocabulary{known: known, names: listed(names), letters: u.Letters()}, text: text, tokens: tokens}
	x, fault := p.expression()
	if fault != nil {
		return exact.Num{}, fault
	}
	q, fault := evaluator{text, u, names}.wanted(x, want)
	if fault != nil {
		return exact.Num{}, fault
	}
	return q.n, nil
}

// mostPlain is how many letters a plain number has at most, so that its digits fit a word.
const mostPlain = 16

// PlainNumber is the value of a text that is no more than a decimal without unit, such as 12, -3 or 0.25. Most numbers of a file are; any other
// text, right or wrong, is for ReadNumber.
func PlainNumber(text string) (exact.Num, bool) {
	digits := strings.TrimPrefix(text, "-")
	whole, fraction, pointed := strings.Cut(digits, ".")
	if len(text) > mostPlain || whole == "" || pointed && fraction == "" || len(whole) > 1 && whole[0] == '0' {
		return exact.Num{}, false
	}
	n, under := int64(0), int64(1)
	for _, part := range [2]string{whole, fraction} {
		for _, c := range []byte(part) {
			if c < '0' || c > '9' {
				return exact.Num{}, false
			}
			n = 10*n + int64(c-'0')
		}
	}
	for range fraction {
		under *= 10
	}
	if digits != text {
		n = -n
	}
	v, err := exact.Frac(n, under)
	return v, err == nil
}

// listed are the names, in order; only a few, for a message.
func listed(names map[string]exact.Num) []string {
	var list []string
	for name := range names {
		list = append(list, name)
	}
	slices.Sort(list)
	if len(list) > 8 {
		list = append(list[:8], "…")
	}
	return list
}

// wanted is the value of x, which must measure want.
func (e evaluator) wanted(x *node, want Dimension) (quantity, *ReadError) {
	q, fault := e.value(x)
	if fault != nil || q.plain || q.free {
		return q, fault
	}
	for d, p := range powers {
		if p == q.powers && (Dimension(d) == want || want == Any) {
			return q, nil
		}
	}
	return q, e.mismatch(x, q, want)
}

// mismatch is the fault of an x that measures something else than want.
func (e evaluator) mismatch(x *node, q quantity, want Dimension) *ReadError {
	subject, start, end := "the value works out as "+nameOf(q.powers), x.start, x.end
	if x.kind == measuredNode {
		subject, start, end = shown(x.text)+" measures "+nameOf(q.powers), x.unitAt, x.unitAt+len(x.text)
	}
	remedy := "its unit is " + e.units.Of(want)
	if want == Pure || want == Any || e.units.Of(want) == "" {
		remedy = "check the units"
	}
	f := faultAt(start, end, fmt.Sprintf("%s, but this is %s", subject, want), remedy)
	f.Mismatch = true
	return f
}

// Names lists the names that a text refers to, each once, in order: its words that are neither reserved nor part of a
// fault. In a problem in P and L these two letters may be among them.
func Names(text string) []string {
	tokens, fault := lex(text)
	if fault != nil {
		return nil
	}
	var names []string
	for _, t := range tokens {
		if t.kind == wordToken && !ReservedWord(t.text) && !slices.Contains(names, t.text) {
			names = append(names, t.text)
		}
	}
	return names
}
