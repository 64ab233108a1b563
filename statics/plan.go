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

// A planner is a plan in the making.
type planner struct {
	a       *Assembly
	values  []exact.Num
	known   []bool
	unknown int
	left    []int        // unknowns left on each body
	best    [2][]*option // of each body, by reach; worth reading only if fresh
	fresh   [2][]bool    // best is up to date
	singles []cut
	entire  cut   // all bodies
	groups  []cut // connected groups, once they are needed
	hand    *cut  // the free body in hand
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
	p.singles, p.entire = a.cuts(a.singles()), a.cut(a.Whole())
	return p
}

// stay takes the next sum of the free body in hand.
func (p *planner) stay() bool {
	if p.hand == nil {
		return false
	}
	return p.take(*p.hand, p.optionFor(*p.hand, plainSums), StayOnBody)
}

// next turns to the single body that has a sum with one unknown and the fewest unknowns left; of several such to one
// with a pinned or roller support, then to the first.
func (p *planner) next(r reach) bool {
	best := None
	for b := range p.left {
		if p.left[b] > 0 && (best == None || p.before(b, best)) && p.optionFor(p.singles[b], r) != nil {
			best = b
		}
	}
	if best == None {
		return false
	}
	c := p.singles[best]
	return p.take(c, p.optionFor(c, r), p.unlessInHand(c, FewestUnknowns))
}

// unlessInHand is the reason for turning to a free body, or StayOnBody.
func (p *planner) unlessInHand(c cut, why Choice) Choice {
	if p.hand != nil && slices.Equal(c.FreeBody, p.hand.FreeBody) {
		return StayOnBody
	}
	return why
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
	if len(p.entire.FreeBody) == 1 {
		return false
	}
	return p.take(p.entire, p.optionFor(p.entire, r), p.unlessInHand(p.entire, WholeFrame))
}

// group looks among the connected groups of bodies, the smaller first.
func (p *planner) group() bool {
	for _, r := range []reach{plainSums, anySums} {
		for _, g := range p.connected() {
			if p.take(g, p.optionFor(g, r), SeveralParts) {
				return true
			}
		}
	}
	return false
}

// connected lists the connected groups of bodies; they are found when they are needed first.
func (p *planner) connected() []cut {
	if p.groups == nil {
		p.groups = p.a.cuts(p.a.groups())
	}
	return p.groups
}

// optionFor is the best sum of a free body with exactly one unknown, or nil. What it finds for a single body is kept
// until something on that body becomes known.
func (p *planner) optionFor(c cut, r reach) *option {
	if len(c.FreeBody) > 1 {
		return p.look(c, r)
	}
	b := c.FreeBody[0]
	if !p.fresh[r][b] {
		p.best[r][b], p.fresh[r][b] = p.look(c, r), true
	}
	return p.best[r][b]
}

// take writes down the sum as the next step and reports whether there was one.
func (p *planner) take(c cut, o *option, why Choice) bool {
	if o == nil {
		return false
	}
	p.write([]Sum{p.a.sum(c.FreeBody, o.spec)}, []int{o.force}, why, len(p.active(c)))
	p.hand = &c
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
func (p *planner) active(c cut) []int {
	var on []int
	for _, i := range c.faces {
		if !p.known[i] {
			on = append(on, i)
		}
	}
	return on
}
