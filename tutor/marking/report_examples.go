package marking

import (
	"cmp"
	"slices"
	"strings"

	"unpin/statics/exact"
)

// violates begins, in the note of an answer, the sum that a faulty value does not satisfy, and comesTo what it comes to.
const (
	violates = "violates "
	comesTo  = ", which comes to "
)

// leaves is what a note says of the violated sum, as a clause; empty where it says nothing.
func leaves(note string) string {
	for part := range strings.SplitSeq(note, "; ") {
		if rest, ok := strings.CutPrefix(part, violates); ok {
			if sum, off, ok := strings.Cut(rest, comesTo); ok {
				return sum + " comes to " + off + " in place of zero"
			}
		}
	}
	return ""
}

// commonest is the most frequent of the wrong values, of equal ones the first by name.
func commonest(all map[Example]int) Example {
	var best Example
	for e, n := range all {
		e.Papers = n
		if c := cmp.Or(best.Papers-n, cmp.Compare(e.Quantity, best.Quantity), cmp.Compare(e.Given, best.Given), cmp.Compare(e.Leaves, best.Leaves)); c < 0 || best.Papers == 0 {
			best = e
		}
	}
	return best
}

// standings lists what each student got for each problem.
func (c *counting) standings(rows []markRow) {
	at := map[string]int{}
	for _, r := range rows {
		i, ok := at[r.paper]
		if !ok {
			i = len(c.Students)
			at[r.paper] = i
			c.Students = append(c.Students, Standing{Student: r.student, Problem: strings.TrimSpace(r.problem + " " + r.copyOf)})
		}
		s := &c.Students[i]
		s.Got, s.Of = s.Got.Add(r.got), s.Of.Add(r.of)
		if slices.Contains([]string{Slip, Wrong, Sense, Close, Unit}, r.verdict) {
			s.Begins = append(s.Begins, r.quantity)
		}
	}
}

// marks are what a student got of what there was, to two places: the marks of each answer are rounded in the table.
func (s Standing) marks() string {
	two := func(n exact.Num) string {
		text := n.Places(2)
		if strings.Contains(text, ".") {
			text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
		}
		return text
	}
	return two(s.Got) + " of " + two(s.Of)
}
