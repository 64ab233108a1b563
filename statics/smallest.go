package statics

import "slices"

// searchLimit bounds the sets of unknowns that are looked at before one step.
const searchLimit = 20000

// A search looks for k sums that hold only k unknowns among them and give them all.
type search struct {
	k        int
	left     int // sets that may still be looked at
	all      []candidate
	holding  map[int][]int // candidates that hold each unknown, the cheaper first
	seen     map[string]bool
	best     []candidate
	bestCost int
}

// smallest finds the least number of independent sums that hold only as many unknowns among them, and the cheapest such
// set. It is called only when no sum has one unknown. Where the search would go too far it takes the smallest block of
// the sums of the single bodies.
func (p *planner) smallest() []candidate {
	s := search{left: searchLimit}
	for s.k = 2; s.k < p.unknown && s.left > 0; s.k++ {
		s.all = p.candidates(s.k)
		s.run()
		if s.best != nil {
			return s.best
		}
	}
	return p.block()
}

// run looks at the sets of one size. No smaller set gives all its unknowns, so the unknowns of one that does hang
// together: each sum added to the first shares one with those before.
func (s *search) run() {
	s.holding, s.seen = map[int][]int{}, map[string]bool{}
	for n, c := range s.all {
		for _, i := range c.unknowns {
			s.holding[i] = append(s.holding[i], n)
		}
	}
	for _, c := range s.all {
		s.grow(c.unknowns)
	}
}

// grow adds sums to those whose unknowns are the set, until it has k.
func (s *search) grow(set []int) {
	key := keyOf(set)
	if s.seen[key] || s.left == 0 {
		return
	}
	s.seen[key] = true
	s.left--
	if len(set) == s.k {
		s.try(set)
		return
	}
	for _, i := range set {
		for _, n := range s.holding[i] {
			if wider := s.merged(set, s.all[n].unknowns); len(wider) > len(set) {
				s.grow(wider)
			}
		}
	}
}

// merged is the union of two sorted sets, or nil if it has more than k members.
func (s *search) merged(x, y []int) []int {
	all := make([]int, 0, s.k)
	for len(x) > 0 || len(y) > 0 {
		switch {
		case len(all) == s.k:
			return nil
		case len(y) == 0 || len(x) > 0 && x[0] < y[0]:
			all, x = append(all, x[0]), x[1:]
		case len(x) == 0 || y[0] < x[0]:
			all, y = append(all, y[0]), y[1:]
		default:
			all, x, y = append(all, x[0]), x[1:], y[1:]
		}
	}
	return all
}

// try picks, the cheapest first, independent sums that hold only unknowns of the set, and keeps them if they give all
// of it for less than what was found before.
func (s *search) try(set []int) {
	var inside []int
	for _, i := range set {
		for _, n := range s.holding[i] {
			if s.all[n].unknowns[0] == i && within(s.all[n].unknowns, set) {
				inside = append(inside, n)
			}
		}
	}
	if len(inside) < s.k {
		return
	}
	slices.Sort(inside)
	var chosen []candidate
	var b basis
	cost := 0
	for _, n := range inside {
		if len(chosen) < s.k && b.add(s.all[n].factors) {
			chosen = append(chosen, s.all[n])
			cost += s.all[n].cost
		}
	}
	if len(chosen) == s.k && (s.best == nil || cost < s.bestCost) {
		s.best, s.bestCost = chosen, cost
	}
}

// within reports whether the sorted set x lies in the sorted set y.
func within(x, y []int) bool {
	for _, i := range x {
		if _, ok := slices.BinarySearch(y, i); !ok {
			return false
		}
	}
	return true
}
