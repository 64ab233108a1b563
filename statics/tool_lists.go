package statics

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
