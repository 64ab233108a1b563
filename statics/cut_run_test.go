package statics

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/exact"
)

// TestRunsOn holds sums in which loads that run on over members in line are taken together against the same loads added up
// member by member, from their intensities alone, and counts the terms that are left.
func TestRunsOn(t *testing.T) {
	runs := 0
	rapid.Check(t, func(t *rapid.T) {
		f, cuts := straightFrame(t)
		a, err := Cut(f)
		if err != nil {
			t.Fatal(err)
		}
		for p := range a.Parts {
			if n := len(a.ActionsOn(FreeBody{p})); n > 2 {
				t.Fatalf("part %s has %d actions: a straight part carries one load in two shapes at most", a.Parts[p].Name, n)
			}
		}
		if cuts == 0 && len(a.Actions) < len(a.pieces) {
			runs++
		}
		about := Point{exact.Int(rapid.Int64Range(-5, 5).Draw(t, "x")), exact.Int(rapid.Int64Range(-5, 5).Draw(t, "y"))}
		for _, b := range append(bodyGroups{a}.singles(), a.Whole()) {
			fx, fy, m := addedUp(&f, a, b, about)
			sameLoads(t, "ΣFx", a.ForceSum(b, east), fx)
			sameLoads(t, "ΣFy", a.ForceSum(b, north), fy)
			sameLoads(t, "ΣM", a.MomentSum(b, about), m)
			sameLoads(t, "ΣM apart", a.Apart().MomentSum(b, about), m)
		}
		for i := range a.Actions {
			m, at := f.CentroidOf(a.Actions[i])
			if !f.Along(m, at).Equal(a.Actions[i].At) || at.Sign() < 0 || at.Cmp(f.Length(m)) > 0 {
				t.Fatalf("the resultant of action %d is said to be %s along %s", i, at, f.Members[m].Name)
			}
		}
	})
	if runs == 0 {
		t.Error("no load ran on over members of one part")
	}
}

// straightFrame is a row of members in one line, each named in either sense, with pins between some and one linear load
// over a stretch of it.
func straightFrame(t *rapid.T) (f Frame, pins int) {
	along := [][2]int64{{1, 0}, {0, 1}, {3, 4}, {-4, 3}, {-1, 0}}[rapid.IntRange(0, 4).Draw(t, "slope")]
	unit := int64(1)
	if along[0] != 0 && along[1] != 0 {
		unit = 5
	}
	n := rapid.IntRange(2, 6).Draw(t, "members")
	at := []int64{0}
	for i := range n {
		at = append(at, at[i]+rapid.Int64Range(1, 4).Draw(t, "length"))
	}
	for i, d := range at {
		f.Joints = append(f.Joints, Joint{Name: string(rune('A' + i)), At: Point{exact.Int(d * along[0]), exact.Int(d * along[1])}})
	}
	q := rapid.Int64Range(-4, 4)
	q1, q2 := exact.Int(q.Draw(t, "q1")), exact.Int(q.Draw(t, "q2"))
	slope := over(q2.Sub(q1), exact.Int(at[n]*unit))
	first, last := frac(rapid.Int64Range(0, 3).Draw(t, "from"), 4), exact.Int(at[n]*unit).Sub(frac(rapid.Int64Range(0, 3).Draw(t, "until"), 4))
	to := Vector{exact.Int(rapid.Int64Range(-1, 1).Draw(t, "u")), exact.Int(2)}
	for i := range n {
		back := rapid.Bool().Draw(t, "back")
		m := Member{Name: fmt.Sprintf("%c%c", 'A'+i, 'B'+i), From: i, To: i + 1}
		if back {
			m.From, m.To = m.To, m.From
		}
		f.Members = append(f.Members, m)
		start, end := exact.Int(at[i]*unit), exact.Int(at[i+1]*unit)
		s, e := exact.Max(start, first), exact.Min(end, last)
		l := Load{Kind: SpreadLoad, Along: to, Joint: None, Member: i, Start: s.Sub(start), End: e.Sub(start),
			First: q1.Add(slope.Mul(s)), Last: q1.Add(slope.Mul(e))}
		if back {
			l.Start, l.End, l.First, l.Last = end.Sub(e), end.Sub(s), l.Last, l.First
		}
		f.Loads = append(f.Loads, l)
		if i > 0 && rapid.IntRange(0, 3).Draw(t, "pin") == 0 {
			f.Connections = append(f.Connections, Connection{Joint: i, Kind: Pin, Pieces: [][]int{{i - 1}, {i}}, Main: None})
			pins++
		}
	}
	f.Supports = []Support{{Joint: 0, Kind: Fixed, On: None}}
	return f, pins
}

// addedUp is what the loads on a body come to: of each member the area of its stretch, and its moment by the middle and by
// what the ends differ.
func addedUp(f *Frame, a *Assembly, b FreeBody, about Point) (fx, fy, m exact.Num) {
	for _, l := range f.Loads {
		if !b.Has(a.PartOf(l.Member)) {
			continue
		}
		length := l.End.Sub(l.Start)
		u, _ := l.Along.unit()
		e, _ := f.Span(l.Member).unit()
		area := l.First.Add(l.Last).Mul(length).Mul(frac(1, 2))
		tilt := l.Last.Sub(l.First).Mul(length).Mul(length).Mul(frac(1, 12)) // ∫ q (x − middle) dx
		middle := f.Along(l.Member, l.Start.Add(l.End).Mul(frac(1, 2)))
		fx, fy = fx.Add(u.X.Mul(area)), fy.Add(u.Y.Mul(area))
		m = m.Add(about.To(middle).Cross(u).Mul(area)).Add(e.Cross(u).Mul(tilt))
	}
	return fx, fy, m
}

// sameLoads fails unless the loads' terms of a sum add up to a value.
func sameLoads(t *rapid.T, name string, s Sum, want exact.Num) {
	var got exact.Num
	for _, x := range s.Terms() {
		if x.Force == None {
			got = got.Add(x.Value())
		}
	}
	if !got.Equal(want) {
		t.Fatalf("%s of body %v: the loads add up to %s, member by member to %s", name, s.Body, got, want)
	}
}
