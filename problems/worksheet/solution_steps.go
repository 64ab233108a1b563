package worksheet

import (
	"fmt"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// working is the section with the sums of a plan: of the problem, of the way that takes two-force members at once, or of a
// way round two sums together.
type working struct {
	*document
	of  *statics.Solution
	say wording.Speaker
}

func newWorking(d *document) working { return working{d, d.Solution, d.say} }

// with is the same section about another solution of the frame.
func (w working) with(s *statics.Solution) working {
	w.others = append(w.others, s.Assembly)
	return working{w.document, s, wording.New(s.Assembly, w.st).Short()}
}

// write writes the plan, step by step, with what each gives.
func (w working) write() {
	w.section("Solution")
	if short := w.shortcut(); short != nil {
		w = w.with(short)
	}
	known := make([]bool, len(w.of.Forces))
	for n, step := range w.of.Plan {
		if n > 0 {
			w.blank()
		}
		w.step(n+1, step, known)
		for _, i := range step.Gives {
			known[i] = true
		}
	}
	if open := wording.Unchecked(w.of); open != "" {
		w.blank()
		w.because("", open)
	}
}

func (w working) step(n int, step statics.Step, known []bool) {
	title := wording.Capital(w.say.BodyAndSum(step.Sums[0]))
	switch {
	case len(step.Sums) > 1:
		title = wording.Capital(wording.Count(len(step.Sums))) + " sums solved together"
	case step.Check:
		title = "Check: " + w.say.BodyAndSum(step.Sums[0])
	}
	w.numbered(fmt.Sprintf("%-4s", fmt.Sprintf("%d.", n)), title)
	w.list[len(w.list)-1].whole = len(step.Sums) > 1
	w.because("    ", w.say.Because(step, func(i int) bool { return known[i] }))
	for k, s := range step.Sums {
		indent := "      "
		if len(step.Sums) > 1 {
			w.because(fmt.Sprintf("    (%d) ", k+1), wording.Capital(w.say.BodyAndSum(s)))
			indent += "  "
		}
		w.equation(indent, s, step, known)
	}
	if len(step.Sums) > 1 {
		w.because("    ", "From these sums:")
	}
	for _, i := range step.Gives {
		w.conclude("      ", w.found(i))
	}
	if round := w.of.Split(&step, known); round != nil {
		w.wayRound(round, step.Gives, known)
	}
}

// found is a force that has come out.
func (w working) found(i int) string { return w.say.Found(i, w.of.Values[i]) }

// equation writes a sum in symbols, with the values found before put in, and gathered.
func (w working) equation(indent string, s statics.Sum, step statics.Step, known []bool) {
	value := func(i int) (exact.Num, bool) { return w.of.Values[i], known[i] }
	symbols := w.say.Symbols(s)
	if len(step.Gives) == 1 && symbols == w.found(step.Gives[0]) { // Ax = 0, and nothing else
		return
	}
	w.equate(indent, symbols)
	numbers := w.say.Numbers(s, value)
	if numbers != symbols {
		w.equate(indent, numbers)
	}
	switch {
	case step.Check && w.anyInexact():
		w.equate(indent, w.say.Added(s, w.of.Values)+" within the figures carried: the check holds.")
	case step.Check:
		w.equate(indent, w.say.Added(s, w.of.Values)+": the check holds.")
	case step.Relation:
		w.equate(indent, "kept for later")
	case len(step.Sums) > 1 || w.needsGathering(s, step.Gives):
		if gathered := w.say.Gathered(s, step.Gives, w.of.Values); gathered != numbers {
			w.equate(indent, gathered)
		}
	}
}

// needsGathering reports whether a sum with all that is known on the right shows more than the result itself will: an
// unknown there has a factor, and what is known does not come to zero.
func (w working) needsGathering(s statics.Sum, gives []int) bool {
	var right exact.Num
	plain := true
	for _, i := range gives {
		k := s.Factor(i)
		right = right.Add(k.Mul(w.of.Values[i]))
		plain = plain && (k.IsZero() || k.Abs().Equal(exact.Int(1)))
	}
	return !plain && !right.IsZero()
}
