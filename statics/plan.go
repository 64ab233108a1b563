package statics

import (
	"slices"

	"unpin/statics/exact"
)

// plan orders the sums as a good instructor would, so that one unknown at a time comes out. Every sum with exactly one
// unknown that the family holds is found before any sums are solved together.
//
// The family: free bodies are the parts and pins, the whole, and connected groups; centres are the joints and the
// crossings of two unknowns' lines; directions are x, y and perpendicular to an unknown.
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
	left    []int          // unknowns left on each body
	loads   []lineOfAction // of each action; of no rank where no joint has that coordinate
	turn    [2]queue
	singles []*view
	entire  *view     // all bodies
	groups  []*view   // connected groups, once they are needed
	sides   []*view   // the sides of pins, once they are needed
	hand    *view     // the free body in hand
	resting []resting // all that rest on unknowns
	last    []int32   // by unknown, the number of the last that rests on it, from 1
	steps   []Step

	searching          searchRoom
	sumRoom            []Sum // for the steps to come
	giveRoom           []int
	liveRoom           []int
	specList           []spec // used again and again
	lineList           []int
	sampled            []int
	onLevel, onUpright []int // by rank, the unknowns on a line; all zero between calls
}

func newPlanner(a *Assembly, values []exact.Num) *planner {
	p := &planner{a: a, values: values, known: make([]bool, len(a.Forces)), unknown: len(a.Forces)}
	p.onUpright, p.onLevel = make([]int, len(a.places.xs)), make([]int, len(a.places.ys))
	p.loads = make([]lineOfAction, len(a.Actions))
	for i := range a.Actions {
		p.loads[i] = a.places.lineOfLoad(&a.Actions[i])
	}
	p.resting, p.last = make([]resting, 0, 4*len(a.Forces)), make([]int32, len(a.Forces))
	p.steps = make([]Step, 0, len(a.Forces)+8)                                     // with some checks
	p.sumRoom, p.giveRoom = make([]Sum, len(a.Forces)), make([]int, len(a.Forces)) // no step gives fewer forces than it has sums
	p.singles, p.entire = views(bodyGroups{a}.singles()), &view{FreeBody: a.Whole()}
	p.open(p.entire)
	for _, v := range p.singles {
		p.open(v)
	}
	p.left = make([]int, a.Bodies())
	for r := range p.turn {
		p.turn[r] = make(queue, 0, 3*a.Bodies())
	}
	for b := range p.left {
		p.left[b] = len(a.forcesOn[b])
		p.line(b)
	}
	return p
}

// line puts body b where its turn comes: first the bodies with the fewest unknowns left, of these those with a pinned or
// roller support, of these the first.
func (p *planner) line(b int) {
	size := 2 * p.left[b]
	if !p.a.restsFreely(b) {
		size++
	}
	for r := range p.turn {
		p.turn[r].push(queued{b, size})
	}
}

// stay takes the next sum of the free body in hand.
func (p *planner) stay() bool {
	return p.hand != nil && p.take(p.hand, p.optionFor(p.hand, plainSums), StayOnBody)
}

// next turns to the single body whose turn it is of those that have a sum with one unknown. A body without one stands
// in line again when something on it becomes known.
func (p *planner) next(r reach) bool {
	for q := &p.turn[r]; len(*q) > 0; q.pop() {
		b := (*q)[0].item
		if p.left[b] == 0 || p.left[b] != (*q)[0].size/2 {
			continue
		}
		if v := p.singles[b]; p.take(v, p.optionFor(v, r), p.unlessInHand(v, FewestUnknowns)) {
			return true
		}
	}
	return false
}

// unlessInHand is the reason for turning to a free body, or StayOnBody.
func (p *planner) unlessInHand(v *view, why Choice) Choice {
	if p.hand != nil && slices.Equal(v.FreeBody, p.hand.FreeBody) {
		return StayOnBody
	}
	return why
}

func (p *planner) whole(r reach) bool {
	if len(p.entire.FreeBody) == 1 {
		return false
	}
	return p.take(p.entire, p.optionFor(p.entire, r), p.unlessInHand(p.entire, WholeFrame))
}

// group looks among the connected groups of bodies: first the small ones, or in a small frame all, the smaller first; then
// the sides of pins.
func (p *planner) group() bool {
	return p.groupOf(p.connected()) || p.groupOf(p.sideViews())
}

func (p *planner) groupOf(groups []*view) bool {
	for _, r := range []reach{plainSums, anySums} {
		for _, g := range groups {
			if none := g.best.fresh && g.best.it[r].force == None; !none && p.take(g, p.optionFor(g, r), SeveralParts) {
				return true
			}
		}
	}
	return false
}

// connected lists the connected groups of bodies that are looked at first; they are found when they are needed first.
func (p *planner) connected() []*view {
	if p.groups == nil {
		p.groups = views(bodyGroups{p.a}.groups())
	}
	return p.groups
}

// sideViews lists the sides of pins, in the same way.
func (p *planner) sideViews() []*view {
	if p.sides == nil {
		p.sides = views(bodyGroups{p.a}.sideGroups())
	}
	return p.sides
}

// take writes down the sum as the next step, which gives its one unknown (S9), and reports whether there was one.
func (p *planner) take(v *view, o *option, why Choice) bool {
	if o.force == None {
		return false
	}
	p.hand = v
	sums, gives := carve(&p.sumRoom, 1, 0), carve(&p.giveRoom, 1, 0) // there is room for all
	sums[0], gives[0] = p.a.sum(v.FreeBody, &o.spec), o.force
	p.write(sums, gives, why, len(p.active(v)))
	return true
}

// write adds a step and notes what it makes known.
func (p *planner) write(sums []Sum, gives []int, why Choice, left int) {
	p.steps = append(p.steps, Step{Sums: sums, Gives: gives, Why: why, Left: left})
	for _, i := range gives {
		p.known[i] = true
		p.unknown--
		p.expire(i)
		p.learn(p.a.Forces[i].On)
		if by := p.a.Forces[i].By; by != None {
			p.learn(by)
		}
	}
}

// learn notes that one more force on body b is known.
func (p *planner) learn(b int) {
	p.left[b]--
	p.singles[b].expire()
	p.line(b)
}
