package statics

import (
	"slices"

	"unpin/statics/exact"
)

// plan orders the sums as a good instructor would, so that one unknown at a time comes out. Every sum with exactly one
// unknown that the family holds is found before any sums are solved together.
//
// The family: free bodies are the parts and pins, the whole, and connected groups; centres are the joints and the
// crossings of two unknowns' lines; directions are x, y and square to an unknown.
func (a *Assembly) plan(values []exact.Num) []Step {
	p := newPlanner(a, values)
	for p.unknown > 0 {
		if !p.stay() && !p.next(plainSums) && !p.whole(plainSums) &&
			!p.next(anySums) && !p.whole(anySums) && !p.group() {
			p.together()
		}
	}
	p.relations()
	p.closing()
	return p.steps
}

// A reach says how far to look for a sum on one free body.
type reach int

const (
	plainSums reach = iota // along x and y, about joints
	anySums                // also square to an unknown, and about the crossing of two
)

// A planner is a plan in the making.
type planner struct {
	a       *Assembly
	values  []exact.Num
	known   []bool
	unknown int
	left    []int        // unknowns left on each body
	best    [2][]*option // of each body, by reach; worth reading only if fresh
	fresh   [2][]bool    // best is up to date
	entire  FreeBody     // all bodies
	groups  []FreeBody   // connected groups, once they are needed
	hand    FreeBody     // the free body in hand
	steps   []Step
}

func newPlanner(a *Assembly, values []exact.Num) *planner {
	p := &planner{a: a, values: values, known: make([]bool, len(a.Forces)), unknown: len(a.Forces)}
	p.left = make([]int, a.Bodies())
	for b := range p.left {
		p.left[b] = len(a.forcesOn[b])
	}
	for r := range p.best {
		p.best[r], p.fresh[r] = make([]*option, a.Bodies()), make([]bool, a.Bodies())
	}
	p.entire = a.Whole()
	return p
}

// stay takes the next sum of the free body in hand.
func (p *planner) stay() bool {
	if p.hand == nil {
		return false
	}
	return p.take(p.hand, p.optionFor(p.hand, plainSums), StayOnBody)
}

// next turns to the single body that has a sum with one unknown and the fewest unknowns left; of several such to one
// with a pinned or roller support, then to the first.
func (p *planner) next(r reach) bool {
	best := None
	for b := range p.left {
		if p.left[b] > 0 && p.optionFor(FreeBody{b}, r) != nil && (best == None || p.before(b, best)) {
			best = b
		}
	}
	if best == None {
		return false
	}
	b := FreeBody{best}
	why := FewestUnknowns
	if slices.Equal(b, p.hand) {
		why = StayOnBody
	}
	return p.take(b, p.optionFor(b, r), why)
}

// before reports whether body b is to be taken before body c.
func (p *planner) before(b, c int) bool {
	if p.left[b] != p.left[c] {
		return p.left[b] < p.left[c]
	}
	return p.resting(b) && !p.resting(c)
}

// resting reports whether the body has a pinned or roller support.
func (p *planner) resting(b int) bool {
	var reactions, couples int
	for _, i := range p.a.forcesOn[b] {
		if f := p.a.Forces[i]; f.Kind == Reaction {
			reactions++
			if f.Couple {
				couples++
			}
		}
	}
	return reactions > 0 && couples == 0
}

func (p *planner) whole(r reach) bool {
	if len(p.entire) == 1 {
		return false
	}
	why := WholeFrame
	if slices.Equal(p.entire, p.hand) {
		why = StayOnBody
	}
	return p.take(p.entire, p.optionFor(p.entire, r), why)
}

// group looks among the connected groups of bodies, the smaller first.
func (p *planner) group() bool {
	if p.groups == nil {
		p.groups = p.a.groups()
	}
	for _, r := range []reach{plainSums, anySums} {
		for _, g := range p.groups {
			if p.take(g, p.optionFor(g, r), SeveralParts) {
				return true
			}
		}
	}
	return false
}

// optionFor is the best sum of a free body with exactly one unknown, or nil. What it finds for a single body is kept
// until something on that body becomes known.
func (p *planner) optionFor(b FreeBody, r reach) *option {
	if len(b) > 1 {
		return p.look(b, r)
	}
	if !p.fresh[r][b[0]] {
		p.best[r][b[0]], p.fresh[r][b[0]] = p.look(b, r), true
	}
	return p.best[r][b[0]]
}

// take writes down the sum as the next step and reports whether there was one.
func (p *planner) take(b FreeBody, o *option, why Choice) bool {
	if o == nil {
		return false
	}
	p.write([]Sum{p.a.sum(b, o.spec)}, []int{o.force}, why, len(p.active(b)))
	p.hand = b
	return true
}

// write adds a step and notes what it makes known.
func (p *planner) write(sums []Sum, gives []int, why Choice, left int) {
	p.steps = append(p.steps, Step{Sums: sums, Gives: gives, Why: why, Left: left})
	for _, i := range gives {
		p.known[i] = true
		p.unknown--
		p.learn(p.a.Forces[i].On)
		if by := p.a.Forces[i].By; by != None {
			p.learn(by)
		}
	}
}

// learn notes that one more force on body b is known.
func (p *planner) learn(b int) {
	p.left[b]--
	for r := range p.fresh {
		p.fresh[r][b] = false
	}
}

// active lists the unknowns that act on a free body and are not known yet.
func (p *planner) active(b FreeBody) []int {
	var on []int
	for _, i := range p.a.ForcesOn(b) {
		if p.known[i] {
			continue
		}
		if sign, _ := p.a.Facing(b, i); sign != 0 {
			on = append(on, i)
		}
	}
	return on
}

// relations puts in, where a part is put down, the force sum of it that has then two unknowns left and is used later.
func (p *planner) relations() {
	at := make([]int, len(p.a.Forces)) // step at which each force comes out
	for s, step := range p.steps {
		for _, i := range step.Gives {
			at[i] = s
		}
	}
	inserted := map[int][]Step{}
	for s := range p.steps {
		step := &p.steps[s]
		put := p.putDown(s)
		if put == None || len(step.Sums) > 1 || step.Sums[0].Moment {
			continue
		}
		left := step.Sums[0].Unknowns(func(i int) bool { return at[i] <= put })
		if len(left) == 2 {
			step.Why = RelationUsed
			inserted[put] = append(inserted[put], Step{Sums: step.Sums, Why: KeptRelation, Relation: true, Left: 2})
		}
	}
	var all []Step
	for s, step := range p.steps {
		all = append(append(all, step), inserted[s]...)
	}
	p.steps = all
}

// putDown is the last step on the part of step s before other bodies were taken, or None if it was not taken before.
func (p *planner) putDown(s int) int {
	body := p.steps[s].Sums[0].Body
	if len(body) > 1 || slices.Equal(p.steps[max(s-1, 0)].Sums[0].Body, body) {
		return None
	}
	for t := s - 1; t >= 0; t-- {
		if slices.Equal(p.steps[t].Sums[0].Body, body) {
			return t
		}
	}
	return None
}

// closing ends with a sum about the whole that was not used and in which most forces count.
func (p *planner) closing() {
	var best *Sum
	most := 0
	for _, j := range p.a.Frame.Joints {
		s := p.a.MomentSum(p.entire, j.At)
		if n := p.counting(s); n > most && !p.used(s) {
			best, most = &s, n
		}
	}
	if best != nil {
		p.steps = append(p.steps, Step{Sums: []Sum{*best}, Why: ClosingCheck, Check: true})
	}
}

// counting is how many terms of a sum are not nought.
func (p *planner) counting(s Sum) int {
	n := 0
	for _, t := range s.Terms {
		if !t.Amount(p.values).IsZero() {
			n++
		}
	}
	return n
}

// used reports whether a moment sum of the whole was a step of the plan.
func (p *planner) used(s Sum) bool {
	for _, step := range p.steps {
		for _, o := range step.Sums {
			if o.Moment && slices.Equal(o.Body, s.Body) && o.About.Equal(s.About) {
				return true
			}
		}
	}
	return false
}
