package statics

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// Limits of the comparison with an engine in float64. Exact values are compared to so many parts of the largest of the
// frame. A matrix this badly conditioned is that of a frame that can move: the worst of those that stand is far better.
const (
	nearEnough = 1e-6
	singular   = 1e13
)

// TestAgainstStiffness solves thousands of random frames as elastic ones by the displacement method, each with two sets of
// stiffnesses. Frames can move according to both engines or to none. What equilibrium gives must be the exact value with
// either set; of a determinate frame that is every force, and N, V and M at both ends of every member.
func TestAgainstStiffness(t *testing.T) {
	t.Parallel()
	c := stiffComparison{}
	overSeeds(t, 5000, 500, func(f Frame) error { return c.frame(f) })
	t.Logf("%d frames stand, of them %d determinate; %d can move; %d forces and %d values of N, V, M compared; "+
		"worst condition of one that stands %.0e, best of one that moves %.0e, worst difference %.0e",
		c.standing, c.determinate, c.moving, c.forces, c.inside, c.worst, c.best, c.off)
	if c.determinate < 200 || c.moving < 10 || c.standing-c.determinate < 10 {
		t.Error("too few of a kind")
	}
}

type stiffComparison struct {
	standing, determinate, moving, forces, inside int
	worst, best, off                              float64
}

func (c *stiffComparison) frame(f Frame) error {
	s, err := Solve(f)
	if err != nil {
		return err
	}
	for set := range 2 {
		e := stiffened(f, func(m int) (ea, ei float64) {
			k := float64((7*m+5*set)%5 + 1)
			return 10 * k, 20 / k * float64(1+set)
		})
		condition, err := e.solve()
		if moves := s.Count.Motions() > 0; moves != (condition > singular) {
			return fmt.Errorf("%d motions, but the condition of the stiffness is %.1e", s.Count.Motions(), condition)
		}
		if s.Count.Motions() > 0 {
			c.moving += 1 - set
			c.best = least(c.best, condition)
			continue
		}
		c.worst = max(c.worst, condition)
		if err != nil {
			return err
		}
		if set == 0 {
			c.standing++
		}
		if err := c.compare(s, e); err != nil {
			return fmt.Errorf("stiffnesses %d: %w", set, err)
		}
	}
	if s.Values != nil {
		c.determinate++
	}
	return nil
}

// least is the lesser of two numbers of which the first may be missing.
func least(x, y float64) float64 {
	if x == 0 {
		return y
	}
	return min(x, y)
}

// solve finds displacements and multipliers, and the condition of the matrix.
func (s *stiffFrame) solve() (condition float64, err error) {
	var lu mat.LU
	lu.Factorize(s.matrix)
	condition = lu.Cond()
	if math.IsNaN(condition) {
		condition = math.Inf(1)
	}
	if condition > singular {
		return condition, errors.New("the stiffness is singular")
	}
	var x mat.VecDense
	err = lu.SolveVecTo(&x, false, mat.NewVecDense(len(s.load), s.load))
	if _, poor := err.(mat.Condition); poor {
		err = nil // the answer is there; the comparison will tell whether it is good enough
	}
	s.answers = x.RawVector().Data
	return condition, err
}

// compare holds the elastic frame's forces against the exact ones.
func (c *stiffComparison) compare(s *Solution, e *stiffFrame) error {
	scale := 1.0
	for i := range e.holds {
		scale = max(scale, math.Abs(e.answers[3*e.nodes+i]))
	}
	o, open := survey(s.Frame), s.Undetermined()
	if s.Values == nil {
		return c.compareShape(s, e, open)
	}
	for i, f := range s.Forces {
		got, ok := e.force(f, o.bodyOf(s, f.On))
		if !ok {
			return fmt.Errorf("the elastic frame has no %s", f.Name)
		}
		if err := c.close(f.Name, got, s.Values[i].Float(), scale); err != nil {
			return err
		}
		c.forces++
	}
	for _, d := range s.Diagrams {
		if d.Withheld {
			continue
		}
		first, _ := d.Section(d.Stretches[0].From, After)
		last, _ := d.Section(d.Length, Before)
		start, end := e.ends(d.Member)
		for k, in := range [2]InternalForces{first, last} {
			for q, want := range [3]float64{in.N.Float(), in.V.Float(), in.M.Float()} {
				name := fmt.Sprintf("%c of %s at its %s", "NVM"[q], s.Frame.Members[d.Member].Name, [2]string{"start", "end"}[k])
				if err := c.close(name, [2][3]float64{start, end}[k][q], want, scale); err != nil {
					return err
				}
				c.inside++
			}
		}
	}
	return nil
}

// compareShape compares what equilibrium gives of a frame that is held too much: it does not depend on the stiffness, so
// both sets give it, while some of the others must change.
func (c *stiffComparison) compareShape(s *Solution, e *stiffFrame, open []int) error {
	o := survey(s.Frame)
	other := stiffened(s.Frame, func(m int) (ea, ei float64) { return 3 + float64(m*m%7), 2 + float64(m%3) })
	if _, err := other.solve(); err != nil {
		return err
	}
	scale := 1.0
	for i := range e.holds {
		scale = max(scale, math.Abs(e.answers[3*e.nodes+i]))
	}
	for i, f := range s.Forces {
		x, _ := e.force(f, o.bodyOf(s, f.On))
		y, _ := other.force(f, o.bodyOf(s, f.On))
		if slices.Contains(open, i) {
			continue
		}
		if err := c.close(f.Name+", which equilibrium gives,", x, y, scale); err != nil {
			return err
		}
		c.forces++
	}
	return nil
}

func (c *stiffComparison) close(name string, got, want, scale float64) error {
	off := math.Abs(got-want) / scale
	c.off = max(c.off, off)
	if off > nearEnough {
		return fmt.Errorf("%s is %g, the elastic frame has %g", name, want, got)
	}
	return nil
}

// force is what a force of the engine is in the elastic frame: the multipliers at its joint, of the ground or of the
// connection, on the pieces of the body it acts on, along its direction.
func (s *stiffFrame) force(f Force, body int) (value float64, found bool) {
	x, y := 0.0, 0.0
	if !f.Couple {
		x, y = unitOf(f.Along)
	}
	for i, h := range s.holds {
		support := f.Kind == Reaction
		if h.joint != f.Joint || h.support != support || h.by == ground && !support {
			continue
		}
		sign := 1.0
		if !support && h.body != body {
			if s.pinned(h) {
				continue
			}
			sign = -1
		}
		if f.Couple != h.couple {
			continue
		}
		found = true
		along := x*h.x + y*h.y
		if f.Couple {
			along = 1
		}
		value += sign * along * s.answers[3*s.nodes+i]
	}
	return value, found
}

// pinned reports whether a constraint is of a pin, and so between a piece and the pin.
func (s *stiffFrame) pinned(h constraint) bool {
	for _, c := range s.f.Connections {
		if c.Joint == h.joint {
			return c.Kind == Pin
		}
	}
	return false
}
