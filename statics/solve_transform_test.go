package statics

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
	"unpin/statics/exact"
)

// alike solves a random frame and a changed copy of it, and compares the answers.
func alike(t *testing.T, change func(*rapid.T, *Frame) (func(contact) contact, func([]InternalForces) []InternalForces)) {
	t.Helper()
	rapid.Check(t, func(t *rapid.T) {
		f := drawnFrame(t, 5)
		s, err := Solve(f)
		if err != nil {
			t.Fatal(err)
		}
		g := clone(f)
		acts, inside := change(t, &g)
		r, err := Solve(g)
		if err != nil {
			t.Fatal(err)
		}
		if s.Count != r.Count {
			t.Fatalf("%+v, changed %+v", s.Count, r.Count)
		}
		if s.Values == nil {
			return
		}
		if err := answersOf(r).same(answersOf(s), acts, inside); err != nil {
			t.Fatalf("%v\n%s\nchanged to\n%s", err, write(f), write(g))
		}
	})
}

// mapVectors changes every place and direction of a frame.
func mapVectors(f *Frame, place func(Point) Point, turn func(Vector) Vector) {
	for i := range f.Joints {
		f.Joints[i].At = place(f.Joints[i].At)
	}
	for i := range f.Connections {
		f.Connections[i].Along = turn(f.Connections[i].Along)
	}
	for i := range f.Supports {
		f.Supports[i].Along = turn(f.Supports[i].Along)
	}
	for i := range f.Loads {
		f.Loads[i].Along, f.Loads[i].Second = turn(f.Loads[i].Along), turn(f.Loads[i].Second)
	}
}

func mirror(v Vector) Vector { return Vector{v.X.Neg(), v.Y} }

// TestMirrored mirrors a frame at a vertical line: forces are mirrored, couples change sense, N stays, and V and M
// change sign, since the side of a member to which n points is now the other.
func TestMirrored(t *testing.T) {
	t.Parallel()
	alike(t, func(_ *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		mapVectors(f, func(p Point) Point { return Point{p.X.Neg(), p.Y} }, mirror)
		for i, l := range f.Loads {
			if l.Kind == CoupleLoad {
				f.Loads[i].Size = l.Size.Neg()
			}
		}
		return func(c contact) contact { return contact{mirror(c.force), c.couple.Neg()} },
			each(func(i InternalForces) InternalForces { return InternalForces{i.N, i.V.Neg(), i.M.Neg()} })
	})
}

// TestTurned turns a frame by 90°: the forces turn with it, N, V and M stay. Runs and rises change places.
func TestTurned(t *testing.T) {
	alike(t, func(_ *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		mapVectors(f, func(p Point) Point { return Point{p.Y.Neg(), p.X} }, Vector.Left)
		for i, l := range f.Loads {
			f.Loads[i].Per = map[Per]Per{PerLength: PerLength, PerRun: PerRise, PerRise: PerRun}[l.Per]
		}
		return func(c contact) contact { return contact{c.force.Left(), c.couple} }, keep
	})
}

// TestMoved moves a frame, by an irrational way too: nothing changes.
func TestMoved(t *testing.T) {
	alike(t, func(t *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		by := Vector{frac(rapid.Int64Range(-50, 50).Draw(t, "x"), 3), exact.Sin(exact.Int(15 * rapid.Int64Range(0, 3).Draw(t, "y")))}
		mapVectors(f, func(p Point) Point { return p.Plus(by) }, func(v Vector) Vector { return v })
		return unchanged, keep
	})
}

// TestScaledLoads multiplies all loads: everything is multiplied.
func TestScaledLoads(t *testing.T) {
	t.Parallel()
	alike(t, func(t *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		k := frac(rapid.Int64Range(1, 30).Draw(t, "k"), -7)
		for i, l := range f.Loads {
			f.Loads[i].Size, f.Loads[i].First, f.Loads[i].Last = l.Size.Mul(k), l.First.Mul(k), l.Last.Mul(k)
		}
		return func(c contact) contact { return contact{c.force.Times(k), c.couple.Mul(k)} },
			each(func(i InternalForces) InternalForces { return InternalForces{i.N.Mul(k), i.V.Mul(k), i.M.Mul(k)} })
	})
}

// TestScaledLengths multiplies all lengths and keeps all forces: couples and moments are multiplied.
func TestScaledLengths(t *testing.T) {
	t.Parallel()
	alike(t, func(t *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		k := frac(rapid.Int64Range(1, 30).Draw(t, "k"), 7)
		mapVectors(f, func(p Point) Point { return Point{p.X.Mul(k), p.Y.Mul(k)} }, func(v Vector) Vector { return v })
		for i := range f.Loads {
			l := &f.Loads[i]
			l.At, l.Start, l.End, l.Radius = l.At.Mul(k), l.Start.Mul(k), l.End.Mul(k), l.Radius.Mul(k)
			l.First, l.Last = over(l.First, k), over(l.Last, k)
			if l.Kind == CoupleLoad {
				l.Size = l.Size.Mul(k)
			}
		}
		return func(c contact) contact { return contact{c.force, c.couple.Mul(k)} },
			each(func(i InternalForces) InternalForces { return InternalForces{i.N, i.V, i.M.Mul(k)} })
	})
}

// TestScaledDirections makes directions longer and shorter: they are unscaled, so nothing changes.
func TestScaledDirections(t *testing.T) {
	t.Parallel()
	alike(t, func(t *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		mapVectors(f, func(p Point) Point { return p }, func(v Vector) Vector {
			return v.Times(frac(rapid.Int64Range(1, 9).Draw(t, "k"), 4))
		})
		return unchanged, keep
	})
}

// TestReversedMembers turns members round: the places on them are counted from the other end, and of the internal
// forces only M changes sign.
func TestReversedMembers(t *testing.T) {
	alike(t, func(_ *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		for i := range f.Loads {
			if l := &f.Loads[i]; l.Joint == None {
				length := f.Length(l.Member)
				l.At, l.Start, l.End = length.Sub(l.At), length.Sub(l.End), length.Sub(l.Start)
				l.First, l.Last = l.Last, l.First
				if l.Kind != SpreadLoad {
					l.Start, l.End = exact.Num{}, exact.Num{}
				}
			}
		}
		for i, m := range f.Members {
			f.Members[i].From, f.Members[i].To = m.To, m.From
		}
		flip := each(func(i InternalForces) InternalForces { return InternalForces{i.N, i.V, i.M.Neg()} })
		return unchanged, func(list []InternalForces) []InternalForces {
			slices.Reverse(list)
			return flip(list)
		}
	})
}

// TestReordered lists joints, members, connections, pieces, supports and loads in another order, with other names for
// none of them: nothing changes but the order in which the forces are found.
func TestReordered(t *testing.T) {
	alike(t, func(t *rapid.T, f *Frame) (func(contact) contact, func([]InternalForces) []InternalForces) {
		shuffle := func(n int) []int { return rapid.Permutation(indexes(n)).Draw(t, "order") }
		joints, members := shuffle(len(f.Joints)), shuffle(len(f.Members))
		f.Joints, f.Members = picked(f.Joints, joints), picked(f.Members, members)
		f.Connections = picked(f.Connections, shuffle(len(f.Connections)))
		f.Supports = picked(f.Supports, shuffle(len(f.Supports)))
		f.Loads = picked(f.Loads, shuffle(len(f.Loads)))
		for i := range f.Connections {
			pieces := shuffle(len(f.Connections[i].Pieces))
			f.Connections[i].Pieces = picked(f.Connections[i].Pieces, pieces)
			f.Connections[i].Main = slices.Index(pieces, f.Connections[i].Main)
		}
		renumber(f, joints, members)
		return unchanged, keep
	})
}

func indexes(n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return all
}

// picked lists the items in the order of their old indexes.
func picked[T any](items []T, order []int) []T {
	all := make([]T, len(items))
	for i, old := range order {
		all[i] = items[old]
	}
	return all
}

// renumber gives every reference to a joint or member its new index.
func renumber(f *Frame, joints, members []int) {
	joint := func(i *int) { *i = slices.Index(joints, *i) } // −1, which is None, stays
	member := func(i *int) { *i = slices.Index(members, *i) }
	for i := range f.Members {
		joint(&f.Members[i].From)
		joint(&f.Members[i].To)
	}
	for i, c := range f.Connections {
		joint(&f.Connections[i].Joint)
		for _, piece := range c.Pieces {
			for k := range piece {
				member(&piece[k])
			}
		}
	}
	for i := range f.Supports {
		joint(&f.Supports[i].Joint)
		member(&f.Supports[i].On)
	}
	for i := range f.Loads {
		joint(&f.Loads[i].Joint)
		member(&f.Loads[i].Member)
	}
}

// TestRenamed gives joints and members other names: the plan and the values stay, step by step.
func TestRenamed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawnFrame(t, 5)
		g := clone(f)
		for i := range g.Joints {
			g.Joints[i].Name = name(len(g.Joints) - i + 30)
		}
		for i := range g.Members {
			g.Members[i].Name = name(i) + "'"
		}
		s, _ := Solve(f)
		r, err := Solve(g)
		if err != nil || !slices.EqualFunc(s.Values, r.Values, exact.Num.Equal) || len(s.Plan) != len(r.Plan) {
			t.Fatalf("%v\n%s", err, write(f))
		}
		for i, step := range s.Plan {
			if !slices.Equal(step.Gives, r.Plan[i].Gives) || step.Why != r.Plan[i].Why {
				t.Fatalf("step %d differs\n%s", i+1, write(f))
			}
		}
	})
}

// TestSuperposition solves a frame under some of its loads, under the others, and under all.
func TestSuperposition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawnFrame(t, 5)
		some, others := clone(f), clone(f)
		some.Loads, others.Loads = nil, nil
		for _, l := range f.Loads {
			if rapid.Bool().Draw(t, "some") {
				some.Loads = append(some.Loads, l)
			} else {
				others.Loads = append(others.Loads, l)
			}
		}
		all, _ := Solve(f)
		first, err1 := Solve(some)
		second, err2 := Solve(others)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		if all.Values == nil {
			return
		}
		sum := answersOf(first).plus(answersOf(second))
		if err := answersOf(all).same(sum, unchanged, keep); err != nil {
			t.Fatalf("%v\n%s", err, write(f))
		}
	})
}

// plus adds answers of the same frame under other loads.
func (a answers) plus(b answers) answers {
	sum := answers{acts: map[string]contact{}, internal: map[string][]InternalForces{}}
	for key, c := range a.acts {
		d := b.acts[key]
		sum.acts[key] = contact{c.force.Plus(d.force), c.couple.Add(d.couple)}
	}
	for m, list := range a.internal {
		sum.internal[m] = nil
		for i, x := range list {
			y := b.internal[m][i]
			sum.internal[m] = append(sum.internal[m], InternalForces{x.N.Add(y.N), x.V.Add(y.V), x.M.Add(y.M)})
		}
	}
	return sum
}
