package statics

import (
	"fmt"
	"slices"
	"testing"
)

// TestOverfull holds what the glance at some unknowns refuses against every sum of the free body, worked out without ranks and
// slopes: wherever it says that no sum leaves so few of them, none does. It must not refuse nothing either.
func TestOverfull(t *testing.T) {
	t.Parallel()
	var refused, looked [4]int // by the most unknowns that a sum may leave
	holds := func(f Frame) error {
		a, err := Cut(f)
		if err != nil || a.Bodies() > 6 {
			return err
		}
		p, family := newPlanner(a, nil), newBruteFamily(a)
		pick := seeded(uint64(len(a.Forces)))
		for _, body := range family.bodies {
			for _, some := range someOf(family.facing(body), pick) {
				fewest := family.fewestLeft(body, some)
				for k := 1; k < len(refused); k++ {
					looked[k]++
					if p.overfull(some, k) {
						refused[k]++
						if fewest <= k {
							return fmt.Errorf("no sum of %v is to leave %d of the unknowns %v, and one leaves %d", body, k, some, fewest)
						}
					}
				}
			}
		}
		if slices.ContainsFunc(slices.Concat(p.onLevel, p.onUpright), func(n int) bool { return n != 0 }) {
			return fmt.Errorf("counts are left behind")
		}
		return nil
	}
	overSeeds(t, 1500, 200, holds)
	t.Logf("refused %v of %v", refused, looked)
	for k := 1; k < len(refused); k++ {
		if refused[k]*100 < looked[k] {
			t.Errorf("only %d of %d were refused for %d", refused[k], looked[k], k)
		}
	}
}

// someOf are all of a list, and four times some of it.
func someOf(all []int, pick chooser) [][]int {
	some := [][]int{all}
	for range 4 {
		some = append(some, slices.DeleteFunc(slices.Clone(all), func(int) bool { return pick(0, 2) == 0 }))
	}
	return some
}

// facing lists the forces that act on a free body from outside.
func (b *bruteFamily) facing(body FreeBody) []int {
	var all []int
	for i := range b.a.Forces {
		if b.sense(body, i) != 0 {
			all = append(all, i)
		}
	}
	return all
}

// fewestLeft is how many of some forces at least have a part in a sum of a free body, whichever sum it is.
func (b *bruteFamily) fewestLeft(body FreeBody, some []int) int {
	fewest := len(some)
	b.each(body, some, func(factor bruteFactor) {
		left := 0
		for _, i := range some {
			if factor(b.a.Forces[i]).Sign() != 0 {
				left++
			}
		}
		fewest = min(fewest, left)
	})
	return fewest
}
