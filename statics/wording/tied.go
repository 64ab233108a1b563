package wording

import (
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Tied term is a value along a member, or a force, times a factor, in a sum that ties such values to each other. Without a name it is
// what loads add to the sum.
type Tied struct {
	Name   string
	Value  exact.Num
	Dim    notation.Dimension // what the value measures
	Factor exact.Num
	Per    notation.Dimension // what the factor measures: a length, or nothing
}

// Tied writes such a sum with the names of its values, and with the values themselves: "M(BC, 2) − M(BC, 0) − V(BC, 0)·2 = 0".
func (w sums) Tied(terms []Tied) (symbols, numbers string) {
	var byName, byValue strings.Builder
	inFull := !slices.ContainsFunc(terms, func(t Tied) bool { return !w.st.IsFull(t.Value) })
	for _, t := range terms {
		value := sumFactor{n: t.Value, d: t.Dim, out: true}
		named, counted := []sumFactor{{name: t.Name}}, []sumFactor{value}
		if t.Name == "" {
			named = counted
		}
		if by := t.Factor.Abs(); t.Per != notation.Pure || !by.Equal(one) {
			factor := sumFactor{n: by, d: t.Per}
			named, counted = append(named, factor), append(counted, factor)
		}
		w.add(&byName, t.Factor.Sign() < 0, w.factors(named, inFull))
		w.add(&byValue, t.Factor.Sign() < 0, w.factors(counted, inFull))
	}
	return byName.String() + w.equals() + "0", byValue.String() + w.equals() + "0"
}
