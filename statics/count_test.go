package statics

import (
	"fmt"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// TestVerdicts checks frames that stand or fall for a reason, which stands above each in the table. The title ends in
// the verdict with the degree, the number of motions and the unknowns in rings; only what is below the line is
// rewritten by -update.
func TestVerdicts(t *testing.T) {
	eachCase(t, "testdata/verdicts.txt", func(t *testing.T, c textCase) string {
		s, err := Solve(build(t, c.input))
		if err != nil {
			t.Fatal(err)
		}
		got := fmt.Sprintf("%s, %d, %d, %d", s.Count.Determinacy(), s.Count.Degree(), s.Count.Motions(), s.Count.Inner)
		if _, want, _ := strings.Cut(c.title, " => "); got != want {
			t.Errorf("%s, want %s", got, want)
		}
		if err := motionsFit(s.Assembly); err != nil {
			t.Error(err)
		}
		return verdictLines(s)
	})
}

// verdictLines is what is known about a frame before it is solved.
func verdictLines(s *Solution) string {
	var b strings.Builder
	c := s.Count
	fmt.Fprintf(&b, "%d unknowns, %d sums, rank %d\n", c.Unknowns, c.Sums, c.Rank)
	fmt.Fprintf(&b, "bodies: %s\n", bodyNames(s.Assembly, s.Whole()))
	fmt.Fprintf(&b, "forces: %s\n", onBodies(s.Assembly))
	for _, p := range s.Parts {
		if len(p.Ring) > 0 {
			var ring []string
			for _, m := range p.Ring {
				ring = append(ring, s.Frame.Members[m].Name)
			}
			fmt.Fprintf(&b, "ring of %s: %s\n", p.Name, strings.Join(ring, " "))
		}
	}
	if u := s.Undetermined(); len(u) > 0 {
		var names []string
		for _, i := range u {
			names = append(names, s.Forces[i].Name)
		}
		fmt.Fprintf(&b, "not given by equilibrium: %s\n", strings.Join(names, " "))
	}
	for _, m := range s.Motions() {
		fmt.Fprintf(&b, "motion: %s\n", motionText(s.Assembly, m))
	}
	return b.String()
}

// onBodies lists the forces by the bodies they act on: Ax Ay on AB; Bx By on BC of AB.
func onBodies(a *Assembly) string {
	var all []string
	last := ""
	for _, f := range a.Forces {
		body := " on " + a.BodyName(f.On)
		if f.By != None {
			body += " of " + a.BodyName(f.By)
		}
		if body == last {
			all[len(all)-1] = strings.TrimSuffix(all[len(all)-1], body) + " " + f.Name + body
		} else {
			all = append(all, f.Name+body)
		}
		last = body
	}
	return strings.Join(all, "; ")
}

func motionText(a *Assembly, m Motion) string {
	var all []string
	for _, b := range m {
		switch {
		case b.Turn.IsZero():
			all = append(all, fmt.Sprintf("%s slides (%s, %s)", a.BodyName(b.Body), b.Slide.X, b.Slide.Y))
		default:
			all = append(all, fmt.Sprintf("%s turns %s about (%s, %s)", a.BodyName(b.Body), b.Turn, b.Centre.X, b.Centre.Y))
		}
	}
	return strings.Join(all, "; ")
}

// motionsFit checks that in every motion no force does any work: what it joins does not part along it.
func motionsFit(a *Assembly) error {
	motions := a.Motions()
	for _, m := range motions {
		if len(m) == 0 {
			return fmt.Errorf("a motion moves nothing")
		}
		for _, f := range a.Forces {
			p := a.Frame.Joints[f.Joint].At
			v, turn := velocity(m, f.On, p)
			if f.By != None {
				w, other := velocity(m, f.By, p)
				v, turn = v.Plus(w.Neg()), turn.Sub(other)
			}
			if f.Couple && !turn.IsZero() || !f.Couple && !v.Dot(f.Along).IsZero() {
				return fmt.Errorf("in the motion %s something parts along %s", motionText(a, m), f.Name)
			}
		}
	}
	return nil
}

// velocity is how the place p of a body moves and how fast the body turns.
func velocity(m Motion, body int, p Point) (Vector, exact.Num) {
	for _, b := range m {
		if b.Body != body {
			continue
		}
		if b.Turn.IsZero() {
			return b.Slide, exact.Num{}
		}
		return b.Centre.To(p).Left().Times(b.Turn), b.Turn
	}
	return Vector{}, exact.Num{}
}

// TestMotions checks the motions of random frames: as many as there are sums that depend on others, and none against
// a force (S7).
func TestMotions(t *testing.T) {
	t.Parallel()
	moving := 0
	overSeeds(t, 5000, 500, func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return err
		}
		rows, _ := a.rows()
		dependent := len(rows) - eliminate(rows, len(a.Forces)).rank()
		if n := len(a.Motions()); n != dependent {
			return fmt.Errorf("%d motions, %d sums depend on others", n, dependent)
		}
		moving += dependent
		return motionsFit(a)
	})
	if moving < 30 {
		t.Errorf("only %d motions", moving)
	}
}
