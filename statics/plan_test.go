package statics

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// TestPlanIsSound checks of every step of every plan what its words promise (S9).
func TestPlanIsSound(t *testing.T) {
	t.Parallel()
	seen := map[Choice]int{}
	overSeeds(t, 3000, 300, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		p := planReader{Solution: s, known: map[int]bool{}}
		for n, step := range s.Plan {
			seen[step.Why]++
			before := s.KnownBefore(n)
			for i := range s.Forces {
				if v, known := before(i); known != p.known[i] || !v.Equal(s.Values[i]) {
					return fmt.Errorf("before step %d force %d is known: %v, as %v", n+1, i, known, v)
				}
			}
			if err := p.step(n, step); err != nil {
				return fmt.Errorf("step %d: %w\n%s", n+1, err, report(s))
			}
			if s.Split(&step, knownBefore(s.Plan[:n], len(s.Forces))) != nil {
				seen[SplitForce]++
			}
		}
		if len(p.known) != len(s.Forces) {
			return fmt.Errorf("the plan gives %d of %d forces", len(p.known), len(s.Forces))
		}
		return nil
	})
	for why, name := range choices {
		if seen[why] < 5 {
			t.Errorf("only %d steps for the reason %q", seen[why], name)
		}
	}
}

// A planReader follows a plan and remembers what it has given.
type planReader struct {
	*Solution
	known map[int]bool
	hand  FreeBody
}

func (p *planReader) isKnown(i int) bool { return p.known[i] }

func (p *planReader) step(n int, step Step) error {
	for _, sum := range step.Sums {
		if !sum.Residual(p.Values).IsZero() {
			return fmt.Errorf("the sum comes to %s", sum.Residual(p.Values))
		}
	}
	switch {
	case step.Check:
		return p.check(n, step)
	case step.Relation:
		return p.relation(n, step)
	}
	if err := p.gives(step); err != nil {
		return err
	}
	body := step.Sums[len(step.Sums)-1].Body
	same := slices.Equal(p.hand, body)
	if stays := step.Why == StayOnBody; len(step.Sums) == 1 && stays != same {
		return fmt.Errorf("stays on the body in hand: %v, says %v", same, stays)
	}
	p.hand = body
	return p.where(step)
}

// gives checks that what a step gives is all that its sums have unknown, and that they can give it.
func (p *planReader) gives(step Step) error {
	var unknown []int
	for _, sum := range step.Sums {
		unknown = append(unknown, sum.Unknowns(p.isKnown)...)
	}
	slices.Sort(unknown)
	if unknown = slices.Compact(unknown); !slices.Equal(unknown, step.Gives) || len(unknown) != len(step.Sums) {
		return fmt.Errorf("%d sums hold the unknowns %v and are said to give %v", len(step.Sums), unknown, step.Gives)
	}
	if len(step.Sums) > 1 != (step.Why == SolvedTogether) {
		return fmt.Errorf("%d sums for the reason %q", len(step.Sums), choices[step.Why])
	}
	var b basis
	for _, sum := range step.Sums {
		var r row
		for _, i := range step.Gives {
			if k := sum.Factor(i); !k.IsZero() {
				r.entries = append(r.entries, entry{i, k})
			}
		}
		if !b.add(r) {
			return fmt.Errorf("the sums depend on each other")
		}
	}
	if len(step.Sums) == 1 && step.Left != p.left(step.Sums[0].Body) {
		return fmt.Errorf("says %d unknowns left, there are %d", step.Left, p.left(step.Sums[0].Body))
	}
	for _, i := range step.Gives {
		if p.known[i] {
			return fmt.Errorf("%s is given again", p.Forces[i].Name)
		}
		p.known[i] = true
	}
	return nil
}

// left is the number of unknowns on a free body that are not known.
func (p *planReader) left(b FreeBody) int {
	n := 0
	for i, f := range p.Forces {
		if b.Has(f.On) != (f.By != None && b.Has(f.By)) && !p.known[i] {
			n++
		}
	}
	return n
}

// where checks that the reason fits the free body.
func (p *planReader) where(step Step) error {
	bodies := len(step.Sums[0].Body)
	whole := bodies == p.Bodies()
	fits := true
	switch step.Why {
	case FewestUnknowns, RelationUsed:
		fits = bodies == 1
	case WholeFrame:
		fits = whole && bodies > 1
	case SeveralParts:
		fits = bodies > 1 && !whole
	}
	if !fits {
		return fmt.Errorf("a free body of %d bodies for the reason %q", bodies, choices[step.Why])
	}
	return nil
}

// relation checks that a relation has two unknowns and is used by a later step.
func (p *planReader) relation(n int, step Step) error {
	if len(step.Sums) != 1 || len(step.Gives) > 0 || step.Why != KeptRelation || len(step.Sums[0].Unknowns(p.isKnown)) != 2 {
		return fmt.Errorf("a relation with %d unknowns that gives %v", len(step.Sums[0].Unknowns(p.isKnown)), step.Gives)
	}
	for _, later := range p.Plan[n+1:] {
		if later.Why == RelationUsed && sameAs(later.Sums[0], step.Sums[0]) {
			return nil
		}
	}
	return fmt.Errorf("the relation is never used")
}

// check checks that a closing sum comes last, but for others, gives nothing and was not used.
func (p *planReader) check(n int, step Step) error {
	if len(step.Gives) > 0 || len(p.known) != len(p.Forces) || len(step.Sums) != 1 || len(step.Catches) == 0 {
		return fmt.Errorf("the check is no closing step")
	}
	for _, later := range p.Plan[n+1:] {
		if !later.Check {
			return fmt.Errorf("a step after a check")
		}
	}
	for _, earlier := range p.Plan[:n] {
		for _, sum := range earlier.Sums {
			if sameAs(sum, step.Sums[0]) {
				return fmt.Errorf("the check was used before")
			}
		}
	}
	return nil
}

func sameAs(s, o Sum) bool {
	return slices.Equal(s.Body, o.Body) && s.Moment == o.Moment && s.About.Equal(o.About) && s.Along.Cross(o.Along).IsZero()
}

// TestPlanIsChecked sees to it that every plan of a frame with loads ends in a check, unless none of its steps has one.
func TestPlanIsChecked(t *testing.T) {
	t.Parallel()
	overSeeds(t, 1000, 300, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		open := 0
		for n := range s.Plan {
			if s.Plan[n].needsCheck(s.Assembly, s.Values) {
				open++
			}
		}
		if last := s.Plan[len(s.Plan)-1]; !last.Check && len(s.Unchecked()) < open {
			return fmt.Errorf("no check\n%s", report(s))
		}
		return nil
	})
}

// TestPlanOfLargeFrames lets frames of up to 12 parts shrink by themselves where a plan is not sound.
func TestPlanOfLargeFrames(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		s, err := Solve(drawnFrame(t, 12))
		if err != nil {
			t.Fatal(err)
		}
		if s.Values == nil {
			return
		}
		p := planReader{Solution: s, known: map[int]bool{}}
		for n, step := range s.Plan {
			if err := p.step(n, step); err != nil {
				t.Fatalf("step %d: %v\n%s\n%s", n+1, err, write(s.Frame), report(s))
			}
		}
	})
}

// drawnFrame is a random frame made from choices that rapid can make smaller.
func drawnFrame(t *rapid.T, parts int) Frame {
	pick := func(lo, hi int) int { return rapid.IntRange(lo, hi).Draw(t, "choice") }
	return randomFrame(pick, pick(1, parts))
}
