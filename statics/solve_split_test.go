package statics

import (
	"fmt"
	"slices"
	"testing"

	"unpin/statics/exact"
)

// TestSplits checks every way round two sums solved together: the two forces have the resultant of those they stand for,
// every sum comes to nought, and each holds only one unknown when its turn comes (S15).
func TestSplits(t *testing.T) {
	t.Parallel()
	splits, pairs := 0, 0
	check := func(f Frame) error {
		s, err := Solve(f)
		if err != nil {
			return err
		}
		known := make([]bool, len(s.Forces))
		for _, step := range s.Plan {
			if len(step.Sums) == 2 {
				pairs++
			}
			if w := s.Split(&step, known); w != nil {
				splits++
				if err := splitFits(s, w, known); err != nil {
					return fmt.Errorf("%w\n%s", err, report(s))
				}
			}
			for _, i := range step.Gives {
				known[i] = true
			}
		}
		return nil
	}
	overSeeds(t, 1000, 300, check)
	for seed := range uint64(400) {
		if err := check(awkward(seeded(seed))); err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
	}
	t.Logf("%d of %d pairs of sums have a way round", splits, pairs)
	if splits < 20 {
		t.Errorf("only %d ways round", splits)
	}
}

func splitFits(s *Solution, w *Split, known []bool) error {
	of := []int{w.Along, w.Upward}
	if a, b := resultantOf(s.Assembly, of, s.Values), resultantOf(w.Assembly, of, w.Values); !a.Plus(b.Neg()).IsZero() {
		return fmt.Errorf("the force split is (%s, %s), not (%s, %s)", b.X, b.Y, a.X, a.Y)
	}
	if len(w.Steps) != 2 || w.Steps[0].Gives[0] != w.Upward || w.Steps[1].Gives[0] != w.Along {
		return fmt.Errorf("steps %+v", w.Steps)
	}
	now := slices.Clone(known)
	for _, step := range w.Steps {
		sum := step.Sums[0]
		left := sum.Unknowns(func(i int) bool { return now[i] })
		if r := sum.Residual(w.Values); !r.IsZero() || len(left) != 1 || left[0] != step.Gives[0] {
			return fmt.Errorf("%s comes to %s and holds the unknowns %v", sumName(w.Assembly, sum), r, left)
		}
		now[step.Gives[0]] = true
	}
	return nil
}

// resultantOf is the resultant of forces, by components.
func resultantOf(a *Assembly, forces []int, values []exact.Num) Vector {
	var all Vector
	for _, i := range forces {
		d := a.Forces[i].Along
		all = all.Plus(d.Times(over(values[i], root(d.X.Square().Add(d.Y.Square())))))
	}
	return all
}

// TestFeetAtDifferentLevels sweeps three-pinned frames: where the feet are level no two sums are solved together; where they
// are not, two are, and the way round is offered, with the force at one foot split along the line to the other.
func TestFeetAtDifferentLevels(t *testing.T) {
	frames, together := 0, 0
	for _, rise := range []string{"-3", "-1/2", "0", "1", "5/3", "4"} {
		for _, crown := range []string{"1 5", "3 7", "4 6", "6 5", "9/2 13/2"} {
			for _, load := range []string{"point 7 0 -1 on AB 2", "point 3 4 -3 at D", "spread 2 5 1 0 on CD 0 1L", "couple 6 on DE 1/9L"} {
				frames++
				s, err := Solve(build(t, fmt.Sprintf("joint A 0 0\njoint B 0 4\njoint C %s\njoint D 8 9/2\njoint E 8 %s\n"+
					"member AB A B\nmember BC B C\nmember CD C D\nmember DE D E\npin C\nsupport A pinned\nsupport E pinned\n%s", crown, rise, load)))
				if err != nil || s.Values == nil {
					t.Fatal("not solved", err)
				}
				n := 0
				for _, step := range s.Plan {
					if len(step.Sums) < 2 {
						continue
					}
					n++
					if err := joinsFeet(s, step); err != nil {
						t.Fatalf("crown %s, rise %s, %s: %v\n%s", crown, rise, load, err, report(s))
					}
				}
				if want := map[bool]int{false: 1}[rise == "0"]; n != want {
					t.Errorf("crown %s, rise %s, %s: sums are solved together %d times", crown, rise, load, n)
				}
				together += n
			}
		}
	}
	t.Logf("%d three-pinned frames, %d with two sums together, each with a way round along the line of the feet", frames, together)
}

// joinsFeet checks that a step has a way round, along the line from one foot to the other.
func joinsFeet(s *Solution, step Step) error {
	none := make([]bool, len(s.Forces)) // as the two sums come first
	w := s.Split(&step, none)
	if w == nil {
		return fmt.Errorf("no way round")
	}
	from := s.Forces[w.Along].Joint
	to := s.JointAt(w.Toward)
	if len(step.Sums) != 2 || !s.isFoot(from) || !s.isFoot(to) || from == to {
		return fmt.Errorf("%d sums, split at joint %d toward %d", len(step.Sums), from, to)
	}
	feet := s.Frame.Joints[from].At.To(s.Frame.Joints[to].At)
	if !w.Forces[w.Along].Along.Cross(feet).IsZero() || !w.Forces[w.Upward].Along.X.IsZero() {
		return fmt.Errorf("the force is split along %v and %v", w.Forces[w.Along].Along, w.Forces[w.Upward].Along)
	}
	return splitFits(s, w, none)
}

// TestFeetOnOneVertical asks for the way round along the line of the feet where that line is vertical. The force at a foot
// cannot be split along it and vertically, and a plan has no need to: about one foot the whole gives the other's
// horizontal force. So only another line may come out, and nothing is divided by zero.
func TestFeetOnOneVertical(t *testing.T) {
	t.Parallel()
	s, err := Solve(build(t, "joint A 0 0\njoint B 0 4\njoint C 3 1\nmember AC A C\nmember CB C B\npin C\nsupport A pinned\n"+
		"support B pinned\npoint 5 1 -2 on AC 1\npoint 3 -1 -1 on CB 2"))
	if err != nil {
		t.Fatal(err)
	}
	pin := slices.IndexFunc(s.Forces, func(f Force) bool { return f.Name == "Cx" })
	step := &Step{Sums: []Sum{s.MomentSum(FreeBody{0}, s.Frame.Joints[0].At), s.MomentSum(FreeBody{1}, s.Frame.Joints[1].At)}, Gives: []int{pin, pin + 1}}
	known := make([]bool, len(s.Forces))
	if w := (splitter{s.Assembly, s.Values, known}).atFoot(step); w != nil {
		t.Errorf("the force at a foot is split along %v", w.Forces[w.Along].Along)
	}
	w := s.Split(step, known)
	if w == nil || s.Forces[w.Along].Joint != 2 {
		t.Fatal("the force of the pin is not split toward a foot")
	}
	if err := splitFits(s, w, known); err != nil {
		t.Error(err)
	}
}

// TestKnownFeetAreNotSplit asks for the way round where the reaction at both feet is known: a force that is known is no
// way to another.
func TestKnownFeetAreNotSplit(t *testing.T) {
	t.Parallel()
	s, err := Solve(build(t, "joint A 0 0\njoint B 8 2\njoint C 3 5\nmember AC A C\nmember CB C B\npin C\nsupport A pinned\n"+
		"support B pinned\npoint 5 1 -2 on AC 1"))
	if err != nil {
		t.Fatal(err)
	}
	step := &Step{Sums: []Sum{s.MomentSum(FreeBody{0}, s.Frame.Joints[0].At), s.MomentSum(FreeBody{1}, s.Frame.Joints[1].At)}}
	known := make([]bool, len(s.Forces))
	for i, f := range s.Forces {
		if f.Name == "Cx" {
			step.Gives = []int{i, i + 1}
		}
	}
	if (splitter{s.Assembly, s.Values, known}).atFoot(step) == nil {
		t.Fatal("no foot is split though neither is known")
	}
	for i, f := range s.Forces {
		known[i] = f.Kind == Reaction
	}
	if w := (splitter{s.Assembly, s.Values, known}).atFoot(step); w != nil {
		t.Errorf("%s is split though it is known", s.Forces[w.Along].Name)
	}
}

// TestNoSplitAlongAnInexactLine moves the second foot to where the lines from the pin and from the other foot have no exact
// length, which a unit vector along them would need.
func TestNoSplitAlongAnInexactLine(t *testing.T) {
	t.Parallel()
	f := build(t, "joint A 0 0\njoint B 1 1\njoint C 3 5\nmember AC A C\nmember CB C B\npin C\nsupport A pinned\nsupport B pinned\n"+
		"point 5 1 -2 on AC 1")
	f.Joints[1].At.X = one.Add(root(exact.Int(2)))
	s, err := Solve(f)
	if err != nil {
		t.Fatal(err)
	}
	pin := slices.IndexFunc(s.Forces, func(f Force) bool { return f.Name == "Cx" })
	about := func(body, joint int) Sum { return s.MomentSum(FreeBody{body}, s.Frame.Joints[joint].At) }
	known := make([]bool, len(s.Forces))
	feet := &Step{Sums: []Sum{about(0, 0), about(1, 1)}, Gives: []int{pin, pin + 1}}
	if w := (splitter{s.Assembly, s.Values, known}).atFoot(feet); w != nil {
		t.Errorf("the force at a foot is split along %v", w.Forces[w.Along].Along)
	}
	second := &Step{Sums: []Sum{about(1, 1), s.ForceSum(FreeBody{1}, east)}, Gives: []int{pin, pin + 1}}
	if w := s.Split(second, known); w != nil {
		t.Errorf("the force of the pin is split along %v", w.Forces[w.Along].Along)
	}
}
