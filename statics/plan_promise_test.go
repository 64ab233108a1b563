package statics

import (
	"fmt"
	"math/bits"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestPromise holds every plan against the whole family of sums, searched by brute force: wherever the plan solves k
// sums together, no sum of the family had one unknown, no smaller set of sums would have done, and no other choice of
// smallest sets would have led to fewer of them (S10, S11).
func TestPromise(t *testing.T) {
	t.Parallel()
	together := map[int]int{}
	overSeeds(t, 6000, 400, func(f Frame) error {
		return keepsPromise(f, together)
	})
	t.Logf("frames by how often their plan solves together: %v", together)
	if together[1] < 20 {
		t.Errorf("only %d frames need sums solved together", together[1])
	}
}

// TestPromiseOfAwkwardFrames does the same for frames made to need sums solved together.
func TestPromiseOfAwkwardFrames(t *testing.T) {
	t.Parallel()
	together := map[int]int{}
	n := uint64(2000)
	if testing.Short() {
		n = 200
	}
	for seed := range n {
		f := awkward(seeded(seed))
		if err := keepsPromise(f, together); err != nil {
			t.Fatalf("seed %d: %v\n%s", seed, err, write(f))
		}
	}
	t.Logf("frames by how often their plan solves together: %v", together)
}

// awkward is a row or ring of parts that only stand all together.
func awkward(pick chooser) Frame {
	for {
		g := generator{pick: pick, taken: map[[2]int]bool{}}
		g.cluster(pick(2, 5))
		if g.stands() {
			g.load()
			g.load()
			return g.f
		}
	}
}

// keepsPromise searches the family at every step of a frame's plan that solves sums together; together counts such
// steps. Frames of more than 6 bodies or 18 unknowns are passed over.
func keepsPromise(f Frame, together map[int]int) error {
	a, err := Cut(f)
	if err != nil || a.Bodies() > 6 || len(a.Forces) > 18 {
		return err
	}
	s, err := Solve(f)
	if err != nil || s.Values == nil {
		return err
	}
	b := newBruteFamily(a)
	known, times := uint32(0), 0
	for n, step := range s.Plan {
		if len(step.Gives) > 1 {
			times++
			if single := b.solvable(known, 1); len(single) > 0 {
				return fmt.Errorf("step %d solves %d together where %s could come alone", n+1, len(step.Gives), b.names(single[0]))
			}
			for k := 2; k < len(step.Gives); k++ {
				if sets := b.solvable(known, k); len(sets) > 0 {
					return fmt.Errorf("step %d solves %d together where %s would do", n+1, len(step.Gives), b.names(sets[0]))
				}
			}
		}
		for _, i := range step.Gives {
			known |= 1 << i
		}
	}
	together[times]++
	if times > 1 {
		if least := b.fewest(0, map[uint32]int{}); least < times {
			return fmt.Errorf("the plan solves together %d times where %d would do", times, least)
		}
	}
	return nil
}

// A bruteFamily is all the sums of a frame of no more than 32 unknowns.
type bruteFamily struct {
	a      *Assembly
	bodies []FreeBody
}

func newBruteFamily(a *Assembly) *bruteFamily {
	b := &bruteFamily{a: a}
	for set := 1; set < 1<<a.Bodies(); set++ {
		var body FreeBody
		for i := range a.Bodies() {
			if set>>i&1 == 1 {
				body = append(body, i)
			}
		}
		if len(body) == a.Bodies() || b.connected(body) {
			b.bodies = append(b.bodies, body)
		}
	}
	return b
}

// connected floods the bodies from the first, over the forces between them.
func (b *bruteFamily) connected(body FreeBody) bool {
	reached := []int{body[0]}
	for i := 0; i < len(reached); i++ {
		for f := range b.a.Forces {
			on, by := b.a.Forces[f].On, b.a.Forces[f].By
			for _, ends := range [...][2]int{{on, by}, {by, on}} {
				if ends[0] == reached[i] && slices.Contains(body, ends[1]) && !slices.Contains(reached, ends[1]) {
					reached = append(reached, ends[1])
				}
			}
		}
	}
	return len(reached) == len(body)
}

func (b *bruteFamily) names(set uint32) string {
	var names []string
	for i, f := range b.a.Forces {
		if set>>i&1 == 1 {
			names = append(names, f.Name)
		}
	}
	return fmt.Sprint(names)
}

// A bruteSum is the left side of one sum: the factor of each unknown, and the set of those whose factor is not nought.
type bruteSum struct {
	factors []exact.Num
	set     uint32
}

// sums lists the sums of all bodies that hold from one to k unknowns that are not known.
func (b *bruteFamily) sums(known uint32, k int) []bruteSum {
	var all []bruteSum
	for _, body := range b.bodies {
		var lines []int
		for i := range b.a.Forces {
			if known>>i&1 == 0 && b.sense(body, i) != 0 {
				lines = append(lines, i)
			}
		}
		b.each(body, lines, func(factor bruteFactor) {
			s := bruteSum{factors: make([]exact.Num, len(b.a.Forces))}
			for _, i := range lines {
				s.factors[i] = factor(b.a.Forces[i])
				if s.factors[i].Sign() != 0 {
					s.set |= 1 << i
				}
				if b.sense(body, i) < 0 {
					s.factors[i] = s.factors[i].Neg()
				}
			}
			if n := bits.OnesCount32(s.set); n > 0 && n <= k {
				all = append(all, s)
			}
		})
	}
	return all
}

// A bruteFactor is what a force is multiplied by in a sum.
type bruteFactor func(Force) exact.Num

// each tells every sum of a body on which the lines are not known.
func (b *bruteFamily) each(body FreeBody, lines []int, add func(bruteFactor)) {
	b.forceSums(lines, add)
	if len(body) > 1 || !b.a.IsPin(body[0]) {
		b.momentSums(lines, add)
	}
}

func (b *bruteFamily) forceSums(lines []int, add func(bruteFactor)) {
	along := []Vector{{exact.Int(1), exact.Int(0)}, {exact.Int(0), exact.Int(1)}}
	for _, i := range lines {
		if !b.a.Forces[i].Couple {
			along = append(along, b.a.Forces[i].Along.Left())
		}
	}
	for _, d := range along {
		add(func(f Force) exact.Num { return f.Along.X.Mul(d.X).Add(f.Along.Y.Mul(d.Y)) })
	}
}

func (b *bruteFamily) momentSums(lines []int, add func(bruteFactor)) {
	var centres []Point
	for _, j := range b.a.Frame.Joints {
		centres = append(centres, j.At)
	}
	for n, i := range lines {
		for _, j := range lines[:n] {
			if p, ok := b.meet(b.a.Forces[i], b.a.Forces[j]); ok {
				centres = append(centres, p)
			}
		}
	}
	for _, c := range centres {
		add(func(f Force) exact.Num {
			if f.Couple {
				return exact.Int(1)
			}
			at := b.a.Frame.Joints[f.Joint].At
			return at.X.Sub(c.X).Mul(f.Along.Y).Sub(at.Y.Sub(c.Y).Mul(f.Along.X))
		})
	}
}

// meet is where the lines of two forces cross, by Cramer's rule on n·p = n·q.
func (b *bruteFamily) meet(f, g Force) (Point, bool) {
	det := f.Along.X.Mul(g.Along.Y).Sub(f.Along.Y.Mul(g.Along.X))
	if f.Couple || g.Couple || det.IsZero() {
		return Point{}, false
	}
	offset := func(f Force) exact.Num {
		at := b.a.Frame.Joints[f.Joint].At
		return f.Along.X.Mul(at.Y).Sub(f.Along.Y.Mul(at.X))
	}
	c, d := offset(f), offset(g)
	x := d.Mul(f.Along.X).Sub(c.Mul(g.Along.X))
	y := d.Mul(f.Along.Y).Sub(c.Mul(g.Along.Y))
	return Point{over(x, det).Neg(), over(y, det).Neg()}, true
}

// sense is how a force acts on the bodies of a group together.
func (b *bruteFamily) sense(body FreeBody, i int) int {
	sense := 0
	if slices.Contains(body, b.a.Forces[i].On) {
		sense++
	}
	if slices.Contains(body, b.a.Forces[i].By) {
		sense--
	}
	return sense
}

// solvable lists the sets of k unknowns that k independent sums give.
func (b *bruteFamily) solvable(known uint32, k int) []uint32 {
	sums := b.sums(known, k)
	var sets []uint32
	for set := uint32(1); set < 1<<len(b.a.Forces); set++ {
		if bits.OnesCount32(set) != k || set&known != 0 {
			continue
		}
		if rankWithin(sums, set) == k {
			sets = append(sets, set)
		}
	}
	return sets
}

// rankWithin is the number of independent sums among those that hold only unknowns of the set.
func rankWithin(sums []bruteSum, set uint32) int {
	var basis [][]exact.Num
	for _, s := range sums {
		if s.set&^set != 0 {
			continue
		}
		row := slices.Clone(s.factors)
		for _, b := range basis {
			lead := slices.IndexFunc(b, func(k exact.Num) bool { return !k.IsZero() })
			k := over(row[lead], b[lead])
			for i := range row {
				row[i] = row[i].Sub(k.Mul(b[i]))
			}
		}
		if slices.ContainsFunc(row, func(k exact.Num) bool { return !k.IsZero() }) {
			basis = append(basis, row)
		}
	}
	return len(basis)
}

// fewest is how many sets of sums must be solved together at least, when each is the smallest at its time.
func (b *bruteFamily) fewest(known uint32, seen map[uint32]int) int {
	for {
		single := b.solvable(known, 1)
		if len(single) == 0 {
			break
		}
		for _, s := range single {
			known |= s
		}
	}
	if known == 1<<len(b.a.Forces)-1 {
		return 0
	}
	if n, ok := seen[known]; ok {
		return n
	}
	var sets []uint32
	for k := 2; len(sets) == 0; k++ {
		sets = b.solvable(known, k)
	}
	best := len(b.a.Forces)
	for _, s := range sets {
		best = min(best, 1+b.fewest(known|s, seen))
	}
	seen[known] = best
	return best
}
