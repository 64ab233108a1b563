package statics

import "slices"

// searchLimit bounds the sets of unknowns that are looked at before one step.
const searchLimit = 20000

// smallest finds the least number of independent sums that hold only as many unknowns among them, and the cheapest such
// set; in a frame of many bodies, where sums of several of them have many terms, one of single bodies if there is any. It
// is called only when no sum has one unknown. Where a search would go too far it takes the smallest block of the sums of
// the single bodies.
func (p *planner) smallest() []*candidate {
	left := searchLimit
	for k := 2; k < p.unknown && left > 0; k++ {
		var best []*candidate
		if p.a.Bodies() > everyGroupUpTo {
			best = p.cheapest(p.candidates(k, p.singles), k, &left)
		}
		if best == nil {
			best = p.cheapest(p.candidates(k, p.family()), k, &left)
		}
		if best != nil {
			return best
		}
	}
	return p.block()
}

// cheapest finds among the candidates the cheapest set of k that gives k unknowns, or nil.
func (p *planner) cheapest(all []*candidate, k int, left *int) []*candidate {
	var best *search
	room := p.searching.of(len(p.known))
	for _, group := range p.hangingTogether(all) {
		if s := searchIn(group, k, left, room); s.best != nil && (best == nil || s.before(best)) {
			best = s
		}
	}
	if best == nil {
		return nil
	}
	return best.best
}

// hangingTogether parts the candidates into groups that share no unknown.
func (p *planner) hangingTogether(all []*candidate) [][]*candidate {
	u := newUnion(len(p.known))
	for _, c := range all {
		for _, i := range c.unknowns[1:] {
			u.join(c.unknowns[0], i)
		}
	}
	group, n := noneFor(len(p.known)), 0 // of each unknown that stands for one
	for _, c := range all {
		if root := u.find(c.unknowns[0]); group[root] == None {
			group[root] = n
			n++
		}
	}
	return lists(n, func(tell func(group int, sum *candidate)) {
		for _, c := range all {
			tell(group[u.find(c.unknowns[0])], c)
		}
	})
}

// A search looks for k sums that hold only k unknowns among them and give them all.
type search struct {
	k    int
	size int  // candidates
	left *int // sets that may still be looked at
	all  []*candidate
	*searchRoom

	best     []*candidate
	bestCost int
	root     *candidate // the one from which the best was found
}

// A searchRoom is what searches use one after the other.
type searchRoom struct {
	holding [][]int // by unknown, the candidates that hold it, the cheaper first; all empty between searches
	seen    map[string]bool
	key     []byte
	wider   []int
}

// of is the room for so many unknowns.
func (r *searchRoom) of(unknowns int) *searchRoom {
	if r.seen == nil {
		r.holding, r.seen = make([][]int, unknowns), map[string]bool{}
	}
	return r
}

// searchIn searches a group of candidates, unless just these were searched before.
func searchIn(group []*candidate, k int, left *int, room *searchRoom) *search {
	if s := group[0].search; s != nil && s.size == len(group) && !slices.ContainsFunc(group, func(c *candidate) bool { return c.search != s }) {
		return s
	}
	s := &search{k: k, size: len(group), left: left, all: slices.Clone(group), searchRoom: room}
	slices.SortStableFunc(s.all, byCost)
	s.run()
	if s.all, s.searchRoom = nil, nil; *left > 0 { // it was not cut short
		for _, c := range group {
			c.search = s
		}
	}
	return s
}

// before reports whether the best of s is to be taken before that of o: the cheaper one, or else the one that was found
// from the cheaper sum, or from the first.
func (s *search) before(o *search) bool {
	if s.bestCost != o.bestCost {
		return s.bestCost < o.bestCost
	}
	if s.root.cost != o.root.cost {
		return s.root.cost < o.root.cost
	}
	return s.root.place < o.root.place
}

// run looks at the sets of one size. No smaller set gives all its unknowns (S10), so the unknowns of one that does hang
// together: each sum added to the first shares one with those before.
func (s *search) run() {
	if len(s.seen) > 256 { // one that has grown takes long to clear
		s.seen = map[string]bool{}
	}
	clear(s.seen)
	for n, c := range s.all {
		for _, i := range c.unknowns {
			s.holding[i] = append(s.holding[i], n)
		}
	}
	for _, c := range s.all {
		s.grow(c, c.unknowns)
	}
	for _, c := range s.all {
		for _, i := range c.unknowns {
			s.holding[i] = s.holding[i][:0]
		}
	}
}

// grow adds sums to those whose unknowns are the set, until it has k.
func (s *search) grow(root *candidate, set []int) {
	if s.key = keyOf(set, s.key); s.seen[string(s.key)] || *s.left == 0 {
		return
	}
	s.seen[string(s.key)] = true
	*s.left--
	if len(set) == s.k {
		s.try(root, set)
		return
	}
	for _, i := range set {
		for _, n := range s.holding[i] {
			if s.merge(set, s.all[n].unknowns); len(s.wider) > len(set) {
				s.grow(root, slices.Clone(s.wider))
			}
		}
	}
}

// merge makes the union of two sorted sets the wider set, or nothing if it has more than k members.
func (s *search) merge(x, y []int) {
	all := s.wider[:0]
	for len(x) > 0 || len(y) > 0 {
		switch {
		case len(all) == s.k:
			s.wider = all[:0]
			return
		case len(y) == 0 || len(x) > 0 && x[0] < y[0]:
			all, x = append(all, x[0]), x[1:]
		case len(x) == 0 || y[0] < x[0]:
			all, y = append(all, y[0]), y[1:]
		default:
			all, x, y = append(all, x[0]), x[1:], y[1:]
		}
	}
	s.wider = all
}

// try picks, the cheapest first, independent sums that hold only unknowns of the set, and keeps them if they give all
// of it for less than what was found before.
func (s *search) try(root *candidate, set []int) {
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
	var chosen []*candidate
	var b basis
	cost := 0
	for _, n := range inside {
		if len(chosen) < s.k && b.add(s.all[n].factors) {
			chosen = append(chosen, s.all[n])
			cost += s.all[n].cost
		}
	}
	if len(chosen) == s.k && (s.best == nil || cost < s.bestCost) {
		s.best, s.bestCost, s.root = chosen, cost, root
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

// keyOf is a text that stands for a sorted set, in the room.
func keyOf(set []int, room []byte) []byte {
	key := room[:0]
	for _, i := range set {
		key = append(key, byte(i), byte(i>>8), byte(i>>16))
	}
	return key
}
