package statics

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"

	"unpin/statics/exact"
)

// A chooser gives a whole number from lo to hi, both included.
type chooser func(lo, hi int) int

// seeded is a chooser that always gives the same numbers for the same seed.
func seeded(seed uint64) chooser {
	r := rand.New(rand.NewPCG(seed, 2))
	return func(lo, hi int) int { return lo + r.IntN(hi-lo+1) }
}

// randomFrame makes a frame of at most so many parts, from the ground outward: every few new parts get three unknowns
// each toward the ground and what stands already. Where they do not stand, they are mostly made anew; so most frames
// are determinate, and every other verdict occurs.
func randomFrame(pick chooser, parts int) Frame {
	g := generator{pick: pick, taken: map[[2]int]bool{}}
	for n := 0; n < parts; {
		before, taken := clone(g.f), maps.Clone(g.taken)
		k := g.cluster(min(g.weighted(6, 3, 1)+1, parts-n))
		if !g.stands() && g.chance(98) {
			g.f, g.taken = before, taken
		} else {
			n += k
		}
	}
	for range pick(1, 3+parts/2) {
		g.load()
	}
	if g.chance(30) {
		g.rope()
	}
	return g.f
}

// disturbed is a random frame of which some holds were taken away, added or changed.
func disturbed(pick chooser, parts int) Frame {
	g := generator{pick: pick, taken: map[[2]int]bool{}}
	g.f = randomFrame(pick, parts)
	for range pick(1, 3) {
		g.disturb()
	}
	return g.f
}

// stands reports whether the frame is determinate.
func (g *generator) stands() bool {
	a, err := Cut(g.f)
	if err != nil {
		return false
	}
	rows, _ := a.rows()
	return len(rows) == len(a.Forces) && eliminate(rows, len(a.Forces)).rank() == len(a.Forces)
}

// clone is a copy of f that shares nothing with it.
func clone(f Frame) Frame {
	f.Joints, f.Members, f.Connections = slices.Clone(f.Joints), slices.Clone(f.Members), slices.Clone(f.Connections)
	f.Supports, f.Loads = slices.Clone(f.Supports), slices.Clone(f.Loads)
	for i, c := range f.Connections {
		pieces := slices.Clone(c.Pieces)
		for p := range pieces {
			pieces[p] = slices.Clone(pieces[p])
		}
		f.Connections[i].Pieces = pieces
	}
	return f
}

type generator struct {
	pick  chooser
	f     Frame
	taken map[[2]int]bool // places of joints, in halves
}

func (g *generator) chance(percent int) bool { return g.pick(1, 100) <= percent }

// weighted is an index, each as likely as its weight.
func (g *generator) weighted(weights ...int) int {
	total := 0
	for _, w := range weights {
		total += w
	}
	n := g.pick(1, total)
	for i, w := range weights {
		if n -= w; n <= 0 {
			return i
		}
	}
	return 0
}

// name is A, B … Z, A1, B1 …
func name(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	return fmt.Sprintf("%c%d", 'A'+i%26, i/26)
}

// newJoint makes a joint at a free place, often level with or above an earlier one.
func (g *generator) newJoint() int {
	for {
		x, y := g.pick(0, 24), g.pick(0, 16)
		if n := len(g.f.Joints); n > 0 && g.chance(60) {
			at := g.halves(g.pick(0, n-1))
			if g.chance(50) {
				x = at[0]
			} else {
				y = at[1]
			}
		}
		if !g.taken[[2]int{x, y}] {
			return g.jointAt(x, y)
		}
	}
}

func (g *generator) jointAt(x, y int) int {
	g.taken[[2]int{x, y}] = true
	g.f.Joints = append(g.f.Joints, Joint{name(len(g.f.Joints)), Point{frac(int64(x), 2), frac(int64(y), 2)}})
	return len(g.f.Joints) - 1
}

func (g *generator) halves(j int) [2]int {
	at := g.f.Joints[j].At
	two := exact.Int(2)
	return [2]int{int(at.X.Mul(two).Floor().Int64()), int(at.Y.Mul(two).Floor().Int64())}
}

// A hold is what keeps a part at one joint: a support, or a connection to what stands there already, or nothing yet.
type hold struct {
	joint   int
	support *SupportKind
	connect *ConnectionKind
}

// cluster adds k parts that stand together, and reports how many it added. They are joined in a row, or three in a
// ring; what is then missing to three unknowns each holds them to the ground and to what stands already.
func (g *generator) cluster(k int) int {
	holds := make([][]hold, k)
	missing := 3 * k
	for i := 1; i < k; i++ {
		missing -= g.link(&holds[i-1], &holds[i])
	}
	if k == 3 && g.chance(25) {
		missing -= g.link(&holds[0], &holds[2])
	}
	for missing > 0 {
		i := g.pick(0, k-1)
		u := min(g.weighted(3, 5, 2)+1, missing)
		holds[i] = append(holds[i], g.hold(u, holds[i]))
		missing -= u
	}
	for i := range holds {
		g.part(holds[i])
	}
	return k
}

// link joins two parts at a new joint and reports how many unknowns pass.
func (g *generator) link(first, second *[]hold) int {
	j := g.newJoint()
	kind := []ConnectionKind{Pin, Slot, Sleeve}[g.weighted(7, 1, 1)]
	*first = append(*first, hold{joint: j})
	*second = append(*second, hold{joint: j, connect: &kind})
	return 3 - releases(kind)
}

// hold makes up a hold of u unknowns for a part that has others already.
func (g *generator) hold(u int, others []hold) hold {
	if u < 3 && g.chance(55) {
		kind := [...]ConnectionKind{Slot, Pin}[u-1]
		if u == 2 && g.chance(15) {
			kind = Sleeve
		}
		if j := g.standing(kind, others); j != None {
			return hold{joint: j, connect: &kind}
		}
	}
	kinds := map[int][]SupportKind{1: {Roller}, 2: {Pinned, Pinned, Pinned, Guide}, 3: {Fixed}}[u]
	kind := kinds[g.pick(0, len(kinds)-1)]
	j := None
	if len(others) > 0 && g.chance(5) { // on a member at a pin
		j = others[g.pick(0, len(others)-1)].joint
		if g.supportAt(j) != None || hasSupport(others, j) {
			j = None
		}
	}
	if j == None {
		j = g.newJoint()
	}
	return hold{joint: j, support: &kind}
}

func hasSupport(holds []hold, j int) bool {
	for _, h := range holds {
		if h.joint == j && h.support != nil {
			return true
		}
	}
	return false
}

func (g *generator) supportAt(j int) int {
	for i, s := range g.f.Supports {
		if s.Joint == j {
			return i
		}
	}
	return None
}

func (g *generator) connectionAt(j int) int {
	for i, c := range g.f.Connections {
		if c.Joint == j {
			return i
		}
	}
	return None
}

// standing is a joint of what stands already at which a connection of that kind can be made, or None. Joints that are
// pins already are liked.
func (g *generator) standing(kind ConnectionKind, others []hold) int {
	var fit []int
	for j, members := range g.f.meeting() {
		c := g.connectionAt(j)
		if len(members) == 0 || c != None && (kind != Pin || g.f.Connections[c].Kind != Pin) || heldAt(others, j) {
			continue
		}
		fit = append(fit, j)
		if c != None {
			fit = append(fit, j, j)
		}
	}
	if len(fit) == 0 {
		return None
	}
	return fit[g.pick(0, len(fit)-1)]
}

func heldAt(holds []hold, j int) bool {
	for _, h := range holds {
		if h.joint == j {
			return true
		}
	}
	return false
}
