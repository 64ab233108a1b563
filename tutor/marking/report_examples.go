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

// comesOut stands, in what an example leaves, between the sum and what it comes to.
const comesOut = " comes to "

// written begins, in the note of an answer, that sum written out, and theirs what it is with the student's numbers.
const (
	written = "written out "
	theirs  = ", with these numbers "
)

// writtenOut is what a note says of the violated sum in symbols and in numbers; empty where it says nothing.
func writtenOut(note string) (symbols, numbers string) {
	for part := range strings.SplitSeq(note, "; ") {
		if rest, ok := strings.CutPrefix(part, written); ok {
			symbols, numbers, _ = strings.Cut(rest, theirs)
		}
	}
	return symbols, numbers
}

// leaves is what a note says of the violated sum, as a clause; empty where it says nothing.
func leaves(note string) string {
	for part := range strings.SplitSeq(note, "; ") {
		if rest, ok := strings.CutPrefix(part, violates); ok {
			if sum, off, ok := strings.Cut(rest, comesTo); ok {
				return sum + comesOut + off + " in place of zero"
			}
		}
	}
	return ""
}

// exemplify counts a wrong value, or an equation, among the examples of a mistake: values are alike that are of one size, however they are
// written.
func (m *Mistake) exemplify(r markRow) {
	size := sizeOf(r.given)
	if _, _, part := partOf(r.quantity); part {
		if !strings.Contains(r.given, "=") {
			return // pieces of terms say nothing by themselves
		}
		size = strings.ReplaceAll(r.given, " ", "")
	}
	new := Example{Quantity: r.quantity, Given: r.given, Leaves: leaves(r.note)}
	new.Symbols, new.Numbers = writtenOut(r.note)
	key := r.quantity + "\x00" + size
	e := m.examples[key]
	if e == nil {
		e = &Example{}
		*e = new
		m.examples[key] = e
	}
	n := e.Papers + 1
	if better(new, *e) < 0 { // the same whatever the order of the rows
		*e = new
	}
	e.Papers = n
}

// better compares examples of one value: what is written out goes first.
func better(a, b Example) int {
	rank := func(e Example) int {
		switch {
		case e.Numbers != "":
			return 0
		case e.Leaves != "":
			return 1
		}
		return 2
	}
	return cmp.Or(rank(a)-rank(b), cmp.Compare(a.Given, b.Given), cmp.Compare(a.Leaves, b.Leaves), cmp.Compare(a.Numbers, b.Numbers))
}

// commonest is the most frequent of the wrong values, of equal ones the one with more to show, then the first by name.
func commonest(all map[string]*Example) Example {
	var best Example
	for _, e := range all {
		if c := cmp.Or(best.Papers-e.Papers, cmp.Compare(e.Quantity, best.Quantity), better(*e, best)); c < 0 || best.Papers == 0 {
			best = *e
		}
	}
	return best
}

// sizeOf is the size of a value as it was typed, in three figures, so that 9.5 kN up and 9.50 are alike; of what is no number the text.
func sizeOf(given string) string {
	text := strings.TrimLeft(strings.TrimSpace(given), "+-−")
	end := strings.IndexFunc(text, func(c rune) bool { return !strings.ContainsRune("0123456789.,", c) })
	if end < 0 {
		end = len(text)
	}
	v, err := exact.Parse(strings.Replace(text[:end], ",", ".", 1))
	if err != nil || strings.ContainsAny(text[end:], "*/·×") {
		return strings.TrimSpace(given)
	}
	return v.Rounded(3).String()
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
		if r.quantity != "check" && slices.Contains([]string{Slip, Wrong, Sense, Close, Unit}, r.verdict) {
			s.Begins = append(s.Begins, r.quantity)
		}
	}
	c.totals()
}

// totals puts the papers of each student together, and after several of them what they come to in all.
func (c *counting) totals() {
	var names []string
	of := map[string][]Standing{}
	for _, s := range c.Students {
		if len(of[s.Student]) == 0 {
			names = append(names, s.Student)
		}
		of[s.Student] = append(of[s.Student], s)
	}
	c.Students = nil
	for _, name := range names {
		total := Standing{Student: name, Problem: inAll}
		for _, s := range of[name] {
			total.Got, total.Of = total.Got.Add(s.Got), total.Of.Add(s.Of)
		}
		if c.Students = append(c.Students, of[name]...); len(of[name]) > 1 {
			c.Students = append(c.Students, total)
		}
	}
}

// inAll stands, in a list of a student's papers, in the place of a problem.
const inAll = "in all"

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
