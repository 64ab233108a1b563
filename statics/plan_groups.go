package statics

import "slices"

// A bodyGroups finds the free bodies of the family.
type bodyGroups struct{ *Assembly }

// singles lists each part and pin alone.
func (a bodyGroups) singles() []FreeBody {
	all, whole := make([]FreeBody, a.Bodies()), a.Whole()
	for b := range all {
		all[b] = whole[b : b+1 : b+1]
	}
	return all
}

// Sizes of frames and groups. The family of a frame of no more than everyGroupUpTo bodies has every connected group; that
// of a larger frame has those of two and three bodies, and the sides of its pins. A girder on which very many parts hang
// makes as many groups of three as the square of these: more than triplesPerBody for each body are not looked at.
const (
	everyGroupUpTo = 7
	triplesPerBody = 40
)

// EveryGroupOf is the largest size of group up to which the family has every connected group of bodies: all of them, 3,
// or 2. It is what a plan may say that it searched.
func (a *Assembly) EveryGroupOf() int {
	if a.Bodies() <= everyGroupUpTo {
		return a.Bodies()
	}
	if triples(bodyGroups{a}.neighbours()) > triplesPerBody*a.Bodies() {
		return 2
	}
	return 3
}

// groups lists the connected groups of two or more bodies that are looked at first, but not all: every one in a small
// frame, else the small ones. Smaller groups come first.
func (a bodyGroups) groups() []FreeBody {
	var all []FreeBody
	if a.Bodies() <= everyGroupUpTo {
		all = a.everyGroup()
	} else {
		all = a.smallGroups()
	}
	slices.SortStableFunc(all, func(x, y FreeBody) int { return len(x) - len(y) })
	return all
}

func (a bodyGroups) everyGroup() []FreeBody {
	var all []FreeBody
	n := a.Bodies()
	for set := 1; set < 1<<n-1; set++ {
		if g := bodiesIn(set, n); len(g) > 1 && a.hangs(g) {
			all = append(all, g)
		}
	}
	return all
}

func bodiesIn(set, n int) FreeBody {
	var g FreeBody
	for i := range n {
		if set>>i&1 == 1 {
			g = append(g, i)
		}
	}
	return g
}

// hangs reports whether the bodies of b are connected.
func (a bodyGroups) hangs(b FreeBody) bool {
	u := newUnion(a.Bodies())
	for i := range a.Forces {
		if f := &a.Forces[i]; f.By != None && b.Has(f.On) && b.Has(f.By) {
			u.join(f.On, f.By)
		}
	}
	apart := func(i int) bool { return u.find(i) != u.find(b[0]) }
	return !slices.ContainsFunc(b, apart)
}

// neighbours lists of each body those on which it acts, in rising order.
func (a bodyGroups) neighbours() [][]int {
	of := lists(a.Bodies(), func(tell func(body, other int)) {
		for i := range a.Forces {
			if f := &a.Forces[i]; f.By != None {
				tell(f.On, f.By)
				tell(f.By, f.On)
			}
		}
	})
	for b := range of {
		slices.Sort(of[b])
		of[b] = slices.Compact(of[b])
	}
	return of
}

// triples is how many groups of three there are at most: two neighbours of each body with it.
func triples(neighbours [][]int) int {
	n := 0
	for _, of := range neighbours {
		n += len(of) * (len(of) - 1) / 2
	}
	return n
}

// smallGroups lists the connected groups of two bodies and, unless there are too many, of three.
func (a bodyGroups) smallGroups() []FreeBody {
	var all []FreeBody
	near := a.neighbours()
	for b, of := range near {
		for _, o := range of {
			if b < o {
				all = append(all, FreeBody{b, o})
			}
		}
	}
	if a.EveryGroupOf() < 3 {
		return all
	}
	pairs := len(all)
	for b, of := range near {
		for n, x := range of {
			for _, y := range of[n+1:] {
				g := FreeBody{b, x, y}
				slices.Sort(g)
				all = append(all, g)
			}
		}
	}
	slices.SortFunc(all[pairs:], func(x, y FreeBody) int { return slices.Compare(x, y) })
	return append(all[:pairs], slices.CompactFunc(all[pairs:], func(x, y FreeBody) bool { return slices.Equal(x, y) })...)
}
