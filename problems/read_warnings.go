package problems

import (
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
)

// A warner looks over a frame that was read for what is legal but likely a mistake.
type warner struct{ *pinReader }

// warnings notes what is legal in the frame but nearly always a mistake: no loads, joints that lie on a member they do not end,
// members that cross where there is no joint, and pieces that hang together with nothing.
func (r warner) warnings() {
	f := r.frame()
	if len(r.problem.Entries) == 0 {
		r.warn("No loads act on the frame, so every force is zero; write them under loads.")
	}
	boxes := make([]box, len(f.Members))
	for m := range f.Members {
		boxes[m] = r.box(m)
	}
	r.warnJointsOnMembers(boxes)
	r.warnCrossings(boxes)
	r.warnApart()
}

// box is the smallest upright rectangle around a member.
type box struct {
	member         int
	left, right    exact.Num
	bottom, height exact.Num
}

func (r warner) box(m int) box {
	f := r.frame()
	p, q := f.Joints[f.Members[m].From].At, f.Joints[f.Members[m].To].At
	return box{m, smaller(p.X, q.X), larger(p.X, q.X), smaller(p.Y, q.Y), larger(p.Y, q.Y)}
}

// holds reports whether a point lies in the box.
func (b box) holds(p statics.Point) bool {
	return b.left.Cmp(p.X) <= 0 && p.X.Cmp(b.right) <= 0 && b.bottom.Cmp(p.Y) <= 0 && p.Y.Cmp(b.height) <= 0
}

// warnJointsOnMembers warns of each joint that lies on a member without being its end.
func (r warner) warnJointsOnMembers(boxes []box) {
	f := r.frame()
	byX := make([]int, len(f.Joints))
	for j := range byX {
		byX[j] = j
	}
	slices.SortStableFunc(byX, func(a, b int) int { return f.Joints[a].At.X.Cmp(f.Joints[b].At.X) })
	for m, b := range boxes {
		member := f.Members[m]
		first, _ := slices.BinarySearchFunc(byX, b.left, func(j int, x exact.Num) int { return f.Joints[j].At.X.Cmp(x) })
		for _, j := range byX[first:] {
			at := f.Joints[j].At
			if at.X.Cmp(b.right) > 0 || r.warned() {
				break
			}
			if j == member.From || j == member.To || !b.holds(at) {
				continue
			}
			if f.Span(m).Cross(f.Joints[member.From].At.To(at)).IsZero() {
				r.warn("The joint %[1]s lies on the member %[2]s without being its end, so the two are not joined; if they should be, put %[1]s at the end of two members in its place.", f.Joints[j].Name, member.Name)
			}
		}
	}
}

// warnCrossings warns of each two members that cross between their ends.
func (r warner) warnCrossings(boxes []box) {
	f := r.frame()
	slices.SortStableFunc(boxes, func(a, b box) int { return a.left.Cmp(b.left) })
	for i, a := range boxes {
		for _, b := range boxes[i+1:] {
			if b.left.Cmp(a.right) > 0 || r.warned() {
				break
			}
			if b.bottom.Cmp(a.height) > 0 || a.bottom.Cmp(b.height) > 0 || !r.cross(a.member, b.member) {
				continue
			}
			first, second := min(a.member, b.member), max(a.member, b.member)
			r.warn("The members %s and %s cross where there is no joint, so they pass each other freely.", f.Members[first].Name, f.Members[second].Name)
		}
	}
}

// cross reports whether two members cross between the ends of both: each has its ends on either side of the other.
func (r warner) cross(a, b int) bool {
	m, n := r.frame().Members[a], r.frame().Members[b]
	if m.From == n.From || m.From == n.To || m.To == n.From || m.To == n.To {
		return false
	}
	return r.parts(a, b) && r.parts(b, a)
}

// parts reports whether the line of member a has the ends of b on its two sides.
func (r warner) parts(a, b int) bool {
	f := r.frame()
	start := f.Joints[f.Members[a].From].At
	side := func(j int) int { return f.Span(a).Cross(start.To(f.Joints[j].At)).Sign() }
	return side(f.Members[b].From)*side(f.Members[b].To) < 0
}

// warnApart warns if not all members hang together.
func (r warner) warnApart() {
	f := r.frame()
	seen := make([]bool, len(f.Joints))
	stack := []int{f.Members[0].From}
	seen[stack[0]] = true
	for len(stack) > 0 {
		j := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		for _, m := range r.meeting[j] {
			for _, end := range []int{f.Members[m].From, f.Members[m].To} {
				if !seen[end] {
					seen[end] = true
					stack = append(stack, end)
				}
			}
		}
	}
	var apart []string
	for _, member := range f.Members {
		if !seen[member.From] {
			apart = append(apart, member.Name)
		}
	}
	if len(apart) > 0 {
		r.warn("The frame is in pieces that nothing joins: no joint leads from %s to %s.", f.Members[0].Name, allOf(apart))
	}
}
