package marking

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// Whoever works with the values that stand on the page, and rounds each answer to three figures, is off by half a unit in the third
// figure of that answer, and by no more. What all roundings together could do, those of products and of values kept in full, is far more,
// and a mistake may hide in it. So a paper is read a second time, strictly: a force follows from a sum if rounding the answer explains
// what is left. The strict reading stands where it needs fewer faults, or where each fault that it has besides has a mistake that leads
// to it; else this student rounds in another way, and the first one stands.

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
	first, forced := w.trace, slices.Clone(w.forced)
	if first != nil && first.nothing {
		return
	}
	for i := range forced {
		w.forced[i] = w.given[i] != nil && w.given[i].faces
	}
	w.strict = w.residuals()
	strict, forces, _ := w.begin()
	strict.resolve(forces, w.forceRow)
	if w.tellsMore(strict, first) {
		for _, i := range strict.faults {
			w.verdict[i] = ""
		}
		w.searchAs()
		return
	}
	w.strict, w.trace, w.forced = nil, first, forced
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

// residuals are what the sums of forces come to with the student's values, of those in which none is missing.
func (w *work) residuals() map[*row]exact.Num {
	all := map[*row]exact.Num{}
	for k := range w.forceRow {
		r := &w.forceRow[k]
		if !slices.ContainsFunc(r.items, func(i int) bool { return !w.x.answered[i] }) {
			all[r], _, _ = r.residual(w.x)
		}
	}
	return all
}

// tellsMore reports whether a strict reading needs fewer faults among the forces than the first, or has a mistake for each besides.
func (w *work) tellsMore(strict, first *trace) bool {
	var before []int
	if first != nil {
		before = slices.DeleteFunc(slices.Clone(first.faults), func(i int) bool { return w.Items[i].Force == statics.None })
	}
	if len(strict.faults) < len(before) {
		return true
	}
	if len(strict.faults) == len(before) && !slices.ContainsFunc(strict.faults, func(i int) bool { return !slices.Contains(before, i) }) {
		return false
	}
	if len(strict.faults) > len(before)+mostStrict || w.forcesGiven() < len(strict.faults)+leastStrict {
		return false
	}
	return !slices.ContainsFunc(strict.faults, func(i int) bool {
		c := strict.came[i]
		return !slices.Contains(before, i) && worth(w.judgedAs(i, c.grade, c.rows)) < 2
	})
}

// isStrict reports whether what follows from a sum has to follow strictly.
func (t *trace) isStrict(r *row) bool {
	_, ok := t.strict[r]
	return ok
}

// follows reports whether rounding what is unknown in a sum explains what it comes to.
func (t *trace) follows(r *row) bool {
	rest, ok := t.strict[r]
	if !ok {
		return true
	}
	var reach exact.Num
	for k, i := range r.items {
		if !t.known[i] {
			reach = reach.Add(judging.ThirdFigure(t.x.of[i]).Mul(r.factors[k].Abs()))
		}
	}
	return rest.Abs().Cmp(reach) <= 0
}

// violated lists the sums that are violated as far as is known by now: strictly also those that hold by what rounding can do at most.
func (t *trace) violated(broken, holding []*row) []*row {
	if t.strict == nil {
		return broken
	}
	all := slices.Clone(broken)
	for _, r := range holding {
		if !t.idle[r] && !t.follows(r) {
			all = append(all, r)
		}
	}
	return all
}

// leading are the values from which the most others follow. What follows strictly from a value need not give that value back strictly.
func (t *trace) leading(left []int, holding []*row) []int {
	var best []int
	fewest := len(left)
	for _, i := range left {
		try := t.copied()
		try.known[i], try.from[i] = true, []int{i}
		try.close(holding)
		open := 0
		for _, j := range left {
			if !try.known[j] {
				open++
			}
		}
		if open < fewest {
			best, fewest = nil, open
		}
		if open == fewest {
			best = append(best, i)
		}
	}
	return best
}

// copied is a trace in which something may be tried.
func (t *trace) copied() *trace {
	try := *t
	try.known, try.from, try.by = slices.Clone(t.known), slices.Clone(t.from), slices.Clone(t.by)
	return &try
}
