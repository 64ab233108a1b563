package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// At the rungs order and blank the student makes the plan: it grows by the sums chosen, in Solution.Plan, and the
// questions with it.

// A route is a plan in the student's hands.
type route struct {
	expert []statics.Step // the plan that help follows
	kept   []statics.Sum  // true sums that leave two unknowns or more
	chosen statics.Sum    // the sum chosen last, until its equation is typed
	ended  bool           // all forces are known, and what follows them is asked
}

// ownRoute puts the plan into the student's hands.
func (l *Lesson) ownRoute() {
	own := *l.Solution
	l.route = &route{expert: own.Plan}
	own.Plan = nil
	l.Solution = &own
	l.extend()
}

// knownForce reports whether a force is on the student's sheet.
func (l *Lesson) knownForce(i int) bool {
	_, known := l.Known(i)
	return known
}

// extend adds what is asked next, once all that is listed is answered: values that kept sums give, a sum to choose, or
// after the last force the sections.
func (l *Lesson) extend() {
	r := l.route
	if r == nil || r.ended || l.at < len(l.Questions) {
		return
	}
	switch sums, gives := l.usable(); {
	case len(gives) > 0:
		l.addStep(statics.Step{Sums: sums, Gives: gives, Why: statics.RelationUsed}, false)
	case l.allKnown():
		r.ended = true
		l.ask(l.sections()...)
	default:
		l.ask(Question{Kind: ChooseSum, Name: "sum", Step: statics.None, Member: statics.None})
	}
}

func (l *Lesson) allKnown() bool {
	for i := range l.Solution.Forces {
		if !l.knownForce(i) {
			return false
		}
	}
	return true
}

// ask adds questions.
func (l *Lesson) ask(more ...Question) {
	l.Questions = append(l.Questions, more...)
	l.answers = append(l.answers, make([]answer, len(more))...)
}

// addStep adds a step to the plan and asks for its terms, if they are wanted, and for what it gives.
func (l *Lesson) addStep(step statics.Step, terms bool) {
	l.Solution.Plan = append(l.Solution.Plan, step)
	i := len(l.Solution.Plan) - 1
	if terms {
		l.ask(l.termQuestions(i)...)
	}
	l.ask(l.valueQuestions(i)...)
}

// usable finds the fewest kept sums that hold as many unknowns as there are sums, and takes them out of those kept.
func (l *Lesson) usable() (sums []statics.Sum, gives []int) {
	r := l.route
	r.kept = slices.DeleteFunc(r.kept, func(s statics.Sum) bool { return len(s.Unknowns(l.knownForce)) == 0 })
	for size := 1; size <= len(r.kept); size++ {
		if set := l.usableSet(nil, nil, 0, size); set != nil {
			for _, n := range slices.Backward(set) {
				sums = append([]statics.Sum{r.kept[n]}, sums...)
				gives = merge(gives, r.kept[n].Unknowns(l.knownForce))
				r.kept = slices.Delete(r.kept, n, n+1)
			}
			return sums, gives
		}
	}
	return nil, nil
}

// usableSet picks kept sums, from the one numbered from on, until there are size of them, with no more unknowns.
func (l *Lesson) usableSet(set, unknowns []int, from, size int) []int {
	if len(set) == size {
		if len(unknowns) == size {
			return set
		}
		return nil
	}
	for n := from; n < len(l.route.kept); n++ {
		wider := merge(unknowns, l.route.kept[n].Unknowns(l.knownForce))
		if len(wider) > size {
			continue
		}
		if found := l.usableSet(append(slices.Clone(set), n), wider, n+1, size); found != nil {
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

// choose takes a line that names a free body and a sum; at the rung blank its equation may follow after a colon.
func (l *Lesson) choose(line string) Reply {
	name, equation, whole := strings.Cut(line, ":")
	if !whole || l.Rung != Blank || !strings.Contains(equation, "=") {
		name, equation = line, ""
	}
	s, err := l.readChoice(name)
	if err != nil {
		return unread(err)
	}
	a := &l.answers[l.at]
	a.tries++
	if says := l.useless(s); says != "" {
		return l.answered(judging.Wrong, line, says)
	}
	a.accepted, a.typed, a.first = true, strings.TrimSpace(line), a.tries == 1 && a.unaided()
	if l.Rung == Blank {
		r := l.answered(judging.Exact, line, "a sum of "+wording.Body(l.Solution.Assembly, s.Body)+", to be written down.")
		l.route.chosen = s
		l.ask(Question{Kind: TypeSum, Name: "equation", Step: statics.None, Member: statics.None})
		if equation != "" {
			return l.write(equation)
		}
		return r
	}
	return l.answered(judging.Exact, line, l.accept(s))
}

// useless says why a sum gives nothing: it holds no unknown, or follows from those kept.
func (l *Lesson) useless(s statics.Sum) string {
	if len(s.Unknowns(l.knownForce)) == 0 {
		return "this sum holds nothing unknown: it can check the work but not give anything new."
	}
	if !l.Solution.Independent(append(slices.Clone(l.route.kept), s), l.knownForce) {
		return "this sum already follows from those you have: it can check them but not give a new unknown."
	}
	return ""
}

// accept takes a sum into the plan if it leaves one unknown, or else keeps it. It says what is left.
func (l *Lesson) accept(s statics.Sum) string {
	left := s.Unknowns(l.knownForce)
	names := notation.List(l.forceNames(left))
	if len(left) > 1 {
		l.route.kept = append(l.route.kept, s)
		return "it holds unknowns, " + names + ", that it cannot part; it is kept until it can."
	}
	l.addStep(statics.Step{Sums: []statics.Sum{s}, Gives: left, Why: statics.StayOnBody}, l.Rung == Order)
	return "it leaves one unknown, " + names + "."
}

func (l *Lesson) forceNames(forces []int) []string {
	var names []string
	for _, i := range forces {
		names = append(names, l.Solution.Forces[i].Name)
	}
	return names
}

// chooseAgain puts the sum chosen back, so that another can be chosen in its place.
func (l *Lesson) chooseAgain() Reply {
	l.at--
	l.Questions, l.answers = l.Questions[:l.at+1], l.answers[:l.at+1]
	l.answers[l.at].accepted, l.answers[l.at].told, l.answers[l.at].typed = false, false, ""
	return Reply{Kind: WentBack, Lines: []string{"Back to the choice of a sum."}}
}

// write takes the equation of the sum chosen, or another choice in its place.
func (l *Lesson) write(line string) Reply {
	if _, err := l.readChoice(line); err == nil && !strings.Contains(line, "=") {
		l.chooseAgain()
		return l.choose(line)
	}
	typed, err := notation.ReadSum(l.judge().Decimals(line), l.Problem.Units, func(name string) bool { return l.forceNamed(name) != statics.None })
	if err != nil {
		return unread(judging.Placed(line, err))
	}
	a := &l.answers[l.at]
	a.tries++
	if found := l.judge().Sum(l.route.chosen, typed, l.Known); !found.Verdict.Right() {
		return l.answered(found.Verdict, line, l.found(found))
	}
	a.accepted, a.typed, a.first = true, strings.TrimSpace(line), a.tries == 1 && a.unaided()
	return l.answered(judging.Exact, line, l.accept(l.route.chosen))
}

// answered replies to a choice or an equation, and goes on if it was right.
func (l *Lesson) answered(v judging.Verdict, line, says string) Reply {
	q := l.Questions[l.at]
	l.answers[l.at].slips = append(l.answers[l.at].slips, l.traced...)
	l.heed(q, line, record.Outcome(v.Code()))
	if v.Right() {
		l.at++
	}
	return Reply{Kind: Judged, Verdict: v, Lines: []string{v.String() + ": " + says}}
}

// expertStep is the first step of the expert's plan that still gives something.
func (l *Lesson) expertStep() statics.Step {
	for _, step := range l.route.expert {
		if !step.Relation && !step.Check && slices.ContainsFunc(step.Gives, func(i int) bool { return !l.knownForce(i) }) {
			return step
		}
	}
	return statics.Step{}
}

// tellSum tells a good next sum and takes it; where sums must be solved together, all of them.
func (l *Lesson) tellSum() string {
	step := l.expertStep()
	var titles []string
	for _, s := range step.Sums {
		titles = append(titles, wording.Body(l.Solution.Assembly, s.Body)+", "+wording.New(l.Solution.Assembly, l.style()).SumTitle(s))
	}
	why := wording.New(l.Solution.Assembly, l.style()).Because(step, l.knownForce)
	l.giveUp()
	l.route.kept = nil // they follow from what is told or can be chosen again
	l.addStep(statics.Step{Sums: step.Sums, Gives: step.Gives, Why: step.Why}, l.Rung == Order)
	return strings.Join(titles, "; and ") + ". " + why
}

// tellEquation tells the equation of the sum chosen, and takes it.
func (l *Lesson) tellEquation() string {
	s := l.route.chosen
	l.giveUp()
	return wording.New(l.Solution.Assembly, l.style()).Symbols(s) + "; " + l.accept(s)
}

// sumHints are the hints for the choice of a sum.
func (l *Lesson) sumHints() [3]string {
	step := l.expertStep()
	return [3]string{
		"count the unknowns on " + notation.List(l.bodyNames()) + " and the whole: where can one sum leave one?",
		"take moments where most unknowns pass, or forces square to them: what has no arm or no share drops out.",
		"look at " + wording.Body(l.Solution.Assembly, step.Sums[0].Body) + ": " + wording.New(l.Solution.Assembly, l.style()).Because(step, l.knownForce),
	}
}

// equationHints are the hints for the equation of the sum chosen.
func (l *Lesson) equationHints() [3]string {
	s := l.route.chosen
	var terms []string
	for _, t := range s.Terms {
		if t.Why == statics.Counts {
			terms = append(terms, wording.New(l.Solution.Assembly, l.style()).Term(s, t))
		}
	}
	return [3]string{
		"go round " + wording.Body(l.Solution.Assembly, s.Body) + ": it carries " + notation.List(l.acting(s)) + "; which of these count in this sum?",
		sumRule(s),
		"its terms are: " + strings.Join(terms, "; ") + ".",
	}
}

// keptLines list the sums that are kept until they can be used.
func (l *Lesson) keptLines() []string {
	var lines []string
	for _, s := range l.Kept() {
		lines = append(lines, "Kept, "+wording.Body(l.Solution.Assembly, s.Body)+", "+wording.New(l.Solution.Assembly, l.style()).SumName(s)+": "+
			wording.New(l.Solution.Assembly, l.style()).Numbers(s, l.Known))
	}
	return lines
}
