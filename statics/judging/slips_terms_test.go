package judging

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
	eachSheet(t, func(l *sheet) {
		for i, step := range l.Solution.Plan {
			if step.Relation || step.Check {
				continue
			}
			for n, sum := range step.Sums {
				for k, term := range sum.Terms() {
					for _, entry := range entries(sum, term) {
						all.add(termOutcomes(l.Term(l.stepOf(i, false), n, k, entry)))
					}
				}
			}
		}
	})
	return measure{what: "Terms typed one by one: named or asked about", count: all.found(), of: all.seen(), least: 99.5}
}

// entries lists what is asked of a term: the size where it is a load's, the arm where the sum is of moments, the sign
// always.
func entries(s statics.Sum, t statics.Term) []Entry {
	var all []Entry
	if t.Why != statics.Counts {
		return nil
	}
	if t.Force == statics.None {
		all = append(all, Size)
	}
	if s.Moment && t.What != statics.TurnOnly {
		all = append(all, Arm)
	}
	return append(all, Sign)
}

// termOutcomes is what is made of all slips that change what a case asks for.
func termOutcomes(c *Case) tally {
	var all tally
	for _, a := range c.alteredTerms() {
		value := c.judge.entered(c.term, a.Term)
		if !value.Equal(c.Truth) { // else another question shows it
			all.add(termOutcome(c.TermSlips(Typed{Value: value, Written: value, Unit: one}), a.Slip))
		}
	}
	return all
}

// termOutcome is what is made of one of them.
func termOutcome(slips []*slip.Slip, made *slip.Slip) tally {
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

// slipsBySum measures how many slips are found where whole sums are typed: each sum of each plan, as one in six of the
// slips would have it, with known forces by name or by value.
func slipsBySum(t *testing.T, byValue bool) measure {
	var all tally
	every := rand.New(rand.NewPCG(6, 4))
	name := map[bool]string{false: "by name", true: "by value"}[byValue]
	eachSheet(t, func(l *sheet) {
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
func sumOutcomes(t *testing.T, l *sheet, s statics.Sum, known func(int) (exact.Num, bool), every *rand.Rand) tally {
	var all tally
	values := map[int]exact.Num{}
	for i := range l.Solution.Forces {
		if v, ok := known(i); ok {
			values[i] = v
		}
	}
	for _, w := range slip.OfSum(l.Solution.Assembly, s, values, l.Style.Units.Customary()) {
		if every.IntN(6) > 0 {
			continue
		}
		typed, ok := typedSum(t, l, w.Sum, known)
		if !ok {
			continue
		}
		says := l.Sum(s, typed, known).Says
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
func typedSum(t *testing.T, l *sheet, s statics.Sum, known func(int) (exact.Num, bool)) (notation.TypedSum, bool) {
	st := l.Style
	st.Figures = 8
	text := wording.New(l.Solution.Assembly, st).Numbers(s, known)
	if text == "0 = 0" {
		return notation.TypedSum{}, false
	}
	typed, err := notation.ReadSum(text, l.Style.Units, func(name string) bool { return ForceNamed(l.Solution.Assembly, name) != statics.None })
	if err != nil && !strings.Contains(err.Error(), "do not add") {
		t.Fatalf("%s: %s: %v", l.name, text, err)
	}
	return typed, err == nil
}

// heardOfSum is what a text says of a slip in a written sum.
func heardOfSum(l *sheet, text string, w slip.Written) tally {
	stranger := ""
	if w.Giver.Force != statics.None {
		stranger = (&equation{judge: l.Judge, sum: w.Sum}).stranger(w.Giver.Force)
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
	eachSheet(t, func(l *sheet) {
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
					if m.of++; l.writtenSays(e.slips()) != "" {
						m.count++
					}
				}
			}
		}
	})
	return m
}
