package tutor

import (
	"strings"

	"unpin/statics"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Where the student makes the plan, a line goes one way: it may take a choice back, chooses a sum, writes its equation.

// equationName is what the equation of a sum is called.
const equationName = "equation"

// ownRoute puts the plan into the student's hands.
func (l *Lesson) ownRoute() {
	own := *l.about.solution
	l.route = &route{about: l.about, sheet: l.sheet, expert: own.Plan}
	own.Plan = nil
	l.about.solution = &own
	l.extend()
}

// extend adds what is asked next, once all that is listed is answered: what kept sums give, at the level plan after their
// terms, a sum to choose, or after the last force the sections.
func (l *Lesson) extend() {
	r := l.route
	if r == nil || r.ended || l.sheet.at < len(l.sheet.questions) {
		return
	}
	switch sums, gives := l.route.usable(); {
	case len(gives) > 0:
		l.route.addStep(statics.Step{Sums: sums, Gives: gives, Why: statics.RelationUsed}, l.about.levels.base() == Plan)
	case l.sheet.allKnown():
		r.ended = true
		askCheck(l)
		l.sheet.ask(l.about.script().sections()...)
	default:
		l.sheet.ask(Question{Kind: ChooseSum, Name: "sum", Step: statics.None, Member: statics.None})
	}
}

// compose takes a choice, an equation, or at the level blank both in one line; in place of an equation also another choice.
func (l *Lesson) compose(q Question, line string) Reply {
	if q.Kind == TypeSum && l.about.namesSum(line) {
		l.chooseAgain()
		q.Kind = ChooseSum
	}
	if q.Kind == ChooseSum {
		r, equation := l.choose(line)
		if equation == "" {
			return r
		}
		line = equation
	}
	return l.write(line)
}

// namesSum reports whether a line names a sum and is no equation.
func (m *matter) namesSum(line string) bool {
	_, err := m.readChoice(line)
	return err == nil && !strings.Contains(line, "=")
}

// chosenBy is what names the sum in a line that chooses one: the equation that may follow is not of it.
func chosenBy(line string) string {
	name, _, _ := strings.Cut(line, ":")
	return name
}

// choose takes a line that names a free body and a sum; at the level blank its equation may follow after a colon, and is
// given back to be written once the choice is right.
func (l *Lesson) choose(line string) (r Reply, equation string) {
	blank := l.about.levels.base() == Blank
	name, equation, whole := strings.Cut(line, ":")
	if !whole || !blank || !strings.Contains(equation, "=") {
		name, equation = line, ""
	}
	s, err := l.about.readChoice(name)
	if err != nil {
		return unreadLine(line, err, l.sheet.exam), ""
	}
	l.sheet.inHand().tries++
	if says := l.route.useless(s); says != "" {
		return l.settle(line, ruling{verdict: judging.Wrong, says: says}), ""
	}
	if !blank {
		return l.settle(line, ruling{says: l.route.accept(s)}), ""
	}
	r = l.settle(line, ruling{says: "a sum of " + wording.Body(l.about.solution.Assembly, s.Body) + ", to be written down."})
	l.route.chosen = s
	l.sheet.ask(Question{Kind: TypeSum, Name: equationName, Step: statics.None, Member: statics.None})
	return r, equation
}

// write takes the equation of the sum chosen.
func (l *Lesson) write(line string) Reply {
	typed, err := notation.ReadSum(l.bench().judge().Decimals(line), l.about.problem.Units, l.about.namesForce)
	if err != nil {
		return unreadLine(line, judging.Placed(line, err), l.sheet.exam)
	}
	l.sheet.inHand().tries++
	if l.sheet.exam {
		return noteEquation(l, line, typed)
	}
	found := l.bench().judge().Sum(l.route.chosen, typed, l.sheet.known)
	if !found.Verdict.Right() {
		return l.settle(line, ruling{verdict: found.Verdict, says: found.Says, slips: found.Slips})
	}
	return l.settle(line, ruling{says: l.route.accept(l.route.chosen)})
}

// noteEquation takes down an equation in an exam; with it or, where it is wrong, as if it were right, the lesson goes on.
func noteEquation(l *Lesson, line string, typed notation.TypedSum) Reply {
	var r ruling
	for _, values := range l.sheet.putIn() {
		found := l.bench().judge().Sum(l.route.chosen, typed, values)
		if r = (ruling{verdict: found.Verdict, says: found.Says, slips: found.Slips}); found.Verdict.Right() {
			break
		}
	}
	l.route.accept(l.route.chosen)
	return l.settle(line, r)
}

// chooseAgain puts the sum chosen back, so that another can be chosen in its place.
func (l *Lesson) chooseAgain() Reply {
	l.sheet.dropLast()
	return Reply{Kind: WentBack, Lines: []string{"Back to the choice of a sum."}}
}

// tellSum tells a good next sum and takes it; where sums must be solved together, all of them.
func (l *Lesson) tellSum() string {
	step := l.route.expertStep()
	var titles []string
	for _, s := range step.Sums {
		titles = append(titles, wording.Body(l.about.solution.Assembly, s.Body)+", "+l.about.words().SumTitle(s))
	}
	why := l.about.words().Because(step, l.sheet.knownForce)
	l.giveUp()
	l.route.kept = nil // they follow from what is told or can be chosen again
	l.route.addStep(statics.Step{Sums: step.Sums, Gives: step.Gives, Why: step.Why}, l.about.levels.base() == Plan)
	return strings.Join(titles, "; and ") + ". " + why
}

// tellEquation tells the equation of the sum chosen, and takes it.
func (l *Lesson) tellEquation() string {
	s := l.route.chosen
	l.giveUp()
	return l.about.words().Symbols(s) + "; " + l.route.accept(s)
}

// leaveOpen leaves a choice of an exam open, and with it all forces not asked for so far; or an equation, as if it were right.
func leaveOpen(l *Lesson, q Question) Reply {
	l.giveUp()
	if q.Kind == TypeSum {
		l.route.accept(l.route.chosen)
		return Reply{Kind: Told, Lines: []string{"told at the end: this equation is left open."}}
	}
	l.route.ended = true
	l.sheet.ask(l.about.script().sections()...)
	return Reply{Kind: Told, Lines: []string{"told at the end: the forces not found so far are left open."}}
}
