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
	catches marks // steps
	terms   int   // once they are counted
}

// closing ends the plan with unused sums that check the work, until every step that one of the family catches is caught: first
// the sum that catches most steps which none before it does, then the one with fewest terms, then the first. A step all of
// whose terms are zero needs no check.
func (p *planner) closing() {
	open := newMarks(len(p.steps)) // steps that none catches yet
	for n := range p.steps {
		if p.steps[n].needsCheck(p.a, p.values) {
			open.set(n)
		}
	}
	if open.isEmpty() {
		return
	}
	l := newLedger(p)
	for bodies := range p.closingBodies() {
		if l.cover(l.checks(bodies, open), open); open.isEmpty() {
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
	if s.Relation || s.Check {
		return false
	}
	if slices.ContainsFunc(s.Gives, func(i int) bool { return !values[i].IsZero() }) {
		return true
	}
	return slices.ContainsFunc(s.Sums, func(sum Sum) bool {
		spec := sum.spec(a)
		return slices.ContainsFunc(a.facesOf(sum.Body), func(i int) bool { return !values[i].IsZero() && a.countsForce(&spec, i) }) ||
			spec.loaded(a, sum.Body)
	})
}

// cover adds checks to the plan while they catch open steps, which then are open no more. What a check
// adds can only become less, and its terms are counted when its turn comes, so one that is still as good as it was queued is the best.
func (l *ledger) cover(checks []check, open marks) {
	q := make(queue, 0, len(checks))
	for n := range checks {
		q.push(queued{n, checks[n].place(open)})
	}
	for len(q) > 0 {
		top := q.pop()
		c := &checks[top.item]
		if c.catches.inCommon(open) == 0 {
			continue
		}
		if c.terms == 0 {
			c.terms = l.terms(c.view, &c.spec)
		}
		if now := c.place(open); now != top.size {
			q.push(queued{top.item, now})
			continue
		}
		open.takeAway(c.catches)
		l.p.steps = grown(l.p.steps)
		l.p.steps = append(l.p.steps, Step{Sums: []Sum{l.p.a.sum(c.view.FreeBody, &c.spec)}, Why: ClosingCheck, Check: true, Catches: c.catches.list()})
	}
}

// place is less for a check that catches more open steps, and then for one with fewer terms.
func (c *check) place(open marks) int { return -c.catches.inCommon(open)<<20 + c.terms }

// checks lists the sums of free bodies along x and y and about joints that no step used and that catch an open step. The list is good
// until the next call.
func (l *ledger) checks(bodies []*view, open marks) []check {
	all := l.listed[:0]
	for _, v := range bodies {
		l.p.open(v)
		strands := l.strands(v)
		all = l.add(all, v, &eastward, strands, open)
		all = l.add(all, v, &northward, strands, open)
		if len(v.FreeBody) == 1 && l.p.a.IsPin(v.FreeBody[0]) { // it has no moments
			continue
		}
		for _, j := range l.centres(v) {
			about := l.p.a.momentAbout(j)
			all = l.add(all, v, &about, strands, open)
		}
	}
	l.listed = all
	return all
}

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

// add adds a sum that follows from the used sums that count, unless it catches no open step. Where a single one counts it is that sum
// once more, perhaps of a free body on which the same forces count. It catches the steps all of whose sums count (S17).
func (l *ledger) add(all []check, v *view, s *spec, strands []strand, open marks) []check {
	clear(l.caught)
	counting, step, of := 0, None, 0 // so many sums in all, and of this step
	for n := range strands {
		if !strands[n].counts(s) {
			continue
		}
		counting++
		if o := l.step[strands[n].sum]; o == step {
			of++
		} else {
			step, of = o, 1
		}
		if of == len(l.p.steps[step].Sums) {
			l.caught.set(step)
		}
	}
	if counting < 2 || l.caught.inCommon(open) == 0 {
		return all
	}
	return append(all, check{view: v, spec: *s, catches: l.kept(l.caught)})
}

// kept is a copy of a set of steps.
func (l *ledger) kept(m marks) marks {
	room := carve(&l.markRoom, len(m), 32*len(m))
	copy(room, m)
	return room
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
			if l.p.countsLoad(s, i) {
				n++
			}
		}
	}
	return n
}
