package problems

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// whereWord is the name under vary of the conditions that the numbers of variants keep to.
const whereWord = "where"

// comparisons are the signs of a condition, the longer ones first, with what the order of the two sides must be.
var comparisons = []struct {
	sign  string
	holds func(order int) bool
}{
	{"<=", func(order int) bool { return order <= 0 }},
	{"≤", func(order int) bool { return order <= 0 }},
	{">=", func(order int) bool { return order >= 0 }},
	{"≥", func(order int) bool { return order >= 0 }},
	{"!=", func(order int) bool { return order != 0 }},
	{"≠", func(order int) bool { return order != 0 }},
	{"<", func(order int) bool { return order < 0 }},
	{">", func(order int) bool { return order > 0 }},
	{"=", func(order int) bool { return order == 0 }},
}

// where reads the conditions of variants: a list of comparisons, or one.
func (r variationReader) where(n *node) {
	if !r.shaped(n, whereWord, "where: ['h < w']", scalar, list) {
		return
	}
	items := n.items
	if n.shape == scalar {
		items = []*node{n}
	}
	for _, item := range items {
		if r.shaped(item, "a condition", "where: ['h < w']", scalar) {
			r.condition(item)
		}
	}
}

// condition reads one comparison of two numbers.
func (r variationReader) condition(n *node) {
	for _, c := range comparisons {
		left, right, found := strings.Cut(n.text, c.sign)
		if !found {
			continue
		}
		low, ok := r.side(n, left)
		high, good := r.side(n, right)
		if ok && good {
			r.problem.Where = append(r.problem.Where, Condition{n.text, c.holds(low.Cmp(high))})
		}
		return
	}
	r.fault(n.at, quoted(n.text)+" compares nothing", "Write two numbers with <, <=, =, !=, >= or > between: 'h < w'.")
}

// side reads one side of a comparison.
func (r variationReader) side(n *node, text string) (v exact.Num, ok bool) {
	part := *n
	part.text, part.literal = strings.TrimSpace(text), false
	if part.text == "" || strings.ContainsAny(part.text, "<>=!≤≥≠") {
		r.fault(n.at, fmt.Sprintf("%s is not one comparison of two numbers", quoted(n.text)), "Write each comparison as an entry of its own: ['2 < h', 'h < w'].")
		return v, false
	}
	return r.numberText(&part, part.text, notation.Any)
}
