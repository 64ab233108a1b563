package statics

import (
	"cmp"
	"slices"

	"unpin/statics/exact"
)

// places finds the joint at a point. What is asked often is told by ranks: whole numbers that are equal where coordinates of joints are.
type places struct {
	first   []int // of each joint, the first at its place
	inOrder []int // joints by x, then y, then number
	at      []ranks
	xs, ys  []exact.Num // the different coordinates, rising
}

// ranks are where the coordinates of a point stand among those of the joints, None for one that no joint has.
type ranks struct{ x, y int32 }

func newPlaces(joints []Joint) places {
	p := places{inOrder: upTo(len(joints)), first: make([]int, len(joints)), at: make([]ranks, len(joints))}
	p.xs = p.rank(func(j int) *exact.Num { return &joints[j].At.X }, func(r *ranks) *int32 { return &r.x })
	p.ys = p.rank(func(j int) *exact.Num { return &joints[j].At.Y }, func(r *ranks) *int32 { return &r.y })
	slices.SortFunc(p.inOrder, func(i, j int) int { return cmp.Or(p.at[i].compare(p.at[j]), i-j) })
	for n, j := range p.inOrder {
		p.first[j] = j
		if n > 0 && p.at[j] == p.at[p.inOrder[n-1]] {
			p.first[j] = p.first[p.inOrder[n-1]]
		}
	}
	return p
}

// rank finds the ranks of one coordinate of all joints, and lists the different values.
func (p *places) rank(of func(joint int) *exact.Num, rank func(*ranks) *int32) []exact.Num {
	slices.SortFunc(p.inOrder, func(i, j int) int { return of(i).Cmp(*of(j)) })
	all := make([]exact.Num, 0, len(p.inOrder))
	for _, j := range p.inOrder {
		if v := of(j); len(all) == 0 || !v.Equal(all[len(all)-1]) {
			all = append(all, *v)
		}
		*rank(&p.at[j]) = int32(len(all) - 1)
	}
	return all
}

func (r ranks) compare(o ranks) int {
	if r.x != o.x {
		return int(r.x - o.x)
	}
	return int(r.y - o.y)
}

// ranksOf are the ranks of a point.
func (p *places) ranksOf(x *Point) ranks { return ranks{rankIn(p.xs, x.X), rankIn(p.ys, x.Y)} }

func rankIn(all []exact.Num, v exact.Num) int32 {
	if n, found := slices.BinarySearchFunc(all, v, exact.Num.Cmp); found {
		return int32(n)
	}
	return None
}

// joint is the first joint at a place, or None.
func (p *places) joint(at ranks) int {
	n, found := slices.BinarySearchFunc(p.inOrder, at, func(j int, at ranks) int { return p.at[j].compare(at) })
	if !found {
		return None
	}
	return p.inOrder[n]
}
