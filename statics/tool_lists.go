package statics

// None stands where an index of a joint, member or body does not apply.
const None = -1

// lists gives each of the keys 0…n−1 the list of its items. The pairs of key and item are told twice, first to count
// them, so that all lists can stand in one array; each keeps them in the order in which they are told.
func lists[T any](n int, pairs func(tell func(key int, item T))) [][]T {
	size, all := make([]int, n), 0
	pairs(func(key int, _ T) {
		size[key]++
		all++
	})
	of, room := make([][]T, n), make([]T, all)
	for key, s := range size {
		of[key], room = room[:0:s], room[s:]
	}
	pairs(func(key int, item T) { of[key] = append(of[key], item) })
	return of
}

// carve takes n places off a room, which is made anew with so many where too few are left.
func carve[S ~[]E, E any](room *S, n, anew int) S {
	if n > len(*room) {
		*room = make(S, max(n, anew))
	}
	part := (*room)[:n:n]
	*room = (*room)[n:]
	return part
}

func contains(s []int, x int) bool {
	for _, y := range s {
		if y == x {
			return true
		}
	}
	return false
}

func noneFor(n int) []int {
	s := make([]int, n)
	for i := range s {
		s[i] = None
	}
	return s
}

// upTo lists the numbers from 0 to n − 1.
func upTo(n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return all
}
