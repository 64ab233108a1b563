package statics

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"unpin/statics/exact"
)

// TestTermsAddUp compares the terms of sums of random free bodies, along random directions and about random points,
// with the forces and moments of the whole body reckoned otherwise, and checks each term's own words (S4, S5).
func TestTermsAddUp(t *testing.T) {
	t.Parallel()
	absent := map[Absence]int{}
	overSeeds(t, 1500, 200, func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return err
		}
		r := rand.New(rand.NewPCG(uint64(len(a.Forces)), 7))
		for range 6 {
			var b FreeBody
			for i := range a.Bodies() {
				if r.IntN(2) == 0 {
					b = append(b, i)
				}
			}
			if len(b) == 0 {
				b = a.Whole()
			}
			if err := sumsFit(a, b, r, absent); err != nil {
				return err
			}
		}
		return nil
	})
	for _, why := range []Absence{ThroughCentre, InsideBody, SquareTo, NoPush} {
		if absent[why] < 50 {
			t.Errorf("only %d terms absent for reason %d", absent[why], why)
		}
	}
}

func sumsFit(a *Assembly, b FreeBody, r *rand.Rand, absent map[Absence]int) error {
	number := func() exact.Num { return frac(int64(r.IntN(13)-6), 2) }
	along := Vector{number(), exact.Int(int64(r.IntN(3)))}
	if along.IsZero() {
		along = east
	}
	about := Point{number(), number()}
	if j := r.IntN(2 * len(a.Frame.Joints)); j < len(a.Frame.Joints) {
		about = a.Frame.Joints[j].At
	}
	for _, s := range []Sum{a.ForceSum(b, along), a.MomentSum(b, about)} {
		for _, t := range s.Terms() {
			absent[t.Why]++
			if err := termFits(a, s, t); err != nil {
				return fmt.Errorf("%s of %s, term %+v: %w", sumName(a, s), bodyNames(a, b), t, err)
			}
		}
		if err := factorsFit(a, s); err != nil {
			return fmt.Errorf("%s of %s: %w", sumName(a, s), bodyNames(a, b), err)
		}
		if err := loadsFit(a, s); err != nil {
			return fmt.Errorf("%s of %s: %w", sumName(a, s), bodyNames(a, b), err)
		}
	}
	return nil
}

// termFits checks a term by itself: sizes and arms without signs, an absence with its reason, a sense that agrees with
// its direction.
func termFits(a *Assembly, s Sum, t Term) error {
	if t.Size.Sign() < 0 || t.Arm.Sign() < 0 || (t.Force == None) == (t.Action == None) {
		return fmt.Errorf("size %s, arm %s", t.Size, t.Arm)
	}
	if (t.Sign == 0) != (t.Why != Counts) || (t.Value().IsZero()) != (t.Sign == 0) {
		return fmt.Errorf("sign %d, value %s", t.Sign, t.Value())
	}
	turn := s.About.To(t.At).Cross(t.Toward).Sign()
	switch {
	case t.Why == InsideBody:
		f := a.Forces[t.Force]
		if !s.Body.Has(f.On) || !s.Body.Has(f.By) {
			return fmt.Errorf("is not inside the body")
		}
	case (t.What == TurnOnly) != t.Toward.IsZero():
		return fmt.Errorf("a couple has no direction")
	case s.Moment && t.What != TurnOnly && t.Sign != turn:
		return fmt.Errorf("turns %d", turn)
	case !s.Moment && t.What != TurnOnly && t.Sign != t.Toward.Dot(s.Along).Sign():
		return fmt.Errorf("acts the other way")
	case !s.Moment && !t.Arm.Equal(exact.Int(1)):
		return fmt.Errorf("an arm in a sum of forces")
	}
	return nil
}

// factorsFit compares the factor of each unknown with its wrench.
func factorsFit(a *Assembly, s Sum) error {
	family := bruteFamily{a: a}
	for i, f := range a.Forces {
		sense := family.sense(s.Body, i)
		var want exact.Num
		if !f.Couple {
			x, y, turn := forceAt(a.Frame.Joints[f.Joint].At, f.Along, exact.Int(int64(sense)))
			want = component3(s, x, y, turn)
		} else if s.Moment {
			want = exact.Int(int64(sense))
		}
		if got := s.Factor(i); !got.Equal(want) {
			return fmt.Errorf("the factor of %s is %s, want %s", f.Name, got, want)
		}
	}
	return nil
}

// loadsFit compares the loads' terms together with the loads integrated anew.
func loadsFit(a *Assembly, s Sum) error {
	o := survey(a.Frame)
	var got, want exact.Num
	for _, t := range s.Terms() {
		if t.Action != None {
			got = got.Add(t.Value())
		}
	}
	for _, l := range a.Frame.Loads {
		for _, b := range s.Body {
			if o.bodyOf(&Solution{Assembly: a}, b) == o.bodyOfLoad(l) {
				x, y, turn := whole(a.Frame, l)
				want = want.Add(component3(s, x, y, turn))
			}
		}
	}
	if !got.Equal(want) {
		return fmt.Errorf("the loads come to %s, want %s", got, want)
	}
	return nil
}

// component3 is what a force and its moment about the origin come to in a sum.
func component3(s Sum, x, y, turn exact.Num) exact.Num {
	if s.Moment {
		return turn.Sub(s.About.X.Mul(y)).Add(s.About.Y.Mul(x))
	}
	return over(x.Mul(s.Along.X).Add(y.Mul(s.Along.Y)), root(s.Along.X.Square().Add(s.Along.Y.Square())))
}

// TestEveryBodyBalances checks that under the forces found every part, every pin, every group and the whole balance (S8).
func TestEveryBodyBalances(t *testing.T) {
	t.Parallel()
	groups := 0
	overSeeds(t, 1500, 200, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		bodies := append(bodyGroups{s.Assembly}.singles(), s.Whole())
		if s.Bodies() <= 5 {
			bodies = append(bodies, bodyGroups{s.Assembly}.groups()...)
		}
		for _, b := range bodies {
			groups++
			if x, y, turn := resultant(s, b); !x.IsZero() || !y.IsZero() || !turn.IsZero() && !(len(b) == 1 && s.IsPin(b[0])) {
				return fmt.Errorf("%s is left with %s, %s and %s", bodyNames(s.Assembly, b), x, y, turn)
			}
		}
		return nil
	})
	if groups < 1000 {
		t.Errorf("only %d free bodies", groups)
	}
}

// resultant adds up all that acts on a free body, moments about the origin.
func resultant(s *Solution, b FreeBody) (x, y, turn exact.Num) {
	z := slicer{s: s, o: survey(s.Frame)}
	add := func(dx, dy, t exact.Num) { x, y, turn = x.Add(dx), y.Add(dy), turn.Add(t) }
	for i, f := range s.Forces {
		if b.Has(f.On) {
			add(z.push(i, 1))
		}
		if f.By != None && b.Has(f.By) {
			add(z.push(i, -1))
		}
	}
	for _, l := range s.Frame.Loads {
		for _, body := range b {
			if z.o.bodyOf(s, body) == z.o.bodyOfLoad(l) {
				add(whole(s.Frame, l))
			}
		}
	}
	return x, y, turn
}

// TestArmAtAnIrrationalPlace takes moments of a force that is perpendicular to the line from the centre, at a distance of 2
// along a member on the slope of 1 to 1: the arm, √2·(3 − √2), is exact, though it is the root of 22 − 12·√2.
func TestArmAtAnIrrationalPlace(t *testing.T) {
	t.Parallel()
	s, err := Solve(build(t, "joint B 0 4\njoint C 3 1\nmember CB C B\nsupport B fixed\npoint 3 -1 -1 on CB 2"))
	if err != nil {
		t.Fatal(err)
	}
	sum := s.MomentSum(s.Whole(), s.Frame.Joints[0].At)
	load := sum.Terms()[len(sum.Terms())-1]
	if want := root(exact.Int(18)).Sub(exact.Int(2)); load.What != WholeForce || !load.Arm.Equal(want) || load.Arm.Inexact() {
		t.Errorf("arm %s, want %s", load.Arm, want)
	}
	if r := sum.Residual(s.Values); !r.IsZero() {
		t.Errorf("the moments come to %s", r)
	}
}
