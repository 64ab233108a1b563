package tutor

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/tutor/marking"
)

// A mark is what a student can earn.
type mark string

// The marks, in the order in which they are told.
const (
	bodyMark     mark = "body"
	methodMark   mark = "method"
	accuracyMark mark = "accuracy"
	followMark   mark = "follow-through"
	checkMark    mark = "check"
)

// A tally is what was earned of a mark.
type tally struct{ got, of exact.Num }

// markOf is the mark that a question is asked for.
func (e *exam) markOf(q Question) mark {
	switch q.Kind {
	case ChooseSum:
		return bodyMark
	case CheckSum:
		return checkMark
	case TypeSum:
		return methodMark
	}
	return accuracyMark
}

// give adds to a mark.
func (e *exam) give(m mark, got, of exact.Num) {
	t := e.earned[m]
	e.earned[m] = tally{t.got.Add(got), t.of.Add(of)}
}

// one is a whole mark, or none.
func one(earned bool) exact.Num {
	if earned {
		return exact.Int(1)
	}
	return exact.Num{}
}

// judged is a verdict with what it says.
func (e *exam) judged(m mark, a answer) string {
	e.give(m, one(a.verdict.Right()), exact.Int(1))
	if a.verdict.Right() || a.says == "" {
		return a.verdict.String() + "."
	}
	return a.verdict.String() + "; " + a.says
}

// equation is what an equation earns: the method if it has every term that it needs and none besides, the accuracy if all are right.
func (e *exam) equation(n int, a answer) string {
	right, method := a.verdict.Right(), e.methodRight(n, a)
	e.give(methodMark, one(method), exact.Int(1))
	e.give(accuracyMark, one(right), exact.Int(1))
	switch {
	case right:
		return a.verdict.String() + "."
	case method:
		return "the method is right, a term is not; " + a.says
	}
	return "not yet; " + a.says
}

// methodRight reports whether an equation earns its method.
func (e *exam) methodRight(n int, a answer) bool {
	return a.tries > 0 && (a.verdict.Right() || e.complete(n, a) || len(a.slips) > 0 && !slices.ContainsFunc(a.slips, wrongTerms))
}

// complete reports whether an equation has as many terms as the sum that was chosen before it, and no force that is not in that.
func (e *exam) complete(n int, a answer) bool {
	sum, err := e.about.readChoice(chosenBy(e.sheet.answers[n-1].typed))
	if err != nil {
		return false
	}
	typed, err := notation.ReadSum(e.bench().judge().Decimals(a.typed), e.about.problem.Units, e.about.namesForce)
	if err != nil {
		return false
	}
	wanted := 0
	for _, t := range sum.Terms() {
		if t.Why == statics.Counts {
			wanted++
		}
	}
	terms := slices.Concat(typed.Left, typed.Right)
	for _, t := range terms {
		if f, _ := judging.ForceMeant(e.about.solution.Assembly, t.Force); t.Force != "" && (f == statics.None || sum.Factor(f).IsZero()) {
			return false
		}
	}
	return len(terms) == wanted
}

// wrongTerms reports whether a mistake leaves out a term or brings one in that does not belong there.
func wrongTerms(id string) bool {
	s := slip.ByID(id)
	return s == nil || s.Group == slip.Body || s.Group == slip.Connection || s.Group == slip.PinPair
}

// total is what was earned, by marks and in all.
func (e *exam) total() string {
	return "Piece by piece: " + e.shares() + ". What the level prints earns none."
}

// shares are what was earned of each mark, and in all.
func (e *exam) shares() string {
	var parts []string
	var all tally
	for _, m := range []mark{bodyMark, methodMark, accuracyMark, followMark, checkMark} {
		t := e.earned[m]
		if t.of.IsZero() {
			continue
		}
		all = tally{all.got.Add(t.got), all.of.Add(t.of)}
		parts = append(parts, fmt.Sprintf("%s %s of %s", m, marking.Points(t.got), marking.Points(t.of)))
	}
	return fmt.Sprintf("%s; in all %s of %s", strings.Join(parts, ", "), marking.Points(all.got), marking.Points(all.of))
}
