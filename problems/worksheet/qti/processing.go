package qti

import (
	"unpin/statics/exact"
)

// processing is how the answers are judged: each by itself, then the score.
func (i *item) processing() *element {
	all := el("responseProcessing")
	for _, a := range i.answers {
		all.add(a.condition())
	}
	points, of := base("float", number(i.points())), base("float", number(exact.Int(int64(len(i.answers)))))
	all.add(set(score, el("divide", el("product", el("variable", at("identifier", right)), points), of)))
	return all
}

// condition judges one answer: of none nothing is told; the first range that it lies in counts.
func (a answer) condition() *element {
	tell := func(id string) *element { return set(ofAnswer+a.id, base("identifier", id)) }
	oneMore := set(right, el("sum", el("variable", at("identifier", right)), base("integer", "1")))
	all := el("responseCondition",
		el("responseIf", el("isNull", a.given()), tell(isNone)),
		el("responseElseIf", a.within(a.low, a.high), oneMore, tell(isRight)))
	for _, f := range a.feedback {
		all.add(el("responseElseIf", a.within(f.low, f.high), tell(f.id)))
	}
	all.add(el("responseElse", tell(isWrong)))
	return all
}

// given is what was typed.
func (a answer) given() *element { return el("variable", at("identifier", a.id)) }

// within asks whether the answer lies in a range, its ends included, by two comparisons: the tolerance of a single one is
// not heeded by all players.
func (a answer) within(low, high exact.Num) *element {
	return el("and", el("gte", a.given(), base("float", number(low))), el("lte", a.given(), base("float", number(high))))
}

// set sets an outcome.
func set(id string, to *element) *element { return el("setOutcomeValue", at("identifier", id), to) }

// base is a value as it stands.
func base(kind, value string) *element { return el("baseValue", at("baseType", kind), value) }
