package statics

import (
	"fmt"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestVirtualWork releases one unknown after the other of random frames. Each time the frame can move in just one way, and
// the power of the loads in that motion and of the unknown, with the value that equilibrium gave it, come to nought
// together. No sum of a plan is written for this, and loads are integrated anew.
func TestVirtualWork(t *testing.T) {
	t.Parallel()
	frames, releases := 0, 0
	overSeeds(t, 2000, 200, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		frames++
		o := survey(f)
		for i := range s.Forces {
			releases++
			if err := worksVirtually(s, o, i); err != nil {
				return fmt.Errorf("%s released: %w", s.Forces[i].Name, err)
			}
		}
		return nil
	})
	t.Logf("%d frames, %d releases", frames, releases)
	if releases < 1000 {
		t.Errorf("only %d releases", releases)
	}
}

func worksVirtually(s *Solution, o *oracle, i int) error {
	released := *s.Assembly
	released.Forces = slices.Delete(slices.Clone(s.Forces), i, i+1)
	released.index()
	motions := released.Motions()
	if len(motions) != 1 {
		return fmt.Errorf("%d motions", len(motions))
	}
	if err := motionsFit(&released); err != nil {
		return err
	}
	loads, parting := powerOfLoads(s, o, motions[0]), powerOfUnit(s, i, motions[0])
	if sum := loads.Add(parting.Mul(s.Values[i])); parting.IsZero() || !sum.IsZero() {
		return fmt.Errorf("power of the loads %s, of a unit of the force %s, of which there are %s", loads, parting, s.Values[i])
	}
	return nil
}

// powerOfLoads adds up what the loads do in a motion: force times velocity, couple times turn.
func powerOfLoads(s *Solution, o *oracle, m Motion) exact.Num {
	var power exact.Num
	for _, l := range s.Frame.Loads {
		x, y, turn := whole(s.Frame, l)
		for b := range s.Bodies() {
			if o.bodyOf(s, b) == o.bodyOfLoad(l) {
				v, rate := velocity(m, b, Point{})
				power = power.Add(v.Dot(Vector{x, y})).Add(rate.Mul(turn))
			}
		}
	}
	return power
}

// powerOfUnit is what one unit of force i does in a motion.
func powerOfUnit(s *Solution, i int, m Motion) exact.Num {
	f := s.Forces[i]
	p := s.Frame.Joints[f.Joint].At
	v, rate := velocity(m, f.On, p)
	if f.By != None {
		w, other := velocity(m, f.By, p)
		v, rate = v.Plus(w.Neg()), rate.Sub(other)
	}
	if f.Couple {
		return rate
	}
	return over(v.Dot(f.Along), root(f.Along.Dot(f.Along)))
}
