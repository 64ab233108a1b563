package statics

// A cut is a free body with the unknowns that act on it from outside.
type cut struct {
	FreeBody
	faces []int
}

func (a *Assembly) cut(b FreeBody) cut {
	if len(b) == 1 { // no force has both its faces on one body
		return cut{b, a.forcesOn[b[0]]}
	}
	sides, n := make([]int, len(a.Forces)), 0 // how many of its faces are inside; n forces have one
	for _, body := range b {
		for _, i := range a.forcesOn[body] {
			if sides[i]++; sides[i] == 1 {
				n++
			} else {
				n--
			}
		}
	}
	c := cut{b, make([]int, 0, n)}
	for i, inside := range sides {
		if inside == 1 {
			c.faces = append(c.faces, i)
		}
	}
	return c
}

// A view is a cut and what was found on it. That holds until one of the unknowns it rests on becomes known.
type view struct {
	cut
	live []int                 // faces, those that have long been known left out
	at   []int                 // joints of its bodies, once they are needed
	best [2]kept[option]       // by reach
	sets []*kept[[]*candidate] // by the most unknowns they may have
}

// A kept result is worth reading only if fresh.
type kept[T any] struct {
	it    T
	fresh bool
}

// views makes a view of each free body.
func (a *Assembly) views(bodies []FreeBody) []*view {
	all, views := make([]*view, len(bodies)), make([]view, len(bodies))
	faces := 0
	for i, b := range bodies {
		all[i] = &views[i]
		views[i].cut = a.cut(b)
		faces += len(views[i].faces)
	}
	room := make([]int, 0, faces)
	for i := range views {
		from := len(room)
		room = append(room, views[i].faces...)
		views[i].live = room[from:len(room):len(room)]
	}
	return all
}

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

// hopeless reports whether more than k of the sample have a part in every sum within reach that can leave no more than
// k unknowns. Then no such sum exists, whatever the other unknowns are.
func (p *planner) hopeless(v *view, sample []int, k int, r reach) bool {
	if len(p.lines(sample, k+2)) < k+2 {
		return false
	}
	for _, s := range p.specs(v, sample, k, r) {
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
		p.resting[i] = append(p.resting[i], fresh)
	}
}

// expire marks all that was found.
func (v *view) expire() {
	for r := range v.best {
		v.best[r].fresh = false
	}
	for _, k := range v.sets {
		k.fresh = false
	}
}

// expire marks what rests on unknown i, which is known now.
func (p *planner) expire(i int) {
	for _, fresh := range p.resting[i] {
		*fresh = false
	}
	p.resting[i] = nil
}
