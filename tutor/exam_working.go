package tutor

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/tutor/marking"
)

// The working of an exam goes into the marks by the forces that it leads to, so that papers worked in other orders can be held
// beside each other: for each force the bodies and sums that were chosen, the method of their equations, and the terms.

// stepWork is what was written on the way to the forces of one step: the questions, by number.
type stepWork struct{ choices, equations, terms []int }

// parts are the parts of the working that the level asks for.
func (e *exam) parts() []marking.Part {
	steps, rest := e.workedSteps()
	var all []marking.Part
	found := map[int]bool{}
	for i, step := range e.about.solution.Plan {
		for _, f := range step.Gives {
			found[f] = true
			all = append(all, e.partsFor(f, steps[i])...)
		}
	}
	for f := range e.about.solution.Forces {
		if e.route != nil && !found[f] && asksFor(e.about, f) {
			all = append(all, e.partsFor(f, rest)...)
		}
	}
	if e.route != nil {
		all = append(all, e.checkPart())
	}
	return all
}

// workedSteps sorts what was written by steps of the plan. A choice that gives nothing belongs to the step that comes after it; rest
// is what no step came of.
func (e *exam) workedSteps() (steps map[int]*stepWork, rest *stepWork) {
	steps, rest = map[int]*stepWork{}, &stepWork{}
	of := func(i int) *stepWork {
		if steps[i] == nil {
			steps[i] = &stepWork{}
		}
		return steps[i]
	}
	for n, q := range e.sheet.questions {
		switch {
		case q.ofTerm():
			of(q.Step).terms = append(of(q.Step).terms, n)
		case q.Kind == ChooseSum:
			rest.choices = append(rest.choices, n)
			if i := e.stepChosen(n); i >= 0 {
				w := of(i)
				w.choices = append(w.choices, rest.choices...)
				rest.choices = nil
				if n+1 < len(e.sheet.questions) && e.sheet.questions[n+1].Kind == TypeSum {
					w.equations = append(w.equations, n+1)
				}
			}
		}
	}
	return steps, rest
}

// stepChosen is the step of the student's plan that a choice is a sum of, or −1.
func (e *exam) stepChosen(n int) int {
	s, err := e.about.readChoice(chosenBy(e.sheet.answers[n].typed))
	if err != nil || e.sheet.answers[n].tries == 0 || !e.sheet.answers[n].verdict.Right() {
		return -1
	}
	return slices.IndexFunc(e.about.solution.Plan, func(step statics.Step) bool {
		return slices.ContainsFunc(step.Sums, func(used statics.Sum) bool { return sameSum(used, s) })
	})
}

// partsFor are the parts of the working for one force; w is nil where nothing was written.
func (e *exam) partsFor(force int, w *stepWork) []marking.Part {
	if w == nil {
		w = &stepWork{}
	}
	name := e.about.solution.Forces[force].Name
	part := func(kind string, at []int, right func(n int) bool) marking.Part {
		p := marking.Part{Kind: kind, For: name, Asked: max(1, len(at))}
		for _, n := range at {
			e.addTo(&p, n, right(n))
		}
		return p
	}
	verdict := func(n int) bool { return e.sheet.answers[n].verdict.Right() }
	var all []marking.Part
	if e.route != nil {
		all = append(all, part("body", w.choices, verdict))
	}
	terms := w.terms
	if e.Level() == Blank {
		terms = w.equations
		all = append(all, part("method", w.equations, func(n int) bool { return e.methodRight(n, e.sheet.answers[n]) }))
	}
	if e.route != nil || len(terms) > 0 {
		all = append(all, part("terms", terms, verdict))
	}
	return all
}

// addTo counts the answer to question n into a part.
func (e *exam) addTo(p *marking.Part, n int, right bool) {
	a := e.sheet.answers[n]
	typed := a.typed
	if e.sheet.questions[n].Kind == ChooseSum {
		typed = chosenBy(typed)
	}
	if a.tries == 0 {
		return
	}
	if p.Given != "" && e.sheet.questions[n].ofTerm() {
		p.Given += " "
	} else if p.Given != "" {
		p.Given += "; "
	}
	p.Given += strings.TrimSpace(typed)
	if right {
		p.Right++
		return
	}
	if p.Says == "" {
		p.Says = a.says
	}
	if p.Slip == "" && len(a.slips) == 1 {
		p.Slip = a.slips[0]
	}
}

// checkPart is the check of the work.
func (e *exam) checkPart() marking.Part {
	p := marking.Part{Kind: "check", Asked: 1}
	for n, q := range e.sheet.questions {
		if a := e.sheet.answers[n]; q.Kind == CheckSum && a.tries > 0 {
			p.Given = a.typed
			ok, says := checkFault(e.Lesson, a.typed)
			if p.Says = says; ok {
				p.Right = 1
			}
		}
	}
	return p
}
