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
		if open[n] = p.steps[n].needsCheck(p.a, p.values); open[n] {
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
func (s *Step) needsCheck(a *Assembly, values []exact.Num) bool {
	return !s.Relation && !s.Check && slices.ContainsFunc(s.Sums, func(sum Sum) bool {
		spec := sum.spec()
		return slices.ContainsFunc(a.facesOf(sum.Body), func(i int) bool { return !values[i].IsZero() && a.countsForce(&spec, i) }) ||
			spec.loaded(a, sum.Body)
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
		strands := l.strands(v)
		all = l.add(all, v, spec{along: east, centre: None}, strands, func(s *strand) bool { return !s.x.IsZero() })
		all = l.add(all, v, spec{along: north, centre: None}, strands, func(s *strand) bool { return !s.y.IsZero() })
		if l.pinAlone(v) {
			continue
		}
		for _, j := range l.centres(v) {
			about := l.p.a.momentAbout(j)
			all = l.add(all, v, about, strands, func(s *strand) bool { return !s.at(&about.about).IsZero() })
		}
	}
	return all
}

func (l *ledger) pinAlone(v *view) bool { return len(v.FreeBody) == 1 && l.p.a.IsPin(v.FreeBody[0]) }

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

// add adds a sum that follows from the used sums that count, unless it was used or catches nothing. Where a single one counts it is
// that sum once more, of a free body on which the same forces count.
func (l *ledger) add(all []check, v *view, s spec, strands []strand, counts func(*strand) bool) []check {
	l.counting = l.counting[:0]
	for n := range strands {
		if counts(&strands[n]) {
			l.counting = append(l.counting, strands[n].sum)
		}
	}
	if len(l.counting) < 2 || l.isUsed(v, &s) {
		return all
	}
	if caught := l.caught(l.counting); len(caught) > 0 {
		all = append(all, check{v, s, slices.Clone(caught), l.terms(v, &s)})
	}
	return all
}

// caught lists the steps all of whose sums count (S17). The list is good until the next call.
func (l *ledger) caught(sums []int) []int {
	l.catches = l.catches[:0]
	for n := 0; n < len(sums); {
		step, first := l.step[sums[n]], n
		for n < len(sums) && l.step[sums[n]] == step {
			n++
		}
		if n-first == len(l.p.steps[step].Sums) {
			l.catches = append(l.catches, step)
		}
	}
	return l.catches
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
