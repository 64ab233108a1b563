package judging

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// An equation is a typed sum held against the true one.
type equation struct {
	judge Judge
	sum   statics.Sum
	known func(int) (exact.Num, bool)
	typed []notation.TypedTerm // all on the left
	by    map[int]exact.Num    // what each force is multiplied by, as typed
	given exact.Num            // what the terms without a name add up to, as typed
}

// Sum judges a typed sum: it is true whatever the order of its terms, the sides they stand on, the positive sense, and a
// factor throughout, and else wrong. Known forces may stand by name or by value.
func (j Judge) Sum(s statics.Sum, typed notation.TypedSum, known func(force int) (exact.Num, bool)) Finding {
	e := j.equation(s, typed, known)
	for _, t := range e.typed {
		if t.Force == "" {
			continue
		}
		f, _ := ForceMeant(j.Solution.Assembly, t.Force)
		if says := e.stranger(f); says != "" {
			return Finding{Verdict: Wrong, Says: says}
		}
	}
	says := e.wrong(e.bestScale())
	if says == "" {
		return Finding{}
	}
	slips := e.slips()
	if story := j.writtenSays(slips); story != "" {
		says = story
	}
	f := Finding{Verdict: Wrong, Says: says}
	for _, w := range slips {
		f.note(w.Slip.ID)
	}
	return f
}

// bestScale is the factor throughout with which most agrees.
func (e *equation) bestScale() exact.Num {
	best, bestFit := one, -1
	for _, scale := range e.scales() {
		if fit := e.fit(scale); fit > bestFit {
			best, bestFit = scale, fit
		}
	}
	return best
}

// wrong says what is wrong with a sum that is taken so many times, or nothing.
func (e *equation) wrong(scale exact.Num) string {
	if says := e.wrongForce(scale); says != "" {
		return says
	}
	return e.wrongGiven(scale)
}

// equation gathers what was typed.
func (j Judge) equation(s statics.Sum, typed notation.TypedSum, known func(int) (exact.Num, bool)) *equation {
	e := &equation{judge: j, sum: s, known: known, typed: typed.Terms(), by: map[int]exact.Num{}}
	for _, t := range e.typed {
		if t.Force == "" {
			e.given = e.given.Add(t.Value)
		} else if f, sign := ForceMeant(j.Solution.Assembly, t.Force); f != statics.None {
			e.by[f] = e.by[f].Add(t.Value.Mul(exact.Int(int64(sign))))
		}
	}
	return e
}

// stranger says why a named force has no place in a sum of this body.
func (e *equation) stranger(f int) string {
	a, body := e.judge.Solution.Assembly, wording.Body(e.judge.Solution.Assembly, e.sum.Body)
	sign, touches := a.Facing(e.sum.Body, f)
	switch name := a.Forces[f].Name; {
	case !touches:
		return "name what touches " + body + ": " + name + " does not act on it."
	case sign == 0:
		return "with " + body + " as the body, both faces of " + name + " are inside it and cancel."
	case a.Forces[f].Couple && !e.sum.Moment:
		return "a couple has no resultant force, so " + name + " stays out of a sum of forces."
	}
	return ""
}

// scales are the factors throughout that may be meant.
func (e *equation) scales() []exact.Num {
	all := []exact.Num{exact.Int(1), exact.Int(-1)}
	for _, i := range e.sum.Unknowns(func(int) bool { return false }) {
		if k, err := e.by[i].Quo(e.sum.Factor(i)); err == nil && !k.IsZero() {
			all = append(all, k)
		}
	}
	return all
}

// fit counts what agrees when the true sum is taken so many times.
func (e *equation) fit(scale exact.Num) int {
	n := 0
	for _, i := range e.sum.Unknowns(func(int) bool { return false }) {
		if near(e.by[i], e.sum.Factor(i).Mul(scale), e.sum.Factor(i).Mul(scale)) {
			n++
		}
	}
	if e.wrongGiven(scale) == "" {
		n++
	}
	return n
}

// near reports whether x is y within a half per cent of a size.
func near(x, y, size exact.Num) bool {
	return x.Sub(y).Abs().Mul(exact.Int(200)).Cmp(size.Abs()) <= 0
}

// wrongForce says which force by name has the wrong factor. A known one may be left to its value.
func (e *equation) wrongForce(scale exact.Num) string {
	a := e.judge.Solution.Assembly
	for _, i := range a.ForcesOn(e.sum.Body) {
		meant := e.sum.Factor(i).Mul(scale)
		x, name := e.by[i], a.Forces[i].Name
		if _, known := e.known(i); known && x.IsZero() || near(x, meant, meant) {
			continue
		}
		switch {
		case meant.IsZero() && e.sum.Moment:
			return "the line of " + name + " passes through the centre, so it has no arm."
		case meant.IsZero():
			return name + " acts perpendicular to this direction, so it adds nothing."
		case x.IsZero():
			return "every force that touches the body goes in: " + name + " is missing from this sum."
		case near(x.Neg(), meant, meant) && e.sum.Moment:
			return "put a finger on the centre and push along " + name + ": which way does it turn the body?"
		case near(x.Neg(), meant, meant):
			return "which way does " + name + " point along the positive direction, on this body?"
		case e.sum.Moment:
			return "arms are measured from the centre, perpendicular to the line of the force: look at that of " + name + "."
		}
		return "only the component of a force along the direction goes in: look at that of " + name + "."
	}
	return ""
}

// wrongGiven says what is wrong with the terms that are numbers: the loads, and known forces by value.
func (e *equation) wrongGiven(scale exact.Num) string {
	terms := e.givenTerms(e.sum)
	var want, largest exact.Num
	for i := range terms {
		terms[i].amount = terms[i].amount.Mul(scale)
		want = want.Add(terms[i].amount)
		largest = exact.Max(largest, terms[i].amount.Abs())
	}
	if near(e.given, want, largest) {
		return ""
	}
	loose, name := pairedOff(e.unmatched(&terms), &terms), ""
	if len(terms) > 0 {
		name = e.judge.say().Source(terms[0].of)
	}
	switch {
	case len(terms) == 0 && len(loose) > 0:
		return "every term stands for something that acts on the body: one of the numbers stands for nothing here."
	case len(terms) == 1 && len(loose) == 0:
		return "walk round the body: " + name + " is not in this sum."
	case len(terms) == 1 && len(loose) == 1 && near(loose[0].Value.Neg(), terms[0].amount, terms[0].amount) && e.sum.Moment:
		return "put a finger on the centre and push along " + name + ": which way does it turn the body?"
	case len(terms) == 1 && len(loose) == 1 && near(loose[0].Value.Neg(), terms[0].amount, terms[0].amount):
		return "which way does " + name + " point along the positive direction?"
	case len(terms) > 0:
		return e.goesIn(terms[0].of) + ": look at " + name + " once more."
	}
	return "the numbers do not add up to what the loads on this body give."
}

// goesIn says how a given term goes into the sum.
func (e *equation) goesIn(t statics.Term) string {
	spread := t.Action != statics.None && e.judge.Solution.Actions[t.Action].Shape.Spread()
	switch {
	case t.What == statics.TurnOnly:
		return "a couple goes in as it is, without an arm"
	case spread && e.sum.Moment:
		return "a distributed load counts as its resultant times the arm of its centroid"
	case spread:
		return "a distributed load counts as its resultant"
	case e.sum.Moment:
		return "a force counts as its size times its arm from the centre"
	}
	return "a force counts as its component along the sum"
}

// A givenTerm is one amount that must stand in the sum as a number.
type givenTerm struct {
	of     statics.Term
	amount exact.Num
	close  bool // a number agrees with it only closely
}

// agrees reports whether a number may stand for the term.
func (g givenTerm) agrees(x exact.Num) bool {
	if g.close {
		return closely(x, g.amount, g.amount)
	}
	return near(x, g.amount, g.amount)
}

// givenTerms are the loads of a sum, and the known forces that were not typed by name.
func (e *equation) givenTerms(s statics.Sum) []givenTerm {
	var all []givenTerm
	for _, t := range s.Terms() {
		switch {
		case t.Why != statics.Counts || t.Sign == 0:
		case t.Force == statics.None:
			all = append(all, givenTerm{of: t, amount: t.Value()})
		case e.by[t.Force].IsZero():
			if v, known := e.known(t.Force); known && !v.IsZero() {
				all = append(all, givenTerm{of: t, amount: t.Value().Mul(v)})
			}
		}
	}
	return all
}

// pairedOff takes out of the terms those that two of the numbers add up to, as the components of a force do, and gives the
// numbers that are left.
func pairedOff(loose []notation.TypedTerm, terms *[]givenTerm) []notation.TypedTerm {
	for i := 0; i < len(loose); i++ {
		for k := i + 1; k < len(loose); k++ {
			both := loose[i].Value.Add(loose[k].Value)
			at := slices.IndexFunc(*terms, func(g givenTerm) bool { return closely(both, g.amount, g.amount.Mul(ten)) })
			if at < 0 {
				continue
			}
			*terms = slices.Delete(*terms, at, at+1)
			loose = slices.Delete(slices.Delete(loose, k, k+1), i, i+1)
			i--
			break
		}
	}
	return loose
}

// unmatched takes out of the terms those that a typed number agrees with, and gives the typed numbers that are left, without zeros.
func (e *equation) unmatched(terms *[]givenTerm) []notation.TypedTerm {
	var loose []notation.TypedTerm
	for _, t := range e.typed {
		if t.Force != "" || t.Value.IsZero() {
			continue
		}
		i := slices.IndexFunc(*terms, func(g givenTerm) bool { return g.agrees(t.Value) })
		if i < 0 {
			loose = append(loose, t)
		} else {
			*terms = slices.Delete(*terms, i, i+1)
		}
	}
	return loose
}
