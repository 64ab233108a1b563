package statics

import "slices"

// singles lists each part and pin alone.
func (a *Assembly) singles() []FreeBody {
	all, whole := make([]FreeBody, a.Bodies()), a.Whole()
	for b := range all {
		all[b] = whole[b : b+1 : b+1]
	}
	return all
}

// everyGroupUpTo is how many bodies a frame may have for every connected group to be looked at.
const everyGroupUpTo = 7

// groups lists the connected groups of two or more bodies but not all: every one in a small frame, else the sides of
// each pin. Smaller groups come first.
func (a *Assembly) groups() []FreeBody {
	var all []FreeBody
	if a.Bodies() <= everyGroupUpTo {
		all = a.everyGroup()
	} else {
		all = a.sidesOfPins()
	}
	slices.SortStableFunc(all, func(x, y FreeBody) int { return len(x) - len(y) })
	return all
}

func (a *Assembly) everyGroup() []FreeBody {
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

func (a *Assembly) sidesOfPins() []FreeBody {
	var all []FreeBody
	h := a.hanging()
	for _, c := range a.Frame.Connections {
		sides := h.sides(c.Joint)
		for _, g := range sides {
			if len(sides) > 1 && len(g) > 1 {
				all = append(all, g)
			}
		}
	}
	return all
}

// hangs reports whether the bodies of b are connected.
func (a *Assembly) hangs(b FreeBody) bool {
	u := newUnion(a.Bodies())
	for i := range a.Forces {
		if f := &a.Forces[i]; f.By != None && b.Has(f.On) && b.Has(f.By) {
			u.join(f.On, f.By)
		}
	}
	apart := func(i int) bool { return u.find(i) != u.find(b[0]) }
	return !slices.ContainsFunc(b, apart)
}
