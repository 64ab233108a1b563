package statics

import (
	"fmt"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestAgainstOracle solves thousands of random frames in both ways: the verdict, the rank, every force and the list of
// forces that equilibrium alone cannot give must agree (S7, S8).
func TestAgainstOracle(t *testing.T) {
	t.Parallel()
	verdicts := map[Determinacy]int{}
	forces := 0
	overSeeds(t, 5000, 500, func(f Frame) error {
		s, err := Solve(f)
		if err != nil {
			return err
		}
		verdicts[s.Count.Determinacy()]++
		forces += len(s.Values)
		return agree(s, consult(f))
	})
	t.Logf("%v, %d forces", verdicts, forces)
	for _, v := range []Determinacy{Determinate, Indeterminate, Unstable, IndeterminateUnstable} {
		if verdicts[v] < 10 {
			t.Errorf("only %d frames are %s", verdicts[v], v)
		}
	}
}

// overSeeds checks a property of the frames of so many seeds, fewer under -short. A frame that fails is cut down to a small
// one that fails as well.
func overSeeds(t *testing.T, full, short uint64, holds func(Frame) error) {
	t.Helper()
	n := full
	if testing.Short() {
		n = short
	}
	for seed := range n {
		f := generated(seed)
		err := holds(f)
		if err == nil {
			continue
		}
		small := shrunk(f, func(f Frame) bool { return holds(f) != nil })
		t.Fatalf("seed %d: %v\na small frame that fails (%v):\n%s", seed, err, holds(small), write(small))
	}
}

// agree compares a solution with the oracle's.
func agree(s *Solution, o *oracle) error {
	if s.Count.Degree() != o.degree() || s.Count.Motions() != o.motions() || s.Count.Unknowns != len(o.unknowns)-2*o.plain {
		return fmt.Errorf("degree %d, %d motions, %d unknowns; the oracle has %d, %d, %d", s.Count.Degree(), s.Count.Motions(),
			s.Count.Unknowns, o.degree(), o.motions(), len(o.unknowns)-2*o.plain)
	}
	undetermined := s.Undetermined()
	for i, f := range s.Forces {
		u, sign := o.matching(s, f)
		if u == None {
			return fmt.Errorf("the oracle does not know %s", f.Name)
		}
		if o.determined(u) == slices.Contains(undetermined, i) {
			return fmt.Errorf("%s: the oracle finds it determined: %v", f.Name, o.determined(u))
		}
		if s.Values == nil {
			continue
		}
		want := o.value(u)
		if !f.Couple {
			want = want.Mul(f.Along.Length())
		}
		if sign < 0 {
			want = want.Neg()
		}
		if !s.Values[i].Equal(want) {
			return fmt.Errorf("%s = %s; the oracle finds %s", f.Name, s.Values[i], want)
		}
	}
	return nil
}

// matching is the oracle's unknown for a force of the engine, and its sense.
func (o *oracle) matching(s *Solution, f Force) (u, sign int) {
	for i, u := range o.unknowns {
		if u.joint != f.Joint || u.along.IsZero() != f.Couple || (u.by == None) != (f.By == None) {
			continue
		}
		along := u.along.Cross(f.Along).IsZero() && u.along.Dot(f.Along).Sign() >= 0
		if along && u.on == o.bodyOf(s, f.On) {
			return i, 1
		}
	}
	return None, 0
}

// bodyOf is the oracle's number of a body of the engine.
func (o *oracle) bodyOf(s *Solution, b int) int {
	if s.IsPin(b) {
		return o.pin[s.Pins[b-len(s.Parts)].Joint]
	}
	return o.body[s.Parts[b].Members[0]]
}

// TestOracleByHand keeps the oracle itself honest: a beam of 6 on a pin and a roller under a triangle of 5 at its end.
func TestOracleByHand(t *testing.T) {
	o := consult(build(t, `
		joint A 0 0
		joint B 6 0
		member AB A B
		support A pinned
		support B roller 0 1
		spread 0 5 0 -1 on AB 0 6`))
	for i, want := range []string{"0", "5", "10"} {
		if got := o.value(i); !got.Equal(exact.MustParse(want)) {
			t.Errorf("unknown %d is %s, want %s", i, got, want)
		}
	}
}
