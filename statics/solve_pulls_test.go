package statics

import (
	"fmt"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestWithPulls holds the solution that uses two-force members at once against the plain one: the same forces, pulls that
// are the N of straight members, and a sound plan (S15).
func TestWithPulls(t *testing.T) {
	t.Parallel()
	bars := 0
	check := func(f Frame) error {
		s, err := Solve(unloadedInPart(f))
		if err != nil || s.Values == nil {
			return err
		}
		short := s.WithPulls()
		if short == nil {
			return nil
		}
		bars += len(s.Parts) - len(short.Parts)
		if err := pullsFit(s, short); err != nil {
			return fmt.Errorf("%w\n%s", err, report(short))
		}
		return nil
	}
	overSeeds(t, 1500, 300, check)
	for seed := range uint64(400) {
		f := awkward(seeded(seed))
		if err := check(f); err != nil {
			t.Fatalf("seed %d: %v\n%s", seed, err, write(f))
		}
	}
	t.Logf("%d two-force members used at once", bars)
	if bars < 50 {
		t.Errorf("only %d two-force members", bars)
	}
}

// unloadedInPart keeps of a frame's loads those on one member.
func unloadedInPart(f Frame) Frame {
	f.Loads = slices.DeleteFunc(slices.Clone(f.Loads), func(l Load) bool { return l.Member != f.Loads[0].Member })
	return f
}

func pullsFit(s, short *Solution) error {
	if full := short.FullValues(short.Values); short.Full() != s || !slices.EqualFunc(full, s.Values, exact.Num.Equal) {
		return fmt.Errorf("in full the values are %v, want %v", full, s.Values)
	}
	for i, f := range short.Forces {
		if f.Kind == MemberPull {
			if err := pullFits(s, f, short.Values[i]); err != nil {
				return err
			}
			continue
		}
		same := slices.IndexFunc(s.Forces, func(g Force) bool {
			return g.Name == f.Name && g.Joint == f.Joint && s.BodyName(g.On) == short.BodyName(f.On)
		})
		if same < 0 || !s.Values[same].Equal(short.Values[i]) {
			return fmt.Errorf("%s = %s is not a force of the plain solution", f.Name, short.Values[i])
		}
	}
	c := short.Count
	if rows, _ := short.rows(); c.Unknowns != len(short.Forces) || c.Sums != len(rows) || c.Rank != eliminate(rows, c.Unknowns).rank() || c.Determinacy() != Determinate {
		return fmt.Errorf("count %+v", c)
	}
	p := planReader{Solution: short, known: map[int]bool{}}
	for n, step := range short.Plan {
		if err := p.step(n, step); err != nil {
			return fmt.Errorf("step %d: %w", n+1, err)
		}
	}
	if len(p.known) != len(short.Forces) {
		return fmt.Errorf("the plan gives %d of %d forces", len(p.known), len(short.Forces))
	}
	return nil
}

// pullFits compares a pull with N of its member, if a single member runs from pin to pin.
func pullFits(s *Solution, f Force, value exact.Num) error {
	for _, b := range s.Bars() {
		if name := "F_" + s.Frame.Joints[b.From].Name + s.Frame.Joints[b.To].Name; name != f.Name || len(s.Parts[b.Part].Members) > 1 {
			continue
		}
		d := s.Diagrams[s.Parts[b.Part].Members[0]]
		if n := d.Stretches[0].N; n.Degree() > 0 || !n[0].Equal(value) {
			return fmt.Errorf("%s = %s, N = %v", f.Name, value, n)
		}
	}
	return nil
}

// TestPullOfStrut is a bracket worked by hand: a beam AC of 4, pinned to the wall at A, held at B, 3 from A, by a strut
// from D, 4 below A; 15 hang at its end. About A, F·(4/5)·3 + 15·4 = 0.
func TestPullOfStrut(t *testing.T) {
	s, err := Solve(build(t, `
		joint A 0 4
		joint B 3 4
		joint C 4 4
		joint D 0 0
		member AB A B
		member BC B C
		member DB D B
		pin B DB
		support A pinned
		support D pinned
		point 15 0 -1 at C`))
	if err != nil {
		t.Fatal(err)
	}
	short := s.WithPulls()
	if short == nil {
		t.Fatal("the strut is no two-force member")
	}
	first := short.Plan[0]
	f := short.Forces[first.Gives[0]]
	if f.Name != "F_DB" || !short.Values[first.Gives[0]].Equal(exact.Int(-25)) || len(short.Forces) != 3 {
		t.Errorf("first %s = %s of %d forces\n%s", f.Name, short.Values[first.Gives[0]], len(short.Forces), report(short))
	}
}
