package tutor

import (
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// slipsByTerm measures how many slips are found where the terms are typed one by one: each shows in the size, arm or sign
// of one, and is named, or asked about where another makes the very same entry.
func slipsByTerm(t *testing.T) measure {
	var all tally
	for i, p := range practiceProblems(t) {
		if (testing.Short() || raced) && i%5 != 0 {
			continue
		}
		l, err := New(p, Terms, false)
		if err != nil {
			t.Fatal(err)
		}
		for _, q := range l.Questions {
			for _, a := range alteredTerms(l, q) {
				if typed := typedTerm(l, q, a.Term); !typed.Value.Equal(q.truth) { // else another question shows it
					all.add(termOutcome(l, q, a.Slip, typed))
				}
			}
		}
	}
	return measure{what: "Terms typed one by one: named or asked about", count: all.found(), of: all.seen(), least: 99.5}
}

// termOutcome is what the lesson makes of a slip in one term.
func termOutcome(l *Lesson, q Question, made *slip.Slip, typed Typed) tally {
	slips := l.slipsOfTerm(q, typed)
	switch {
	case len(slips) == 0:
		return tally{missed: 1}
	case !slices.Contains(slips, made):
		return tally{wrong: 1}
	case len(slips) > 1:
		return tally{asked: 1}
	}
	return tally{named: 1}
}

// alteredTerms is what slips make of the term that a question asks about.
func alteredTerms(l *Lesson, q Question) []slip.Altered {
	switch q.Kind {
	case TermSize, TermArm, TermSign:
		return l.slipQuestion(q, l.Solution.Values).OfTerm(q.Sum, q.Term)
	}
	return nil
}

// typedTerm is the answer to a question about a term, when the student has it so.
func typedTerm(l *Lesson, q Question, term statics.Term) Typed {
	value := term.Size
	switch q.Kind {
	case TermArm:
		value = term.Arm
	case TermSign:
		value = exact.Int(int64(l.shownSign(l.Solution.Plan[q.Step].Sums[q.Sum], term)))
	}
	return Typed{Value: value, Written: value, Unit: exact.Int(1)}
}
