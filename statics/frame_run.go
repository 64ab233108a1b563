package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A Run is a distributed load that goes on in one straight line over several members, each of which has its stretch of it:
// loads of one entry, end to end, all of one slope of intensity.
type Run struct {
	Loads []int  // indices into Frame.Loads, as one goes along the run
	Back  []bool // of each, whether the run goes against its member
}

// RunAt is the run that begins with load i and goes on with those listed after it; a run of one where it does not go on.
func (f *Frame) RunAt(i int) Run {
	for _, back := range []bool{false, true} {
		if i+1 == len(f.Loads) || !f.Loads[i].joins(&f.Loads[i+1]) {
			break
		}
		r := Run{[]int{i}, []bool{back}}
		s := f.wayOf(i, back)
		for n := i + 1; n < len(f.Loads) && f.Loads[n-1].joins(&f.Loads[n]); n++ {
			next, nextBack, ok := f.goesOn(s, n)
			if !ok {
				break
			}
			s = next
			r.Loads, r.Back = append(r.Loads, n), append(r.Back, nextBack)
		}
		if len(r.Loads) > 1 {
			return r
		}
	}
	return Run{[]int{i}, []bool{false}}
}

// Ends are the intensities of a run where it begins and where it ends.
func (f *Frame) Ends(r Run) (first, last exact.Num) {
	n := len(r.Loads) - 1
	return f.wayOf(r.Loads[0], r.Back[0]).first, f.wayOf(r.Loads[n], r.Back[n]).last
}

// Between is the stretch of a run from its i-th load up to, not with, its j-th.
func (r Run) Between(i, j int) Run { return Run{r.Loads[i:j], r.Back[i:j]} }

// reversed is the run gone along in the other sense.
func (r Run) reversed() Run {
	r = Run{slices.Clone(r.Loads), slices.Clone(r.Back)}
	slices.Reverse(r.Loads)
	slices.Reverse(r.Back)
	for i := range r.Back {
		r.Back[i] = !r.Back[i]
	}
	return r
}

// together is a run as one load, which reaches beyond its member, and the run as one goes along that member: its first
// load lies on the member where its start can be the nearer end, so that only a run that leaves both its ends backwards
// begins at a distance below zero.
func (f *Frame) together(r Run) (Load, Run) {
	if r.Back[0] {
		r = r.reversed()
	}
	n := len(r.Loads) - 1
	var length exact.Num
	for _, i := range r.Loads {
		length = length.Add(f.Loads[i].End.Sub(f.Loads[i].Start))
	}
	if r.Back[0] { // and so does its last not: all else is counted from that one
		l := f.Loads[r.Loads[n]]
		first, last := f.Ends(r)
		l.Start, l.First, l.Last = l.End.Sub(length), first, last
		return l, r
	}
	l := f.Loads[r.Loads[0]]
	l.First, l.Last = f.Ends(r)
	l.End = l.Start.Add(length)
	return l, r
}

// A way is a stretch of a distributed load as one goes along it, in either sense.
type way struct {
	from, to    Point
	first, last exact.Num
}

// wayOf is the stretch of a load, from the member's start on or, back, toward it.
func (f *Frame) wayOf(i int, back bool) way {
	l := &f.Loads[i]
	s := way{f.Along(l.Member, l.Start), f.Along(l.Member, l.End), l.First, l.Last}
	if back {
		s.from, s.to, s.first, s.last = s.to, s.from, s.last, s.first
	}
	return s
}

// joins reports whether two distributed loads stem from one, which acts along one direction.
func (l *Load) joins(m *Load) bool {
	return l.Kind == SpreadLoad && m.Kind == SpreadLoad && l.Entry == m.Entry && l.Per == m.Per &&
		l.Along.Cross(m.Along).IsZero() && l.Along.Dot(m.Along).Sign() > 0
}

// goesOn is the stretch of load i as it goes on from another, in the same line and with the same slope of its intensity.
func (f *Frame) goesOn(s way, i int) (next way, back, ok bool) {
	for _, back := range []bool{false, true} {
		next := f.wayOf(i, back)
		a, b := s.from.To(s.to), next.from.To(next.to)
		if next.from.Equal(s.to) && next.first.Equal(s.last) && a.Cross(b).IsZero() && a.Dot(b).Sign() > 0 &&
			s.last.Sub(s.first).Mul(b.Dot(a)).Equal(next.last.Sub(next.first).Mul(a.Dot(a))) {
			return next, back, true
		}
	}
	return way{}, false, false
}
