package statics

import (
	"iter"
	"slices"

	"unpin/statics/exact"
)

// closingWork bounds the forces and loads looked at for checks of the whole: in a large frame a few joints will do.
const closingWork = 2000

// A check is an unused sum of the family that may close the plan.
type check struct {
	view    *view
	spec    spec
	catches []int // steps
	terms   int
}

// closing ends the plan with unused sums that check the work, until every step that one of the family catches is caught: first
// the sum that catches most steps which none before it does, then the one with fewest terms, then the first. A step all of
// whose terms are zero needs no check.
func (p *planner) closing() {
	open := make([]bool, len(p.steps)) // steps that none catches yet
	left := 0
	for n := range p.steps {
		if open[n] = p.steps[n].needsCheck(p.values); open[n] {
			left++
		}
	}
	if left == 0 {
		return
	}
	l := newLedger(p)
	for bodies := range p.closingBodies() {
		if left = p.cover(l.checks(bodies), open, left); left == 0 {
			return
		}
	}
}

// closingBodies are the free bodies whose sums may close the plan: in a small frame all at once; in a large one first the whole,
// which often catches everything, then each body, then groups.
func (p *planner) closingBodies() iter.Seq[[]*view] {
	var whole []*view
	if len(p.entire.FreeBody) > 1 {
		whole = []*view{p.entire}
	}
	return func(yield func([]*view) bool) {
		if p.a.Bodies() <= everyGroupUpTo {
			yield(slices.Concat(p.singles, whole, p.connected()))
			return
		}
		_ = yield(whole) && yield(p.singles) && yield(p.connected())
	}
}

// needsCheck reports whether a step is more than a sum of zeros.
func (s *Step) needsCheck(values []exact.Num) bool {
	return !s.Relation && !s.Check && slices.ContainsFunc(s.Sums, func(sum Sum) bool {
		return slices.ContainsFunc(sum.Terms, func(t Term) bool { return t.Why == Counts && !t.Amount(values).IsZero() })
	})
}

// cover adds checks to the plan while they catch open steps, and gives the number of those that are left. What a check
// adds can only become less, so one that still adds as much as it was queued with is the best.
func (p *planner) cover(checks []check, open []bool, left int) int {
	adds := func(c *check) int {
		n := 0
		for _, s := range c.catches {
			if open[s] {
				n++
			}
		}
		return n
	}
	var q queue
	size := func(c *check, adds int) int { return (len(open)-adds)<<20 + c.terms }
	for n := range checks {
		q.push(queued{n, size(&checks[n], adds(&checks[n]))})
	}
	for left > 0 && len(q) > 0 {
		top := q.pop()
		c := &checks[top.item]
		n := adds(c)
		if now := size(c, n); now != top.size {
			q.push(queued{top.item, now})
			continue
		}
		if n == 0 {
			break
		}
		left -= n
		for _, s := range c.catches {
			open[s] = false
		}
		p.steps = append(p.steps, Step{Sums: []Sum{p.a.sum(c.view.FreeBody, &c.spec)}, Why: ClosingCheck, Check: true, Catches: c.catches})
	}
	return left
}

// checks lists the sums of free bodies along x and y and about joints that no step used and that catch something.
func (l *ledger) checks(bodies []*view) []check {
	var all []check
	for _, v := range bodies {
		l.p.open(v)
		x, y := spec{along: east, centre: None}, spec{along: north, centre: None}
		alongX, alongY := l.of(v, &x), l.of(v, &y)
		all = l.add(all, v, x, alongX)
		all = l.add(all, v, y, alongY)
		if len(v.FreeBody) == 1 && l.p.a.IsPin(v.FreeBody[0]) {
			continue
		}
		about := l.of(v, &spec{moment: true, centre: None})
		for _, j := range l.centres(v) {
			s := l.p.a.momentAbout(j)
			all = l.add(all, v, s, about.without(s.about.X, alongY).without(s.about.Y.Neg(), alongX))
		}
	}
	return all
}

// of is how a sum of a free body follows from the used sums.
func (l *ledger) of(v *view, s *spec) row { return l.combine(l.row(v.FreeBody, v.faces, s)) }

// centres are the joints of the frame, in a large frame those of the free body, and of the whole only some.
func (l *ledger) centres(v *view) []int {
	joints := len(l.p.a.Frame.Joints)
	switch {
	case l.p.a.Bodies() <= everyGroupUpTo:
		return upTo(joints)
	case v != l.p.entire:
		return l.p.a.jointsOf(v.FreeBody)
	}
	return upTo(min(joints, max(2, closingWork/(len(v.faces)+len(l.p.a.Actions)+1))))
}

// add adds a sum that has these factors, unless it was used or catches nothing. With a single factor it is a used sum once
// more, of a free body on which the same forces count.
func (l *ledger) add(all []check, v *view, s spec, factors row) []check {
	if len(factors.entries) < 2 || l.isUsed(v, &s) {
		return all
	}
	if caught := l.caught(factors); len(caught) > 0 {
		all = append(all, check{v, s, caught, l.terms(v, &s)})
	}
	return all
}

// caught lists the steps all of whose sums have a factor that is not zero (S17).
func (l *ledger) caught(factors row) []int {
	var steps []int
	for n := 0; n < len(factors.entries); {
		step, sums := l.step[factors.entries[n].col], 0
		for n < len(factors.entries) && l.step[factors.entries[n].col] == step {
			n, sums = n+1, sums+1
		}
		if sums == len(l.p.steps[step].Sums) {
			steps = append(steps, step)
		}
	}
	return steps
}

// isUsed reports whether a sum was a step of the plan.
func (l *ledger) isUsed(v *view, s *spec) bool {
	return slices.ContainsFunc(l.used[v.FreeBody[0]], func(o *Sum) bool { return s.same(o) && slices.Equal(o.Body, v.FreeBody) })
}

// terms is how many forces and loads have a part in a sum.
func (l *ledger) terms(v *view, s *spec) int {
	n := 0
	for _, i := range v.faces {
		if l.p.a.countsForce(s, i) {
			n++
		}
	}
	for _, b := range v.FreeBody {
		for _, i := range l.p.a.actionsOn[b] {
			if l.p.a.countsAction(s, i) {
				n++
			}
		}
	}
	return n
}
