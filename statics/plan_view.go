package statics

// A view is a free body and what was found on it. That holds until one of the unknowns it rests on becomes known.
type view struct {
	FreeBody
	faces []int                 // the unknowns that act on it from outside, once it was opened
	live  []int                 // those of them that have not long been known
	at    []int                 // joints of its bodies, once they are needed
	best  kept[[2]option]       // by reach
	sets  []*kept[[]*candidate] // by the most unknowns they may have
}

// A kept result is worth reading only if fresh.
type kept[T any] struct {
	it    T
	fresh bool
}

// A resting result rests on an unknown; before is the number of the one before it that does, from 1, or 0.
type resting struct {
	fresh  *bool
	before int32
}

// views makes a view of each free body.
func views(bodies []FreeBody) []*view {
	all, room := make([]*view, len(bodies)), make([]view, len(bodies))
	for i, b := range bodies {
		all[i] = &room[i]
		room[i].FreeBody = b
	}
	return all
}

// open finds the unknowns that act on a free body from outside, unless that was done.
func (p *planner) open(v *view) {
	if v.live != nil {
		return
	}
	v.faces = p.a.facesOf(v.FreeBody)
	v.live = append(p.places(len(v.faces)), v.faces...)
}

// places is room for so many unknowns.
func (p *planner) places(n int) []int { return carve(&p.liveRoom, n, 2*len(p.a.Forces))[:0] }

// active lists the unknowns that act on a free body and are not known yet. The list is good until the next call.
func (p *planner) active(v *view) []int {
	n := 0
	for _, i := range v.live {
		if !p.known[i] {
			v.live[n] = i
			n++
		}
	}
	v.live = v.live[:n]
	return v.live
}

// sampleSize is how many unknowns of a large free body are looked at before all of them.
const sampleSize = 8

// sample is the last few of many active unknowns, or nil if there are not many: plans mostly begin where the frame was
// begun, so that these stay unknown for long. The list is good until the next call.
func (p *planner) sample(v *view, k int) []int {
	size := max(sampleSize, 2*(k+2))
	if len(v.faces) <= size {
		return nil
	}
	some := p.sampled[:0]
	for n := len(v.live) - 1; n >= 0 && len(some) < size; n-- {
		if i := v.live[n]; !p.known[i] {
			some = append(some, i)
		} else if len(some) == 0 {
			v.live = v.live[:n]
		}
	}
	p.sampled = some
	if len(some) < size {
		return nil
	}
	return some
}

// overfull reports whether more than k of the unknowns have a part in every sum, as far as slopes and ranks tell: through one point
// goes one line along each axis. Then no sum leaves no more than k unknowns, whatever the others are.
func (p *planner) overfull(unknowns []int, k int) bool {
	var many [4]int // by slope
	x, y := 0, 0    // most on one line along each axis
	for _, i := range unknowns {
		l := &p.a.lines[i]
		many[l.slope]++
		switch l.slope {
		case alongX:
			p.onLevel[l.rank]++
			x = max(x, p.onLevel[l.rank])
		case alongY:
			p.onUpright[l.rank]++
			y = max(y, p.onUpright[l.rank])
		}
	}
	for _, i := range unknowns {
		switch l := &p.a.lines[i]; l.slope {
		case alongX:
			p.onLevel[l.rank] = 0
		case alongY:
			p.onUpright[l.rank] = 0
		}
	}
	inclined := many[oblique]
	return many[alongX]+inclined > k && many[alongY]+inclined > k && (inclined == 0 || many[alongX]+many[alongY] > k) &&
		len(unknowns)-x-y-inclined > k
}

// hopeless reports whether more than k of the sample have a part in every sum that can leave no more than
// k unknowns. Then no such sum exists, whatever the other unknowns are: the sample has k + 2 lines, and any k + 2 lead to
// every such sum (S11).
func (p *planner) hopeless(v *view, sample []int, k int) bool {
	if p.overfull(sample, k) {
		return true
	}
	if len(p.lines(sample, k+2)) < k+2 {
		return false
	}
	for _, s := range p.specs(v, sample, k) {
		if p.count(sample, &s, k) <= k {
			return false
		}
	}
	return true
}

// count is how many of the unknowns have a part in a sum, or k + 1 if they are more than k.
func (p *planner) count(unknowns []int, s *spec, k int) int {
	n := 0
	for _, i := range unknowns {
		if p.a.countsForce(s, i) {
			if n++; n > k {
				break
			}
		}
	}
	return n
}

// rest notes that a result rests on the unknowns. What was found on a single body rests on all of its unknowns, and
// expires without that.
func (p *planner) rest(v *view, fresh *bool, unknowns []int) {
	if *fresh = true; len(v.FreeBody) == 1 {
		return
	}
	for _, i := range unknowns {
		p.resting = append(p.resting, resting{fresh, p.last[i]})
		p.last[i] = int32(len(p.resting))
	}
}

// expire marks all that was found.
func (v *view) expire() {
	v.best.fresh = false
	for _, k := range v.sets {
		if k != nil {
			k.fresh = false
		}
	}
}

// expire marks what rests on unknown i, which is known now.
func (p *planner) expire(i int) {
	for n := p.last[i]; n > 0; n = p.resting[n-1].before {
		*p.resting[n-1].fresh = false
	}
	p.last[i] = 0
}
