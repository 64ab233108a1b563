package qti

import (
	"slices"

	"unpin/statics/exact"
)

// processing is how the answers are judged: each by itself, with its points, then the total is rounded.
func (i *item) processing() *element {
	all := el("responseProcessing")
	for _, a := range i.answers {
		all.add(i.condition(a))
	}
	step := leastStep
	if i.Scheme != nil && !i.Scheme.Round.IsZero() {
		step = i.Scheme.Round
	}
	all.add(set(score, rounded(el("variable", at("identifier", score)), step)))
	return all
}

// leastStep is what points are rounded to where nothing else is said: it hides what binary numbers lose.
var leastStep = exact.MustParse("0.000001")

// halfUp is a half, and a little for what binary numbers lose of a sum that is just at a half.
const halfUp = "0.500000001"

// rounded is a number that is not negative, rounded to a multiple of a step. It divides by steps in 1, mostly a whole number, which
// binary numbers have exactly.
func rounded(x *element, step exact.Num) *element {
	inOne, _ := exact.Int(1).Quo(step) // a step is not zero
	steps := base("float", number(inOne))
	return el("divide", el("truncate", el("sum", el("product", x, steps), base("float", halfUp))), steps)
}

// condition judges one answer: of none nothing is told; the first range that it lies in counts.
func (i *item) condition(a answer) *element {
	all := el("responseCondition",
		el("responseIf", el("isNull", a.given()), a.tell(isNone)),
		el("responseElseIf", a.within(a.low, a.high), a.tell(isRight), a.earn(exact.Int(1))))
	for _, x := range a.accepted {
		all.add(el("responseElseIf", a.within(x, x), a.tell(isRight), a.earn(exact.Int(1))))
	}
	for _, f := range a.feedback {
		all.add(i.branches(a, f))
	}
	all.add(el("responseElse", a.tell(isWrong), a.earn(i.earns("wrong"))))
	return all
}

// branches are what becomes of a value that something is told of. What takes points once a problem takes none where it has done so
// in an answer before.
func (i *item) branches(a answer, f told) []*element {
	part := i.earns(f.verdict)
	least := el("responseElseIf", a.within(f.low, f.high), a.tell(f.id), a.earn(part))
	if a.points.IsZero() || !slices.Contains(i.once(), f.verdict) {
		return []*element{least}
	}
	before := el("gte", el("variable", at("identifier", charged+f.verdict)), base("integer", "1"))
	again := el("responseElseIf", el("and", a.within(f.low, f.high), before), a.tell(f.id), a.earn(exact.Int(1)))
	least.add(set(charged+f.verdict, base("integer", "1")))
	return []*element{again, least}
}

// earns is what part of its points an answer with a verdict earns.
func (i *item) earns(verdict string) exact.Num {
	if i.Scheme == nil {
		return exact.Num{}
	}
	return i.Scheme.Verdicts[verdict]
}

// once lists the verdicts that questions have and that take points once a problem.
func (i *item) once() []string {
	if i.Scheme == nil {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(i.Scheme.Once), func(v string) bool { return !slices.Contains(toldVerdicts, v) })
}

// given is what was typed.
func (a answer) given() *element { return el("variable", at("identifier", a.id)) }

// tell has something told of the answer.
func (a answer) tell(id string) *element { return set(ofAnswer+a.id, base("identifier", id)) }

// earn adds a part of the answer's points to the score; nothing where there are none.
func (a answer) earn(part exact.Num) []*element {
	points := a.points.Mul(part)
	if points.IsZero() {
		return nil
	}
	return []*element{set(score, el("sum", el("variable", at("identifier", score)), base("float", number(points))))}
}

// within asks whether the answer lies in a range, its ends included, by two comparisons: the tolerance of a single one is
// not heeded by all players.
func (a answer) within(low, high exact.Num) *element {
	return el("and", el("gte", a.given(), base("float", number(low))), el("lte", a.given(), base("float", number(high))))
}

// set sets an outcome.
func set(id string, to *element) *element { return el("setOutcomeValue", at("identifier", id), to) }

// base is a value as it stands.
func base(kind, value string) *element { return el("baseValue", at("baseType", kind), value) }
