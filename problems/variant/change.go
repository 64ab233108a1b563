package variant

import (
	"fmt"
	"slices"

	"unpin/problems"
	"unpin/statics/exact"
)

// A Change is something of a problem that may have other values.
type Change struct {
	Name    string     // for people: "h", "the 8 kN of a point load"
	Choices []string   // for people, what each choice makes of it; at least two
	numbers []int      // the numbers of the file that it changes, by their places in Problem.Numbers
	texts   [][]string // for each choice, what stands in place of each of these numbers
	own     int        // the choice that changes nothing, or −1
}

// changesOf lists what may change of a problem: what its file says under vary, or else what is found.
func changesOf(p *problems.Problem) []Change {
	if len(p.Vary) == 0 {
		return found(p)
	}
	var all []Change
	numbers := p.Numbers()
	for _, v := range p.Vary {
		for i, n := range numbers {
			if n.Role == problems.GivenNumber && n.Name == v.Name {
				all = append(all, varied(v, n, i))
			}
		}
	}
	return all
}

// varied is the change of a given number.
func varied(v problems.Variation, n problems.Number, number int) Change {
	c := Change{Name: v.Name, numbers: []int{number}, own: slices.IndexFunc(v.Choices, n.Value.Equal)}
	for _, value := range v.Choices {
		text := written(value, false)
		c.Choices, c.texts = append(c.Choices, text), append(c.texts, []string{text})
	}
	return c
}

// written is a number as it stands in a file: a decimal that ends, or else, and where fractions are wanted, its exact form.
func written(v exact.Num, fraction bool) string {
	if !fraction && v.Terminates() {
		return v.Decimal(40)
	}
	return v.String()
}

// combine puts the texts of a choice into a set of replacements.
func (c Change) combine(texts map[int]string, choice int) {
	for k, number := range c.numbers {
		texts[number] = c.texts[choice][k]
	}
}

// combinations is how many there are of all choices, and limit if there are more.
func combinations(changes []Change, limit int) int {
	n := 1
	for _, c := range changes {
		if n *= len(c.Choices); n >= limit {
			return limit
		}
	}
	return n
}

// picks is which choice of each change a draw makes.
func picks(changes []Change, d Draw) []int {
	all := make([]int, len(changes))
	for i, c := range changes {
		all[i] = d.pick(i, len(c.Choices))
	}
	return all
}

// String tells a change: "h: 3, 3.5, 4".
func (c Change) String() string {
	text := c.Name + ": "
	for i, choice := range c.Choices {
		if i > 0 {
			text += ", "
		}
		text += choice
	}
	return fmt.Sprintf("%s (%d values)", text, len(c.Choices))
}
