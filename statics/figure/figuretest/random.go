package figuretest

import (
	"slices"

	"pgregory.net/rapid"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
)

// RandomScenes are those of a frame of any kind, sound or not: as given, all parts apart, and its bodies with some of the forces known.
func RandomScenes(t *rapid.T, ascii bool) []figure.Scene {
	f := randomFrame(t)
	units, err := notation.ParseUnits(rapid.SampledFrom([]string{"kN m", "lb in", "P L"}).Draw(t, "units"))
	if err != nil {
		t.Fatal(err)
	}
	o := figure.Options{Style: notation.Style{Units: units, ASCII: ascii}}
	scenes := []figure.Scene{figure.OfFrame(&f, o)}
	a, err := statics.Cut(f)
	if err != nil {
		return scenes
	}
	known := map[int]exact.Num{}
	for i := range a.Forces {
		if rapid.Bool().Draw(t, "known") {
			known[i] = exact.Int(int64(rapid.IntRange(-9, 9).Draw(t, "value")))
		}
	}
	scenes = append(scenes, figure.OfParts(a, known, o))
	for i := range a.Bodies() {
		scenes = append(scenes, figure.OfBody(a, statics.FreeBody{i}, known, o))
	}
	figure.Describe(a, o)
	figure.DescribeBody(a, a.Whole(), known, o)
	return scenes
}

// randomFrame is a walk of up to twelve members that may branch, cross and close rings, with pins of up to all parts that meet,
// slots, sleeves, supports and loads set at random.
func randomFrame(t *rapid.T) statics.Frame {
	var f statics.Frame
	n := rapid.IntRange(2, 13).Draw(t, "joints")
	for i := range n {
		at := statics.Point{X: whole(t, -8, 8), Y: whole(t, -5, 5)}
		for _, j := range f.Joints {
			if j.At.Equal(at) {
				at.X = at.X.Add(exact.Int(int64(20 + i)))
			}
		}
		f.Joints = append(f.Joints, statics.Joint{Name: string(rune('A' + i)), At: at})
	}
	for i := 1; i < n; i++ {
		from := i - 1
		if rapid.IntRange(0, 3).Draw(t, "branch") == 0 {
			from = rapid.IntRange(0, i-1).Draw(t, "from")
		}
		f.Members = append(f.Members, statics.Member{Name: f.Joints[from].Name + f.Joints[i].Name, From: from, To: i})
	}
	for range rapid.IntRange(0, 2).Draw(t, "rings") {
		closeRing(t, &f)
	}
	for j := range f.Joints {
		randomJoint(t, &f, j)
	}
	for range rapid.IntRange(0, 6).Draw(t, "loads") {
		f.Loads = append(f.Loads, randomLoad(t, &f))
	}
	return f
}

// closeRing adds a member between two joints that none joins, if the draw finds such; twelve members are the most.
func closeRing(t *rapid.T, f *statics.Frame) {
	from, to := rapid.IntRange(0, len(f.Joints)-1).Draw(t, "from"), rapid.IntRange(0, len(f.Joints)-1).Draw(t, "to")
	joined := slices.ContainsFunc(f.Members, func(m statics.Member) bool { return m.From == from && m.To == to || m.From == to && m.To == from })
	if from != to && !joined && len(f.Members) < 12 {
		f.Members = append(f.Members, statics.Member{Name: f.Joints[from].Name + f.Joints[to].Name, From: from, To: to})
	}
}

func whole(t *rapid.T, low, high int) exact.Num {
	return exact.Int(int64(rapid.IntRange(low, high).Draw(t, "n")))
}

// direction is any direction but none.
func direction(t *rapid.T) statics.Vector {
	v := statics.Vector{X: whole(t, -3, 3), Y: whole(t, -3, 3)}
	if v.IsZero() {
		v.Y = exact.Int(-1)
	}
	return v
}

// randomJoint may put a connection and a support at a joint.
func randomJoint(t *rapid.T, f *statics.Frame, j int) {
	var meeting []int
	for m, k := range f.Members {
		if k.From == j || k.To == j {
			meeting = append(meeting, m)
		}
	}
	if len(meeting) > 1 && rapid.Bool().Draw(t, "pin") {
		c := statics.Connection{Joint: j, Main: rapid.IntRange(-1, 1).Draw(t, "main"), Pieces: [][]int{meeting[:1], meeting[1:]}}
		if len(meeting) > 2 && rapid.Bool().Draw(t, "all hinged") {
			c.Main, c.Pieces = statics.None, nil
			for _, m := range meeting {
				c.Pieces = append(c.Pieces, []int{m})
			}
		}
		if c.Main >= 0 && rapid.Bool().Draw(t, "sliding") {
			c.Kind = rapid.SampledFrom([]statics.ConnectionKind{statics.Slot, statics.Sleeve}).Draw(t, "kind")
			c.Along = direction(t)
		}
		f.Connections = append(f.Connections, c)
	}
	if rapid.IntRange(0, 2).Draw(t, "support") == 0 {
		s := statics.Support{Joint: j, Kind: statics.SupportKind(rapid.IntRange(0, 3).Draw(t, "kind")), On: statics.None}
		s.Along = direction(t)
		f.Supports = append(f.Supports, s)
	}
}

func randomLoad(t *rapid.T, f *statics.Frame) statics.Load {
	m := rapid.IntRange(0, len(f.Members)-1).Draw(t, "member")
	l := statics.Load{
		Kind: statics.LoadKind(rapid.IntRange(0, 3).Draw(t, "kind")), Size: whole(t, -20, 20), Along: direction(t),
		Joint: statics.None, Member: m,
	}
	half := exact.MustParse("0.5")
	l.At = f.Length(m).Mul(half)
	if l.Kind == statics.SpreadLoad {
		l.First, l.Last = whole(t, -9, 9), whole(t, -9, 9)
		l.End = f.Length(m)
		if rapid.Bool().Draw(t, "part") {
			l.Start = l.End.Mul(half)
		}
		l.Per = statics.Per(rapid.IntRange(0, 2).Draw(t, "per"))
		return l
	}
	if l.Kind == statics.RopeLoad {
		l.Size, l.Second, l.Radius = l.Size.Abs(), direction(t), exact.MustParse(rapid.SampledFrom([]string{"0", "0.1", "0.25", "0.4"}).Draw(t, "radius"))
		if l.Along.Cross(l.Second).IsZero() {
			l.Second = l.Along // not the opposite
		}
	}
	if l.Kind == statics.RopeLoad || rapid.Bool().Draw(t, "at a joint") {
		l.Joint = f.Members[m].To
		if rapid.Bool().Draw(t, "the pin itself") {
			l.Member = statics.None
		}
	}
	return l
}
