package tutor

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
)

// slipsByTerm measures how many slips are found where the terms are typed one by one: each shows in the size, arm or sign
// of one, and is named, or asked about where another makes the very same entry.
func slipsByTerm(t *testing.T) measure {
	var all tally
	eachLesson(t, Terms, func(l *Lesson) {
		for _, q := range l.Questions {
			for _, a := range alteredTerms(l, q) {
				if typed := typedTerm(l, q, a.Term); !typed.Value.Equal(q.truth) { // else another question shows it
					all.add(termOutcome(l, q, a.Slip, typed))
				}
			}
		}
	})
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

// slipsBySum measures how many slips are found where whole sums are typed: each sum of each plan, as one in six of the
// slips would have it, with known forces by name or by value.
func slipsBySum(t *testing.T, byValue bool) measure {
	var all tally
	every := rand.New(rand.NewPCG(6, 4))
	name := map[bool]string{false: "by name", true: "by value"}[byValue]
	eachLesson(t, Values, func(l *Lesson) {
		for n, step := range l.Solution.Plan {
			known := func(int) (exact.Num, bool) { return exact.Num{}, false }
			if byValue {
				known = l.Solution.KnownBefore(n)
			}
			for _, s := range step.Sums {
				all.add(sumOutcomes(t, l, s, known, every))
			}
		}
	})
	return measure{what: "Whole sums typed, known forces " + name + " (one in six, seed 6, 4): named or asked about", count: all.found(), of: all.seen(), least: 99.5}
}

// sumOutcomes is what the lesson makes of one in six of the slips in one sum.
func sumOutcomes(t *testing.T, l *Lesson, s statics.Sum, known func(int) (exact.Num, bool), every *rand.Rand) tally {
	var all tally
	values := map[int]exact.Num{}
	for i := range l.Solution.Forces {
		if v, ok := known(i); ok {
			values[i] = v
		}
	}
	for _, w := range slip.OfSum(l.Solution.Assembly, s, values, l.Problem.Units.Customary()) {
		if every.IntN(6) > 0 {
			continue
		}
		typed, ok := typedSum(t, l, w.Sum, known)
		if !ok {
			continue
		}
		says := l.checkEquation(s, typed, known)
		of := tally{hidden: 1}
		if says != "" {
			of = heardOfSum(l, says, w)
		}
		all.add(of)
	}
	return all
}

// typedSum is a sum as a student types it; false where nothing is left in it, or where its
// units alone give it away.
func typedSum(t *testing.T, l *Lesson, s statics.Sum, known func(int) (exact.Num, bool)) (notation.TypedSum, bool) {
	st := l.style()
	st.Figures = 8
	text := wording.New(l.Solution.Assembly, st).Numbers(s, known)
	if text == "0 = 0" {
		return notation.TypedSum{}, false
	}
	typed, err := notation.ReadSum(text, l.Problem.Units, func(name string) bool { return l.forceNamed(name) != statics.None })
	if err != nil && !strings.Contains(err.Error(), "do not add") {
		t.Fatalf("%s: %s: %v", l.Problem.Name, text, err)
	}
	return typed, err == nil
}

// heardOfSum is what a text says of a slip in a written sum.
func heardOfSum(l *Lesson, text string, w slip.Written) tally {
	stranger := ""
	if w.Giver.Force != statics.None {
		stranger = (&equation{l: l, sum: w.Sum}).stranger(w.Giver.Force)
	}
	if text == l.writtenSays([]slip.Written{w}) || text == stranger {
		return tally{named: 1}
	}
	return heard(text, slip.Candidate{Slip: w.Slip, Giver: w.Giver}, l)
}

// storiesOfWrongTerms measures how often a story is made of a false term that no slip leads to: the number in one term of
// a true sum is drawn log-uniformly, with five figures.
func storiesOfWrongTerms(t *testing.T) measure {
	m := measure{what: "Whole sums typed, one term a random number of five figures (seed 6, 5): a story", most: 1}
	random := rand.New(rand.NewPCG(6, 5))
	eachLesson(t, Values, func(l *Lesson) {
		for _, step := range l.Solution.Plan {
			for _, s := range step.Sums {
				known := func(int) (exact.Num, bool) { return exact.Num{}, false }
				typed, ok := typedSum(t, l, s, known)
				if !ok {
					continue
				}
				for range 4 {
					other := slices.Clone(typed.Left)
					n := random.IntN(len(other))
					other[n].Value, other[n].Factors = exact.MustParse(randomNumber(random, 5)), nil
					e := l.equation(s, notation.TypedSum{Left: other}, known)
					if m.of++; e.slipText() != "" {
						m.count++
					}
				}
			}
		}
	})
	return m
}
