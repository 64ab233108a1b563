package statics

// A union is a set of disjoint groups of the numbers 0…n−1.
type union []int

func newUnion(n int) union {
	u := make(union, n)
	for i := range u {
		u[i] = i
	}
	return u
}

// find is the number that stands for the group of i.
func (u union) find(i int) int {
	for u[i] != i {
		u[i] = u[u[i]]
		i = u[i]
	}
	return i
}

// joinAll makes one group of those of all members.
func (u union) joinAll(members []int) {
	for _, i := range members {
		u.join(members[0], i)
	}
}

// join makes one group of those of i and j.
func (u union) join(i, j int) { u[u.find(i)] = u.find(j) }
