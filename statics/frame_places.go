package statics

import "slices"

// places finds the joint at a point.
type places struct {
	joints  []Joint
	inOrder []int // joints by x, then y, then number
	first   []int // of each joint, the first at its place
}

func newPlaces(joints []Joint) places {
	p := places{joints, make([]int, len(joints)), make([]int, len(joints))}
	for j := range joints {
		p.inOrder[j] = j
	}
	slices.SortStableFunc(p.inOrder, func(i, j int) int { return comparePlaces(&joints[i].At, &joints[j].At) })
	for n, j := range p.inOrder {
		p.first[j] = j
		if n > 0 && joints[j].At.Equal(joints[p.inOrder[n-1]].At) {
			p.first[j] = p.first[p.inOrder[n-1]]
		}
	}
	return p
}

func comparePlaces(p, q *Point) int {
	if c := p.X.Cmp(q.X); c != 0 {
		return c
	}
	return p.Y.Cmp(q.Y)
}

// at is the first joint at a point, or None.
func (p *places) at(x Point) int {
	n, found := slices.BinarySearchFunc(p.inOrder, x, func(j int, x Point) int { return comparePlaces(&p.joints[j].At, &x) })
	if !found {
		return None
	}
	return p.inOrder[n]
}
