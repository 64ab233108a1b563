package statics

import "slices"

// searchLimit bounds the sets of unknowns that are looked at for one size.
const searchLimit = 20000

// A search looks for k sums that hold only k unknowns among them and give them all.
type search struct {
	k        int
	all      []candidate
	holding  map[int][]int // candidates that hold each unknown, the cheaper first
	seen     map[string]bool
	best     []candidate
	bestCost int
}

// smallest finds k independent sums that hold only k unknowns among them, the cheapest such set that it meets, or nil.
// No smaller set exists when it is called, so the unknowns hang together: each sum added to the first shares one with
// those before.
func (p *planner) smallest(k int) []candidate {
	s := search{k: k, all: p.candidates(k), holding: map[int][]int{}, seen: map[string]bool{}}
	for n, c := range s.all {
		for _, i := range c.unknowns {
			s.holding[i] = append(s.holding[i], n)
		}
	}
	for _, c := range s.all {
		s.grow(c.unknowns)
	}
	if s.best == nil && k >= p.unknown { // all at once, in case the search was cut short
		return p.allAtOnce()
	}
	return s.best
}

// grow adds sums to those whose unknowns are the set, until it has k.
func (s *search) grow(set []int) {
	key := keyOf(set)
	if s.seen[key] || len(s.seen) > searchLimit {
		return
	}
	s.seen[key] = true
	if len(set) == s.k {
		s.try(set)
		return
	}
	for _, i := range set {
		for _, n := range s.holding[i] {
			if wider := merged(set, s.all[n].unknowns); len(wider) > len(set) && len(wider) <= s.k {
				s.grow(wider)
			}
		}
	}
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

// allAtOnce lists all sums of all parts and pins, each about its first joint.
func (p *planner) allAtOnce() []candidate {
	var all []candidate
	for _, c := range p.singles {
		active, b := p.active(c), c.FreeBody[0]
		specs := []spec{{along: east}, {along: north}}
		if !p.a.IsPin(b) {
			specs = append(specs, spec{moment: true, about: p.a.Frame.Joints[p.a.joint(b)].At})
		}
		var independent basis
		for _, s := range specs {
			if x := p.candidate(c, active, s); independent.add(x.factors) {
				all = append(all, x)
			}
		}
	}
	return all
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
