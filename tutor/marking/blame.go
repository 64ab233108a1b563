package marking

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/wording"
)

// mostTried bounds the sums in which a mistake is looked for.
const mostTried = 12

// blame says what a value is like as a fault that came from one of the violated sums.
func (w *work) blame(i, grade int, broken []*row) blame {
	if w.scheme.accepts(w.Items[i], w.x.of[i]) {
		return blame{story: true} // nothing is lost by it
	}
	if w.Items[i].Force == statics.None { // its mistakes are looked for only where it is taken
		if negated(w.typedOf(i)).Means(w.Items[i].Value) {
			return blame{loss: w.weights[i].Mul(exact.Int(1).Sub(w.scheme.Verdicts[Sense])), story: true}
		}
		return blame{loss: w.weights[i]}
	}
	j := w.judgedAs(i, grade, broken)
	b := blame{loss: w.weights[i], story: len(j.slips) > 0 || j.verdict == Sense}
	if j.verdict != Close { // a courtesy, no reason why others should follow from it
		b.loss = b.loss.Mul(exact.Int(1).Sub(w.scheme.Verdicts[j.verdict]))
	}
	return b
}

// judgedAs is what the judge finds of a value, first in the plan's own step, then in others of the sums that it violates. The more is
// known, the more sums there are.
func (w *work) judgedAs(i, grade int, broken []*row) judged {
	if j, ok := w.blames[i]; ok && slices.Equal(j.broken, broken) {
		return j
	}
	if w.trace.nothing || slices.Index(w.trace.faults, i) >= mostNamed || len(w.trace.faults) > mostNamed && !slices.Contains(w.trace.faults, i) {
		return w.judgedBriefly(i, broken)
	}
	best, lost := judged{verdict: Wrong, broken: broken}, signLost(i, broken, w.x)
	for n, find := range w.cases(i, grade, broken) {
		j := find()
		if j.verdict == Close && n > 0 {
			j.verdict = Wrong // close is by the plan's own sum, as in a lesson
		}
		if best.verdict == Close && !lost {
			if worth(j) < 2 {
				continue
			}
			j.verdict = Close // with what may have led there
		}
		if j.broken = broken; worth(j) > worth(best) {
			best = j
		}
		if best.verdict == Sense || !lost && (best.verdict == Slip || best.verdict == Close && len(best.slips) > 0) {
			break
		}
	}
	if w.trying {
		return best
	}
	if worth(best) == 0 {
		best = w.solvedWrong(i, broken, best)
	}
	w.blames[i] = best
	return best
}

// mostSolved bounds the sums in which a mistake in solving is looked for, of each value.
const mostSolved = 4

// solvedWrong looks for a mistake in solving a sum that was set up right, where none in setting it up leads to a value: another value
// put in, a term moved across with its sign. Of two or three that fit it is asked.
func (w *work) solvedWrong(i int, broken []*row, best judged) judged {
	force := w.Items[i].Force
	if force == statics.None {
		return best
	}
	sums := planFirst(i, broken)
	for _, r := range sums[:min(len(sums), mostSolved)] {
		if _, ok := w.judgings[judgedKey{item: i, row: r, solved: true}]; !ok {
			if w.solved[i] == mostSolved {
				continue
			}
			w.solved[i]++
		}
		j := w.once(judgedKey{item: i, row: r, solved: true}, func() judged {
			s := judging.Step{Sums: []statics.Sum{*r.sum}, Gives: []int{force}, Known: func(f int) bool { return f != force }, Stands: true}
			return judge(w.judgeNow().Force(s, force), w.typedOf(i))
		})
		if j.verdict == Close {
			j.verdict = Wrong
		}
		if j.broken = broken; worth(j) > worth(best) {
			best = j
		}
		if best.verdict == Slip {
			break
		}
	}
	return best
}

// judge is what a case makes of a value that is taken to be at fault; nothing where it is right to the case.
func judge(c *judging.Case, v judging.Typed) judged {
	j := judged{verdict: Wrong}
	verdict := c.Verdict(v)
	if verdict.Right() {
		return j
	}
	found := c.Find(verdict, v)
	j.slips, j.says = found.Slips, found.Says
	switch {
	case verdict == judging.OtherSense:
		j.verdict = Sense
	case verdict == judging.Close:
		j.verdict = Close
	case len(found.Slips) == 1:
		j.verdict = Slip
	}
	return j
}

// mostNamed is how many mistakes of one paper are named: of more there is no story to tell.
const mostNamed = 8

// judgedBriefly is what is found of a value without a search for mistakes.
func (w *work) judgedBriefly(i int, broken []*row) judged {
	v, truth := w.typedOf(i), w.Items[i].Value
	j := judged{verdict: Wrong, broken: broken}
	switch {
	case !truth.IsZero() && negated(v).Means(truth):
		j.verdict = Sense
	case v.Value.Sub(truth).Abs().Cmp(truth.Abs().Mul(percent).Add(truth.Abs().Mul(percent))) <= 0:
		j.verdict = Close
	}
	return j
}

// worth says how much a judgement explains.
func worth(j judged) int {
	switch {
	case j.verdict == Sense:
		return 4
	case j.verdict == Slip:
		return 3
	case len(j.slips) > 0 && len(j.slips) <= 3:
		return 2
	case j.verdict == Close || j.says != "":
		return 1
	}
	return 0
}

// cases are what a value is held against as a fault, each when it comes to it.
func (w *work) cases(i, grade int, broken []*row) []func() judged {
	item, v := w.Items[i], w.typedOf(i)
	own := func() judged {
		return w.once(judgedKey{item: i}, func() judged { return judge(w.caseOf(i), v) })
	}
	if item.Force == statics.None {
		if w.forcesRight() {
			return []func() judged{func() judged { return w.known.judge(caseKey{i, nil}, w.plainCase, v) }}
		}
		return []func() judged{own}
	}
	sums := planFirst(i, broken)
	var all []func() judged
	if len(sums) == 0 || sums[0].gives != i {
		all = append(all, own)
	}
	sums = sums[:min(len(sums), mostTried)]
	for _, r := range sums {
		if w.othersRight(i, r) {
			all = append(all, func() judged { return w.known.judge(caseKey{i, r}, w.plainCase, v) })
		}
	}
	for _, r := range sums { // what is right may be rounded, so that a mistake leads elsewhere in the third figure
		if !w.othersRight(i, r) || !w.othersExact(i, r) {
			all = append(all, func() judged {
				return w.once(judgedKey{item: i, row: r}, func() judged { return judge(caseIn(w.judgeNow(), item.Force, r), v) })
			})
		}
	}
	return all
}

// A judgedKey is an item held against a sum with the student's own values, or against the plan's where there is no row.
type judgedKey struct {
	item   int
	row    *row
	solved bool // the sum stands, and was solved wrong
}

// once is what is judged of an item by a sum: a paper's values stay as they are.
func (w *work) once(key judgedKey, fresh func() judged) judged {
	j, ok := w.judgings[key]
	if !ok {
		j = fresh()
		w.judgings[key] = j
	}
	return j
}

// caseIn is a force as a sum gives it in which all else is known.
func caseIn(j judging.Judge, force int, r *row) *judging.Case {
	s := judging.Step{Sums: []statics.Sum{*r.sum}, Gives: []int{force}, Known: func(f int) bool { return f != force }}
	return j.Force(s, force)
}

// othersRight reports whether no other item of a row is wrong.
func (w *work) othersRight(i int, r *row) bool {
	return !slices.ContainsFunc(r.items, func(k int) bool { return k != i && w.isWrong(k) })
}

// othersExact reports whether no other item of a row is rounded.
func (w *work) othersExact(i int, r *row) bool {
	return !slices.ContainsFunc(r.items, func(k int) bool { return k != i && !w.x.whole[k] && w.x.answered[k] })
}

// forcesRight reports whether no force is wrong.
func (w *work) forcesRight() bool {
	for i, item := range w.Items {
		if item.Force != statics.None && w.isWrong(i) {
			return false
		}
	}
	return true
}

// planFirst are sums with that from which the plan takes an item before all others.
func planFirst(i int, rows []*row) []*row {
	other := func(r *row) int {
		if r.gives == i {
			return 0
		}
		return 1
	}
	rows = slices.Clone(rows)
	slices.SortStableFunc(rows, func(a, b *row) int { return other(a) - other(b) })
	return rows
}

// answer is what became of an item.
func (w *work) answer(i int) Answer {
	a := Answer{Item: w.Items[i], Name: w.wanted(w.Items[i]), Asked: w.Asked[i], Verdict: w.verdict[i]}
	g := w.given[i]
	if g == nil {
		return a
	}
	for _, e := range g.entries {
		a.Lines = append(a.Lines, e.Line)
	}
	a.Given, a.Value = g.entries[0].Value, w.x.of[i]
	switch {
	case a.Verdict == Right:
	case a.Verdict == Rounded:
	case len(w.trace.from[i]) == 0:
		a.Verdict = Rounded
	case !slices.Contains(w.trace.faults, i):
		w.carried(i, &a)
	default:
		w.atFault(i, &a)
	}
	if w.turned[i] && (a.Verdict == Right || a.Verdict == Rounded || a.Verdict == Carried) {
		a.Value, a.Verdict, a.From = g.typed.Value, Sense, nil
		a.Says = "the size is right all along, and the sense is the opposite one: which way counts as positive?"
	}
	if g.unit && (a.Verdict == Right || a.Verdict == Rounded || a.Verdict == Carried) {
		a.Verdict = Unit
		a.Says = "the number is right, and its unit is one of another kind: what is measured here?"
	}
	return a
}

// carried tells what a value follows from.
func (w *work) carried(i int, a *Answer) {
	a.Verdict = Carried
	for _, f := range w.trace.from[i] {
		a.From = append(a.From, w.wanted(w.Items[f]))
	}
	if r := w.trace.by[i]; r != nil {
		a.Follows = w.rowName(r)
	}
	if w.empty[i] {
		a.Remark = "it must be zero there, so that the diagram does not close"
	}
}

// fewFaults is of how many faults at most a mistake is looked for in every sum that they violate: of random numbers some mistake always fits some sum.
const fewFaults = 2

// atFault tells what is made of a value in which the trouble began.
func (w *work) atFault(i int, a *Answer) {
	if w.given[i].faces {
		a.Verdict, a.Slip, a.Slips = Slip, "pin-force-not-reversed", []string{"pin-force-not-reversed"}
		a.Says = "the two parts at a pin push on each other with opposite forces: which sense does it have on the other part?"
		return
	}
	from, found := w.trace.came[i]
	if !found {
		from.rows = w.brokenRows(i)
	}
	j := w.judgedAs(i, from.grade, from.rows)
	if worth(j) == 0 && len(w.trace.faults) <= fewFaults { // perhaps in sums with values that follow from it, which were found before it
		if all := w.brokenRows(i); len(all) > len(from.rows) {
			if k := w.judgedAs(i, from.grade, all); worth(k) > 0 {
				j = k
			}
		}
	}
	a.Verdict, a.Slips, a.Says = j.verdict, j.slips, j.says
	if j.verdict == Slip {
		a.Slip = j.slips[0]
	}
	for _, o := range w.trace.other[i] {
		a.Or = append(a.Or, w.wanted(w.Items[o]))
	}
	for _, r := range planFirst(i, j.broken)[:min(len(j.broken), 3)] {
		off, _, _ := r.residual(w.x)
		a.Violates = append(a.Violates, Violated{Name: w.rowName(r), By: off, Dim: w.Items[i].Dim, row: r})
	}
}

// brokenRows are the sums of an item that the student's values violate.
func (w *work) brokenRows(i int) []*row {
	rows := w.innerRow
	if w.Items[i].Force != statics.None {
		rows = w.forceRow
	}
	var all []*row
	for k := range rows {
		if r := &rows[k]; r.finds(i) && !r.holds(w.x) {
			all = append(all, r)
		}
	}
	return all
}

// rowName names a sum.
func (m *Marker) rowName(r *row) string {
	say := wording.New(m.Assembly, m.judge.Style)
	switch r.inner.kind {
	case "kept":
		return say.KeptSum(r.kept(m), m.Items[r.items[0]].Quantity)
	case "area":
		return "the areas along " + m.Frame.Members[r.inner.member].Name
	case "joint":
		return "the joint " + m.Frame.Joints[r.inner.joint].Name
	}
	return wording.Body(m.Assembly, r.sum.Body) + ", " + say.SumName(*r.sum)
}

// extraAnswer is what became of an answer that was not asked for and is none of the items.
func (w *work) extraAnswer(x extra) Answer {
	a := Answer{Item: x.item, Name: x.item.Name, Given: x.entry.Value, Lines: []int{x.entry.Line}, Value: x.typed.Value, Verdict: Wrong}
	switch {
	case x.shape && x.right:
		a.Verdict = Right
	case x.shape:
	case x.item.Place:
		if x.typed.Means(x.item.Value) {
			a.Verdict = Right
		}
	default:
		v := w.judgeNow().Section(x.item.Member, x.item.Station, x.item.Quantity).Verdict(x.typed)
		switch {
		case v.Exactly():
			a.Verdict = Right
		case v.Right():
			a.Verdict = Rounded
		case v == judging.OtherSense:
			a.Verdict = Sense
		case v == judging.Close:
			a.Verdict = Close
		}
	}
	return a
}
