package statics

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestBodies checks S1, S3 and the second half of S4 on random frames.
func TestBodies(t *testing.T) {
	t.Parallel()
	overSeeds(t, 1500, 200, func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return err
		}
		if err := bodiesInOrder(a); err != nil {
			return err
		}
		for _, x := range a.Actions {
			if x.Size.IsZero() {
				return fmt.Errorf("an action of load %d is zero", x.Load)
			}
		}
		for b := range a.Bodies() {
			if err := listedInOrder(a, b); err != nil {
				return fmt.Errorf("on %s %w", a.BodyName(b), err)
			}
		}
		return nil
	})
}

// bodiesInOrder checks S1.
func bodiesInOrder(a *Assembly) error {
	parts := make([]int, len(a.Frame.Members))
	for p, part := range a.Parts {
		if p > 0 && part.Members[0] <= a.Parts[p-1].Members[0] {
			return fmt.Errorf("part %s comes too late", part.Name)
		}
		for _, m := range part.Members {
			if parts[m]++; a.PartOf(m) != p {
				return fmt.Errorf("member %s of part %s is said to be of body %d", a.Frame.Members[m].Name, part.Name, a.PartOf(m))
			}
		}
	}
	for m, n := range parts {
		if n != 1 {
			return fmt.Errorf("member %s lies in %d parts", a.Frame.Members[m].Name, n)
		}
	}
	if !slices.IsSortedFunc(a.Pins, func(p, q PinBody) int { return p.Joint - q.Joint }) {
		return fmt.Errorf("pins are out of order")
	}
	return nil
}

// listedInOrder checks S3.
func listedInOrder(a *Assembly, b int) error {
	on := a.ForcesOn(FreeBody{b})
	if !slices.IsSorted(on) || !slices.IsSorted(a.ActionsOn(FreeBody{b})) {
		return fmt.Errorf("the forces or actions are out of order")
	}
	last := map[int]int{} // of each joint, the place of the last force there
	for n, i := range on {
		j := a.Forces[i].Joint
		if at, met := last[j]; met && at != n-1 {
			return fmt.Errorf("the forces at joint %s do not stand together", a.Frame.Joints[j].Name)
		}
		last[j] = n
	}
	return nil
}

// TestPairsCancel checks S2: whatever values the unknowns have, the sums of the single bodies add up to the sum of the
// whole, in which each pair is inside.
func TestPairsCancel(t *testing.T) {
	t.Parallel()
	overSeeds(t, 1500, 200, func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return err
		}
		r := rand.New(rand.NewPCG(uint64(len(a.Forces)), 2))
		values := make([]exact.Num, len(a.Forces))
		for i := range values {
			values[i] = exact.Int(int64(r.IntN(19) - 9))
		}
		for _, i := range a.ForcesOn(a.Whole()) {
			if sign, _ := a.Facing(a.Whole(), i); (sign == 0) != (a.Forces[i].By != None) {
				return fmt.Errorf("%s faces the whole by %d", a.Forces[i].Name, sign)
			}
		}
		for _, s := range []Sum{a.ForceSum(a.Whole(), east), a.ForceSum(a.Whole(), north), a.MomentSum(a.Whole(), Point{one, frac(1, 2)})} {
			var all exact.Num
			for b := range a.Bodies() {
				single := s
				single.Body = FreeBody{b}
				all = all.Add(single.Again(a).Residual(values))
			}
			if whole := s.Residual(values); !whole.Equal(all) {
				return fmt.Errorf("%s: the bodies come to %s, the whole to %s", sumName(a, s), all, whole)
			}
		}
		return nil
	})
}

// TestSpecsAgree checks S6 for sums of random free bodies, along axes and members and about joints and other points.
func TestSpecsAgree(t *testing.T) {
	t.Parallel()
	overSeeds(t, 1500, 200, func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return err
		}
		specs := []spec{eastward, northward, forceAlong(f.Span(0)), forceAlong(f.Span(0).Left()), a.places.momentAt(Point{one, frac(1, 2)})}
		for j := range f.Joints {
			specs = append(specs, a.momentAbout(j))
		}
		bodies := append(bodyGroups{a}.singles(), a.Whole())
		for n := range specs {
			for _, b := range bodies {
				if err := specAgrees(a, a.sum(b, &specs[n]), &specs[n]); err != nil {
					return err
				}
			}
		}
		return nil
	})
}

// specAgrees compares what is said to count in a sum with what its terms say. A term by components counts if one does.
func specAgrees(a *Assembly, s Sum, k *spec) error {
	forces, actions := map[int]bool{}, map[int]bool{}
	for _, t := range s.Terms() {
		switch {
		case t.Why == InsideBody:
			delete(forces, t.Force)
		case t.Force != None:
			forces[t.Force] = forces[t.Force] || t.Why == Counts
		default:
			actions[t.Action] = actions[t.Action] || t.Why == Counts
		}
	}
	for i, counts := range forces {
		if a.Forces[i].Kind != MemberPull && a.countsForce(k, i) != counts {
			return fmt.Errorf("%s of %s: %s counts: %v", sumName(a, s), bodyNames(a, s.Body), a.Forces[i].Name, counts)
		}
	}
	for i, counts := range actions {
		if a.countsAction(k, i) != counts {
			return fmt.Errorf("%s of %s: action %d counts: %v", sumName(a, s), bodyNames(a, s.Body), i, counts)
		}
	}
	if plain := k.same(&s); !plain {
		return fmt.Errorf("%s is not the sum of its spec", sumName(a, s))
	}
	return nil
}
