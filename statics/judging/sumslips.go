package judging

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// Which slip makes a typed sum of the true one.

// writtenSays is what slips in a written sum say: which one, and in which term; a question where several make the same of it; or nothing.
func (j Judge) writtenSays(slips []slip.Written) string {
	var matches []slip.Candidate
	for _, w := range slips {
		matches = append(matches, slip.Candidate{Slip: w.Slip, Giver: w.Giver})
	}
	things := j.things(matches)
	switch named := (slip.Diagnosis{Matches: matches}).Named(); {
	case named == nil && len(things) == 0:
		return ""
	case named == nil && len(things) == 1:
		return "one thing is worth a second look: " + askAll(things)
	case named == nil:
		return "there is more than one way to this sum: " + askAll(things)
	case len(things) > 1 || things[0].who == "":
		return lowerFirst(named.Says)
	default:
		return lowerFirst(named.Principle()) + ": " + askAll(things)
	}
}

// slips lists the slips that make of the true sum what was typed, those alone that agree term by term if there are any,
// or else those that come to the same altogether.
func (e *equation) slips() []slip.Written {
	all := slip.OfSum(e.judge.Solution.Assembly, e.sum, e.byValue(), e.judge.Style.Units.Customary())
	honest := e.givenTerms(e.sum)
	byTerm := func(s statics.Sum, scale exact.Num) bool { return e.agreesByTerm(s, scale, honest) }
	inAll := func(s statics.Sum, scale exact.Num) bool { return e.agreesInAll(s, scale, honest) }
	for _, agrees := range []func(statics.Sum, exact.Num) bool{byTerm, inAll} {
		for _, scale := range e.scales() {
			found := slices.DeleteFunc(slices.Clone(all), func(w slip.Written) bool {
				return !e.agreesByName(w.Sum, scale) || !agrees(w.Sum, scale)
			})
			if len(found) > 0 {
				return e.likeliest(found)
			}
		}
	}
	return nil
}

// likeliest lists those of some slips whose arms stand in what was typed, if there are any; and of these, a general one
// yields to another that is about the same of the same giver.
func (e *equation) likeliest(found []slip.Written) []slip.Written {
	if slices.ContainsFunc(found, e.spelled) {
		found = slices.DeleteFunc(found, func(w slip.Written) bool { return !e.spelled(w) })
	}
	return slices.DeleteFunc(slices.Clone(found), func(w slip.Written) bool {
		return w.Slip.General && slices.ContainsFunc(found, func(v slip.Written) bool {
			return !v.Slip.General && !v.Slip.Aside && v.Slip.About == w.Slip.About && v.Giver == w.Giver
		})
	})
}

// spelled reports whether the arms of the terms that a slip changed are among the factors of the terms that were typed.
func (e *equation) spelled(w slip.Written) bool {
	return !slices.ContainsFunc(w.Terms, func(t statics.Term) bool {
		return !slices.ContainsFunc(e.typed, func(typed notation.TypedTerm) bool { return e.spells(typed, t) })
	})
}

// spells reports whether a typed term stands for another, its arm being one of the factors.
func (e *equation) spells(typed notation.TypedTerm, t statics.Term) bool {
	amount := t.Value()
	if t.Force != statics.None && typed.Force == "" {
		v, _ := e.known(t.Force)
		amount = amount.Mul(v)
	}
	return closely(typed.Value.Abs(), amount.Abs(), amount) &&
		slices.ContainsFunc(typed.Factors, func(f notation.TypedFactor) bool { return !f.Under && closely(f.Value, t.Arm, t.Arm) })
}

// byValue lists the values of the known forces that were not typed by name.
func (e *equation) byValue() map[int]exact.Num {
	all := map[int]exact.Num{}
	for i := range e.judge.Solution.Forces {
		if v, known := e.known(i); known && e.by[i].IsZero() {
			all[i] = v
		}
	}
	return all
}

// agreesByName reports whether every force by name is multiplied by what it is in a sum, taken so many times, and none
// that is not known is left without a name.
func (e *equation) agreesByName(s statics.Sum, scale exact.Num) bool {
	of := map[int]exact.Num{}
	for _, t := range s.Terms() {
		if t.Force != statics.None {
			of[t.Force] = of[t.Force].Add(t.Value())
		}
	}
	for i, x := range e.by {
		if !x.IsZero() && !closely(x, of[i].Mul(scale), x) {
			return false
		}
	}
	for i, k := range of {
		if _, known := e.known(i); !known && e.by[i].IsZero() && !k.IsZero() {
			return false
		}
	}
	return true
}

// closely reports whether x is y to a ten-thousandth of a size.
func closely(x, y, size exact.Num) bool {
	return x.Sub(y).Abs().Mul(exact.Int(10000)).Cmp(size.Abs()) <= 0
}

// agreesByTerm reports whether a sum, taken so many times, has the terms that were typed: those of the true sum to within
// rounding, others more closely; the terms that stand as numbers in the true sum are given.
func (e *equation) agreesByTerm(s statics.Sum, scale exact.Num, honest []givenTerm) bool {
	terms := e.givenTerms(s)
	for i := range terms {
		x := terms[i].amount
		terms[i].close = !slices.ContainsFunc(honest, func(g givenTerm) bool { return g.amount.Equal(x) })
		terms[i].amount = x.Mul(scale)
	}
	return len(e.unmatched(&terms)) == 0 && len(terms) == 0
}

// agreesInAll reports whether what is left, when numbers that agree with terms of a sum, taken so many times, are set
// aside on both sides, adds up to the same. What is left of the numbers must not be a term as it is without the slip.
func (e *equation) agreesInAll(s statics.Sum, scale exact.Num, honest []givenTerm) bool {
	terms := e.givenTerms(s)
	for i := range terms {
		terms[i].amount = terms[i].amount.Mul(scale)
	}
	var typed, meant exact.Num
	for _, t := range e.unmatched(&terms) {
		if slices.ContainsFunc(honest, func(g givenTerm) bool { return near(t.Value, g.amount.Mul(scale), t.Value) }) {
			return false
		}
		typed = typed.Add(t.Value)
	}
	for _, g := range terms {
		meant = meant.Add(g.amount)
	}
	return !typed.IsZero() && closely(typed, meant, typed)
}
