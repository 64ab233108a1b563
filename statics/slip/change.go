package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// A change is what a slip does to the sum of a setting, or at last to its answer.
type change struct {
	giver Giver
	terms map[int]statics.Term // what terms become, by index; one of sign 0 is left out
	stray []statics.Term       // terms that do not belong
	times exact.Num            // what the answer is multiplied by at last, unless 0
	given *exact.Num           // the answer itself, come to without the sum
	whole bool                 // the answer is written so, and not rounded any more
}

// each makes a change of every way in which each of the terms may be altered. A way that leaves the term as it is,
// makes none.
func (ts terms) each(ways func(t statics.Term) []statics.Term) []change {
	var all []change
	for _, i := range ts.at {
		t := ts.in.sum.Terms()[i]
		for _, w := range ways(t) {
			if !w.Value().Equal(t.Value()) {
				all = append(all, change{giver: ts.in.giver(t), terms: map[int]statics.Term{i: w}})
			}
		}
	}
	return all
}

// together makes one change of altering all of the terms in one way.
func (ts terms) together(way func(t statics.Term) statics.Term) []change {
	c := change{giver: nobody, terms: map[int]statics.Term{}}
	for _, i := range ts.at {
		c.terms[i] = way(ts.in.sum.Terms()[i])
	}
	if len(ts.at) == 0 {
		return nil
	}
	c.giver = ts.in.giver(ts.first())
	for _, t := range ts.list() {
		if ts.in.giver(t) != c.giver {
			c.giver = nobody
		}
	}
	return []change{c}
}

// altered is together where the way makes a difference.
func (ts terms) altered(way func(statics.Term) statics.Term) []change {
	for _, t := range ts.list() {
		if !way(t).Value().Equal(t.Value()) {
			return ts.together(way)
		}
	}
	return nil
}

// leftOut makes a change of leaving out the terms of each group.
func (gs groups) leftOut() []change {
	var all []change
	for _, g := range gs {
		all = append(all, g.together(without)...)
	}
	return all
}

// byLoad alters each action of the terms in one way.
func (ts terms) byLoad(way func(t statics.Term, x statics.Action) statics.Term) []change {
	var all []change
	for _, g := range ts.grouped(byAction) {
		all = append(all, g.altered(func(t statics.Term) statics.Term { return way(t, ts.in.action(t)) })...)
	}
	return all
}

// byWhole is byLoad, and alters as well each load of several shapes whole, and the loads of one entry together.
func (ts terms) byWhole(way func(t statics.Term, x statics.Action) statics.Term) []change {
	all := ts.byLoad(way)
	for _, key := range []func(statics.Term) [2]int{ts.in.byGiver, ts.in.byEntry} {
		for _, g := range ts.grouped(key) {
			if len(g.grouped(byAction)) > 1 {
				all = append(all, g.altered(func(t statics.Term) statics.Term { return way(t, ts.in.action(t)) })...)
			}
		}
	}
	return all
}

// scaled multiplies the size of each action by a ratio, and of all of a load; 0 leaves it alone.
func (ts terms) scaled(ratio func(x statics.Action) exact.Num) []change {
	return ts.byWhole(func(t statics.Term, x statics.Action) statics.Term {
		if r := ratio(x); !r.IsZero() {
			return sized(t, r)
		}
		return t
	})
}

// shifted moves the resultant of each action of a moment sum to a distance along its member.
func (ts terms) shifted(to func(t statics.Term, x statics.Action) exact.Num) []change {
	if !ts.in.sum.Moment {
		return nil
	}
	return ts.byWhole(func(t statics.Term, x statics.Action) statics.Term {
		p := ts.in.along(x, to(t, x))
		arm := movedTo(t, ts.in.sum.About, p)
		if arm.Arm.IsZero() && ts.in.cut == nil {
			return t // leaving it out is another slip
		}
		return arm
	})
}

// redirected lets the force of some terms act with a size along another line.
func (ts terms) redirected(size exact.Num, along statics.Vector) change {
	t := ts.first()
	c := change{giver: ts.in.giver(t), terms: map[int]statics.Term{}}
	for _, i := range ts.at {
		c.terms[i] = without(ts.in.sum.Terms()[i])
	}
	c.stray = []statics.Term{ts.in.pointing(t, size, along)}
	return c
}

// counted puts in terms that do not count, with their whole size and either sign.
func (ts terms) counted() []change {
	var all []change
	for _, t := range ts.list() {
		t.Size, t.Why = one, statics.Counts
		if isLoad(t) {
			t.Size = ts.in.action(t).Size.Abs()
		}
		for _, sign := range []int{1, -1} {
			t.Sign = sign
			all = ts.in.added(all, []statics.Term{t})
		}
	}
	return all
}

// added appends the change of putting in stray terms, unless they come to nothing.
func (s *setting) added(all []change, stray []statics.Term) []change {
	var amount exact.Num
	for _, t := range stray {
		amount = amount.Add(s.amount(t))
	}
	if amount.IsZero() {
		return all
	}
	return append(all, change{giver: s.giver(stray[0]), stray: stray})
}

// given is the change of coming to a value without the sum.
func given(v exact.Num) change { return change{giver: nobody, given: &v} }

// bothWays lists a value and its opposite as answers.
func bothWays(v exact.Num) []change {
	if v.IsZero() {
		return nil
	}
	return []change{given(v), given(v.Neg())}
}

// finally multiplies the answer by each of some numbers, in the first sum of the question only.
func (s *setting) finally(factors ...exact.Num) []change {
	if s.n > 0 || s.right.IsZero() {
		return nil
	}
	var all []change
	for _, f := range factors {
		all = append(all, change{giver: nobody, times: f})
	}
	return all
}
