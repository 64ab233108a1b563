package wording

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A run is a distributed load that runs on in one straight line over several members, each of which has its stretch of it:
// where it begins and ends, and with what intensity.
type run struct {
	members     []int
	first, last exact.Num // intensities, as seen along the run
	from, until string    // places: "at A", "1 m from B"
}

// A way is a stretch of a distributed load as one goes along it, in either sense.
type way struct {
	from, to    statics.Point
	first, last exact.Num
}

// wayOf is the stretch of a load, from the member's start on or, back, toward it.
func (w givens) wayOf(l statics.Load, back bool) way {
	s := way{w.a.Frame.Along(l.Member, l.Start), w.a.Frame.Along(l.Member, l.End), l.First, l.Last}
	if back {
		s.from, s.to, s.first, s.last = s.to, s.from, s.last, s.first
	}
	return s
}

// runAt is the run that begins with load i, and over how many loads it goes; false where it is no more than one.
func (w givens) runAt(i int) (r run, n int, ok bool) {
	loads := w.a.Frame.Loads
	for _, back := range []bool{false, true} {
		if loads[i].Kind != statics.SpreadLoad {
			break
		}
		s := w.wayOf(loads[i], back)
		r = run{[]int{loads[i].Member}, s.first, s.last, w.end(loads[i], back), ""}
		for n = 1; i+n < len(loads) && joins(loads[i+n-1], loads[i+n]); n++ {
			next, nextBack, ok := w.next(s, loads[i+n])
			if !ok {
				break
			}
			s = next
			r.members, r.last, r.until = append(r.members, loads[i+n].Member), s.last, w.end(loads[i+n], !nextBack)
		}
		if n > 1 {
			return r, n, true
		}
	}
	return run{}, 1, false
}

// joins reports whether two loads stem from one, which acts along one direction.
func joins(l, m statics.Load) bool {
	return m.Kind == statics.SpreadLoad && l.Entry == m.Entry && l.Per == m.Per && l.Along.Cross(m.Along).IsZero() && l.Along.Dot(m.Along).Sign() > 0
}

// next is the stretch of a load as it goes on from another, in the same line and with the same slope of its intensity.
func (w givens) next(s way, l statics.Load) (next way, back, ok bool) {
	for _, back := range []bool{false, true} {
		next := w.wayOf(l, back)
		a, b := s.from.To(s.to), next.from.To(next.to)
		if next.from.Equal(s.to) && next.first.Equal(s.last) && a.Cross(b).IsZero() && a.Dot(b).Sign() > 0 &&
			s.last.Sub(s.first).Mul(b.Dot(a)).Equal(next.last.Sub(next.first).Mul(a.Dot(a))) {
			return next, back, true
		}
	}
	return way{}, false, false
}

// end is where a load begins, or, far, where it ends.
func (w givens) end(l statics.Load, far bool) string {
	if far {
		return w.Along(l.Member, l.End)
	}
	return w.Along(l.Member, l.Start)
}

// runText is a varying load that runs on: "linearly varying load 2 to 8 kN/m down on AB, BC and CD in one line, beginning at
// A and ending at D".
func (w givens) runText(r run, l statics.Load) string {
	what, _ := w.spread(r.whole(l))
	return fmt.Sprintf("%s %s in one line, beginning %s and ending %s", what, notation.List(w.members(r.members)), r.from, r.until)
}

// spokenRun tells the same to one who hears it.
func (w givens) spokenRun(r run, l statics.Load) string {
	intensity := func(n exact.Num) string { return w.number(w.st.WithUnit(n, notation.Intensity)) }
	text := "a uniform load of " + intensity(r.first)
	if !r.first.Equal(r.last) {
		text = "a linearly varying load of " + intensity(r.first) + " to " + intensity(r.last)
	}
	text += map[statics.Per]string{statics.PerRun: " of run", statics.PerRise: " of rise"}[l.Per]
	return fmt.Sprintf("%s acts %s on %s in one line, beginning %s and ending %s", text, w.clause(l.Along), notation.List(w.members(r.members)), r.from, r.until)
}

// whole is the load of a run as if all of it lay on one member.
func (r run) whole(l statics.Load) statics.Load {
	l.First, l.Last = r.first, r.last
	return l
}

// plain reports whether a run is a uniform load that covers its members, which needs no word on where it begins.
func (w givens) plain(loads []statics.Load) bool {
	return !slices.ContainsFunc(loads, func(l statics.Load) bool { return !l.First.Equal(l.Last) || !w.wholeMember(l) })
}
