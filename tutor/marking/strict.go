package marking

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// Whoever works with the values that stand on the page, and rounds each answer to three figures, or each term besides, is off by half a
// unit in the third figure of that answer, and by no more. What all roundings together could do, those of products and of values kept in full, is far more,
// and a mistake may hide in it. So a paper is read a second time, strictly: a force follows from a sum if rounding the answer explains
// what is left. The strict reading stands where it needs fewer faults, or where each fault that it has besides has a mistake that leads
// to it, and where a lesson would take none of these either; else this student rounds in another way, and the first one stands.

// mostStrict bounds the faults that a strict reading may have besides those of the first; leastStrict is how many other forces must show
// how the student rounds.
const (
	mostStrict  = 2
	leastStrict = 2
)

// strictly reads the forces strictly, and has the reading stand where it tells more.
func (w *work) strictly() {
	if !w.anyOff() {
		return
	}
	first, forced := w.trace, w.forced
	if first != nil && first.nothing {
		return
	}
	w.forced = facing(w.given)
	w.strict = w.residuals()
	strict, forces, _ := w.begin()
	w.suspects = w.forcesAmong(first)
	strict.most, w.trying = len(w.suspects)+mostStrict, true
	strict.resolve(forces, w.forceRow)
	for _, i := range strict.faults {
		if w.reason(i, strict) {
			w.suspects = append(w.suspects, i)
		}
	}
	if w.trying = false; w.tellsMore(strict, first) {
		for _, i := range strict.faults {
			w.verdict[i] = ""
		}
		w.searchAs()
		return
	}
	w.strict, w.trace, w.forced = nil, first, forced
}

// facing tells which values are at fault whatever follows from what: those of two faces of a pin with one sense.
func facing(given []*given) []bool {
	all := make([]bool, len(given))
	for i, g := range given {
		all[i] = g != nil && g.faces
	}
	return all
}

// forcesAmong are the forces among the faults of a reading.
func (w *work) forcesAmong(t *trace) []int {
	if t == nil {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(t.faults), func(i int) bool { return w.Items[i].Force == statics.None })
}

// forcesGiven counts the forces that are given.
func (w *work) forcesGiven() int {
	n := 0
	for i, item := range w.Items {
		if item.Force != statics.None && w.given[i] != nil {
			n++
		}
	}
	return n
}

// anyOff reports whether a force is given that is not the true one.
func (w *work) anyOff() bool {
	for i, item := range w.Items {
		if item.Force != statics.None && w.given[i] != nil && w.verdict[i] != Right {
			return true
		}
	}
	return false
}

// solvedWith are the items that the plan solves together with a force.
func (m *Marker) solvedWith(i int) []int {
	var all []int
	for _, f := range m.Plan[m.stepOf[m.Items[i].Force]].Gives {
		if j := m.ofForce(f); j != i {
			all = append(all, j)
		}
	}
	return all
}

// standing are the values that stand by themselves if no mistake explains them: strictly no force does.
func (w *work) standing() []bool {
	if w.strict == nil {
		return w.lenient
	}
	all := slices.Clone(w.lenient)
	for i, item := range w.Items {
		all[i] = all[i] && item.Force == statics.None
	}
	return all
}

// A rest is what a sum comes to, where an item is turned round: with none, as the values stand.
type rest struct {
	off    exact.Num
	turned int
	loose  bool // all roundings together could do it
}

// residuals are what the sums of forces come to with the student's values, of those in which none is missing. A true value in the
// opposite sense may have been turned only when it was handed in, so that others follow from it as it was.
func (w *work) residuals() map[*row][]rest {
	all := map[*row][]rest{}
	for k := range w.forceRow {
		r := &w.forceRow[k]
		if slices.ContainsFunc(r.items, func(i int) bool { return !w.x.answered[i] }) {
			continue
		}
		off, _, slack := r.residual(w.x)
		all[r] = []rest{{off, statics.None, off.Abs().Cmp(slack) <= 0}}
		for n, i := range r.items {
			if truth := w.Items[i].Value; !truth.IsZero() && negated(w.typedOf(i)).Means(truth) {
				t := r.factors[n].Mul(w.x.of[i])
				all[r] = append(all[r], rest{off.Sub(t).Sub(t), i, false})
			}
		}
	}
	return all
}

// tellsMore reports whether a strict reading needs fewer faults among the forces than the first, or has a reason for each besides; in
// place of as many others, whether these have no mistake that leads to them.
func (w *work) tellsMore(strict, first *trace) bool {
	before := w.forcesAmong(first)
	isNew := func(i int) bool { return !slices.Contains(before, i) }
	if slices.ContainsFunc(strict.faults, func(i int) bool { return isNew(i) && w.inLesson(i) }) {
		return false
	}
	switch more := len(strict.faults) - len(before); {
	case more < 0:
		return true
	case more > mostStrict, w.forcesGiven() < len(strict.faults)+leastStrict, !slices.ContainsFunc(strict.faults, isNew):
		return false
	case more == 0 && !slices.ContainsFunc(before, func(i int) bool { return !w.told(i, first) }):
		return false
	}
	return !slices.ContainsFunc(strict.faults, func(i int) bool { return !w.clear(i, strict, isNew(i)) })
}

// clear reports whether a fault of a strict reading is off by more than may be rounding; one that no other reading has also needs a reason.
func (w *work) clear(i int, t *trace, isNew bool) bool {
	c := t.came[i]
	return signLost(i, c.rows, w.x) || !w.within(i, c.rows, w.told(i, t)) && (!isNew || w.reason(i, t))
}

// reason reports whether a mistake leads to a fault of a strict reading, or it is beyond all rounding.
func (w *work) reason(i int, t *trace) bool {
	c := t.came[i]
	return signLost(i, c.rows, w.x) || w.told(i, t) || beyond(c, w.x)
}

// told reports whether a fault of a reading has a mistake that leads to it, or two or three.
func (w *work) told(i int, t *trace) bool {
	return worth(w.judgedAs(i, t.came[i].grade, t.came[i].rows)) >= 2
}

// signLost reports whether a value gives one of the sums that it violates to the last figure once it is turned round.
func signLost(i int, rows []*row, x values) bool {
	return slices.ContainsFunc(rows, func(r *row) bool {
		k := r.factors[slices.Index(r.items, i)]
		if len(r.items) < 2 || r.holds(x) {
			return false
		}
		off, _, _ := r.residual(x)
		t := k.Mul(x.of[i])
		return off.Sub(t).Sub(t).Abs().Cmp(judging.ThirdFigure(x.of[i]).Mul(k.Abs())) <= 0
	})
}

// strictest is how many times what rounding the answer explains a fault has to be off.
var strictest = exact.Int(3)

// within reports whether a value is hardly further off than rounding it explains, in one of the sums that it violates; or, where no mistake
// leads to it, by a third of what all roundings together could do, which is likely.
func (w *work) within(i int, rows []*row, told bool) bool {
	return slices.ContainsFunc(rows, func(r *row) bool {
		off, _, slack := r.residual(w.x)
		if !told && r.holds(w.x) && off.Abs().Mul(strictest).Cmp(slack) <= 0 {
			return true
		}
		reach := judging.ThirdFigure(w.x.of[i]).Mul(r.factors[slices.Index(r.items, i)].Abs())
		return off.Abs().Cmp(reach.Mul(strictest)) <= 0
	})
}

// beyond reports whether a value of which all other values are known is off by more than all roundings together could do, in every sum.
func beyond(c came, x values) bool {
	holds := func(r *row) bool { return r.holds(x) }
	return c.grade == 0 && !slices.ContainsFunc(c.rows, holds)
}

// inLesson reports whether a lesson would take a value with the others as they are, so that marks take it too.
func (w *work) inLesson(i int) bool { return w.caseOf(i).Verdict(w.typedOf(i)).Right() }

// isStrict reports whether what follows from a sum has to follow strictly.
func (t *trace) isStrict(r *row) bool {
	_, ok := t.strict[r]
	return ok
}

// follows reports whether rounding what is unknown in a sum, and what was solved together with that, explains what it comes to; or what it
// comes to with each term rounded to three figures, as many write them.
func (t *trace) follows(r *row) bool {
	rests, ok := t.strict[r]
	if !ok {
		return true
	}
	var reach exact.Num
	unknown := func(j int) bool { return !t.known[j] }
	for k, i := range r.items {
		if unknown(i) || slices.ContainsFunc(t.solved(i), unknown) {
			reach = reach.Add(judging.ThirdFigure(t.x.of[i]).Mul(r.factors[k].Abs()))
		}
	}
	if slices.ContainsFunc(rests, func(x rest) bool {
		return (x.turned == statics.None || t.known[x.turned]) && x.off.Abs().Cmp(reach) <= 0
	}) {
		return true
	}
	return rests[0].loose && rests[0].off.Add(r.short).Add(t.inThree(r)).Abs().Cmp(reach) <= 0
}

// inThree is by how much the terms of what is known in a sum come to more when each is rounded to three figures.
func (t *trace) inThree(r *row) exact.Num {
	var more exact.Num
	for _, p := range r.parts {
		if t.known[p.item] {
			v := p.factor.Mul(t.x.of[p.item])
			more = more.Add(v.Rounded(3).Sub(v))
		}
	}
	return more
}

// violated lists the sums that are violated as far as is known by now: strictly also those that hold by what rounding can do at most.
func (t *trace) violated(broken, holding []*row) []*row {
	all := slices.Clone(broken)
	for _, r := range holding {
		if !t.idle[r] && !t.follows(r) {
			all = append(all, r)
		}
	}
	return all
}

// A leader is a value with which the trouble may have begun, strictly.
type leader struct {
	item, open int // how many values do not follow from it
	rows       []*row
}

// pickStrictly takes as a fault the value from which the most others follow; of several the likeliest, and the others may stand in its
// place. What follows strictly from a value need not give that value back strictly.
func (t *trace) pickStrictly(left []int, broken, holding []*row) {
	leaders := t.leaders(left, broken, holding)
	best, why := leaders[0], t.fault(leaders[0].item, 0, leaders[0].rows)
	for _, l := range leaders[1:] {
		if b := t.fault(l.item, 0, l.rows); b.order(why) < 0 {
			best, why = l, b
		}
	}
	t.faults, t.came[best.item] = append(t.faults, best.item), came{t.grade(best.item, best.rows), best.rows}
	t.known[best.item], t.from[best.item] = true, []int{best.item}
	t.close(holding)
	for _, l := range leaders {
		if l.item != best.item && t.known[l.item] {
			t.other[best.item] = append(t.other[best.item], l.item)
		}
	}
}

// leaders are the values from which the most others follow. A fault came from a violated sum in which nothing follows from it; where
// there is none, of any.
func (t *trace) leaders(left []int, broken, holding []*row) []leader {
	var all []leader
	for _, i := range left {
		try := t.copied()
		try.known[i], try.from[i] = true, []int{i}
		try.close(holding)
		l := leader{item: i}
		for _, j := range left {
			if !try.known[j] {
				l.open++
			}
		}
		follows := func(j int) bool {
			return j != i && try.known[j] && !t.known[j] && !slices.Contains(t.solved(i), j)
		}
		for _, r := range broken {
			if r.finds(i) && !slices.ContainsFunc(r.items, follows) {
				l.rows = append(l.rows, r)
			}
		}
		slices.SortStableFunc(l.rows, func(a, b *row) int { return t.unknowns(a) - t.unknowns(b) })
		all = append(all, l)
	}
	some := slices.ContainsFunc(all, func(l leader) bool { return len(l.rows) > 0 })
	all = slices.DeleteFunc(all, func(l leader) bool { return some && len(l.rows) == 0 })
	fewest := slices.MinFunc(all, func(a, b leader) int { return a.open - b.open }).open
	return slices.DeleteFunc(all, func(l leader) bool { return l.open > fewest })
}

// copied is a trace in which something may be tried.
func (t *trace) copied() *trace {
	try := *t
	try.known, try.from, try.by = slices.Clone(t.known), slices.Clone(t.from), slices.Clone(t.by)
	return &try
}
