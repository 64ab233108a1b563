package problems

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A variationReader reads the values that given numbers may take.
type variationReader struct{ *numberReader }

// maxChoices bounds the values of one variation.
const maxChoices = 1000

// vary reads the values that given numbers may take.
func (r variationReader) vary(n *node) {
	if n == nil {
		return
	}
	for _, e := range n.entries {
		name := e.key.text
		if name == whereWord {
			r.where(e.value)
			continue
		}
		_, known := r.numbers[name]
		if !known && !r.spoiled[name] {
			r.fault(e.key.at, quoted(name)+" is not among the given numbers", r.varyRemedy(name))
		}
		if !r.shaped(e.value, name, name+": 3..6 by 0.5", scalar, list) {
			continue
		}
		v := Variation{Name: name, Text: e.value.text}
		var ok bool
		if e.value.shape == list {
			v.Text = pairText(e.value)
			v.Choices, ok = r.choices(e.value)
		} else {
			v.Choices, ok = r.series(e.value)
		}
		if ok && known {
			r.warnOutside(e.value.at.line, v)
			r.problem.Vary = append(r.problem.Vary, v)
		}
	}
}

// warnOutside warns of a given number that is not among the values that it may take: no change of it can be told then.
func (r variationReader) warnOutside(line int, v Variation) {
	own := r.numbers[v.Name]
	if slices.ContainsFunc(v.Choices, own.Equal) {
		return
	}
	r.warn("Line %d: %s is %s under given, which is not among its values under vary; one of them should be the problem's own.", line, v.Name, plainNumber(own))
}

func (r variationReader) varyRemedy(name string) string {
	var names []string
	for _, g := range r.problem.Given {
		names = append(names, g.Name)
	}
	switch meant := near(name, names); {
	case meant != "":
		return fmt.Sprintf("Did you mean %s?", meant)
	case len(names) > 0:
		return onlyOnes("given number", names)
	}
	return fmt.Sprintf("Only given numbers vary: write given: {%s: ...}, and use the name where the number stands now.", name)
}

// choices reads a list of values.
func (r variationReader) choices(n *node) ([]exact.Num, bool) {
	good := true
	var choices []exact.Num
	for _, item := range n.items {
		v, ok := r.number(item, "a value", notation.Any)
		if ok && slices.ContainsFunc(choices, v.Equal) {
			r.fault(item.at, "the value "+item.text+" is listed twice", "List each value once.")
			ok = false
		}
		good = good && ok
		choices = append(choices, v)
	}
	if len(choices) < 2 {
		r.fault(n.at, "one value is no variation", "List two or more, or write a range such as 3..6 by 0.5.")
		return nil, false
	}
	return choices, good
}

// series reads a range with its step: "3..6 by 0.5".
func (r variationReader) series(n *node) ([]exact.Num, bool) {
	low, rest, isRange := strings.Cut(n.text, "..")
	high, step, hasStep := strings.Cut(rest, " by ")
	if !isRange || !hasStep {
		r.fault(n.at, quoted(n.text)+" is not a range of values", "Write it as 3..6 by 0.5, or list the values: [3, 4, 6].")
		return nil, false
	}
	var ends [3]exact.Num
	for i, text := range []string{low, high, step} {
		part := *n
		part.text, part.literal = strings.TrimSpace(text), false
		v, ok := r.numberText(&part, part.text, notation.Any)
		if !ok {
			return nil, false
		}
		ends[i] = v
	}
	return r.steps(n, ends[0], ends[1], ends[2])
}

// steps lists the values from low to at most high.
func (r variationReader) steps(n *node, low, high, step exact.Num) ([]exact.Num, bool) {
	switch {
	case step.Sign() <= 0:
		r.fault(n.at, "the step of a range is more than 0", "Write the lower end first: 3..6 by 0.5.")
		return nil, false
	case low.Add(step).Cmp(high) > 0:
		r.fault(n.at, "the range holds fewer than two values", "Write the lower end first and a step that fits between: 3..6 by 0.5.")
		return nil, false
	case low.Add(step.Mul(exact.Int(maxChoices))).Cmp(high) <= 0:
		r.fault(n.at, fmt.Sprintf("the range holds more than %d values", maxChoices), "Write a larger step.")
		return nil, false
	}
	var choices []exact.Num
	for v := low; v.Cmp(high) <= 0; v = v.Add(step) {
		choices = append(choices, v)
	}
	return choices, true
}
