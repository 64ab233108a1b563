package tutor

import (
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// At the levels plan and blank the student makes the plan: it grows by the sums chosen, in Solution.Plan, and the
// questions with it.

// A route is a plan in the student's hands.
type route struct {
	about  *matter
	sheet  *sheet
	expert []statics.Step // the plan that help follows
	kept   []statics.Sum  // true sums that leave two unknowns or more
	chosen statics.Sum    // the sum chosen last, until its equation is typed
	ended  bool           // all forces are known, and what follows them is asked
}

// addStep adds a step to the plan and asks for its terms, if they are wanted, and for what it gives.
func (r *route) addStep(step statics.Step, terms bool) {
	r.about.solution.Plan = append(r.about.solution.Plan, step)
	i, questions := len(r.about.solution.Plan)-1, r.about.script()
	if terms {
		r.sheet.ask(questions.termQuestions(i)...)
	}
	r.sheet.ask(questions.valueQuestions(i)...)
}

// usable finds the fewest kept sums that hold as many unknowns as there are sums, and takes them out of those kept.
func (r *route) usable() (sums []statics.Sum, gives []int) {
	r.kept = slices.DeleteFunc(r.kept, func(s statics.Sum) bool { return len(s.Unknowns(r.sheet.settledForce)) == 0 })
	for size := 1; size <= len(r.kept); size++ {
		if set := r.usableSet(nil, nil, 0, size); set != nil {
			for _, n := range slices.Backward(set) {
				sums = append([]statics.Sum{r.kept[n]}, sums...)
				gives = merge(gives, r.kept[n].Unknowns(r.sheet.settledForce))
				r.kept = slices.Delete(r.kept, n, n+1)
			}
			return sums, gives
		}
	}
	return nil, nil
}

// usableSet picks kept sums, from the one numbered from on, until there are size of them, with no more unknowns.
func (r *route) usableSet(set, unknowns []int, from, size int) []int {
	if len(set) == size {
		if len(unknowns) == size {
			return set
		}
		return nil
	}
	for n := from; n < len(r.kept); n++ {
		wider := merge(unknowns, r.kept[n].Unknowns(r.sheet.settledForce))
		if len(wider) > size {
			continue
		}
		if found := r.usableSet(append(slices.Clone(set), n), wider, n+1, size); found != nil {
			return found
		}
	}
	return nil
}

// merge is the union of two sets, in rising order.
func merge(x, y []int) []int {
	all := append(slices.Clone(x), y...)
	slices.Sort(all)
	return slices.Compact(all)
}

// useless says why a sum gives nothing: it holds no unknown, or follows from those kept.
func (r *route) useless(s statics.Sum) string {
	if len(s.Unknowns(r.sheet.settledForce)) == 0 {
		return "this sum holds nothing unknown: it can check the work but not give anything new."
	}
	if slices.ContainsFunc(r.kept, s.Same) {
		return "this sum is kept already, and is used once all but one of its unknowns are known."
	}
	if !r.about.solution.Independent(append(slices.Clone(r.kept), s), r.sheet.settledForce) {
		return "this sum already follows from those you have: it can check them but not give a new unknown."
	}
	return ""
}

// accept takes a sum into the plan if it leaves one unknown, or else keeps it. It says what is left.
func (r *route) accept(s statics.Sum) string {
	left := s.Unknowns(r.sheet.settledForce)
	names := notation.List(r.about.forceNames(left))
	if len(left) > 1 {
		r.kept = append(r.kept, s)
		return "it holds " + names + ", which one sum cannot separate, and is kept until it can be used" + r.nudge()
	}
	r.addStep(statics.Step{Sums: []statics.Sum{s}, Gives: left, Why: statics.StayOnBody}, r.about.levels.base() == Plan)
	return "it leaves one unknown, " + names + "."
}

// nudge points to a sum that leaves one unknown, where the expert has one now.
func (r *route) nudge() string {
	step := r.expertStep()
	if len(step.Sums) != 1 || len(step.Sums[0].Unknowns(r.sheet.settledForce)) != 1 {
		return "."
	}
	return "; another sum leaves just one unknown: where do all the others pass, or to what are they perpendicular?"
}

func (m *matter) forceNames(forces []int) []string {
	var names []string
	for _, i := range forces {
		names = append(names, m.solution.Forces[i].Name)
	}
	return names
}

// expertStep is the first step of the expert's plan that still gives something. What a step says of what was searched holds
// where the plan took it: who knows more by then, or kept no sum, is only offered it.
func (r *route) expertStep() statics.Step {
	known := 0
	for i := range r.about.solution.Forces {
		if r.sheet.settledForce(i) {
			known++
		}
	}
	for _, step := range r.expert {
		if !step.Relation && !step.Check && slices.ContainsFunc(step.Gives, func(i int) bool { return !r.sheet.settledForce(i) }) {
			if step.Why == statics.RelationUsed || step.Why == statics.SolvedTogether && known > 0 {
				step.Why = statics.Offered
			}
			return step
		}
		known -= len(step.Gives)
	}
	return statics.Step{}
}

// Left is how much is left to find where the student makes the plan: the unknowns, and then the values along the members.
// It is zero at the other levels, whose questions are numbered.
func (l *Lesson) Left() (unknowns, along int) {
	if l.route == nil || l.route.ended {
		return 0, 0
	}
	for i := range l.about.solution.Forces {
		if asksFor(l.about, i) && !l.sheet.settledForce(i) {
			unknowns++
		}
	}
	return unknowns, len(l.about.script().sections())
}

// keptLines list the sums that are kept until they can be used.
func (r *route) keptLines() []string {
	var lines []string
	for _, s := range r.kept {
		lines = append(lines, "Kept, "+wording.Body(r.about.solution.Assembly, s.Body)+", "+r.about.words().SumName(s)+": "+
			r.keptText(s, r.about.words()))
	}
	return lines
}

// keptText says what a kept sum holds: the sum itself where the student wrote it, else, and in an exam, only its unknowns.
func (r *route) keptText(s statics.Sum, words wording.Speaker) string {
	if r.about.levels.base() == Plan || r.sheet.exam {
		return "it holds " + notation.List(r.about.forceNames(s.Unknowns(r.sheet.settledForce)))
	}
	return words.Numbers(s, r.sheet.known)
}
