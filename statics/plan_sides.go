package statics

// A hanging tells what hangs together in a frame when one joint is cut. It is a walk over the bodies and the joints at
// which forces pass between them, depth first: what is reached through a joint is cut off with it, unless something of that
// leads back to what was reached before the joint.
type hanging struct {
	bodies [][]int // by joint, the bodies between which forces pass there
	joints [][]int // by body, those joints
	steps  int
	reach  []int   // by body, the step at which it is reached, from 1
	piece  []int   // by body, the connected piece of the frame that it belongs to
	pieces int     // so far
	seen   []int   // by joint, the step at which it is reached
	cutOff [][]run // by joint, the bodies that hang on it alone
}

// A run is the bodies that are reached from one step of a walk to another.
type run struct{ first, last int }

// hanging walks over the whole frame, in which a joint is cut already unless that is None.
func (a *Assembly) hanging(cut int) *hanging {
	h := &hanging{reach: make([]int, a.Bodies()), piece: make([]int, a.Bodies())}
	joints := len(a.Frame.Joints)
	h.seen, h.cutOff = make([]int, joints), make([][]run, joints)
	pairs := func(tell func(joint, body int)) {
		for i := range a.Forces {
			if f := &a.Forces[i]; f.By != None && f.Joint != cut {
				tell(f.Joint, f.On)
				tell(f.Joint, f.By)
			}
		}
	}
	h.bodies = lists(joints, pairs)
	h.joints = lists(a.Bodies(), func(tell func(body, joint int)) {
		pairs(func(joint, body int) { tell(body, joint) })
	})
	for b := range h.reach {
		if h.reach[b] == 0 {
			h.visit(b, None)
			h.pieces++
		}
	}
	return h
}

// visit reaches body b through a joint and goes on to all that can be reached from there. It gives the earliest step to
// which any of that leads back.
func (h *hanging) visit(b, through int) int {
	h.steps++
	h.reach[b], h.piece[b] = h.steps, h.pieces
	low := h.steps
	for _, j := range h.joints[b] {
		switch {
		case j == through:
		case h.seen[j] > 0:
			low = min(low, h.seen[j])
		default:
			low = min(low, h.pass(j))
		}
	}
	return low
}

// pass goes on through joint j, and gives the same.
func (h *hanging) pass(j int) int {
	h.steps++
	h.seen[j] = h.steps
	low := h.steps
	for _, b := range h.bodies[j] {
		if h.reach[b] > 0 {
			low = min(low, h.reach[b])
			continue
		}
		first := h.steps + 1
		if l := h.visit(b, j); l < h.seen[j] {
			low = min(low, l)
		} else {
			h.cutOff[j] = append(h.cutOff[j], run{first, h.steps})
		}
	}
	return low
}

// sides are the connected groups into which all bodies fall when what passes at joint j is cut.
func (h *hanging) sides(j int) []FreeBody {
	runs := h.cutOff[j]
	if len(runs) == 0 && h.pieces == 1 {
		return nil
	}
	of := make([]int, len(h.reach))
	size := make([]int, len(runs)+h.pieces)
	for b := range of {
		of[b] = h.sideOf(b, runs)
		size[of[b]]++
	}
	room, at := make(FreeBody, len(of)), noneFor(len(size))
	var sides []FreeBody
	for b, s := range of {
		if at[s] == None {
			at[s] = len(sides)
			sides, room = append(sides, room[:0:size[s]]), room[size[s]:]
		}
		sides[at[s]] = append(sides[at[s]], b)
	}
	return sides
}

// sideOf numbers the side of body b: the runs first, then what is left of the pieces of the frame.
func (h *hanging) sideOf(b int, runs []run) int {
	for n, r := range runs {
		if r.first <= h.reach[b] && h.reach[b] <= r.last {
			return n
		}
	}
	return len(runs) + h.piece[b]
}
